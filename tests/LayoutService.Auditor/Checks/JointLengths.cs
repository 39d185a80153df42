using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Joint lengths are those of the seams drawn: butts across the joists, tapered and cut-edge along them, the perimeter
/// at walls and openings; and the listed joints add up to them.
/// </summary>
internal static class JointLengths
{
    private const double Rounding = 1;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var sheets = plan.Json.Member("sheets");
        double? Stated(string name) => sheets.Member(name).Length(plan.Room.Unit);
        if (Stated("buttJointLength") is not { } butt)
        {
            return;
        }

        // what is finished is the layer that shows; every layer's joints are listed
        var across = plan.Seams.Where(s => s.Run == SeamRun.Butt && s.Board.Layer == plan.Room.Sheets.Layers).Sum(s => s.Stretch.Length) / 2;
        var along = plan.Seams.Where(s => s.Run == SeamRun.Along && s.Board.Layer == plan.Room.Sheets.Layers).Sum(s => s.Stretch.Length) / 2;
        Same("buttJointLength", butt, across, report);
        if (Stated("taperedJointLength") is { } tapered)
        {
            Same("taperedJointLength", tapered + (Stated("cutEdgeJointLength") ?? 0), along, report);
        }

        if (Stated("perimeterLength") is { } perimeter)
        {
            Same("perimeterLength", perimeter, plan.Room.Border.Walls.Sum(w => Math.Sqrt(Math.Pow(w.Us.Length, 2) + Math.Pow(w.Vs.Length, 2))), report);
        }

        var listed = sheets.Member("joints").Items().Sum(j => j.Member("length").Length(plan.Room.Unit) ?? 0);
        if (sheets.Member("joints") is not null)
        {
            Same("joints", listed, plan.Seams.Where(s => s.Run != SeamRun.Oblique).Sum(s => s.Stretch.Length) / 2, report);
        }
    }

    private static void Same(string name, double stated, double drawn, AuditReport report)
    {
        if (Math.Abs(stated - drawn) > Rounding)
        {
            report.Fault("sheets.joints", name, $"{stated:F1} stated, {drawn:F1} mm drawn");
        }
    }
}
