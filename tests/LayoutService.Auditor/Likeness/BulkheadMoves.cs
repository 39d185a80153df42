using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Likeness;

/// <summary>Moves bulkheads with their room, and gives edges their new numbers where the outline is listed otherwise.</summary>
internal static class BulkheadMoves
{
    public static void Move(JsonNode request, Func<JsonNode, JsonNode> point)
    {
        foreach (var box in Listed(request))
        {
            if (box["outline"] is JsonArray ring)
            {
                box["outline"] = new JsonArray([.. ring.Select(p => point(p!))]);
            }
        }
    }

    /// <param name="request">A request whose outline was listed anew.</param>
    /// <param name="renumbered">The new number of an edge, from its old one.</param>
    public static void Renumber(JsonNode request, Func<int, int> renumbered)
    {
        foreach (var box in Listed(request))
        {
            if (box["edges"] is JsonArray edges)
            {
                box["edges"] = new JsonArray([.. edges.Select(e => (JsonNode)renumbered(e!.GetValue<int>()))]);
            }
        }
    }

    private static IEnumerable<JsonObject> Listed(JsonNode request) => (request["bulkheads"] as JsonArray ?? []).OfType<JsonObject>();
}
