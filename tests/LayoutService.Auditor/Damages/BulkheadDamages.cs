using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Damages;

/// <summary>Damages to bulkheads, for rooms that have some.</summary>
public static class BulkheadDamages
{
    public static IReadOnlyList<Mutation> All { get; } =
    [
        new("leave a bulkhead out", "boxes.listed", a => StrapDamages.Remove(a["bulkheads"]!.AsArray())),
        new("say its frame ends lower", "boxes.height", a => StrapDamages.Add(First(a)!, "top", a.Units(20))),
        new("take a rung away", "boxes.takeoff", a => StrapDamages.Remove(First(a)!["members"]!.AsArray())),
        new("say a member is longer", "boxes.length", a => StrapDamages.Add(First(a).List("members")[0], "length", a.Units(9))),
        new("cut a member shorter", "boxes.cuts", a => StrapDamages.Add(First(a).List("members")[0], "cutLength", a.Units(-9))),
        new("fasten it to a wall that is not there", "boxes.backing", a => First(a).List("backing").FirstOrDefault() is { } b && StrapDamages.Set(b, "of", new JsonArray("nowhere"))),
        new("joint a rail where no rung is", "boxes.joints", a => Jointed(a)),
        new("lay a block twice", "boxes.twice", a => a.List("bulkheads").SelectMany(b => b.List("members")).FirstOrDefault(m => m["role"]!.GetValue<string>() == "blocking") is { Parent: JsonArray all } block
            && Again(all, block)),
        new("leave the board off", "boxes.underside", a => StrapDamages.Set(First(a)!, "boards", new JsonArray())),
        new("say there is more bead", "boxes.bead", a => StrapDamages.Add(First(a)!, "beadLength", a.Units(300))),
        new("leave a door to a service out", "access.reached", a => a["accessPanels"] is JsonArray { Count: > 0 } doors && StrapDamages.Remove(doors)),
        new("put a door where no arm reaches its service", "access.reached", a => Door(a) is { } d && d["at"] is { } at && Far(at, a.Units(900))),
        new("leave it unframed", "steps.once", a => a.List("steps").FirstOrDefault(s => s["code"]!.GetValue<string>() == "frame-bulkhead") is { } s && StrapDamages.Set(s, "code", "rest")),
    ];

    private static JsonObject? Door(JsonNode answer) => answer.List("accessPanels").FirstOrDefault() is { } panel
        ? answer.List("fixtures").Find(f => f["id"]!.GetValue<string>() == panel["id"]!.GetValue<string>())
        : null;

    private static bool Far(JsonNode at, decimal by)
    {
        at.Move(0, by);
        at.Move(1, by);
        return true;
    }

    // a bottom rail in two, between its rungs
    private static bool Jointed(JsonNode answer)
    {
        foreach (var box in answer.List("bulkheads"))
        {
            var rungs = box!.List("members").Where(m => m["role"]!.GetValue<string>() == "rung").ToList();
            foreach (var rail in box!.List("members").Where(m => m["role"]!.GetValue<string>() == "rail" && rungs.Count > 3))
            {
                if (rail is { Parent: JsonArray all } && rungs.Where(r => Between(rail, r)).Take(2).ToList() is { Count: 2 } two)
                {
                    var other = rail.DeepClone();
                    var (x, y) = (Middle(two, 0), Middle(two, 1));
                    rail["to"] = new JsonArray(x, y);
                    other["from"] = new JsonArray(x, y);
                    all.Add(other);
                    return true;
                }
            }
        }

        return false;

        static decimal Of(JsonNode node, string member, int axis) => node[member]![axis]!.GetValue<decimal>();
        static decimal Middle(List<JsonObject> two, int axis) => (Of(two[0], "from", axis) + Of(two[1], "from", axis)) / 2;
        static bool Between(JsonNode rail, JsonNode rung) => Enumerable.Range(0, 2).All(axis =>
            Of(rung, "from", axis) >= Math.Min(Of(rail, "from", axis), Of(rail, "to", axis)) - 0.01m && Of(rung, "from", axis) <= Math.Max(Of(rail, "from", axis), Of(rail, "to", axis)) + 0.01m);
    }

    private static bool Again(JsonArray all, JsonNode block)
    {
        all.Add(block.DeepClone());
        return true;
    }

    private static JsonObject? First(JsonNode answer) => answer.List("bulkheads").Find(b => b.List("members").Count > 0);
}
