using System.Text.Json.Nodes;

namespace LayoutService.Auditor.Damages;

/// <summary>Damages to an order of many rooms.</summary>
public static class JobDamages
{
    public static IReadOnlyList<Mutation> All { get; } =
    [
        new("leave a room's strap uncut", "job.lumber", a => Cuts(a, "stock") is { Count: > 1 } cuts && Drop(cuts)),
        new("leave a room's board uncut", "job.board", a => Cuts(a, "sheetStock") is { Count: > 1 } cuts && Drop(cuts)),
        new("saw more than the stick holds", "job.balance", a => Cuts(a, "stock") is { Count: > 0 } cuts && Set(cuts[0]!, "length", 99_999m)),
        new("order a stick more than is cut", "job.sticks", a => a["takeoff"]!["lines"]!.AsArray().FirstOrDefault(l => l!["code"]!.GetValue<string>() == "strap") is { } line
            && Set(line, "counted", line["counted"]!.GetValue<decimal>() + 1)),
        new("cut past the sheet", "job.sheetcuts.inside", a => Cuts(a, "sheetStock") is { Count: > 0 } cuts && Set(cuts[0]!, "x", 99_999m)),
        new("a room pays a cent more", "job.shares", a => a["rooms"]![0]!["share"] is JsonObject { Count: > 0 } share
            && share["amount"] is { } amount && Set(share, "amount", amount.GetValue<decimal>() + 0.01m)),
        new("a saving that is none", "job.saving", a => a["saving"] is JsonObject saving
            && saving["sheetsApart"] is { } sheets && Set(saving, "sheetsApart", sheets.GetValue<int>() + 1)),
        new("a pack more than is paid for", "takeoff.packs", a => a["takeoff"]!["lines"]!.AsArray().FirstOrDefault(l => l!["packs"] is JsonArray { Count: > 0 })?["packs"]![0] is { } pack
            && Set(pack, "count", pack["count"]!.GetValue<decimal>() + 1)),
    ];

    private static JsonArray? Cuts(JsonNode answer, string stock) =>
        answer["cutPlan"]![stock]!.AsArray().FirstOrDefault(s => s!["cuts"] is JsonArray { Count: > 1 })?["cuts"]!.AsArray();

    private static bool Drop(JsonArray cuts)
    {
        cuts.RemoveAt(0);
        return true;
    }

    private static bool Set(JsonNode node, string member, decimal value)
    {
        node[member] = value;
        return true;
    }
}
