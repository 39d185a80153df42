using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Likeness;

/// <summary>Moves what is let into a ceiling or hangs from it with its room; services move with what lies in the bays.</summary>
internal static class FixtureMoves
{
    public static void Move(JsonNode request, Motion motion, Func<JsonNode, JsonNode> point)
    {
        foreach (var owner in Listed(request, "fixtures").Concat(Listed(request, "mounts")))
        {
            owner["at"] = point(owner["at"]!);
        }

        // a quarter turn lays what lay along x along y
        if (motion.Xx == 0)
        {
            foreach (var cutout in Listed(request, "fixtures").Append(request["lightGrid"]?["fixture"] as JsonObject).Select(f => f?["cutout"]).OfType<JsonObject>().Where(c => c.ContainsKey("width")))
            {
                var (width, height) = (cutout["width"]!.DeepClone(), cutout["height"]!.DeepClone());
                (cutout["width"], cutout["height"]) = (height, width);
            }
        }
    }

    /// <summary>The places and paths that make a room unlike its mirror image.</summary>
    public static IEnumerable<IEnumerable<JsonNode>> Shapes(JsonNode request) =>
        Listed(request, "fixtures").Concat(Listed(request, "mounts")).Concat(Listed(request["joistFields"]![0]!, "undersides")).Select(o => (IEnumerable<JsonNode>)[o["at"]!])
            .Concat(Listed(request, "services").Select(s => (s["path"] ?? s["outline"])!.AsArray().Select(p => p!)))
            .Concat(Listed(request, "partitions").Select(p => p["line"]!.AsArray().Select(c => c!)));

    private static IEnumerable<JsonObject> Listed(JsonNode request, string name) => (request[name] as JsonArray ?? []).OfType<JsonObject>();
}
