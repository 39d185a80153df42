using System.Text.Json;
using LayoutService.Auditor.Reading;
using NetTopologySuite.Geometries;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Where the wood and the board of a bulkhead are jointed: ends of underside boards over wood, joints of a ladder's rails at a rung, no
/// block in another, and no member through a service.
/// </summary>
internal static class BoxJoints
{
    private const double Least = 6;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        foreach (var box in plan.Bulkheads)
        {
            Ends(box, report);
            Rails(plan, box, report);
            Blocks(box, report);
            Ways(plan, box, report);
        }
    }

    /// <summary>Length of the joints between boards of one plane, mm.</summary>
    public static double Length(GivenBulkhead box)
    {
        var around = box.Boards.Where(b => !b.IsFace).Sum(b => Planes.Polygon([b.Outline]).Length);
        var faces = box.Boards.Where(b => b.IsFace).GroupBy(b => (b.Outline[0], b.Outline[1]))
            .Select(g => (Line: new Wall(0, g.Key.Item1, g.Key.Item2), Height: g.Sum(b => b.Width), Level: (g.Count() - 1) * g.First().Length)).ToList();
        var upright = 0.0;
        for (var i = 0; i < faces.Count; i++)
        {
            for (var k = i + 1; k < faces.Count; k++)
            {
                if (Meet(faces[i].Line, faces[k].Line) is not null)
                {
                    upright += Math.Min(faces[i].Height, faces[k].Height);
                }
            }
        }

        return Math.Max(0, (around - (around > 0 ? box.Footprint.Length : 0)) / 2) + faces.Sum(f => f.Level) + upright;
    }

    // where two lines in one direction meet end to end
    private static Uv? Meet(Wall a, Wall b)
    {
        double au = a.B.U - a.A.U, av = a.B.V - a.A.V, bu = b.B.U - b.A.U, bv = b.B.V - b.A.V;
        if (Math.Abs((au * bv) - (av * bu)) > 0.01 * Planes.Length(a) * Planes.Length(b))
        {
            return null;
        }

        return new[] { a.A, a.B }.Where(p => Planes.Apart(p, b.A) < 0.5 || Planes.Apart(p, b.B) < 0.5).Select(p => (Uv?)p).FirstOrDefault();
    }

    private static void Ends(GivenBulkhead box, AuditReport report)
    {
        var wood = box.Members.Where(m => m.Role is "rail" or "ledger" or "tie" && Math.Abs(m.Bottom - box.FrameBottom) < 0.01).ToList();
        var ties = wood.Where(m => m.Role == "tie").Select(m => m.Line).ToList();
        var boards = box.Boards.Where(b => !b.IsFace).Select(b => (b.Id, Border: Planes.Polygon([b.Outline]).Shell)).ToList();
        for (var i = 0; i < boards.Count; i++)
        {
            for (var k = i + 1; k < boards.Count; k++)
            {
                foreach (var edge in Shared(boards[i].Border, boards[k].Border).Where(e => Planes.Length(e) > 100 && Parallel(e, ties)))
                {
                    var length = Planes.Length(edge);
                    var bare = Enumerable.Range(0, 20).Count(n => !On((n + 0.5) / 20));
                    // at its ends other wood crosses
                    if (bare > 2)
                    {
                        report.Fault("boxes.ends", boards[i].Id, $"{bare * 5} % of its {length:F0} mm joint with {boards[k].Id} has no wood behind it");
                    }

                    bool On(double share)
                    {
                        var place = new Uv(edge.A.U + ((edge.B.U - edge.A.U) * share), edge.A.V + ((edge.B.V - edge.A.V) * share));
                        return wood.Any(m => m.Line.Distance(place) < (box.Face / 2) - Least);
                    }
                }
            }
        }
    }

    // edges that two rings share
    private static IEnumerable<Wall> Shared(LineString a, LineString b)
    {
        foreach (var one in Planes.Edges(a))
        {
            foreach (var other in Planes.Edges(b))
            {
                var length = Planes.Length(one);
                double u = (one.B.U - one.A.U) / length, v = (one.B.V - one.A.V) / length;
                double Along(Uv p) => ((p.U - one.A.U) * u) + ((p.V - one.A.V) * v);
                double Off(Uv p) => Math.Abs(((p.V - one.A.V) * u) - ((p.U - one.A.U) * v));
                if (length > 1 && Off(other.A) < 0.3 && Off(other.B) < 0.3)
                {
                    var (from, to) = (Math.Max(0, Math.Min(Along(other.A), Along(other.B))), Math.Min(length, Math.Max(Along(other.A), Along(other.B))));
                    if (to > from)
                    {
                        yield return new Wall(0, new Uv(one.A.U + (u * from), one.A.V + (v * from)), new Uv(one.A.U + (u * to), one.A.V + (v * to)));
                    }
                }
            }
        }
    }

    // ends of boards run along the ties beside them, their long edges across
    private static bool Parallel(Wall edge, List<Wall> ties) => ties.Where(t => t.Distance(edge.Middle()) < 700).OrderBy(t => t.Distance(edge.Middle())).Take(1)
        .Any(t => Math.Abs(((t.B.U - t.A.U) * (edge.B.V - edge.A.V)) - ((t.B.V - t.A.V) * (edge.B.U - edge.A.U))) < 0.1 * Planes.Length(t) * Planes.Length(edge));

    private static void Rails(GivenPlan plan, GivenBulkhead box, AuditReport report)
    {
        var rungs = box.Members.Where(m => m.Role == "rung").Select(m => m.From).ToList();
        var rails = box.Members.Where(m => m.Role == "rail" && rungs.Exists(r => m.Line.Distance(r) < 5)).ToList();
        for (var i = 0; i < rails.Count; i++)
        {
            for (var k = i + 1; k < rails.Count; k++)
            {
                // in the way of a service there is none
                if (Math.Abs(rails[i].Bottom - rails[k].Bottom) < 0.01 && Meet(rails[i].Line, rails[k].Line) is { } at
                    && !rungs.Exists(r => Planes.Apart(r, at) < (box.Face / 2) + 1) && !InWay(plan, at))
                {
                    report.Fault("boxes.joints", rails[i].Id, $"is jointed to {rails[k].Id} at {at} where no rung stands");
                }
            }
        }
    }

    private static void Blocks(GivenBulkhead box, AuditReport report)
    {
        var blocks = box.Members.Where(m => m.Role == "blocking").ToList();
        for (var i = 0; i < blocks.Count; i++)
        {
            for (var k = i + 1; k < blocks.Count; k++)
            {
                if (Planes.Strip([blocks[i].From, blocks[i].To], 18).Meet(Planes.Strip([blocks[k].From, blocks[k].To], 18)).Area > 500)
                {
                    report.Fault("boxes.twice", blocks[k].Id, $"lies in {blocks[i].Id}, at {blocks[k].From}");
                }
            }
        }
    }

    private static void Ways(GivenPlan plan, GivenBulkhead box, AuditReport report)
    {
        // what comes out of its bulkhead, or hangs too low for it, cannot be closed in, and a check says so
        var open = plan.Json.Member("checks").Items().Any(c => c.Member("rule").Text() == "service-covered" && c.Member("status").Text() == "fail");
        var hides = plan.Room.Json.Member("bulkheads").Items().SelectMany(b => b.Member("hides").Items()).Select(id => id.GetString()).ToHashSet();
        foreach (var service in plan.Room.Json.Member("services").Items().Where(s => !open && hides.Contains(s.Member("id").Text())))
        {
            var unit = plan.Room.Unit;
            var (top, bottom) = (service.Member("top").Length(unit) ?? 0, service.Member("bottom").Length(unit) ?? 0);
            var shape = BoxSolids.Shape(service, plan.Room).Grown(-8);
            foreach (var member in box.Members.Where(m => m.Role != "blocking" && m.Top + 2 < bottom && top < m.Bottom - 2))
            {
                var wood = member.Drawn > 0.01 ? Planes.Strip([member.From, member.To], (box.Face / 2) - 2) : Planes.Point(member.From).Grown(17);
                if (wood.Meet(shape).Area > 100)
                {
                    report.Fault("boxes.way", member.Id, $"a {member.Role} {member.Top:F0} to {member.Bottom:F0} mm down goes through {service.Member("id").Text()}, {top:F0} to {bottom:F0}");
                }
            }
        }
    }

    /// <summary>True where a service goes through, with its clearance and a rung's width beside it.</summary>
    public static bool InWay(GivenPlan plan, Uv at) => plan.Room.Json.Member("services").Items()
        .Any(s => BoxSolids.Shape(s, plan.Room).Distance(Planes.Point(at)) < (s.Member("clearance").Length(plan.Room.Unit) ?? 25.4) + 38.2);
}
