using System.Text.Json;
using LayoutService.Auditor.Reading;
using NetTopologySuite.Geometries;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Holes in the undersides of bulkheads: a fixture asked for under a bulkhead is in that bulkhead; unless it is told as a
/// conflict its hole keeps off the wood behind the board, the joints of the board, the bulkhead's edges, services and other
/// holes; it stands on every board piece that it lies in; its clearances are those drawn.
/// </summary>
internal static class BoxHoles
{
    private const double Close = 0.06;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        if (plan.Bulkheads.Count == 0 || plan.Json.Member("fixtures") is null)
        {
            return;
        }

        var asked = AskedFixture.Of(plan);
        var given = plan.Json.Member("fixtures").Items().Where(f => asked.ContainsKey(f.Member("id").Text() ?? ""))
            .Select(f => new GivenFixture(f, asked[f.Member("id").Text()!], plan.Room)).ToList();
        foreach (var fixture in given)
        {
            var at = fixture.Asked.At ?? fixture.At;
            var under = plan.Bulkheads.FirstOrDefault(b => !b.Footprint.IsEmpty && b.Footprint.Distance(Planes.Point(at)) < 0.001);
            var inside = under is not null && under.Footprint.Boundary.Distance(Planes.Point(at)) > 0.1;
            if (inside ? fixture.Host != under!.Id : under is null && fixture.Host is not null)
            {
                report.Fault("boxholes.host", fixture.Asked.Id, $"is in {fixture.Host ?? "the ceiling"}, asked for under {under?.Id ?? "the ceiling"}");
            }
        }

