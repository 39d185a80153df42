using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// Wood for the board's edges where it is screwed to the joists. Along a wall beside which no joist starts within 150 mm, and along an
/// oblique one that crosses joists further apart than the spacing allowed, a ledger of 2x4, its underside flush with the joists; at the edge
/// of an opening, a bulkhead or a partition, blocks from joist to joist, no further apart than that spacing, that keep out of openings (see <see cref="OpeningBlocks"/>). An edge square to the joists
/// spans from joist to joist and asks for nothing. Common practice, no source. Cost: edges × joists.
/// </summary>
public static class EdgeNailers
{
    /// <summary>How far board may run on past the last joist's face: 150 mm.</summary>
    public const long Overhang = 150 * Length.PerMillimetre;

    /// <summary>Wood that the board's edge needs of a joist under it: 16 mm.</summary>
    private const long Hold = PieceSupports.Least;

    public static IEnumerable<NailerLine> Of(FramedRoom room) => All(room).DistinctBy(n => (n.From, n.To));

    private static IEnumerable<NailerLine> All(FramedRoom room)
    {
        var spacing = room.Survey.Strapping.MaxSpacing.Units;
        foreach (var edge in room.Board.Edges)
        {
            if (WallRows.IsSquare(edge) || edge.From.U == edge.To.U || IsNarrowPost(room, edge, spacing))
            {
                continue;
            }

            foreach (var (from, to) in edge.Parallel ? BesideNone(room, edge) : BetweenFar(room, edge, spacing))
            {
                foreach (var nailer in edge.Source >= 0 ? [new NailerLine(NailerRole.Ledger, from, to, edge.Source, [])] : Blocks(room, edge, from, to, spacing))
                {
                    yield return nailer;
                }
            }
        }
    }

    // the board spans past a post that is narrower than the spacing
    private static bool IsNarrowPost(FramedRoom room, WallEdge edge, long spacing)
    {
        if (!room.IsOpening(edge.Source) || room.Survey.Room.Openings[-edge.Source - 1].Kind != OpeningKind.Post)
        {
            return false;
        }

        var ring = room.OpeningRings[-edge.Source - 1];
        return ring.Max(c => c.U) - ring.Min(c => c.U) <= spacing && ring.Max(c => c.V) - ring.Min(c => c.V) <= spacing;
    }

    // the stretches of an edge along the joists beside which none starts near enough, zone by zone
    private static IEnumerable<(Uv From, Uv To)> BesideNone(FramedRoom room, WallEdge edge)
    {
        // edges are walked with the board on the left: one towards +u has it above
        var above = edge.To.U > edge.From.U;
        var v = edge.From.V;
        var without = new List<Span>();
        foreach (var zone in room.Joists.Zones)
        {
            var along = zone.Along.Meet(edge.Along);
            if (along.Size > 0 && !Near(room.Joists.At(along.Middle), v, above))
            {
                without.Add(along);
            }
        }

        return Region.Merge(without).Where(s => s.Size >= Hold).Select(s => (new Uv(s.Lo, v), new Uv(s.Hi, v)));
    }

    private static bool Near(ReadOnlySpan<Support> supports, long v, bool above)
    {
        foreach (var support in supports)
        {
            var (starts, ends) = above ? (support.Lo - v, support.Hi - v) : (v - support.Hi, v - support.Lo);
            if (ends >= Hold && starts <= Overhang)
            {
                return true;
            }
        }

        return false;
    }

    // an oblique edge is carried where it crosses joists: whole when some two of them, or an end and the first, are too far apart along it
    private static IEnumerable<(Uv From, Uv To)> BetweenFar(FramedRoom room, WallEdge edge, long spacing)
    {
        var slope = (double)(edge.To.V - edge.From.V) / (edge.To.U - edge.From.U);
        var places = room.Joists.Zones
            .SelectMany(z => Enumerable.Range(z.FirstSupport, z.SupportCount).Select(s => (z.Along, room.Joists.Supports[s].Middle)))
            .Select(s => (s.Along, U: edge.From.U + ((s.Middle - edge.From.V) / slope)))
            .Where(s => s.Along.Lo <= s.U && s.U <= s.Along.Hi && edge.Along.Lo < s.U && s.U < edge.Along.Hi)
            .Select(s => s.U)
            .Order()
            .ToList();
        var stretch = Math.Sqrt(1 + (slope * slope));
        double at = edge.Along.Lo;
        foreach (var place in places.Append(edge.Along.Hi))
        {
            if ((place - at) * stretch > spacing)
            {
                return [(edge.From, edge.To)];
            }

            at = place;
        }

        return [];
    }

    private static IEnumerable<NailerLine> Blocks(FramedRoom room, WallEdge edge, Uv from, Uv to, long spacing)
    {
        var length = Rings.DistanceBetween(from, to);
        var parts = Math.Max(1, (int)Math.Ceiling(length / spacing));
        for (var i = 0; i < parts; i++)
        {
            var share = ((2 * i) + 1.0) / (2 * parts);
            var place = new Uv(room.SnapNear(from.U + (long)Math.Round((to.U - from.U) * share)), from.V + (long)Math.Round((to.V - from.V) * share));
            if (Bay(room, edge, place) is not { } bay)
            {
                continue;
            }

            // the board ends at the edge: it lies below one that is walked towards -u
            foreach (var block in OpeningBlocks.Of(room, place, edge.To.U < edge.From.U, bay, edge.Source, []))
            {
                yield return block;
            }
        }
    }

    // the clear bay over a place, as far as the room where no joist follows. Under a joist, none at an oblique edge, which that joist
    // carries; along the joists the bay on the board's side of it, since the edge has too little of the joist itself
    private static Span? Bay(FramedRoom room, WallEdge edge, Uv place)
    {
        var above = edge.To.U > edge.From.U;
        var (lo, hi) = (0L, room.Frame.SizeV);
        foreach (var support in room.Joists.At(place.U))
        {
            var over = support.Lo < place.V && place.V < support.Hi;
            if (over && !edge.Parallel)
            {
                return null;
            }

            if (support.Hi <= place.V || (over && above))
            {
                lo = Math.Max(lo, support.Hi);
            }
            else
            {
                hi = Math.Min(hi, support.Lo);
            }
        }

        return hi > lo ? new Span(lo, hi) : null;
    }
}
