using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace LayoutService.Api.Tests.Contract;

/// <summary>Validates JSON against a schema of the contract, by JSON Schema 2020-12.</summary>
internal sealed class ContractSchema(JsonElement contract)
{
    private readonly string definitions = contract.GetProperty("components").GetProperty("schemas").GetRawText()
        .Replace("#/components/schemas/", "#/$defs/", StringComparison.Ordinal);

    private readonly Dictionary<string, JsonSchema> known = [];

    /// <summary>What is wrong with a value; empty when it is valid.</summary>
    public IReadOnlyList<string> FaultsOf(JsonElement value, string schema)
    {
        if (!known.TryGetValue(schema, out var rule))
        {
            var root = new JsonObject
            {
                ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
                ["$ref"] = $"#/$defs/{schema}",
                ["$defs"] = JsonNode.Parse(definitions),
            };
            rule = known[schema] = JsonSchema.FromText(root.ToJsonString());
        }

        var result = rule.Evaluate(value, new EvaluationOptions { OutputFormat = OutputFormat.List, RequireFormatValidation = true });
        return result.IsValid
            ? []
            : [.. (result.Details ?? []).Where(d => d.Errors is { Count: > 0 }).Take(20)
                .Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}")];
    }
}
