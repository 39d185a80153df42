using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Damages;

/// <summary>Damages to the cut plans and to what they claim.</summary>
internal static class CutDamages
{
    public static IReadOnlyList<Mutation> All { get; } =
    [
        new("drop a cut", "cuts.once", a => Stick(a) is { } s && StrapDamages.Remove(s["cuts"]!.AsArray())),
        new("cut a piece twice", "cuts.once", a => Stick(a) is { } s && Repeat(s["cuts"]!.AsArray())),
        new("cut a piece 10 mm short", "cuts.length", a => Stick(a)?.List("cuts") is { Count: > 0 } cuts && StrapDamages.Add(cuts[0], "length", -a.Units(10))),
        new("say an offcut is 5 mm longer", "cuts.balance", a => Stick(a) is { } s && StrapDamages.Add(s, "offcut", a.Units(5))),
        new("saw with another kerf", "cuts.kerf", a => a["cutPlan"] is JsonObject c && StrapDamages.Add(c, "kerf", a.Units(1))),
        new("cut from a stock that is not sold", "cuts.stock", a => Stick(a) is { } s && StrapDamages.Set(s, "stockId", "no-such-stock")),
        new("claim a bound above the cost", "cost.strapping", a => Result(a, "strapping") is { } r && StrapDamages.Set(r, "lowerBound", JsonValue.Create(r.Number("cost") + 1))),
        new("claim a smaller cost", "cost.strapping", a => Result(a, "strapping") is { } r && StrapDamages.Set(r, "cost", JsonValue.Create(r.Number("cost") / 2))),
        new("say that other board is as good as free", "cost.alternatives", a => a.List("alternatives").FirstOrDefault(o => o["params"]?["plannedCost"] is not null)?["params"] is JsonObject p
            && StrapDamages.Set(p, "cost", "0.01")),
        new("claim another gap", "cost.sheets", a => Result(a, "sheets") is { } r && StrapDamages.Add(r, "gap", 0.01m)),
        new("claim proof without it", "cost.sheets", a => Result(a, "sheets") is { } r && StrapDamages.Set(r, "provedOptimal", true)
            && StrapDamages.Set(r, "lowerBound", JsonValue.Create(r.Number("cost") * 0.8m))),
        new("drop a sheet's cut", "sheetcuts.once", a => Sheet(a) is { } s && StrapDamages.Remove(s["cuts"]!.AsArray())),
        new("cut a board past the sheet's end", "sheetcuts.inside", a => SheetCut(a) is { } c && StrapDamages.Add(c, "x", a.Units(10000))),
        new("cut two boards from one place", "sheetcuts.overlap", Overlap),
        new("cut a board 10 mm short", "sheetcuts.size", a => SheetCut(a) is { } c && StrapDamages.Add(c, "length", -a.Units(10))),
        new("lay the cuts as a pinwheel", "sheetcuts.guillotine", Pinwheel),
        new("keep an offcut that is a board", "sheetcuts.offcuts", a => Sheet(a) is { } s && SheetCut(a) is { } c && Keep(s, c)),
        new("buy a sheet of another size", "sheetcuts.stock", a => Sheet(a) is { } s && StrapDamages.Add(s, "length", a.Units(300))),
    ];

    private static JsonObject? Stick(JsonNode answer) => answer.List("cutPlan", "stock").FirstOrDefault(s => s.List("cuts").Count > 0);

    private static JsonObject? Sheet(JsonNode answer) => answer.List("cutPlan", "sheetStock").FirstOrDefault(s => s.List("cuts").Count > 0);

    private static JsonObject? SheetCut(JsonNode answer) => Sheet(answer)?.List("cuts")[0];

    private static JsonObject? Result(JsonNode answer, string use) =>
        answer.List("cutPlan", "results").FirstOrDefault(r => r["use"]?.GetValue<string>() == use);

    private static bool Repeat(JsonArray cuts)
    {
        cuts.Add(cuts[0]!.DeepClone());
        return true;
    }

    private static bool Overlap(JsonNode answer)
    {
        if (answer.List("cutPlan", "sheetStock").FirstOrDefault(s => s.List("cuts").Count > 1) is not { } sheet)
        {
            return false;
        }

        var cuts = sheet.List("cuts");
        (cuts[1]["x"], cuts[1]["y"]) = (cuts[0]["x"]!.DeepClone(), cuts[0]["y"]!.DeepClone());
        return true;
    }

    private static bool Pinwheel(JsonNode answer)
    {
        if (Sheet(answer) is not { } sheet)
        {
            return false;
        }

        var step = answer.Units(100);
        JsonNode Part(int x, int y, int length, int width) => new JsonObject
        {
            ["pieceId"] = $"pin-{x}-{y}", ["x"] = x * step, ["y"] = y * step, ["width"] = width * step, ["length"] = length * step, ["turned"] = false,
        };
        sheet["cuts"] = new JsonArray(Part(0, 0, 2, 1), Part(2, 0, 1, 2), Part(1, 2, 2, 1), Part(0, 1, 1, 2));
        return true;
    }

    private static bool Keep(JsonObject sheet, JsonObject cut)
    {
        var offcut = new JsonObject();
        foreach (var name in new[] { "x", "y", "width", "length" })
        {
            offcut[name] = cut[name]!.DeepClone();
        }

        sheet["offcuts"] = new JsonArray(offcut);
        return true;
    }
}
