using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// The edge of a stair or well, and one without a wall, shows: it is beaded all the way, as stated and as ordered, and along the joists there is strap or nailer
/// behind all of it. Seams within 300 mm of the line of its corner are noted: they are avoided where there is a choice.
/// </summary>
internal static class WellEdges
{
    private const double FromCorner = 300;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var unit = plan.Room.Unit;
        var stated = plan.Json.Member("sheets").Member("wellBeads").Items().Sum(b => b.Member("length").Length(unit) ?? 0);
        if (plan.Json.Member("sheets") is not null && Math.Abs(stated - Shown(plan)) > 1)
        {
            report.Fault("wells.bead", "wellBeads", $"{stated:F1} stated, {Shown(plan):F1} mm of edge");
        }

        foreach (var wall in Walls(plan.Room).Concat(OpenEdges.Walls(plan.Room)).Where(w => w.IsAlong && !plan.Room.Strapping.Direct))
        {
            Backed(wall, plan, report);
        }

        foreach (var corner in plan.Room.Openings.Where(o => IsWell(o.Kind)).SelectMany(o => plan.Room.Rings[o.Ring]))
        {
            foreach (var seam in plan.Seams.Where(s => s.Run == SeamRun.Butt ? Math.Abs(s.At - corner.U) < FromCorner && s.Stretch.From <= corner.V && corner.V <= s.Stretch.To
                : Math.Abs(s.At - corner.V) < FromCorner && s.Stretch.From <= corner.U && corner.U <= s.Stretch.To))
            {
                report.Note("wells.corner", seam.Board.Id, $"a seam within 300 mm of the line of a well's corner");
            }
        }
    }

    /// <summary>Length of the edges of stairs and wells that the ceiling ends at, mm.</summary>
    public static double Shown(GivenPlan plan) => Walls(plan.Room).Sum(Planes.Length);

    private static bool IsWell(string kind) => kind is "stair" or "well";

    private static IEnumerable<Wall> Walls(AskedRoom room) => room.Border.Walls.Where(w => w.Ring > 0 && IsWell(room.Openings[w.Ring - 1].Kind));

    private static void Backed(Wall wall, GivenPlan plan, AuditReport report)
    {
        var half = plan.Room.Strapping.Face / 2;
        var keep = (wall.Ring == 0 ? 0 : plan.Room.Json.GetProperty("room").GetProperty("openings")[wall.Ring - 1].Member("clearance").Length(plan.Room.Unit) ?? 0) + 1;
        var straps = plan.Pieces.Where(p => p.Reach.From - keep <= wall.A.V && wall.A.V <= p.Reach.To + keep).Select(p => new Stretch(p.U - half, p.U + half));
        var nailers = plan.Nailers.Where(n => Math.Abs(n.From.V - wall.A.V) <= keep && Math.Abs(n.To.V - wall.A.V) <= keep)
            .Select(n => new Stretch(Math.Min(n.From.U, n.To.U), Math.Max(n.From.U, n.To.U)));
        var at = wall.Us.From;
        foreach (var wood in straps.Concat(nailers).OrderBy(s => s.From))
        {
            if (wood.From > at + 51)
            {
                break;
            }

            at = Math.Max(at, wood.To);
        }

        if (at < wall.Us.To - 51)
        {
            report.Fault("wells.edge", $"edge at across {wall.A.V:F1}", $"no strap or nailer behind its edge from along {at:F1}");
        }
    }
}
