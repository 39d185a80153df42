using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Joints in a row: of a kind that was allowed; on a joist with 16 mm of wood on each side, or in the clear bay with a
/// scab or block that fits. Neighbouring rows breaking on one support, and a joint within 150 mm of a butt that the row
/// backs, are noted only: they may have had no choice.
/// </summary>
internal static class PieceJoints
{
    private const double Close = 0.05;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var joints = new List<(GivenRow Row, double V, int Support)>();
        foreach (var row in plan.Rows)
        {
            for (var i = 1; i < row.Pieces.Count; i++)
            {
                var (low, high) = (row.Pieces[i - 1], row.Pieces[i]);
                // at a wall or a hole between them two pieces do not meet
                if ((low.HighEnd.Wall is not null && high.LowEnd.Wall is not null) || (low.HighJoint == "fixture" && high.LowJoint == "fixture") || Parted(plan, low, high))
                {
                    continue;
                }

                joints.Add((row, high.Low.V, One(plan, low, high, report)));
            }
        }

        Scabs(plan, joints.Count, report);
        Preferences(plan, joints, report);
    }

    /// <summary>True when the line between two pieces leaves the room: one of them may end on a joist before it gets there; or when one ends short of the other on a block, in the open.</summary>
    private static bool Parted(GivenPlan plan, GivenPiece low, GivenPiece high) =>
        high.Low.V - low.High.V > Close && (low.HighJoint == "block" || high.LowJoint == "block" || !plan.Room.Border.AcrossAt(low.U).Any(p => p.From - Close <= low.High.V && high.Low.V <= p.To + Close));

    /// <summary>Checks one joint; the index of the support it breaks on, or -1.</summary>
    private static int One(GivenPlan plan, GivenPiece low, GivenPiece high, AuditReport report)
    {
        var v = high.Low.V;
        if (low.HighJoint != high.LowJoint)
        {
            report.Fault("pieces.joint", high.Id, $"starts with {high.LowJoint} where {low.Id} ends with {low.HighJoint}");
        }

        var allowed = high.LowJoint switch { "joist" => "on-joist", "lap" => "side-lap", var other => other };
        if (!plan.Room.Strapping.JointsAllowed.Contains(allowed))
        {
            report.Fault("pieces.joint", high.Id, $"a joint of kind {high.LowJoint} was not allowed");
        }

        var supports = plan.Room.Joists.Supports(high.Low.U);
        var on = Enumerable.Range(0, supports.Count).FirstOrDefault(i => v >= supports[i].From - Close && v <= supports[i].To + Close, -1);
        if (high.LowJoint == "joist" && (on < 0 || v - supports[on].From < PieceBearing.Least - Close || supports[on].To - v < PieceBearing.Least - Close))
        {
            report.Fault("pieces.joint", high.Id, $"breaks at across {v:F2} without 16 mm of joist on each side");
        }

        if (high.LowJoint == "block" && !plan.Nailers.Any(n => Math.Abs(n.From.U - high.Low.U) < Close && Math.Abs(n.To.U - high.Low.U) < Close
            && Math.Min(n.From.V, n.To.V) < v - PieceBearing.Least && Math.Max(n.From.V, n.To.V) > v + PieceBearing.Least))
        {
            report.Fault("pieces.joint", high.Id, $"no block over the joint at across {v:F2}");
        }

        if (high.LowJoint is "scab" or "block" && on >= 0)
        {
            report.Fault("pieces.joint", high.Id, $"a {high.LowJoint} joint at across {v:F2} stands on a joist");
        }

        return on;
    }

    private static void Scabs(GivenPlan plan, int joints, AuditReport report)
    {
        var scabs = plan.Json.Member("strapping").Member("scabs").Items().ToList();
        var needed = plan.Rows.Sum(r => r.Pieces.Skip(1).Count(p => p.LowJoint == "scab"));
        if (scabs.Count != needed && needed + scabs.Count > 0 && scabs.Count <= joints + needed)
        {
            report.Fault("pieces.scabs", "strapping", $"{scabs.Count} scabs listed, {needed} joints are scabbed");
        }

        foreach (var scab in scabs.Where(s => s.Member("length").Length(plan.Room.Unit) < 300 - Close))
        {
            report.Fault("pieces.scabs", scab.Member("id").Text() ?? "scab", $"shorter than 300 mm");
        }
    }

    private static void Preferences(GivenPlan plan, List<(GivenRow Row, double V, int Support)> joints, AuditReport report)
    {
        foreach (var joint in joints)
        {
            var next = plan.Rows.Where(r => r.At > joint.Row.At + Close).Select(r => (double?)r.At).FirstOrDefault();
            if (joint.Support >= 0 && joints.Any(o => o.Row.At == next && o.Support == joint.Support))
            {
                report.Note("pieces.stagger", joint.Row.Id, $"and the next row break on one support at across {joint.V:F1}");
            }

            foreach (var butt in plan.Seams.Where(s => s.Run == SeamRun.Butt && Math.Abs(s.At - joint.Row.At) <= plan.Room.Strapping.ButtReach + Close
                && joint.V > s.Stretch.From - 150 && joint.V < s.Stretch.To + 150))
            {
                report.Note("pieces.joint-at-butt", joint.Row.Id, $"breaks at across {joint.V:F1}, where it backs {butt.Board.Id}");
            }
        }
    }
}
