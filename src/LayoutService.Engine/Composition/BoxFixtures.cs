using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Fixtures in the undersides of bulkheads. They are placed once the frame and the boards are known, each in the piece of
/// bulkhead that it was asked for in: clear of ties, rails and ledgers as of straps, of the joints of its board as of seams,
/// of its edges as of walls, and of the services inside it.
/// </summary>
public static class BoxFixtures
{
    /// <summary>All fixtures in the order of the survey: those of the ceiling as placed, and those of the bulkheads.</summary>
    public static IReadOnlyList<PlacedFixture> With(FramedRoom room, IReadOnlyList<PlacedFixture> inCeiling, CutBulkheads cut)
    {
        if (inCeiling.Count == room.Survey.Fixtures.Count)
        {
            return inCeiling;
        }

        var placed = inCeiling.ToDictionary(p => p.Wish.Id);
        var hosted = room.Survey.Fixtures
            .Where(f => !placed.ContainsKey(f.Id))
            .GroupBy(f => (Solid: room.HostOf(f)!, Patch: PatchOf(room, f)));
        foreach (var ((solid, patch), wishes) in hosted.Select(g => (g.Key, g)).ToList())
        {
            var box = cut.Planned[solid.Index];
            var piece = solid.Footprint.Patches[patch];
            var hollow = new BoxHollow(solid.Board, solid.FrameBottom - solid.Top, solid.Wish.BoardedAbove);
            var rules = FixtureRounds.Rules(room.Survey) with { FinishToJoist = solid.Underside, Inside = hollow };
            var planner = new FixturePlanner(room, rules, [.. wishes], Region.Of(piece.Outer, [.. piece.Holes.Select(h => (h, 0L))]));
            foreach (var fixture in planner.Place(Wood(box), Joints(box)))
            {
                placed[fixture.Wish.Id] = fixture with { Host = solid.Index };
            }
        }

        return [.. room.Survey.Fixtures.Select(f => placed[f.Id])];
    }

    /// <summary>Wood behind the board of the underside, seen from above.</summary>
    public static List<PlanBox> Wood(PlannedBulkhead box)
    {
        var found = new List<PlanBox>();
        var half = box.Solid.Wish.Frame.Face.Units / 2.0;
        for (var i = 0; i < box.Members.Count; i++)
        {
            var member = box.Members[i];
            if (member.Role == MemberRole.Rung || member.Bottom != box.Solid.FrameBottom || member.From == member.To)
            {
                continue;
            }

            var length = Rings.DistanceBetween(member.From, member.To);
            var (u, v) = ((long)Math.Round(-(member.To.V - member.From.V) / length * half), (long)Math.Round((member.To.U - member.From.U) / length * half));
            ServiceBoxes.Add(
                found, [new(member.From.U + u, member.From.V + v), new(member.To.U + u, member.To.V + v), new(member.To.U - u, member.To.V - v), new(member.From.U - u, member.From.V - v)], i);
        }

        return found;
    }

    /// <summary>Joints between the boards of the underside: their edges that are no edge of the bulkhead.</summary>
    public static List<PlanBox> Joints(PlannedBulkhead box)
    {
        const double onEdge = 2.0 * Measures.Length.PerMillimetre;
        var found = new List<PlanBox>();
        var sides = box.Solid.Footprint.Patches.SelectMany(p => p.Loops).SelectMany(Edges).ToList();
        foreach (var (from, to) in box.Boards.Where(b => b.Face == BoardFace.Underside).SelectMany(b => Edges(b.Outline)))
        {
            var middle = new Uv((from.U + to.U) / 2, (from.V + to.V) / 2);
            if (!sides.Exists(s => Rings.Distance(middle, s.From, s.To) < onEdge))
            {
                ServiceBoxes.Add(found, [from, to], -1);
            }
        }

        return found;
    }

    private static IEnumerable<(Uv From, Uv To)> Edges(IReadOnlyList<Uv> ring) => ring.Select((c, i) => (c, ring[(i + 1) % ring.Count]));

    /// <summary>Which piece of its bulkhead a fixture was asked for in.</summary>
    public static int PatchOf(FramedRoom room, FixtureWish wish)
    {
        var (solid, at) = (room.HostOf(wish)!, room.Frame.In(wish.At));
        return Enumerable.Range(0, solid.Footprint.Patches.Count)
            .MinBy(i => Footprint.Of([solid.Footprint.Patches[i].Outer]).Holds(at) ? 0 : 1);
    }
}
