using System.Security.Cryptography;

namespace LayoutService.Api.Describing;

/// <summary>Serves the contract, with a strong ETag.</summary>
public static class ContractEndpoints
{
    public static void MapContract(this IEndpointRouteBuilder routes)
    {
        Map(routes, "/openapi/v1.json", "application/json", documents => documents.JsonAsync());
        Map(routes, "/openapi/v1.yaml", "application/yaml", documents => documents.YamlAsync());
        Map(routes, "/openapi/v1-typed.json", "application/json", documents => documents.TypedAsync());
        Map(routes, "/openapi/v1-3.2.json", "application/json", documents => documents.NewerAsync());
    }

    private static void Map(IEndpointRouteBuilder routes, string path, string mediaType, Func<ContractDocuments, Task<byte[]>> write) =>
        routes.MapGet(path, async (ContractDocuments documents, HttpContext context) =>
        {
            var bytes = await write(documents);
            context.Response.Headers.CacheControl = "no-cache";
            var tag = new Microsoft.Net.Http.Headers.EntityTagHeaderValue($"\"{Convert.ToHexStringLower(SHA256.HashData(bytes))}\"");
            return Results.Bytes(bytes, mediaType, entityTag: tag);
        }).ExcludeFromDescription();
}