        foreach (var box in plan.Bulkheads)
        {
            var own = given.Where(g => g.Host == box.Id).ToList();
            own.ForEach(fixture => Look(fixture, own, box, plan, report));
            Cutouts(own, box, plan, report);
        }
    }

    private static void Look(GivenFixture fixture, List<GivenFixture> beside, GivenBulkhead box, GivenPlan plan, AuditReport report)
    {
        var wood = box.Members.Where(m => m.Role != "rung" && Math.Abs(m.Bottom - box.FrameBottom) < 0.01 && m.Drawn > 1).Select(m => (Geometry)Planes.Strip([m.From, m.To], box.Face / 2)).ToList();
        var joints = Joints(box).ToList();
        var square = box.Members.All(m => Math.Abs(m.From.U - m.To.U) < 0.01 || Math.Abs(m.From.V - m.To.V) < 0.01);
        double Nearest(IEnumerable<Geometry> all) => all.Select(g => To(fixture, g)).DefaultIfEmpty(-1).Min();
        var (strap, seam, wall) = (Nearest(wood), Nearest(joints), To(fixture, box.Footprint.Boundary));
        if (square)
        {
            Compare("strap", strap);
            Compare("seam", seam);
        }

        Compare("wall", wall);
        // corners of square boxes and slices of what lies askew may stand for what is drawn: enough to explain a conflict
        var loose = fixture.Status == "conflict" ? square ? 0.5 * (fixture.Asked.HalfU + fixture.Asked.Clear) : 150 : -Close;
        var inside = box.Footprint.Contains(Planes.Point(fixture.At));
        var near = new List<string>();
        Add(strap >= 0 && strap < fixture.Asked.Clear + loose, "wood of the frame");
        Add(seam >= 0 && seam < fixture.Asked.Clear + loose, "a joint of the board");
        Add(!inside || wall < fixture.Asked.Edge + loose, "an edge of the bulkhead");
        Add(beside.Exists(o => o != fixture && fixture.To(o) < Math.Max(fixture.Asked.Clear, o.Asked.Clear) + loose), "another hole");
        Add(plan.Room.Json.Member("services").Items().Where(s => !(fixture.Asked.Panel && AccessReach.NeedsReach(s))).Any(s => ServiceReach.Near(s, fixture, plan.Room, box.Underside, fixture.Status == "conflict" ? 150 : -Close, box.Board)), "a service");
        Add(!box.BoardedAbove && fixture.Asked.Body > box.Underside + 0.01
            && plan.Room.Joists.Members.Any(j => fixture.To(j.Along, j.Across) < (fixture.Status == "conflict" ? 13.1 : 6 - Close)), "a joist");
        Add(box.BoardedAbove && fixture.Asked.Body > box.Underside - box.Top + 0.01, "the board above");
        if (fixture.Status == "conflict")
        {
            Add(fixture.Asked.Box.Count > 0, "its driver box");
        }

        if (fixture.Status == "conflict" != near.Count > 0)
        {
            report.Fault("boxholes.clear", fixture.Asked.Id, $"is {fixture.Status} in {box.Id}, with {(near.Count == 0 ? "nothing" : string.Join(", ", near))} in its way");
        }

        void Add(bool so, string what)
        {
            if (so)
            {
                near.Add(what);
            }
        }

        void Compare(string name, double drawn)
        {
            var stated = fixture.Json.Member("clearances").Member(name).Length(plan.Room.Unit) ?? -1;
            if (Math.Abs(Math.Max(drawn, drawn < 0 ? -1 : 0) - stated) > Close)
            {
                report.Fault("boxholes.clearances", fixture.Asked.Id, $"{name} {stated:F2}, drawn {drawn:F2} mm");
            }
        }
    }

    private static void Cutouts(List<GivenFixture> own, GivenBulkhead box, GivenPlan plan, AuditReport report)
    {
        foreach (var (board, json) in box.Boards.Zip(box.Json.Member("boards").Items()))
        {
            var cutouts = json.Member("cutouts").Items().ToList();
            foreach (var cutout in cutouts.Where(c => !own.Exists(f => f.Asked.Id == c.Member("fixtureId").Text())))
            {
                report.Fault("boxholes.cutouts", board.Id, $"a hole for {cutout.Member("fixtureId").Text()}, which is elsewhere");
            }

            foreach (var fixture in own)
            {
                var holes = cutouts.Where(c => c.Member("fixtureId").Text() == fixture.Asked.Id).ToList();
                var shared = board.IsFace ? 0 : Hole(fixture).Meet(Planes.Polygon([board.Outline])).Area;
                if (holes.Count > 1 || (holes.Count == 0 && shared > 20) || (holes.Count == 1 && (board.IsFace || To(fixture, Planes.Polygon([board.Outline])) > Close)))
                {
                    report.Fault("boxholes.cutouts", board.Id, $"{holes.Count} holes for {fixture.Asked.Id}, of which {shared:F0} mm² lie in it");
                }

                foreach (var hole in holes)
                {
                    FixtureCutouts.Sized(hole, board.Id, fixture, plan, report);
                    var (x, y) = hole.GetProperty("corner").Point(plan.Room.Unit);
                    if (!board.Outline.Any(c => Planes.Apart(c, plan.Room.Frame.At(x, y)) < Close))
                    {
                        report.Fault("boxholes.cutouts", board.Id, $"{fixture.Asked.Id} is measured from no corner of the piece");
                    }
                }
            }
        }
    }

    private static IEnumerable<Geometry> Joints(GivenBulkhead box)
    {
        foreach (var board in box.Boards.Where(b => !b.IsFace))
        {
            for (var i = 0; i < board.Outline.Count; i++)
            {
                var edge = new Wall(0, board.Outline[i], board.Outline[(i + 1) % board.Outline.Count]);
                if (box.Footprint.Boundary.Distance(Planes.Point(edge.Middle())) > 2)
                {
                    yield return Planes.Factory.CreateLineString([new Coordinate(edge.A.U, edge.A.V), new Coordinate(edge.B.U, edge.B.V)]);
                }
            }
        }
    }

    private static double To(GivenFixture fixture, Geometry what) => fixture.Asked.Round
        ? Math.Max(0, what.Distance(Planes.Point(fixture.At)) - fixture.Asked.HalfU)
        : what.Distance(Hole(fixture));

    // a round one as its square, a little less than its circle's area apart
    private static Polygon Hole(GivenFixture fixture)
    {
        var (u, v) = fixture.Asked.Round ? (fixture.Asked.HalfU * 0.7, fixture.Asked.HalfV * 0.7) : (fixture.Asked.HalfU, fixture.Asked.HalfV);
        return Planes.Polygon([[new(fixture.At.U - u, fixture.At.V - v), new(fixture.At.U + u, fixture.At.V - v), new(fixture.At.U + u, fixture.At.V + v), new(fixture.At.U - u, fixture.At.V + v)]]);
    }
}
