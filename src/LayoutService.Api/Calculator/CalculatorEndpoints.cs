using LayoutService.Api.Hosting;
using Microsoft.Net.Http.Headers;

namespace LayoutService.Api.Calculator;

/// <summary>Serves the embeddable calculator and what describes it. Not in the contract: it is for pages, not for programs.</summary>
public static class CalculatorEndpoints
{
    private const string ForEver = "public, max-age=31536000, immutable";
    private const string ManifestName = "custom-elements.json";

    public static void AddCalculator(this IServiceCollection services) => services.AddSingleton<CalculatorModule>();

    public static void MapCalculator(this IEndpointRouteBuilder routes)
    {
        var calculator = routes.MapGroup("/calculator").ExcludeFromDescription();
        calculator.MapGet("/current.json", (CalculatorModule module, HttpResponse response) =>
        {
            response.Headers.CacheControl = "no-cache";
            return JsonAnswer.Of(new CalculatorAnswer(module.Address, module.Integrity, module.Version));
        });
        calculator.MapGet("/{version}/" + CalculatorModule.FileName, (string version, CalculatorModule module, HttpContext context) =>
        {
            if (version != module.Version)
            {
                return new ProblemResult(ProblemKind.NotFound, "This version of the calculator is not served here; GET /calculator/current.json tells which is.");
            }

            var packs = Packing.Of(context.Request, Packing.Gzip) is not null;
            var headers = context.Response.Headers;
            headers.CacheControl = ForEver;
            headers.Vary = "Accept-Encoding";
            if (packs)
            {
                headers.ContentEncoding = Packing.Gzip;
            }

            return Results.Bytes(packs ? module.Gzipped : module.Bytes, "text/javascript; charset=utf-8", entityTag: Tag(packs ? module.Version + "-gzip" : module.Version));
        });
        calculator.MapGet("/{version}/" + ManifestName, (string version, CalculatorModule module) => version == module.Version
            ? Results.Bytes(Resource.Bytes(ManifestName), "application/json", entityTag: Tag(module.Version + "-manifest"))
            : new ProblemResult(ProblemKind.NotFound, "This version of the calculator is not served here."));
    }

    private static EntityTagHeaderValue Tag(string text) => new($"\"{text}\"");
}

/// <summary>Which calculator is served.</summary>
/// <param name="Address">Where its module is, from the root of the service.</param>
/// <param name="Integrity">The hash that a page pins it by.</param>
/// <param name="Version">The part of the hash that stands in the address.</param>
public sealed record CalculatorAnswer(string Address, string Integrity, string Version);
