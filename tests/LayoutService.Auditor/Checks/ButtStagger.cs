using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Butts of neighbouring courses never meet on one row, and keep minStagger where that was asked, unless each of the two passes an opening that its
/// course must break at. The least that is drawn is what the plan's check says.
/// </summary>
internal static class ButtStagger
{
    private const double Touch = 0.1;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var butts = plan.Seams.Where(s => s.Run == SeamRun.Butt)
            .DistinctBy(b => (b.Board.Layer, Math.Round(b.At, 1), Math.Round(b.Stretch.From), Math.Round(b.Stretch.To))).ToList();
        var reach = plan.Room.Strapping.ButtReach;
        var nearest = double.PositiveInfinity;
        for (var i = 0; i < butts.Count; i++)
        {
            for (var j = i + 1; j < butts.Count; j++)
            {
                var (a, b) = (butts[i], butts[j]);
                if (a.Board.Layer != b.Board.Layer || !Neighbours(a.Stretch, b.Stretch))
                {
                    continue;
                }

                if (plan.Room.Sheets.MinStagger is null && Math.Abs(a.At - b.At) < plan.Room.Strapping.MaxSpacing)
                {
                    report.Note("butts.near", a.Board.Id, $"its butt at along {a.At:F1} is {Math.Abs(a.At - b.At):F0} mm from that of {b.Board.Id}");
                }

                var apart = Math.Abs(a.At - b.At);
                nearest = Math.Min(nearest, apart);
                if (apart <= 2 * Math.Max(0, reach) && plan.Rows.Any(r => Math.Abs(r.At - a.At) <= reach + Touch && Math.Abs(r.At - b.At) <= reach + Touch))
                {
                    report.FaultUnlessDeclared("stagger", "butts.stagger", a.Board.Id,
                        $"its butt at along {a.At:F1} meets that of {b.Board.Id} on one row");
                }
                else if (plan.Room.Sheets.MinStagger is { } least && apart < least - Touch)
                {
                    if (AtOpening(a, plan.Room) && AtOpening(b, plan.Room))
                    {
                        report.FaultUnlessDeclared("stagger", "butts.stagger", a.Board.Id,
                            $"its butt at along {a.At:F1} is {apart:F1} mm from that of {b.Board.Id}, {least:F1} asked");
                    }
                    else
                    {
                        report.Fault("butts.stagger", a.Board.Id, $"its butt at along {a.At:F1} is {apart:F1} mm from that of {b.Board.Id}, {least:F1} asked");
                    }
                }
            }
        }

        Stated(nearest, plan, report);
    }

    private static void Stated(double nearest, GivenPlan plan, AuditReport report)
    {
        if (plan.Json.Member("checks") is null || plan.Room.Sheets.MinStagger is not { } asked)
        {
            return;
        }

        // a part of a room has the room's check, without its value
        var check = plan.Json.Member("checks").Items().Where(c => c.Member("rule").Text() == "butt-stagger-rows").Cast<JsonElement?>().FirstOrDefault();
        if (check is null && !double.IsInfinity(nearest))
        {
            report.Fault("butts.stated", "checks", $"no check of the stagger");
        }
        else if (check?.Member("value").Length(plan.Room.Unit) is { } said
            && (!(Math.Abs(said - nearest) <= 2 * Touch) || check.Value.Member("status").Text() == "pass" != nearest >= asked - Touch))
        {
            report.Fault("butts.stated", "checks", $"the least stagger is {nearest:F1} mm, the check says {said:F1}");
        }
    }

    private static bool AtOpening(BoardSeam butt, AskedRoom room) => room.Openings.Any(o => o.Us.From - Touch < butt.At && butt.At < o.Us.To + Touch
        && Math.Max(o.Vs.From, butt.Stretch.From) <= Math.Min(o.Vs.To, butt.Stretch.To) + Touch);

    private static bool Neighbours(Stretch a, Stretch b) =>
        Math.Abs(a.To - b.From) <= Touch || Math.Abs(b.To - a.From) <= Touch;
}
