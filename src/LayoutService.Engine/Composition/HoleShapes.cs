using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>Where holes lie to straight edges and to parts of the board.</summary>
public static class HoleShapes
{
    /// <summary>Clear distance from the edge of a hole to a straight edge, in units; 0 where the edge runs through a rectangular hole, negative through a round one.</summary>
    public static double Distance(Hole hole, Uv from, Uv to) => hole.Round
        ? Rings.Distance(hole.At, from, to) - hole.HalfU
        : Crossed(hole, from, to) ? 0 : Math.Min(
            Corners(hole).Min(c => Rings.Distance(c, from, to)),
            Math.Min(OffBox(hole, from), OffBox(hole, to)));

    /// <summary>True when some of the hole lies in the part.</summary>
    public static bool Meets(BoardPart part, Hole hole)
    {
        if (!part.Along.Overlaps(hole.Along) || !part.Across.Overlaps(hole.Across))
        {
            return false;
        }

        if (part.Rectangle)
        {
            return !hole.Round || new PlanBox(part.Along, part.Across, 0).DistanceTo(hole) == 0;
        }

        return Meets(part.Ring, hole);
    }

    /// <summary>True when some of the hole lies in the ring.</summary>
    public static bool Meets(IReadOnlyList<Uv> ring, Hole hole) =>
        Holds(ring, hole.At)
        || ring.Where((corner, i) => Distance(hole, corner, ring[(i + 1) % ring.Count]) < 0).Any()
        || (!hole.Round && (Corners(hole).Any(c => Holds(ring, c)) || ring.Any(c => OffBox(hole, c) == 0)));

    // what runs through a rectangle crosses one of its diagonals
    private static bool Crossed(Hole hole, Uv from, Uv to)
    {
        Uv low = new(hole.Along.Lo, hole.Across.Lo), high = new(hole.Along.Hi, hole.Across.Hi);
        return Cross(low, high, from, to) || Cross(low with { V = high.V }, high with { V = low.V }, from, to);
    }

    private static bool Cross(Uv a, Uv b, Uv c, Uv d) =>
        Int128.Sign(Rings.Turn(a, b, c)) * Int128.Sign(Rings.Turn(a, b, d)) <= 0 && Int128.Sign(Rings.Turn(c, d, a)) * Int128.Sign(Rings.Turn(c, d, b)) <= 0;

    private static IEnumerable<Uv> Corners(Hole hole) =>
        [new(hole.Along.Lo, hole.Across.Lo), new(hole.Along.Hi, hole.Across.Lo), new(hole.Along.Hi, hole.Across.Hi), new(hole.Along.Lo, hole.Across.Hi)];

    private static double OffBox(Hole hole, Uv place) =>
        new PlanBox(hole.Along, hole.Across, 0).DistanceTo(new Hole(hole.FixtureId, place, 0, 0, true, 0));

    private static bool Holds(IReadOnlyList<Uv> ring, Uv place)
    {
        var inside = false;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a.V > place.V != b.V > place.V && place.U < a.U + ((double)(b.U - a.U) * (place.V - a.V) / (b.V - a.V)))
            {
                inside = !inside;
            }
        }

        return inside;
    }
}
