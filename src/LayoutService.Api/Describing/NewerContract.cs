using System.Text.Json.Nodes;

namespace LayoutService.Api.Describing;

/// <summary>
/// What OpenAPI 3.2 can say and 3.1 cannot: a plan asked for by QUERY (RFC 10008), and that each line of JSON Lines is one item
/// of a sequence.
/// </summary>
internal static class NewerContract
{
    private static readonly string[] Sequences = ["application/jsonl", "application/x-ndjson"];

    public static void Rewrite(JsonObject contract)
    {
        contract["openapi"] = "3.2.0";
        var paths = contract["paths"]!.AsObject();
        var plans = paths["/v1/plans"]!.AsObject();
        var query = plans["post"]!.DeepClone().AsObject();
        query["operationId"] = "queryPlan";
        query["summary"] = "Plan a ceiling, as a safe call";
        query["description"] = "The same as POST, and its answer may be kept: it has a strong ETag.";
        query["responses"]!["304"] = new JsonObject { ["description"] = "The answer that the caller has still holds." };
        plans["query"] = query;
        foreach (var operation in paths.SelectMany(path => path.Value!.AsObject()).Select(pair => pair.Value).OfType<JsonObject>())
        {
            Itemise(operation["requestBody"]);
            foreach (var response in operation["responses"]!.AsObject())
            {
                Itemise(response.Value);
            }
        }
    }

    private static void Itemise(JsonNode? body)
    {
        foreach (var content in Sequences.Select(form => body?["content"]?[form]).OfType<JsonObject>())
        {
            content["itemSchema"] = content["schema"]!.DeepClone();
            content.Remove("schema");
            content.Remove("examples");
        }
    }
}
