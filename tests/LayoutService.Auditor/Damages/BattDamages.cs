using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Damages;

/// <summary>Damages to batts; for plans that have some.</summary>
internal static class BattDamages
{
    public static IReadOnlyList<Mutation> All { get; } =
    [
        new("leave a batt out", "batts.coverage", a => Fill(a) is not null && StrapDamages.Remove(a["insulation"]!["fills"]!.AsArray())),
        new("lay a batt in the next bay", "batts.bay", a => Fill(a) is { } f && Other(a, f) is { } bay && StrapDamages.Set(f, "bay", bay)),
        new("lay a batt over another", "batts.coverage", Overlay),
        new("crush a batt", "batts.depth", a => Fill(a) is { } f && StrapDamages.Add(f, "thickness", a.Units(400))),
        new("lay a thinner batt than fits", "batts.thickest", a => Listed(a) is { } f && StrapDamages.Add(f, "thickness", -a.Units(4))),
        new("say a batt is worth more", "batts.r", a => Listed(a) is { } f && StrapDamages.Add(f, "r", 5)),
        new("say the whole is worth more", "batts.r", a => a["insulation"] is JsonObject i && StrapDamages.Add(i, "areaR", 1)),
        new("say a batt weighs nothing", "batts.mass", a => Listed(a) is { } f && f.Number("mass") > 0.05m && StrapDamages.Set(f, "mass", JsonValue.Create(0))),
        new("say a batt is cut too narrow", "batts.size", a => Fill(a) is { } f && StrapDamages.Add(f, "width", -a.Units(30))),
        new("order no batts", "batts.takeoff", a => Listed(a) is not null && a.List("takeoff", "lines").FirstOrDefault(l => l["code"]!.GetValue<string>() == "batt") is { } l
            && StrapDamages.Set(l, "counted", JsonValue.Create(0))),
        new("forget to fit a batt", "batts.steps", a => a.List("steps").FirstOrDefault(s => s["code"]!.GetValue<string>() == "fit-batts") is { } s
            && StrapDamages.Set(s, "touches", new JsonArray())),
        new("leave a strap loose", "batts.loose", a => a.List("steps").FirstOrDefault(s => s["code"]!.GetValue<string>() == "fasten-after") is { } s
            && StrapDamages.Set(s, "code", "rest")),
        new("fill a bay that is open for a service", "batts.clearance", Bury),
    ];

    private static JsonObject? Fill(JsonNode answer) => answer.List("insulation", "fills").FirstOrDefault();

    // the first fill whose batt the request listed and that is not squeezed
    private static JsonObject? Listed(JsonNode answer) => answer.List("insulation", "fills").FirstOrDefault(f =>
        f["batt"]!.GetValue<string>().Length <= "batt-0".Length && f.List("reasons").All(r => r["code"]!.GetValue<string>() is not "squeezed_batt"));

    private static string? Other(JsonNode answer, JsonObject fill) =>
        answer.List("joists", "bays").Select(b => b.Id()).FirstOrDefault(id => id != fill["bay"]!.GetValue<string>());

    private static bool Overlay(JsonNode answer)
    {
        if (Fill(answer) is not { } fill)
        {
            return false;
        }

        var copy = fill.DeepClone();
        copy["id"] = "FILL-again";
        answer["insulation"]!["fills"]!.AsArray().Add(copy);
        return true;
    }

    // what is said to be open at a service takes a batt of the bay's whole depth
    private static bool Bury(JsonNode answer)
    {
        var open = answer.List("insulation", "uncovered").FirstOrDefault(u => u.List("reasons").Any(r => r["code"]!.GetValue<string>() is "no_depth" or "hot_clearance" or "panned_return" or "kept_reachable"));
        var clear = answer.List("insulation", "fills").FirstOrDefault(f => f["bottom"]!.ToJsonString() == "0");
        if (open is null || clear is null)
        {
            return false;
        }

        var fill = clear.DeepClone();
        (fill["id"], fill["bay"], fill["outline"], fill["area"]) = ("FILL-more", open["bay"]!.DeepClone(), open["outline"]!.DeepClone(), open["area"]!.DeepClone());
        answer["insulation"]!["fills"]!.AsArray().Add(fill);
        answer["insulation"]!["uncovered"]!.AsArray().Remove(open);
        return true;
    }
}
