using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>The summary and the joint lengths say what the details show.</summary>
internal static class SummaryFigures
{
    public static void Check(GivenPlan plan, AuditReport report)
    {
        var summary = plan.Json.Member("summary");
        Same(summary, "rows", plan.Rows.Count, report);
        Same(summary, "strapPieces", plan.Pieces.Count, report);
        Same(summary, "lengthsToBuy", plan.Sticks.Count, report, Ordered(plan, plan.Room.Strapping.Stock));
        Same(summary, "sheetsToBuy", plan.CutSheets.Count, report, Ordered(plan, plan.Room.Sheets.Stock));
        if (plan.Json.Member("checks") is not null)
        {
            Same(summary, "checksFailed", plan.DeclaredFailures.Count, report);
        }

        var totals = plan.Json.Member("takeoff").Member("totals");
        if (summary.Member("cost").Decimal() is { } cost
            && (totals.Member("amount") ?? totals.Member("total") ?? totals.Member("cost") ?? totals.Member("net")).Decimal() is { } total && cost != total)
        {
            report.Fault("summary", "cost", $"{cost} stated, the takeoff comes to {total}");
        }

        Joints(plan, summary, report);
        Joists(plan, report);
    }

    private static decimal? Ordered(GivenPlan plan, IReadOnlyList<AskedStock> stock)
    {
        var ids = stock.Select(s => s.Id).ToHashSet();
        var packs = plan.Json.Member("takeoff").Member("lines").Items().SelectMany(l => l.Member("packs").Items())
            .Where(p => p.Member("id").Text() is { } id && ids.Contains(id)).ToList();
        return packs.Count == 0 ? null : packs.Sum(p => (p.Member("count").Decimal() ?? 0) * (p.Member("packSize").Decimal() ?? 1));
    }

    private static void Same(JsonElement? summary, string name, int due, AuditReport report, decimal? orElse = null)
    {
        if (summary.Member(name).Decimal() is { } stated && stated != due && stated != orElse)
        {
            report.Fault("summary", name, $"{stated} stated, {due} in the details");
        }
    }

    /// <summary>
    /// Every seam is one board's edge and its neighbour's, so its length is half the sum. A cut edge along the joists may
    /// be counted with the butts: only the sum and the least of butts are fixed.
    /// </summary>
    private static void Joints(GivenPlan plan, JsonElement? summary, AuditReport report)
    {
        var sheets = plan.Json.Member("sheets");
        if (plan.Room.Sheets.Layers != 1 || sheets.Member("buttJointLength").Length(plan.Room.Unit) is not { } butt)
        {
            return;
        }

        if (summary.Member("buttJointLength").Length(plan.Room.Unit) is { } said && Math.Abs(said - butt) > 0.01)
        {
            report.Fault("summary", "buttJointLength", $"{said:F2} in the summary, {butt:F2} mm with the sheets");
        }

        var across = plan.Seams.Where(s => s.Run == SeamRun.Butt).Sum(s => s.Stretch.Length) / 2;
        var all = plan.Seams.Sum(s => s.Stretch.Length) / 2;
        if (butt < across - 1)
        {
            report.Fault("sheets.joints", "buttJointLength", $"{butt:F1} stated, {across:F1} mm of butts drawn");
        }

        if (sheets.Member("taperedJointLength").Length(plan.Room.Unit) is { } tapered && Math.Abs(butt + tapered - all) > 1)
        {
            report.Fault("sheets.joints", "taperedJointLength", $"{butt + tapered:F1} mm of joints stated, {all:F1} drawn");
        }

        var perimeter = plan.Room.Border.Walls.Sum(w => Math.Sqrt(Math.Pow(w.Us.Length, 2) + Math.Pow(w.Vs.Length, 2)));
        if (sheets.Member("perimeterLength").Length(plan.Room.Unit) is { } stated && Math.Abs(stated - perimeter) > 1)
        {
            report.Fault("sheets.joints", "perimeterLength", $"{stated:F1} stated, {perimeter:F1} mm drawn");
        }
    }

    /// <summary>The joists of the answer are the joists asked, as far as they reach the room.</summary>
    private static void Joists(GivenPlan plan, AuditReport report)
    {
        var given = plan.Json.Member("joists").Member("members").Items()
            .Select(j => j.Member("at").Length(plan.Room.Unit)).OfType<double>().Order().ToList();
        if (given.Count == 0)
        {
            return;
        }

        foreach (var at in given.Where(g => !plan.Room.Joists.Centres.Any(c => Math.Abs(c - g) < 0.01)))
        {
            report.Fault("joists", "members", $"a joist at {at:F3} mm that was not asked");
        }

        var extent = plan.Room.Rings[0].Max(p => p.V);
        foreach (var at in plan.Room.Joists.Centres.Where(c => c > 0 && c < extent && !given.Any(g => Math.Abs(c - g) < 0.01)))
        {
            report.Fault("joists", "members", $"the joist at {at:F3} mm is missing");
        }
    }
}
