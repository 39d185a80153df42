using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Bulkheads;

/// <summary>
/// One convex part of a bulkhead: its ring, for each edge how far in the wood along it reaches (less than 0 where the next part's
/// wood stops short), and whether it lies along an opening and has none.
/// </summary>
internal sealed record BoxPart(Uv[] Ring, long[] Wood, bool[] Bare, (double U, double V) Axis);

/// <summary>A rail carried on past an inside corner, from the corner's ladder to the far side; wood on its left.</summary>
internal sealed record Carrier(Side Line, double From, double To);

/// <summary>
/// Problem: divide a bulkhead with inside corners into convex parts that ties can cross square. Method: at every inside
/// corner one of its two sides is carried on until it meets something, the shorter first (ray shooting; at most one cut a
/// corner, so at most corners + 1 parts). The boards of the parts end on that line, over the middle of a rail. Cost: corners². Chosen over cutting at every corner's level, which would lay rails
/// slantwise across a bulkhead along an angled wall.
/// </summary>
internal sealed class BoxParts
{
    private readonly IReadOnlyList<IReadOnlyList<Side>> _loops;
    private readonly List<(Side Line, int Loop, int Index, bool Forward)> _cuts = [];
    private readonly long _face;

    public BoxParts(IReadOnlyList<IReadOnlyList<Side>> loops, long face)
    {
        (_loops, _face) = (loops, face);
        for (var l = 0; l < loops.Count; l++)
        {
            for (var i = 0; i < loops[l].Count; i++)
            {
                var next = (i + 1) % loops[l].Count;
                if (BoxCorners.Turn(loops[l][i], loops[l][next]) < -0.02)
                {
                    Cut(l, i, next);
                }
            }
        }
    }

    /// <summary>For each loop, the sides carried on past the corner where they begin.</summary>
    public HashSet<int> Backward(int loop) => [.. _cuts.Where(c => c.Loop == loop && !c.Forward).Select(c => c.Index)];

    /// <summary>The rails carried on, with where their wood begins and ends along their line.</summary>
    public IEnumerable<Carrier> Carriers(Func<int, BoxCorners> corners)
    {
        foreach (var (line, loop, index, forward) in _cuts)
        {
            var side = _loops[loop][index];
            var middle = (line.Outer + line.Inner) / 2.0;
            var run = side.Carries ? corners(loop).Run(index, middle) : (From: 0, To: side.Length);
            var past = forward ? Math.Max(0, run.To - side.Length) : Math.Max(0, -run.From);
            var stop = Stop(line, forward, middle);
            yield return forward ? new Carrier(line, past, stop) : new Carrier(line, stop, line.Length - past);
        }
    }

    public IEnumerable<BoxPart> Parts(Footprint footprint)
    {
        var cuts = _cuts.Select(c => c.Forward ? (c.Line.From, c.Line.At(c.Line.Length + 3, 0)) : (c.Line.At(-3, 0), c.Line.To)).ToList();
        foreach (var ring in footprint.Divided(cuts))
        {
            var (wood, bare) = (new long[ring.Length], new bool[ring.Length]);
            (double Length, (double, double) Axis) best = (-1, (1, 0));
            for (var i = 0; i < ring.Length; i++)
            {
                var (from, to) = (ring[i], ring[(i + 1) % ring.Length]);
                (wood[i], var own, bare[i]) = WoodAlong(from, to);
                var length = Rings.DistanceBetween(from, to) * (own ? 1000 : 1);
                if (length > best.Length + 2)
                {
                    var edge = new Side(from, to, SideKind.Rest, -1, 0, 0);
                    best = (length, edge.Along);
                }
            }

            yield return new BoxPart(ring, wood, bare, best.Axis);
        }
    }

    private (long Reach, bool Own, bool Bare) WoodAlong(Uv from, Uv to)
    {
        var middle = new Uv((from.U + to.U) / 2, (from.V + to.V) / 2);
        foreach (var side in _loops.SelectMany(l => l))
        {
            if (Rings.Distance(middle, side.From, side.To) < 6)
            {
                return (side.Inner, side.Carries, !side.Carries);
            }
        }

        foreach (var (line, _, _, _) in _cuts)
        {
            if (Rings.Distance(middle, line.From, line.To) < 6)
            {
                var edge = new Side(from, to, SideKind.Rest, -1, 0, 0);
                var left = (edge.Along.U * line.Along.U) + (edge.Along.V * line.Along.V) > 0;
                return (left ? line.Inner : -line.Outer, false, false);
            }
        }

        return (0, false, false);
    }

    private void Cut(int loop, int index, int next)
    {
        var (side, other) = (_loops[loop][index], _loops[loop][next]);
        var forward = Reach(side.To, side.Along);
        var backward = Reach(other.From, (-other.Along.U, -other.Along.V));
        var step = Math.Abs(forward - backward) > 2 ? forward < backward : Math.Abs(side.Along.V) >= Math.Abs(other.Along.V);
        // the boards of both parts end on the line, so the rail lies under it with half its face on either side
        var (outer, inner) = (-(_face / 2), _face - (_face / 2));
        var line = step
            ? new Side(side.To, side.At(side.Length + forward, 0), SideKind.Seam, -1, outer, inner)
            : new Side(other.At(-backward, 0), other.From, SideKind.Seam, -1, outer, inner);
        if (line.From != line.To)
        {
            _cuts.Add((line, loop, step ? index : next, step));
        }
    }

    // how far a line from a corner goes before it meets a side or an earlier cut
    private double Reach(Uv from, (double U, double V) along)
    {
        var nearest = double.MaxValue;
        foreach (var side in _loops.SelectMany(l => l).Concat(_cuts.Select(c => c.Line)))
        {
            if (Hit(from, along, side) is { } at && at > 16)
            {
                nearest = Math.Min(nearest, at);
            }
        }

        return nearest;
    }

    // where the carried rail meets the wood of what it runs into
    private double Stop(Side line, bool forward, double middle)
    {
        var end = forward ? line.To : line.From;
        foreach (var side in _loops.SelectMany(l => l).Concat(_cuts.Select(c => c.Line).Where(c => c != line)))
        {
            if (Rings.Distance(end, side.From, side.To) > 6 || end == side.From && side.Along == line.Along)
            {
                continue;
            }

            var turn = (line.Along.U * side.Inward.U) + (line.Along.V * side.Inward.V);
            if (Math.Abs(turn) < 0.1)
            {
                continue;
            }

            // coming from the wood's own side it stops at the wood, from behind it runs up to its back
            var inside = forward ? turn < 0 : turn > 0;
            double face = inside ? side.Inner : side.Outer;
            var facing = (line.Inward.U * side.Inward.U) + (line.Inward.V * side.Inward.V);
            var offset = ((line.From.U - side.From.U) * side.Inward.U) + ((line.From.V - side.From.V) * side.Inward.V);
            return (face - offset - (middle * facing)) / turn;
        }

        return forward ? line.Length : 0;
    }

    private static double? Hit(Uv from, (double U, double V) along, Side side)
    {
        var across = (along.U * side.Inward.U) + (along.V * side.Inward.V);
        if (Math.Abs(across) < 1e-9)
        {
            return null;
        }

        var distance = (((side.From.U - (double)from.U) * side.Inward.U) + ((side.From.V - (double)from.V) * side.Inward.V)) / across;
        var (u, v) = (from.U + (along.U * distance), from.V + (along.V * distance));
        var place = ((u - side.From.U) * side.Along.U) + ((v - side.From.V) * side.Along.V);
        return distance > 0 && place >= -2 && place <= side.Length + 2 ? distance : null;
    }
}
