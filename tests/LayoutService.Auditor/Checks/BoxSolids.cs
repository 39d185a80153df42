using System.Text.Json;
using LayoutService.Auditor.Reading;
using NetTopologySuite.Geometries;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Bulkheads lie where they were asked, with the width and the drop asked, none over another; the heights of each agree;
/// what they hide is inside them, and what hangs below the straps outside of them is a failed check.
/// </summary>
internal static class BoxSolids
{
    private const double Close = 0.1;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var asked = plan.Room.Json.Member("bulkheads").Items().ToList();
        if (asked.Count != plan.Bulkheads.Count)
        {
            report.Fault("boxes.listed", "bulkheads", $"{plan.Bulkheads.Count} given, {asked.Count} asked");
            return;
        }

        var floor = Planes.Polygon(plan.Room.Rings);
        for (var i = 0; i < asked.Count; i++)
        {
            Heights(plan, asked[i], plan.Bulkheads[i], report);
            Place(plan, asked[i], plan.Bulkheads[i], floor, report);
            for (var j = 0; j < i; j++)
            {
                var shared = plan.Bulkheads[i].Footprint.Meet(plan.Bulkheads[j].Footprint).Area;
                if (shared > 20)
                {
                    report.Fault("boxes.overlap", plan.Bulkheads[i].Id, $"{shared:F0} mm² lie over {plan.Bulkheads[j].Id}");
                }
            }
        }

