using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Geometry;

/// <summary>What keeps a ring of corners from being the outline of anything.</summary>
public enum RingFaultKind
{
    /// <summary>Two neighbouring corners are the same place.</summary>
    RepeatedCorner,

    /// <summary>The outline turns straight back on itself at a corner.</summary>
    Spike,

    /// <summary>Two edges that are not neighbours cross or touch.</summary>
    Crossing,

    /// <summary>The corners enclose no area.</summary>
    NoArea,
}

/// <summary>A fault of a ring: at corner or edge <see cref="First"/>, and for a crossing with edge <see cref="Second"/>.</summary>
public readonly record struct RingFault(RingFaultKind Kind, int First, int Second);

/// <summary>
/// Whether a ring of corners is simple, exactly. Every edge is compared with every other: O(n²) in the number of corners,
/// which at 200 corners is 20,000 comparisons; a sweep would be quicker only far beyond that. Whole numbers, so a corner
/// that lies on an edge is told from one that nearly does.
/// </summary>
public static class RingFaults
{
    /// <summary>Faults of an open ring, corners first, then edges; at most <paramref name="most"/>.</summary>
    public static IReadOnlyList<RingFault> Of(IReadOnlyList<Point> ring, int most)
    {
        var faults = new List<RingFault>();
        AtCorners(ring, faults);
        if (faults.Count == 0)
        {
            BetweenEdges(ring, faults, most);
        }

        if (faults.Count == 0 && TwiceArea(ring) == 0)
        {
            faults.Add(new(RingFaultKind.NoArea, 0, 0));
        }

        return faults.Count <= most ? faults : faults[..most];
    }

    /// <summary>Twice the area that the ring encloses, in square units, never negative.</summary>
    public static Int128 TwiceArea(IReadOnlyList<Point> ring)
    {
        Int128 sum = 0;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            sum += Cross(ring[0], a, b);
        }

        return Int128.Abs(sum);
    }

    /// <summary>True when <paramref name="inner"/> lies inside <paramref name="outer"/>; it may touch it. Both are simple.</summary>
    public static bool Inside(IReadOnlyList<Point> inner, IReadOnlyList<Point> outer) =>
        Region.Polygon(Working(outer)).Covers(Region.Polygon(Working(inner)));

    /// <summary>True when two simple rings share more than their edges.</summary>
    public static bool Overlap(IReadOnlyList<Point> one, IReadOnlyList<Point> other)
    {
        var (a, b) = (Region.Polygon(Working(one)), Region.Polygon(Working(other)));
        return a.Intersects(b) && !a.Touches(b);
    }

    /// <summary>True when a place lies inside a simple ring or on its edge.</summary>
    public static bool Holds(IReadOnlyList<Point> ring, Point place)
    {
        var inside = false;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            var side = Cross(a, b, place);
            if (side == 0 && Within(a, b, place))
            {
                return true;
            }

            inside ^= (a.Y > place.Y) != (b.Y > place.Y) && (side > 0) == (b.Y > a.Y);
        }

        return inside;
    }

    private static Uv[] Working(IReadOnlyList<Point> ring) => [.. ring.Select(p => new Uv(p.X.Units, p.Y.Units))];

    private static void AtCorners(IReadOnlyList<Point> ring, List<RingFault> faults)
    {
        for (var i = 0; i < ring.Count; i++)
        {
            var (before, here, after) = (ring[(i + ring.Count - 1) % ring.Count], ring[i], ring[(i + 1) % ring.Count]);
            if (here == before)
            {
                faults.Add(new(RingFaultKind.RepeatedCorner, i, (i + ring.Count - 1) % ring.Count));
            }
            else if (here != after && Cross(before, here, after) == 0 && Dot(here, before, after) > 0)
            {
                faults.Add(new(RingFaultKind.Spike, i, 0));
            }
        }
    }

    private static void BetweenEdges(IReadOnlyList<Point> ring, List<RingFault> faults, int most)
    {
        for (var i = 0; i < ring.Count; i++)
        {
            for (var j = i + 2; j < ring.Count && faults.Count < most; j++)
            {
                var neighbours = i == 0 && j == ring.Count - 1;
                if (!neighbours && Meet(ring[i], ring[i + 1], ring[j], ring[(j + 1) % ring.Count]))
                {
                    faults.Add(new(RingFaultKind.Crossing, i, j));
                }
            }
        }
    }

    private static bool Meet(Point a, Point b, Point c, Point d)
    {
        var (sideC, sideD) = (Int128.Sign(Cross(a, b, c)), Int128.Sign(Cross(a, b, d)));
        var (sideA, sideB) = (Int128.Sign(Cross(c, d, a)), Int128.Sign(Cross(c, d, b)));
        if (sideC * sideD < 0 && sideA * sideB < 0)
        {
            return true;
        }

        return (sideC == 0 && Within(a, b, c)) || (sideD == 0 && Within(a, b, d))
            || (sideA == 0 && Within(c, d, a)) || (sideB == 0 && Within(c, d, b));
    }

    private static bool Within(Point a, Point b, Point c) =>
        Length.Min(a.X, b.X) <= c.X && c.X <= Length.Max(a.X, b.X)
        && Length.Min(a.Y, b.Y) <= c.Y && c.Y <= Length.Max(a.Y, b.Y);

    private static Int128 Cross(Point a, Point b, Point c) =>
        ((Int128)(b.X - a.X).Units * (c.Y - a.Y).Units) - ((Int128)(b.Y - a.Y).Units * (c.X - a.X).Units);

    private static Int128 Dot(Point at, Point a, Point b) =>
        ((Int128)(a.X - at.X).Units * (b.X - at.X).Units) + ((Int128)(a.Y - at.Y).Units * (b.Y - at.Y).Units);
}
