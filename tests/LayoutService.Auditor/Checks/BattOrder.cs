using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>Enough batts are ordered and not more than without any offcut; they go up after the rows and before the board; nothing stays loose.</summary>
internal static class BattOrder
{
    public static void Check(GivenPlan plan, AuditReport report)
    {
        if (plan.Json.Member("insulation") is not { } block)
        {
            return;
        }

        var asked = new AskedBatts(plan.Room);
        var fills = new GivenBatts(block, plan.Room).Fills;
        if (asked.Listed)
        {
            Bought(plan, asked, fills, report);
        }

        Steps(plan, [.. fills.Select(f => f.Id)], report);
    }

    private static void Bought(GivenPlan plan, AskedBatts asked, IReadOnlyList<GivenFill> fills, AuditReport report)
    {
        var lines = plan.Json.Member("takeoff").Member("lines").Items().Where(l => l.Member("code").Text() == "batt").ToList();
        foreach (var batt in asked.Batts)
        {
            var own = fills.Where(f => f.Batt == batt.Id).ToList();
            var counted = lines.Where(l => l.Member("id").Text() == batt.Id).Sum(l => l.Member("counted").Double() ?? 0);
            var layers = own.Sum(f => Math.Min(f.Width, f.Drawn / Math.Max(1, f.Us.Length)) * Math.Max(0, f.Us.Length - 6.1) * (f.Split ? 0.5 : 1));
            var least = layers / (batt.Width * batt.Length);
            var most = own.Where(f => !f.Split).Sum(f => Math.Ceiling((f.Us.Length - 0.01) / batt.Length))
                + Math.Ceiling(own.Where(f => f.Split).Sum(f => Math.Ceiling((f.Us.Length - 0.01) / batt.Length)) / 2);
            if (counted < least - 0.001 || counted > most + 0.001)
            {
                report.Fault("batts.takeoff", batt.Id, $"{counted} batts for {own.Count} fills that need {least:F2} at least and {most} at most");
            }
        }
    }

    private static void Steps(GivenPlan plan, IReadOnlyList<string> fills, AuditReport report)
    {
        if (plan.Json.Member("steps") is null)
        {
            return;
        }

        var steps = plan.Json.Member("steps").Items().ToList();
        int First(string code) => steps.FindIndex(s => s.Member("code").Text() == code);
        int Last(string code) => steps.FindLastIndex(s => s.Member("code").Text() == code);
        int When(string code, string kind, string id) => steps.FindIndex(s => s.Member("code").Text() == code && Touches(s, kind, id));
        var (rows, closing) = (Last("fasten-row"), First("inspect-before-closing"));
        foreach (var fill in fills)
        {
            var at = When("fit-batts", "fill", fill);
            if (at < 0 || at < rows || (closing >= 0 && at > closing) || at < First("inspect-rough-in"))
            {
                report.Fault("batts.steps", fill, $"fitted at step {at}, rows until {rows}, closed at {closing}");
            }
        }

        foreach (var piece in plan.Json.Member("strapping").Member("rows").Items().SelectMany(r => r.Member("pieces").Items()))
        {
            var waits = piece.Member("fastenAfter").Items().SelectMany(f => f.Member("of").Items()).Select(i => i.GetString()!).ToList();
            var at = When("fasten-after", "piece", piece.Member("id").Text()!);
            if (waits.Count > 0 && (at < 0 || at > closing || waits.Any(w => When("fit-batts", "fill", w) is var f && (f < 0 || f > at))))
            {
                report.Fault("batts.loose", piece.Member("id").Text()!, $"fastened at step {at}, closed at {closing}");
            }
        }
    }

    private static bool Touches(JsonElement step, string kind, string id) =>
        step.Member("touches").Items().Any(t => t.Member("kind").Text() == kind && t.Member("id").Text() == id);
}
