using LayoutService.Auditor.Reading;
using NetTopologySuite.Geometries;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// The frame of each bulkhead: members inside it, as long as drawn, cut once and from the stock they name; rungs and ties
/// near enough to each other; a rail or a ledger along every side, and what each is fastened to is there.
/// </summary>
internal static class BoxFrames
{
    private const double Close = 0.1;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        if (plan.Bulkheads.Count == 0)
        {
            return;
        }

        var cuts = plan.Sticks.SelectMany(s => s.Cuts.Select(c => (c.PieceId, c.Length, s.StockId))).ToLookup(c => c.PieceId);
        var known = Known(plan);
        foreach (var box in plan.Bulkheads)
        {
            var inside = box.Footprint.Grown(Close);
            foreach (var member in box.Members)
            {
                Drawn(box, member, inside, report);
                var own = cuts[member.Id].ToList();
                if (own.Count != 1 || Math.Abs(own[0].Length - member.Cut) > 0.02 || own[0].StockId != member.StockId)
                {
                    report.Fault("boxes.cuts", member.Id, $"{member.Cut:F2} mm of {member.StockId}, cut {own.Count} times: {string.Join(' ', own.Select(c => $"{c.Length:F2} of {c.StockId}"))}");
                }
            }

            Backed(box, known, report);
            Sides(plan, box, report);
            Carried(plan, box, report);
        }
    }

    private static void Drawn(GivenBulkhead box, GivenMember member, Geometry inside, AuditReport report)
    {
        var (length, height) = (member.Drawn, member.Bottom - member.Top);
        if (member.Role == "rung" ? length > 0.01 || Math.Abs(height - member.Length) > 0.01 : Math.Abs(length - member.Length) > 0.02)
        {
            report.Fault("boxes.length", member.Id, $"says {member.Length:F2}, drawn {length:F2} long and {height:F2} mm high");
        }

        if (member.Cut < member.Length - 0.01)
        {
            report.Fault("boxes.length", member.Id, $"cut {member.Cut:F2}, shorter than its {member.Length:F2} mm");
        }

        var above = member.Role == "blocking" ? member.Bottom < 0.01 : member.Top > box.Top - 0.01 && member.Bottom < box.FrameBottom + 0.01;
        var line = Planes.Factory.CreateLineString([new Coordinate(member.From.U, member.From.V), new Coordinate(member.To.U, member.To.V)]);
        var within = member.Role == "blocking" || (length > 0.01 ? inside.Covers(line) : inside.Covers(Planes.Point(member.From)));
        if (!above || height < 10 || !within)
        {
            report.Fault("boxes.inside", member.Id, $"a {member.Role} from {member.From} to {member.To}, {member.Top:F1} to {member.Bottom:F1} mm down, leaves {box.Id}");
        }
    }

    private static Dictionary<string, HashSet<string>> Known(GivenPlan plan) => new()
    {
        ["wall"] = [.. plan.Json.Member("walls").Items().Select(w => w.Member("id").Text() ?? "")],
        ["row"] = [.. plan.Rows.Select(r => r.Id)],
        ["joist"] = [.. plan.Json.Member("joists").Member("members").Items().Select(j => j.Member("id").Text() ?? "")],
        ["bulkhead"] = [.. plan.Bulkheads.Select(b => b.Id)],
        ["blocking"] = [.. plan.Bulkheads.SelectMany(b => b.Members).Where(m => m.Role == "blocking").Select(m => m.Id)],
    };

    private static void Backed(GivenBulkhead box, Dictionary<string, HashSet<string>> known, AuditReport report)
    {
        foreach (var (member, kind, of) in box.Backing)
        {
            if (of.Count == 0 || !known.TryGetValue(kind, out var ids) || of.Any(id => !ids.Contains(id)) || !box.Members.Any(m => m.Id == member))
            {
                report.Fault("boxes.backing", member, $"is fastened to {kind} [{string.Join(' ', of)}]");
            }
        }

        var held = box.Backing.Select(b => b.MemberId).ToHashSet();
        foreach (var member in box.Members.Where(m => !held.Contains(m.Id) && (m.Role == "ledger" || (m.Role == "rail" && m.Top < box.Top + 0.01))))
        {
            report.Fault("boxes.backing", member.Id, $"a {member.Role} is fastened to nothing");
        }
    }

    // along each side of some length there is a rail, or at a wall a ledger, unless another bulkhead carries it
    private static void Sides(GivenPlan plan, GivenBulkhead box, AuditReport report)
    {
        foreach (var side in box.Sides.Where(s => Planes.Length(s) > 200))
        {
            var middle = side.Middle();
            // a strip thinner than the wood has none
            if (!Deep(box, side, middle) || Neighbour(plan, box, middle) is not null || plan.Room.Floor.Walls.Any(w => w.Ring > 0 && w.Distance(middle) < Close))
            {
                continue;
            }

            var role = plan.Room.Floor.Walls.Any(w => w.Distance(middle) < Close && !plan.Room.IsOpen(middle)) ? "ledger" : "rail";
            if (!box.Members.Any(m => m.Role == role && m.Line.Distance(middle) < 80))
            {
                report.Fault("boxes.sides", box.Id, $"no {role} along the side through {middle.U:F0}, {middle.V:F0}");
            }

            if (role == "rail")
            {
                Rungs(plan, box, side, report);
            }
        }
    }

    // true where the bulkhead behind a place on its side is thicker than the wood
    private static bool Deep(GivenBulkhead box, Wall side, Uv place)
    {
        var length = Planes.Length(side);
        var (u, v) = (-(side.B.V - side.A.V) / length * 60, (side.B.U - side.A.U) / length * 60);
        return box.Footprint.Contains(Planes.Point(new(place.U + u, place.V + v))) || box.Footprint.Contains(Planes.Point(new(place.U - u, place.V - v)));
    }

    /// <summary>The bulkhead on the other side of a place on the border of one.</summary>
    public static GivenBulkhead? Neighbour(GivenPlan plan, GivenBulkhead box, Uv at) =>
        plan.Bulkheads.FirstOrDefault(b => b != box && b.Footprint.Distance(Planes.Point(at)) < Close);

    private static double Spacing(AskedRoom room) => (room.Json.Member("rules")?.ToString().Contains("bulkhead-rung", StringComparison.Ordinal) ?? false)
        ? double.MaxValue : room.Imperial ? 406.4 : 400;

    private static void Rungs(GivenPlan plan, GivenBulkhead box, Wall side, AuditReport report)
    {
        var rungs = box.Members.Where(m => m.Role == "rung" && side.Distance(m.From) < 90).Select(m => Planes.Apart(side.A, m.From)).Order().ToList();
        for (var i = 1; i < rungs.Count; i++)
        {
            // against another bulkhead nearly as deep there is no room for rungs, and a strip thinner than the wood beside a post has none
            var share = (rungs[i] + rungs[i - 1]) / 2 / Planes.Length(side);
            var between = new Uv(side.A.U + ((side.B.U - side.A.U) * share), side.A.V + ((side.B.V - side.A.V) * share));
            if (rungs[i] - rungs[i - 1] > Spacing(plan.Room) + 12 && Neighbour(plan, box, between) is null && Deep(box, side, between) && !BoxJoints.InWay(plan, between))
            {
                report.Fault("boxes.rungs", box.Id, $"rungs {rungs[i] - rungs[i - 1]:F1} mm apart");
            }
        }
    }

    // no place of the underside lies further than half the spacing from the edge of 38 mm wood
    private static void Carried(GivenPlan plan, GivenBulkhead box, AuditReport report)
    {
        var wood = box.Members.Where(m => m.Role != "rung" && Math.Abs(m.Bottom - box.FrameBottom) < 0.01).Select(m => m.Line).ToList();
        var around = box.Footprint.EnvelopeInternal;
        for (var u = around.MinX + 37; u < around.MaxX; u += 97)
        {
            for (var v = around.MinY + 41; v < around.MaxY; v += 97)
            {
                var place = new Uv(u, v);
                var apart = wood.Count == 0 ? double.MaxValue : wood.Min(w => w.Distance(place));
                if (apart - 19 > Spacing(plan.Room) / 2 && box.Footprint.Contains(Planes.Point(place)) && box.Footprint.Boundary.Distance(Planes.Point(place)) > 100)
                {
                    report.Fault("boxes.carried", box.Id, $"its board at {u:F0}, {v:F0} is {apart:F0} mm from wood");
                    return;
                }
            }
        }
    }
}
