using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>An edge without a wall is beaded as far as the ceiling reaches it, and spoken of; no other edge is.</summary>
internal static class OpenEdges
{
    public static void Check(GivenPlan plan, AuditReport report)
    {
        var stated = plan.Json.Member("sheets").Member("edgeBeads").Items().Sum(b => b.Member("length").Length(plan.Room.Unit) ?? 0);
        if (plan.Json.Member("sheets") is not null && Math.Abs(stated - Length(plan)) > 1)
        {
            report.Fault("open.bead", "edgeBeads", $"{stated:F1} stated, {Length(plan):F1} mm of edge without a wall");
        }

        var said = plan.Json.Member("cautions").Items().Where(c => c.Member("code").Text() == "open_edge").SelectMany(c => c.Member("where").Items()).Count();
        if (plan.Json.Member("cautions") is not null && said != plan.Room.OpenEdges.Count)
        {
            report.Fault("open.said", "cautions", $"{said} edges without a wall are spoken of, not {plan.Room.OpenEdges.Count}");
        }
    }

    /// <summary>Length of the edges without a wall that the ceiling ends at, mm.</summary>
    public static double Length(GivenPlan plan) => Walls(plan.Room).Sum(Planes.Length);

    /// <summary>Those edges, as the ceiling reaches them.</summary>
    public static IEnumerable<Wall> Walls(AskedRoom room) => room.OpenEdges.Count == 0 ? [] : room.Border.Walls.Where(w => w.Ring == 0 && room.IsOpen(w.Middle()));
}
