using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Bulkheads;

/// <summary>
/// How wood along the sides of a bulkhead meets at corners: one length runs through, the other butts against it. A face runs
/// through to a wall or a deeper bulkhead and the ledger stops at it; of two alike the one that comes first in the loop runs through, unless the
/// other is carried on past an inside corner.
/// </summary>
internal sealed class BoxCorners
{
    private readonly IReadOnlyList<Side> _loop;
    private readonly HashSet<int> _backward;

    /// <param name="loop">Sides in order, the bulkhead on the left.</param>
    /// <param name="backward">Sides that are carried on past the corner where they begin.</param>
    public BoxCorners(IReadOnlyList<Side> loop, HashSet<int> backward) => (_loop, _backward) = (loop, backward);

    /// <summary>Sine of the turn at the end of a side: positive at an outside corner, negative at an inside one.</summary>
    public static double Turn(Side side, Side next) => (side.Along.U * next.Along.V) - (side.Along.V * next.Along.U);

    /// <summary>From where to where a line at <paramref name="inward"/> runs along side i, in distances from its start.</summary>
    public (double From, double To) Run(int i, double inward)
    {
        var (side, before, next) = (_loop[i], _loop[(i + _loop.Count - 1) % _loop.Count], _loop[(i + 1) % _loop.Count]);
        return (
            Meets(side, before, 0, inward, Turn(before, side), StartsThrough(i)),
            Meets(side, next, side.Length, inward, Turn(side, next), EndsThrough(i)));
    }

    /// <summary>Centre line and length to cut: to the long point of a slanting end.</summary>
    public (double From, double To, double Cut) Centre(int i)
    {
        var side = _loop[i];
        var (from, to) = Run(i, (side.Outer + side.Inner) / 2.0);
        var (outerFrom, outerTo) = Run(i, side.Outer);
        var (innerFrom, innerTo) = Run(i, side.Inner);
        return (from, to, Math.Max(outerTo, innerTo) - Math.Min(outerFrom, innerFrom));
    }

    private bool EndsThrough(int i)
    {
        var next = (i + 1) % _loop.Count;
        return !Ledged(i) || Ledged(next)
            ? Over(i, next, !_backward.Contains(next))
            : Over(i, next, false);
    }

    private bool StartsThrough(int i)
    {
        var before = (i + _loop.Count - 1) % _loop.Count;
        return Ledged(i) && !Ledged(before)
            ? Over(i, before, false)
            : Over(i, before, (Ledged(before) && !Ledged(i)) || _backward.Contains(i));
    }

    private bool Ledged(int i) => _loop[i].Kind is SideKind.Wall or SideKind.Rest;

    // beside a side without wood of its own there is nothing to butt against
    private bool Over(int i, int other, bool rule) => !_loop[other].Carries || rule;

    private static double Meets(Side side, Side other, double corner, double inward, double turn, bool through)
    {
        if (Math.Abs(turn) < 0.02)
        {
            return corner;
        }

        var outside = turn > 0;
        double line = !other.Carries ? 0 : through == outside ? other.Outer : other.Inner;
        var facing = (side.Inward.U * other.Inward.U) + (side.Inward.V * other.Inward.V);
        var along = (side.Along.U * other.Inward.U) + (side.Along.V * other.Inward.V);
        return corner + ((line - (inward * facing)) / along);
    }
}
