using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Rows that we choose stand on whole sixteenths or millimetres from the outline's lowest; rows tight to a wall need
/// not. Marks are half a face off the centre, spacingBefore is to an earlier row, and each row has its reason.
/// </summary>
internal static class RowPositions
{
    private const double Exact = 0.002;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var room = plan.Room;
        Widest(plan, report);
        var centres = plan.Rows.Select(r => r.At).ToList();
        foreach (var row in plan.Rows)
        {
            if (!IsWhole(row.At, room) && !IsWhole(row.At - (room.Strapping.Face / 2), room) && !IsTight(row, room))
            {
                if (plan.Seams.Any(s => s.Run == SeamRun.Butt && Math.Abs(s.At - row.At) <= room.Strapping.ButtReach + 1))
                {
                    report.Note("rows.step", row.Id, $"at {row.At:F4} mm, on no whole step, under a butt");
                }
                else if (!Midway(row, room))
                {
                    report.Fault("rows.step", row.Id, $"at {row.At:F4} mm, on no whole step and tight to no wall");
                }
            }

            if (!row.Json.Member("reasons").Items().Any())
            {
                report.Fault("rows.reason", row.Id, $"has no reason");
            }

            if (row.Pieces.Count == 0)
            {
                report.Fault("rows.pieces", row.Id, $"has no piece");
            }

            if (row.Json.Member("spacingBefore").Length(room.Unit) is { } before && before > 0
                && !centres.Any(c => Math.Abs(row.At - c - before) < 0.01))
            {
                report.Fault("rows.marks", row.Id, $"spacingBefore {before:F3} mm leads to no row");
            }

            Marks(row, room, report);
        }
    }

    /// <summary>The widest spacing stated is one that is there, and not over the limit.</summary>
    private static void Widest(GivenPlan plan, AuditReport report)
    {
        if (plan.Json.Member("strapping").Member("widestSpacing").Length(plan.Room.Unit) is not { } widest || plan.Rows.Count < 2)
        {
            return;
        }

        if (!plan.Rows.Any(a => plan.Rows.Any(b => Math.Abs(b.At - a.At - widest) < 0.01)))
        {
            report.Fault("rows.marks", "widestSpacing", $"no two rows stand {widest:F3} mm apart");
        }

        if (widest > plan.Room.Strapping.MaxSpacing + 0.05)
        {
            report.FaultUnlessDeclared("spacing", "rows.spacing", "widestSpacing", $"{widest:F3} mm stated, at most {plan.Room.Strapping.MaxSpacing:F3}");
        }
    }

    private static void Marks(GivenRow row, AskedRoom room, AuditReport report)
    {
        var half = room.Strapping.Face / 2;
        foreach (var mark in row.Json.Member("marks").Items())
        {
            if (mark.Member("nearEdge").Length(room.Unit) is { } edge && Math.Abs(edge - (row.At - half)) > 0.01)
            {
                report.Fault("rows.marks", row.Id, $"near edge {edge:F3}, centre less half a face is {row.At - half:F3} mm");
            }

            var step = room.Imperial ? 25.4 / 32 : 0.5;
            if (mark.Member("nearEdgeText").Text() is { } text)
            {
                if (!LengthText.TryReadTape(text, out var read))
                {
                    report.Fault("rows.marks", row.Id, $"mark is no length: {text}");
                }
                else if (Math.Abs(read - (row.At - half)) > step + 0.01)
                {
                    report.Fault("rows.marks", row.Id, $"mark {text} is {read:F2}, centre less half a face is {row.At - half:F2} mm");
                }
            }
        }
    }

    // between two walls with no room for two rows side by side it stands midway
    private static bool Midway(GivenRow row, AskedRoom room) => row.Pieces.Any(p => room.Border.AlongAt((p.Low.V + p.High.V) / 2, _ => true)
        .Any(line => line.Length < 2 * room.Strapping.Face && Math.Abs(((line.From + line.To) / 2) - row.At) < 0.02));

    private static bool IsWhole(double position, AskedRoom room) =>
        Math.Abs(position - (Math.Round(position / room.Step) * room.Step)) <= Exact;

    // a wall as good as square to the joists: a bulkhead's side, or what bulkheads leave of an oblique wall, that leans by less than a clear gap over its length
    private static bool IsTight(GivenRow row, AskedRoom room) => room.Border.Walls.Any(w => (w.IsSquare || Leans(w))
        && Math.Min(Math.Abs(Math.Abs(w.A.U - row.At) - (room.Strapping.Face / 2)), Math.Abs(Math.Abs(w.B.U - row.At) - (room.Strapping.Face / 2))) <= 13.05);

    private static bool Leans(Wall wall) => Math.Abs(wall.B.U - wall.A.U) <= 13
        && (wall.Ring < 0 || Math.Abs(wall.B.U - wall.A.U) * 4 <= Math.Abs(wall.B.V - wall.A.V));
}
