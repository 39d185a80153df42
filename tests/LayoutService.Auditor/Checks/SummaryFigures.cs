using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>The summary says what the details show; the joists and bays are those of the request.</summary>
internal static class SummaryFigures
{
    public static void Check(GivenPlan plan, AuditReport report)
    {
        var summary = plan.Json.Member("summary");
        Same(summary, "rows", plan.Rows.Count, report);
        Same(summary, "strapPieces", plan.Pieces.Count, report);
        Same(summary, "lengthsToBuy", plan.Sticks.Count, report);
        Same(summary, "sheetsToBuy", plan.CutSheets.Count, report);
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

        if (summary.Member("buttJointLength").Length(plan.Room.Unit) is { } butts && Math.Abs(butts
            - (plan.Json.Member("sheets").Member("buttJointLength").Length(plan.Room.Unit) ?? butts)) > 0.01)
        {
            report.Fault("summary", "buttJointLength", $"{butts:F2} mm in the summary, another with the sheets");
        }

        if (!RunDivision.Turns(plan.Room.Json))
        {
            Joists(plan, report);
        }
    }

    private static void Same(JsonElement? summary, string name, int due, AuditReport report)
    {
        if (summary.Member(name).Decimal() is { } stated && stated != due)
        {
            report.Fault("summary", name, $"{stated} stated, {due} in the details");
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

        foreach (var bay in plan.Json.Member("joists").Member("bays").Items())
        {
            var (from, to) = (bay.Member("from").Length(plan.Room.Unit) ?? 0, bay.Member("to").Length(plan.Room.Unit) ?? 0);
            var along = ((bay.Member("alongFrom").Length(plan.Room.Unit) ?? 0) + (bay.Member("alongTo").Length(plan.Room.Unit) ?? 0)) / 2;
            if (to <= from || plan.Room.Joists.Supports(along).Any(s => Math.Min(to, s.To) - Math.Max(from, s.From) > 0.1))
            {
                report.Fault("joists", bay.Member("id").Text() ?? "bay", $"the bay from {from:F2} to {to:F2} mm is not clear");
            }
        }
    }
}
