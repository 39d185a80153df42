using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// A piece bears on two supports at least, 300 mm apart at least, a doubled joist being one; a nailer or ledger that is
/// listed at an end counts, and a strap from wall to wall with one at both ends may be as short as it must. It passes its last support by 150 mm at most, unless a nailer holds its end.
/// </summary>
internal static class PieceBearing
{
    private const double Close = 0.05;

    /// <summary>Wood on a joist that counts as bearing, mm.</summary>
    public const double Least = 16;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        foreach (var piece in plan.Pieces)
        {
            var supports = Supports(piece, plan.Room).ToList();
            var lowHeld = plan.Nailers.Any(n => n.Holds(piece.Low)) || piece.LowJoint is "scab" or "lap" or "block";
            var highHeld = plan.Nailers.Any(n => n.Holds(piece.High)) || piece.HighJoint is "scab" or "lap" or "block";
            var points = supports.Select(s => (s.From + s.To) / 2).ToList();
            points.AddRange(plan.Nailers.Any(n => n.Holds(piece.Low)) ? [piece.Low.V] : []);
            points.AddRange(plan.Nailers.Any(n => n.Holds(piece.High)) ? [piece.High.V] : []);
            var spread = piece.LowEnd.Wall is not null && piece.HighEnd.Wall is not null && lowHeld && highHeld ? 0 : 300;
            if (points.Count < 2 || points.Max() - points.Min() < spread - Close)
            {
                report.FaultUnlessDeclared("bearing", "pieces.bearing", piece.Id,
                    $"bears on {points.Count} supports over {(points.Count > 0 ? points.Max() - points.Min() : 0):F0} mm");
            }

            Overhang(piece, "low", lowHeld, supports.Count > 0 ? supports[0].From - piece.Low.V : 0, report);
            Overhang(piece, "high", highHeld, supports.Count > 0 ? piece.High.V - supports[^1].To : 0, report);
        }
    }

    /// <summary>Supports under the piece, ascending: 16 mm of bearing, or the whole support.</summary>
    public static IEnumerable<Stretch> Supports(GivenPiece piece, AskedRoom room) => room.Joists.Supports(piece.Low.U).Where(s =>
        Math.Min(s.To, piece.High.V) - Math.Max(s.From, piece.Low.V) >= Math.Min(Least, s.Length) - Close);

    private static void Overhang(GivenPiece piece, string end, bool held, double past, AuditReport report)
    {
        if (!held && past > 150 + Close)
        {
            report.FaultUnlessDeclared("overhang", "pieces.overhang", piece.Id, $"its {end} end passes the last joist by {past:F1} mm");
        }
    }
}