        Covered(plan, floor, report);
    }

    private static void Heights(GivenPlan plan, JsonElement asked, GivenBulkhead box, AuditReport report)
    {
        if (asked.Member("drop").Length(plan.Room.Unit) is { } drop && Math.Abs(drop - box.Drop) > 0.01)
        {
            report.Fault("boxes.height", box.Id, $"drop {box.Drop:F2}, asked {drop:F2} mm");
        }

        var finished = plan.Json.Member("summary").Member("finishedHeight").Length(plan.Room.Unit);
        var gap = box.Underside - box.Drop;
        if (Math.Abs(box.Top - (box.BoardedAbove ? gap : plan.Room.OldCeiling)) > 0.01 || box.Board < 6
            || (finished is { } height && box.UndersideHeight is { } low && Math.Abs(low - (height - box.Drop)) > 0.01))
        {
            report.Fault("boxes.height", box.Id, $"top {box.Top:F2}, frame to {box.FrameBottom:F2}, underside {box.Underside:F2} and drop {box.Drop:F2} mm do not agree");
        }
    }

    private static void Place(GivenPlan plan, JsonElement asked, GivenBulkhead box, Geometry floor, AuditReport report)
    {
        var deeper = Planes.Union(plan.Bulkheads.Where(b => b.Underside > box.Underside - Close).Select(b => (Geometry)b.Footprint));
        var (least, most) = Due(plan, asked, box, floor);
        var missing = least.Minus(deeper).Area;
        if (missing > 50 + (least.Area * 1e-6))
        {
            report.Fault("boxes.place", box.Id, $"{missing:F0} mm² of what was asked are not in it");
        }

        // of what a shallower one was to have, the deeper may take a strip too narrow to frame
        var shallower = Planes.Union(plan.Bulkheads.Select((b, i) => (b, i)).Where(x => x.b.Underside < box.Underside + Close && x.b != box)
            .Select(x => Due(plan, plan.Room.Json.Member("bulkheads").Items().ElementAt(x.i), x.b, floor).Most));
        var beyond = box.Footprint.Minus(most.Grown(Close)).Minus(TooNarrow(plan, box, floor.Minus(least)));
        var narrow = beyond.Meet(shallower).Minus(beyond.Grown(-100).Grown(101));
        var outside = beyond.Area - narrow.Area + box.Footprint.Minus(floor.Grown(Close)).Area;
        if (outside > 50)
        {
            report.Fault("boxes.place", box.Id, $"{outside:F0} mm² lie outside of what was asked");
        }

        var ringed = Math.Abs(Border.SignedArea(box.Ring));
        if (Math.Abs(ringed - box.Footprint.Area) > 10 + (ringed * 1e-6))
        {
            report.Fault("boxes.ring", box.Id, $"its ring holds {ringed:F0} mm², its parts {box.Footprint.Area:F0}");
        }
    }

    /// <summary>
    /// What a bulkhead and those as deep or deeper leave of the floor and is nowhere 151 mm wide, as in the point of an oblique wall: too
    /// narrow to board, however far it runs.
    /// </summary>
    private static Geometry TooNarrow(GivenPlan plan, GivenBulkhead box, Geometry beside)
    {
        if (box.BoardedAbove)
        {
            return Planes.Factory.CreatePolygon();
        }

        var left = beside.Minus(Planes.Union(plan.Bulkheads.Where(b => b != box && !b.BoardedAbove && b.Underside > box.Underside - Close).Select(b => (Geometry)b.Footprint)));
        return left.Minus(left.Grown(-75.5).Grown(76.5));
    }

    /// <summary>The least and the most that the footprint may be, before deeper bulkheads take their share.</summary>
    private static (Geometry Least, Geometry Most) Due(GivenPlan plan, JsonElement asked, GivenBulkhead box, Geometry floor)
    {
        if (asked.Member("outline") is { } outline)
        {
            var own = Planes.Polygon([plan.Room.Points(outline)]).Meet(floor);
            return (own, box.BoardedAbove ? own : Boxed(own));
        }

        if (asked.Member("edges") is { } edges)
        {
            return AlongEdges(plan, [.. edges.EnumerateArray().Select(e => e.GetInt32())], asked.Member("width").Length(plan.Room.Unit) ?? 0, floor);
        }

        var wood = box.Face;
        var around = Hidden(plan, asked).Select(s =>
        {
            var clear = Math.Max(plan.Room.Imperial ? 25.4 : 25, s.Member("clearance").Length(plan.Room.Unit) ?? 0);
            return Shape(s, plan.Room).Grown(clear + box.Board + wood);
        }).ToList();
        return (Planes.Union(around).Grown(-0.5).Meet(floor), Planes.Union(around.Select(Boxed)));
    }

    // square to each edge, as far as that is in the room beside it; at most also the corners where it is mitred or runs on
    private static (Geometry Least, Geometry Most) AlongEdges(GivenPlan plan, List<int> edges, double width, Geometry floor)
    {
        var outline = plan.Room.Rings[0];
        var left = Border.SignedArea(outline) > 0;
        List<Geometry> least = [], most = [];
        foreach (var edge in edges)
        {
            var (a, b) = (outline[edge], outline[(edge + 1) % outline.Count]);
            var length = Planes.Apart(a, b);
            var (du, dv) = ((b.U - a.U) / length, (b.V - a.V) / length);
            var (iu, iv) = left ? (-dv, du) : (dv, -du);
            Geometry Strip(double on) => Planes.Polygon([[
                new(a.U - (du * on), a.V - (dv * on)), new(b.U + (du * on), b.V + (dv * on)),
                new(b.U + (du * on) + (iu * width), b.V + (dv * on) + (iv * width)), new(a.U - (du * on) + (iu * width), a.V - (dv * on) + (iv * width))]]);
            var middle = Planes.Point(new(a.U + (du * length / 2), a.V + (dv * length / 2)));
            var beside = Strip(0).Meet(floor);
            least.AddRange(Enumerable.Range(0, beside.NumGeometries).Select(beside.GetGeometryN).Where(g => g is Polygon && g.Distance(middle) < 0.1));
            most.Add(Strip(11 * width));
        }

        return (Planes.Union(least).Grown(-0.05), Boxed(Planes.Union(most)));
    }

    // and a strip to a wall or to another bulkhead that is too narrow to board
    private static Geometry Boxed(Geometry own) => own.Grown(151);

    private static IEnumerable<JsonElement> Hidden(GivenPlan plan, JsonElement asked)
    {
        var ids = asked.Member("hides").Items().Select(h => h.GetString()).ToHashSet();
        return plan.Room.Json.Member("services").Items().Where(s => ids.Contains(s.Member("id").Text()));
    }

    internal static Geometry Shape(JsonElement service, AskedRoom room) => service.Member("path") is { } path
        ? Planes.Strip(path.EnumerateArray().Select(room.Place), (service.Member("width").Length(room.Unit) ?? 0) / 2)
        : Planes.Polygon([room.Points(service.GetProperty("outline"))]);

    private static void Covered(GivenPlan plan, Geometry floor, AuditReport report)
    {
        var strap = plan.Room.Json.Member("strapping").Member("size").Member("thickness").Length(plan.Room.Unit);
        var checks = plan.Json.Member("checks").Items().Where(c => c.Member("rule").Text() == "service-covered").ToList();
        foreach (var service in plan.Room.Json.Member("services").Items().Where(s => s.Member("id") is not null))
        {
            var id = service.Member("id").Text()!;
            var bottom = service.Member("bottom").Length(plan.Room.Unit) ?? 0;
            if (bottom <= (strap ?? 19.05) + plan.Room.OldCeiling + 0.06)
            {
                continue;
            }

            var shape = Shape(service, plan.Room).Meet(floor);
            var over = plan.Bulkheads.Where(b => !b.BoardedAbove && b.Footprint.Meet(shape).Area > shape.Area * 1e-4).ToList();
            var bare = shape.Minus(Planes.Union(over.Select(b => (Geometry)b.Footprint))).Area > (shape.Area * 2e-4) + 1;
            var thick = over.SelectMany(b => b.Members).Where(m => m.Role is "tie" or "ledger" or "rail").Select(m => m.Bottom - m.Top).DefaultIfEmpty(0).Max();
            var low = over.Exists(b => bottom > b.FrameBottom - thick + 0.05);
            var said = checks.Where(c => c.Member("where").Items().Any(w => w.GetString() == id)).ToList();
            var failed = said.Exists(c => c.Member("status").Text() == "fail");
            if (failed != (bare || low) && shape.Area > 1000)
            {
                report.Fault("boxes.covered", id, $"the check says {(failed ? "that it shows" : "that it is covered")}; it is {(bare ? "bare" : low ? "too low" : "inside a bulkhead")}");
            }
        }
    }
}
