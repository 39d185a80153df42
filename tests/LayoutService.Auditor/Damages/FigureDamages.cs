using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Damages;

/// <summary>Damages to counts, money, ids and the form of numbers.</summary>
internal static class FigureDamages
{
    public static IReadOnlyList<Mutation> All { get; } =
    [
        new("count one row too many in the summary", "summary", a => a["summary"] is JsonObject s && StrapDamages.Add(s, "rows", 1)),
        new("count one length too few in the summary", "summary", a => a["summary"] is JsonObject s && StrapDamages.Add(s, "lengthsToBuy", -1)),
        new("change the total", "takeoff.totals", a => a["takeoff"]?["totals"] is JsonObject t && t["amount"] is not null && StrapDamages.Add(t, "amount", 0.01m)),
        new("change an amount by a cent", "takeoff.amounts", a => Line(a, l => l["amount"] is not null && l.List("packs").Count > 0) is { } l && StrapDamages.Add(l, "amount", 0.01m)),
        new("order a pack too few", "takeoff.packs", a => Line(a, l => l.List("packs").Count > 0) is { } l && StrapDamages.Add(l.List("packs")[0], "count", -1)),
        new("count a length of stock too many", "takeoff.stock", a => Line(a, l => l["id"] is not null) is { } l && StrapDamages.Add(l, "counted", 1)),
        new("count two strap fasteners too few", "takeoff.fasteners", a => Line(a, IsStrapFastener) is { } l && StrapDamages.Add(l, "counted", -2)),
        new("write a number with an exponent", "numbers.form", a => a["summary"] is JsonObject s && StrapDamages.Set(s, "mass", JsonNode.Parse("1.5E2")!)),
        new("write a minus zero", "numbers.form", a => a["summary"] is JsonObject s && StrapDamages.Set(s, "mass", JsonNode.Parse("-0.0")!)),
        new("write seven decimals", "numbers.form", a => a["summary"] is JsonObject s && StrapDamages.Set(s, "mass", JsonNode.Parse("1.1234567")!)),
        new("use one id for two rows", "ids.unique", a => a.Rows().Count > 1 && StrapDamages.Set(a.Rows()[1], "id", a.Rows()[0].Id())),
        new("say a mark otherwise than its number", "texts", a => a.Rows().SelectMany(r => r.List("marks")).FirstOrDefault(m => m["nearEdge"] is not null) is { } m
            && StrapDamages.Set(m, "nearEdgeText", a["units"]?.GetValue<string>() == "imperial" ? "999 in" : "9999 mm")),
        new("promise 20 mm more headroom", "summary", a => a["summary"] is JsonObject s && s["finishedHeight"] is not null && StrapDamages.Add(s, "finishedHeight", a.Units(20))),
        new("give a reason that names nothing", "ids.known", a => a.Rows().SelectMany(r => r.List("reasons")).FirstOrDefault() is { } r && StrapDamages.Set(r, "of", new JsonArray("nothing-of-the-kind"))),
        new("list as unpriced what has a price", "takeoff.unpriced", a => a["takeoff"]?["totals"] is JsonObject t && Line(a, l => l["amount"] is not null) is { } l
            && StrapDamages.Set(t, "unpriced", new JsonArray(l["code"]!.DeepClone()))),
        new("say that butts lie further apart than they do", "butts.stated", a => Check(a, "butt-stagger-rows") is { } c && StrapDamages.Add(c, "value", a.Units(50))),
        new("leave the check of the stagger out", "butts.stated", a => Check(a, "butt-stagger-rows") is { } c && a["checks"]!.AsArray().Remove(c)),
        new("leave a joist out", "joists", a => a.List("joists", "members").Count > 1 && StrapDamages.Remove(a["joists"]!["members"]!.AsArray())),
    ];

    private static JsonObject? Check(JsonNode answer, string rule) => answer.List("checks").FirstOrDefault(c => c["rule"]?.GetValue<string>() == rule);

    private static JsonObject? Line(JsonNode answer, Func<JsonObject, bool> where) => answer.List("takeoff", "lines").FirstOrDefault(where);

    private static bool IsStrapFastener(JsonObject line)
    {
        var code = line["code"]?.GetValue<string>() ?? "";
        return code.Contains("strap", StringComparison.OrdinalIgnoreCase)
            && (code.Contains("screw", StringComparison.OrdinalIgnoreCase) || code.Contains("nail", StringComparison.OrdinalIgnoreCase)
                || code.Contains("fastener", StringComparison.OrdinalIgnoreCase));
    }
}
