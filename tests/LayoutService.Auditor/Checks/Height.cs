using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>The finished height is the lowest joist height less the floor still to come, the strap and the board.</summary>
internal static class Height
{
    public static void Check(GivenPlan plan, AuditReport report)
    {
        var (request, unit) = (plan.Room.Json, plan.Room.Unit);
        var plane = plan.Room.Strapping.Direct ? DirectBoard.Lowest(plan.Room) : plan.Json.Member("strapping").Member("plane").Member("level").Length(unit);
        var heights = request.GetProperty("room").Member("heights").Items().Select(h => h.Member("floorToJoist").Length(unit) - OffPlane(plan.Room, h, plane)).OfType<double>().ToList();
        if (plan.Json.Member("summary").Member("finishedHeight").Length(unit) is not { } stated || heights.Count == 0
            || request.GetProperty("room").Member("floorBuildUp").Length(unit) is not { } floor)
        {
            return;
        }

        // A named strap is 19 mm or 3/4 in thick; half-inch board is 12.7 mm, or by its metric name 12.5 or 13 mm.
        var strap = request.Member("strapping").Member("size").Member("thickness").Length(unit);
        var board = request.Member("sheets").Member("thickness").Length(unit);
        var finished = heights.Min() - floor - plan.Room.OldCeiling - (plan.Room.Strapping.Direct ? 0 : strap ?? 19.025) - ((board ?? 12.7) * plan.Room.Sheets.Layers);
        var slack = 0.01 + (strap is null ? 0.03 : 0) + (board is null ? 0.3 : 0);
        if (Math.Abs(stated - finished) > slack)
        {
            report.Fault("summary", "finishedHeight", $"{stated:F3} stated, {finished:F3} mm by the members asked");
        }
    }

    // how far above the plane of the straps the joists are where a height was taken; nothing when it has no place
    private static double OffPlane(AskedRoom room, System.Text.Json.JsonElement height, double? plane) =>
        room.Levels is { } levels && plane is { } level && height.Member("at") is { } at ? levels.Of(room.Place(at)) - level : 0;
}
