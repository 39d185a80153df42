using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Packs and money are exact: what is ordered is whole packs and no less than what was counted with its waste; an amount
/// is packs times price; the total is the sum of the amounts to the cent; unpriced codes are those without an amount.
/// </summary>
internal static class TakeoffMoney
{
    public static void Check(GivenPlan plan, AuditReport report) => Check(plan.Json, report);

    /// <summary>The same of any answer that has a takeoff.</summary>
    public static void Check(JsonElement answer, AuditReport report)
    {
        var lines = answer.Member("takeoff").Member("lines").Items().ToList();
        foreach (var line in lines)
        {
            One(line, line.Member("code").Text() ?? "line", report);
        }

        var totals = answer.Member("takeoff").Member("totals");
        var sum = lines.Sum(l => l.Member("amount").Decimal() ?? 0);
        var stated = totals.Member("amount") ?? totals.Member("total") ?? totals.Member("cost") ?? totals.Member("net");
        if (stated.Decimal() is { } total && total != sum)
        {
            report.Fault("takeoff.totals", "totals", $"{total} stated, the amounts come to {sum}");
        }

        if (totals.Member("mass").Decimal() is { } mass && lines.Sum(l => l.Member("mass").Decimal() ?? 0) is var masses
            && Math.Abs(mass - masses) > 0.001m * (lines.Count + 1))
        {
            report.Fault("takeoff.totals", "totals", $"mass {mass} stated, the lines come to {masses}");
        }

        Unpriced(lines, totals, report);
    }

    private static void One(JsonElement line, string code, AuditReport report)
    {
        var packs = line.Member("packs").Items().ToList();
        var counted = line.Member("counted").Decimal() ?? 0;
        var quantity = line.Member("quantity").Decimal() ?? 0;
        var waste = line.Member("waste").Decimal() ?? 0;
        if (counted < 0 || quantity < counted - 0.000001m)
        {
            report.Fault("takeoff.packs", code, $"quantity {quantity} is less than the {counted} counted");
        }

        if (packs.Count > 0)
        {
            var ordered = packs.Sum(p => (p.Member("count").Decimal() ?? 0) * (p.Member("packSize").Decimal() ?? 1));
            if (Math.Abs(ordered - quantity) > 0.000001m)
            {
                report.Fault("takeoff.packs", code, $"quantity {quantity}, the packs hold {ordered}");
            }

            var due = waste is >= 0 and <= 1 ? Math.Min(counted * (1 + waste), counted + waste) : counted;
            if (ordered < due - 0.000001m)
            {
                report.Fault("takeoff.packs", code, $"the packs hold {ordered}, {counted} with waste {waste} are due");
            }
        }

        if (line.Member("amount").Decimal() is { } amount && packs.Count > 0
            && packs.Sum(p => (p.Member("count").Decimal() ?? 0) * (p.Member("packPrice").Decimal() ?? 0)) is var price && price != amount)
        {
            report.Fault("takeoff.amounts", code, $"amount {amount}, the packs come to {price}");
        }

        foreach (var pack in packs.Where(p => p.Member("count").Decimal() is { } count && count != decimal.Truncate(count)))
        {
            report.Fault("takeoff.packs", code, $"{pack.Member("count").Text()} packs is no whole number");
        }
    }

    private static void Unpriced(List<JsonElement> lines, JsonElement? totals, AuditReport report)
    {
        if (totals.Member("unpriced") is not { ValueKind: JsonValueKind.Array } unpriced)
        {
            return;
        }

        var stated = unpriced.EnumerateArray().Select(c => c.GetString() ?? "").ToHashSet();
        var due = lines.Where(l => l.Member("amount") is null && l.Member("quantity").Decimal() is not 0)
            .Select(l => l.Member("code").Text() ?? "").ToHashSet();
        if (!stated.SetEquals(due))
        {
            report.Fault("takeoff.unpriced", "totals", $"[{string.Join(' ', stated.Order())}] stated, [{string.Join(' ', due.Order())}] have no amount");
        }
    }
}
