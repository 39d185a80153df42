using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>Butts of neighbouring courses never meet on one row, and keep minStagger where that was asked.</summary>
internal static class ButtStagger
{
    private const double Touch = 0.1;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var butts = plan.Seams.Where(s => s.Run == SeamRun.Butt)
            .DistinctBy(b => (b.Board.Layer, Math.Round(b.At, 1), Math.Round(b.Stretch.From), Math.Round(b.Stretch.To))).ToList();
        var reach = plan.Room.Strapping.ButtReach;
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
                if (apart <= 2 * Math.Max(0, reach) && plan.Rows.Any(r => Math.Abs(r.At - a.At) <= reach + Touch && Math.Abs(r.At - b.At) <= reach + Touch))
                {
                    report.FaultUnlessDeclared("stagger", "butts.stagger", a.Board.Id,
                        $"its butt at along {a.At:F1} meets that of {b.Board.Id} on one row");
                }
                else if (plan.Room.Sheets.MinStagger is { } least && apart < least - Touch)
                {
                    report.FaultUnlessDeclared("stagger", "butts.stagger", a.Board.Id,
                        $"its butt at along {a.At:F1} is {apart:F1} mm from that of {b.Board.Id}, {least:F1} asked");
                }
            }
        }
    }

    private static bool Neighbours(Stretch a, Stretch b) =>
        Math.Abs(a.To - b.From) <= Touch || Math.Abs(b.To - a.From) <= Touch;
}
