using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Likeness;

/// <summary>Moves what lies in the bays, and the part of the room that batts go into, with the room.</summary>
internal static class HiddenMoves
{
    public static void Move(JsonNode request, Func<JsonNode, JsonNode> point)
    {
        foreach (var service in (request["services"]?.AsArray() ?? []).OfType<JsonObject>())
        {
            Ring(service, "path", point);
            Ring(service, "outline", point);
        }

        foreach (var partition in (request["partitions"]?.AsArray() ?? []).OfType<JsonObject>())
        {
            Ring(partition, "line", point);
        }

        if (request["insulation"] is JsonObject insulation)
        {
            Ring(insulation, "region", point);
        }
    }

    private static void Ring(JsonObject owner, string name, Func<JsonNode, JsonNode> point)
    {
        if (owner[name] is JsonArray ring)
        {
            owner[name] = new JsonArray([.. ring.Select(p => point(p!))]);
        }
    }
}
