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

    private static JsonObject? First(JsonNode answer) => answer.List("bulkheads").Find(b => b.List("members").Count > 0);
}
