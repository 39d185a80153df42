using System.Text.Json.Nodes;
using Microsoft.OpenApi;

namespace LayoutService.Api.Describing;

/// <summary>The example requests under <c>openapi/examples</c>, built into the service so that the contract shows the same ones.</summary>
internal static class ContractExamples
{
    private const string Ending = ".request.json";

    /// <summary>How the names of examples of an operation begin; the others are examples of rooms.</summary>
    private static readonly (string Beginning, string Operation)[] Kinds =
    [
        ("cut-plan-", CutPlans.CutPlanEndpoints.Operation), ("job-", Jobs.JobEndpoints.Operation), ("comparison-", Comparisons.ComparisonEndpoints.Operation),
    ];

    /// <summary>Examples of an operation's request by name, in the order of their names.</summary>
    public static Dictionary<string, IOpenApiExample> Requests(string? operation)
    {
        var assembly = typeof(ContractExamples).Assembly;
        var examples = new Dictionary<string, IOpenApiExample>(StringComparer.Ordinal);
        foreach (var resource in assembly.GetManifestResourceNames().Where(n => n.EndsWith(Ending, StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            using var stream = assembly.GetManifestResourceStream(resource)!;
            var name = resource[..^Ending.Length];
            var kind = Kinds.FirstOrDefault(k => name.StartsWith(k.Beginning, StringComparison.Ordinal)).Operation;
            if (kind != (Kinds.Any(k => k.Operation == operation) ? operation : null))
            {
                continue;
            }

            examples.Add(name, new OpenApiExample { Summary = name.Replace('-', ' '), Value = JsonNode.Parse(stream) });
        }

        return examples;
    }
}
