using LayoutService.Auditor.Reading;
using NetTopologySuite.Geometries;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Where joists change direction: the lines that are told are the borders between the parts, the control joints lie on them wherever there
/// is board at both sides, no board and no strap goes across, every joint length is the sum of its joints, trim is ordered by the
/// control joints' length, and a caution says so.
/// </summary>
internal static class RunBreaks
{
    private const double Close = 1;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var unit = plan.Room.Unit;
        var division = new RunDivision(plan.Room.Json, plan.Json);
        Geometry lines = Planes.Factory.CreateLineString();
        var floors = division.Floors;
        for (var i = 0; i < floors.Count; i++)
        {
            for (var k = 0; k < i; k++)
            {
                lines = lines.Union(floors[i].Floor.Boundary.Intersection(floors[k].Floor.Boundary.Buffer(0.05)));
            }
        }

        var told = plan.Json.Member("joists").Member("breaks").Items().ToList();
        var toldLength = told.Sum(b => Length(b.GetProperty("from").Point(unit), b.GetProperty("to").Point(unit)));
        if (Math.Abs(toldLength - lines.Length) > Close || told.Any(b => Off(lines, b.GetProperty("from").Point(unit), b.GetProperty("to").Point(unit))))
        {
            report.Fault("runs.breaks", "joists", $"lines of {toldLength:F1} mm told, the parts meet over {lines.Length:F1} mm");
        }

        var sheets = plan.Json.Member("sheets");
        var joints = sheets.Member("joints").Items().ToList();
        foreach (var (name, kind) in new[] { ("buttJointLength", "butt"), ("taperedJointLength", "tapered"), ("cutEdgeJointLength", "cut-edge"), ("controlJointLength", "control") })
        {
            var (stated, listed) = (sheets.Member(name).Length(unit) ?? 0, joints.Where(j => j.Member("kind").Text() == kind).Sum(j => j.Member("length").Length(unit) ?? 0));
            if (Math.Abs(stated - listed) > Close)
            {
                report.Fault("runs.joints", name, $"{stated:F1} stated, {listed:F1} mm listed");
            }
        }

        var boards = Planes.Union(sheets.Member("pieces").Items().Select(p => RunDivision.Area(p.GetProperty("outline").Ring(unit))));
        var control = joints.Where(j => j.Member("kind").Text() == "control").ToList();
        var length = control.Sum(j => j.Member("length").Length(unit) ?? 0);
        var boarded = lines.Intersection(boards.Buffer(-0.5)).Length;
        if (Math.Abs(length - boarded) > Close * (1 + control.Count) || control.Any(j => Off(lines, j.GetProperty("from").Point(unit), j.GetProperty("to").Point(unit))))
        {
            report.Fault("runs.control", "joints", $"control joints of {length:F1} mm, the board meets over {boarded:F1} mm at the lines");
        }

        foreach (var piece in sheets.Member("pieces").Items())
        {
            var area = RunDivision.Area(piece.GetProperty("outline").Ring(unit));
            if (floors.Count(f => f.Floor.Meet(area).Area > 100) != 1)
            {
                report.Fault("runs.across", piece.Member("id").Text()!, $"this board lies in more than one part");
            }
        }

        foreach (var piece in plan.Json.Member("strapping").Member("rows").Items().SelectMany(r => r.Member("pieces").Items()))
        {
            var (a, b) = (piece.GetProperty("from").Point(unit), piece.GetProperty("to").Point(unit));
            var line = Planes.Factory.CreateLineString([new(a.X, a.Y), new(b.X, b.Y)]);
            if (floors.Count(f => f.Floor.Grown(-0.1).Intersection(line).Length > 1) != 1)
            {
                report.Fault("runs.across", piece.Member("id").Text()!, $"this strap lies in more than one part");
            }
        }

        var ordered = plan.Json.Member("takeoff").Member("lines").Items().FirstOrDefault(l => l.Member("code").Text() == "control-joint");
        var counted = ((System.Text.Json.JsonElement?)(ordered.ValueKind == System.Text.Json.JsonValueKind.Undefined ? null : ordered)).Member("counted").Double() ?? 0;
        if (Math.Abs((counted * (plan.Room.Imperial ? 304.8 : 1000)) - length) > 10)
        {
            report.Fault("runs.order", "control-joint", $"{counted} ordered, {length:F1} mm of control joint");
        }

        foreach (var (name, status) in new[] { ("fixturesMoved", "moved"), ("fixturesInConflict", "conflict") })
        {
            var count = plan.Json.Member("fixtures").Items().Count(f => f.Member("status").Text() == status);
            if (plan.Json.Member("summary").Member(name).Decimal() != count)
            {
                report.Fault("fixtures.counted", name, $"{count} of the whole room");
            }
        }

        if (!plan.Json.Member("cautions").Items().Any(c => c.Member("code").Text() == "control_joint_at_run_break"))
        {
            report.Fault("runs.caution", "cautions", $"nothing is said of the line where the joists change direction");
        }
    }

    private static double Length((double X, double Y) a, (double X, double Y) b) => Math.Sqrt(Math.Pow(a.X - b.X, 2) + Math.Pow(a.Y - b.Y, 2));

    private static bool Off(Geometry lines, (double X, double Y) a, (double X, double Y) b) =>
        lines.Distance(Planes.Point(new Uv(a.X, a.Y))) > 0.1 || lines.Distance(Planes.Point(new Uv((a.X + b.X) / 2, (a.Y + b.Y) / 2))) > 0.1;
}
