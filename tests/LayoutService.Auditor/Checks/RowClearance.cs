using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>No strap leaves the room, passes through an opening, or overlaps another strap.</summary>
internal static class RowClearance
{
    private const double Close = 0.05;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var half = plan.Room.Strapping.Face / 2;
        var pieces = plan.Pieces.OrderBy(p => p.U).ToList();
        for (var i = 0; i < pieces.Count; i++)
        {
            Inside(pieces[i], half, plan.Room, report);
            for (var j = i + 1; j < pieces.Count && pieces[j].U - pieces[i].U < (2 * half) - Close; j++)
            {
                Apart(pieces[i], pieces[j], report);
            }
        }
    }

    private static void Apart(GivenPiece a, GivenPiece b, AuditReport report)
    {
        var lapped = a.RowId == b.RowId && (a.LowJoint == "lap" || a.HighJoint == "lap") && (b.LowJoint == "lap" || b.HighJoint == "lap");
        if (!lapped && new Stretch(a.Low.V, a.High.V).Overlaps(new Stretch(b.Low.V, b.High.V), Close))
        {
            report.Fault("rows.overlap", a.Id, $"lies on {b.Id}: centres {b.U - a.U:F2} mm apart");
        }
    }

    private static void Inside(GivenPiece piece, double half, AskedRoom room, AuditReport report)
    {
        var strap = new Stretch(piece.Low.V, piece.High.V);
        foreach (var off in new[] { 0, Close - half, half - Close })
        {
            var bevel = off == 0 ? 0 : half;
            double low = strap.From + Close + (bevel * Slant(piece.LowEnd)), high = strap.To - Close - (bevel * Slant(piece.HighEnd));
            if (low < high && !room.Border.AcrossAt(piece.U + off).Any(p => p.From <= low + Close && p.To >= high - Close))
            {
                report.Fault("rows.inside", piece.Id, $"leaves the ceiling at along {piece.U + off:F2}");
                return;
            }
        }

        foreach (var wall in room.Border.Walls)
        {
            var corner = wall.A;
            if (Math.Abs(corner.U - piece.U) < half - Close && corner.V > strap.From + (half * Slant(piece.LowEnd)) + Close
                && corner.V < strap.To - (half * Slant(piece.HighEnd)) - Close)
            {
                report.Fault("rows.inside", piece.Id, $"a corner at along {corner.U:F2}, across {corner.V:F2} stands in it");
                return;
            }
        }
    }

    private static double Slant(StrapEnd end) => end.Wall is { } wall ? wall.Slant : 0;
}
