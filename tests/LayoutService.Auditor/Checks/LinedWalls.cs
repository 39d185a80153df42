using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>A room measured between lined walls says so once; any other never does.</summary>
internal static class LinedWalls
{
    public static void Check(GivenPlan plan, AuditReport report)
    {
        var due = plan.Room.Json.GetProperty("room").Member("outlineFace").Text() == "finished" ? 1 : 0;
        var said = plan.Json.Member("cautions").Items().Count(c => c.Member("code").Text() == "walls_lined");
        if (said != due)
        {
            report.Fault("walls.lined", "cautions", $"lined walls are spoken of {said} times, not {due}");
        }
    }
}
