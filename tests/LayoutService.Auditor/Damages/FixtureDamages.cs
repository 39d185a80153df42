using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Damages;

/// <summary>Damages to fixtures and their holes.</summary>
internal static class FixtureDamages
{
    public static IReadOnlyList<Mutation> All { get; } =
    [
        new("say a fixture lies 40 mm further", "fixtures.clearances", a => First(a) is { } f && Move(f, a.Units(40))),
        new("say a fixture in conflict is clear", "fixtures.clear", a => a.List("fixtures").Find(f => f["status"]!.GetValue<string>() == "conflict") is { } f
            && StrapDamages.Set(f, "status", "as-asked")),
        new("say a clear fixture is in conflict", "fixtures.status", a => a.List("fixtures").Find(f => f["status"]!.GetValue<string>() != "conflict") is { } f
            && StrapDamages.Set(f, "status", "conflict")),
        new("say a fixture was shifted a metre", "fixtures.shift", a => First(a) is { } f && StrapDamages.Add(f, "shift", a.Units(2000))),
        new("leave a fixture out", "fixtures.listed", a => First(a) is not null && StrapDamages.Remove(a["fixtures"]!.AsArray())),
        new("leave the holes out of the boards", "cutouts.listed", a => Holed(a) is { } board && StrapDamages.Set(board, "cutouts", new JsonArray())),
        new("cut a hole 5 mm off", "cutouts.centre", a => Holed(a) is { } board && MoveHole(board, a.Units(5))),
        new("cut a hole too wide", "cutouts.size", a => Holed(a) is { } board && Widen(board["cutouts"]![0]!["size"]!.AsObject(), a.Units(5))),
    ];

    private static JsonObject? First(JsonNode answer) => answer.List("fixtures").FirstOrDefault();

    private static JsonObject? Holed(JsonNode answer) => answer.Boards().Find(b => b.List("cutouts").Count > 0);

    private static bool Move(JsonObject fixture, decimal by)
    {
        fixture["at"]!.Move(0, by);
        fixture["at"]!.Move(1, by);
        return true;
    }

    private static bool MoveHole(JsonObject board, decimal by)
    {
        board["cutouts"]![0]!["centre"]!.Move(0, by);
        return true;
    }

    private static bool Widen(JsonObject size, decimal by) => StrapDamages.Add(size, size.ContainsKey("diameter") ? "diameter" : "width", by);
}
