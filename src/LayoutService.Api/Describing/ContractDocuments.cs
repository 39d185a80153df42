using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.Swagger;

namespace LayoutService.Api.Describing;

/// <summary>The renditions of the contract, each written once and then kept.</summary>
public sealed class ContractDocuments
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
    private readonly Lazy<Task<string>> json;

    public ContractDocuments(IServiceScopeFactory scopes) => json = new(() => GenerateAsync(scopes));

    /// <summary>OpenAPI 3.1 as JSON: the contract.</summary>
    public async Task<byte[]> JsonAsync() => Encoding.UTF8.GetBytes(await json.Value);

    /// <summary>The same as YAML.</summary>
    public async Task<byte[]> YamlAsync() => Encoding.UTF8.GetBytes(YamlText.Of(JsonNode.Parse(await json.Value)!));

    /// <summary>The same with lengths as numbers only, for clients generated in languages without unions.</summary>
    public async Task<byte[]> TypedAsync()
    {
        var document = JsonNode.Parse(await json.Value)!;
        var length = document["components"]!["schemas"]!["Length"]!.AsObject();
        length["type"] = "number";
        length["format"] = "double";
        length["description"] = "A length: a number in the request's units, inches or millimetres.";
        length["examples"] = new JsonArray(150.5);
        foreach (var member in new[] { "pattern", "minLength", "maxLength" })
        {
            length.Remove(member);
        }

        foreach (var path in document["paths"]!.AsObject())
        {
            ContractTyping.DropTextExamples(path.Value!);
        }

        return Encoding.UTF8.GetBytes(document.ToJsonString(Indented) + "\n");
    }

    /// <summary>The same in OpenAPI 3.2, with what 3.1 cannot say.</summary>
    public async Task<byte[]> NewerAsync()
    {
        var document = JsonNode.Parse(await json.Value)!.AsObject();
        NewerContract.Rewrite(document);
        return Encoding.UTF8.GetBytes(document.ToJsonString(Indented) + "\n");
    }

    private static async Task<string> GenerateAsync(IServiceScopeFactory scopes)
    {
        using var scope = scopes.CreateScope();
        var document = await scope.ServiceProvider.GetRequiredService<IAsyncSwaggerProvider>().GetSwaggerAsync("v1");
        using var written = new MemoryStream();
        await document.SerializeAsJsonAsync(written, OpenApiSpecVersion.OpenApi3_1);
        var node = JsonNode.Parse(written.ToArray())!.AsObject();
        ContractTyping.Finish(node);
        return node.ToJsonString(Indented) + "\n";
    }
}
