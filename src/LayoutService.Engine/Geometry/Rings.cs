namespace LayoutService.Engine.Geometry;

/// <summary>Questions about rings of corners in the working frame.</summary>
public static class Rings
{
    /// <summary>Twice the signed area, square units; positive when anticlockwise.</summary>
    public static Int128 TwiceArea(IReadOnlyList<Uv> ring)
    {
        Int128 sum = 0;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            sum += ((Int128)a.U * b.V) - ((Int128)b.U * a.V);
        }

        return sum;
    }

    /// <summary>
    /// Drops repeated corners and corners on a straight line between their neighbours: nearer to it than two units, which
    /// is what rounding a crossing to whole units leaves.
    /// </summary>
    public static Uv[] WithoutStraightCorners(IReadOnlyList<Uv> ring)
    {
        var kept = new List<Uv>(ring.Count);
        for (var i = 0; i < ring.Count; i++)
        {
            var before = kept.Count > 0 ? kept[^1] : ring[^1];
            var here = ring[i];
            // where the list closes, what was kept of its beginning: two corners a unit apart are not both straight
            var after = i + 1 < ring.Count ? ring[i + 1] : kept.Count > 0 ? kept[0] : ring[0];
            if (here != before && !Straight(before, here, after))
            {
                kept.Add(here);
            }
        }

        return [.. kept];
    }

    /// <summary>
    /// Without corners that lie nearer than a distance to the one before them or to the line past them, nor spikes as narrow; a corner at
    /// nearly the same level as one of the places given, along or across, is put on that level. A ring that would lose all its corners is given back as it is.
    /// </summary>
    public static Uv[] WithoutJogs(IReadOnlyList<Uv> ring, IReadOnlyList<Uv> places, double jog)
    {
        List<Uv> kept = [.. ring.Select(c => new Uv(On(c.U, places.Select(p => p.U)), On(c.V, places.Select(p => p.V))))];
        for (var i = 0; i < kept.Count && kept.Count > 3;)
        {
            var (before, here, after) = (kept[(i + kept.Count - 1) % kept.Count], kept[i], kept[(i + 1) % kept.Count]);
            var spike = !Between(before, here, after) && (Distance(before, here, after) < jog || Distance(after, before, here) < jog);
            if (spike || DistanceBetween(before, here) < jog || (Distance(here, before, after) < jog && Between(before, here, after)))
            {
                kept.RemoveAt(i);
                i = Math.Max(0, i - 1);
            }
            else
            {
                i++;
            }
        }

        return TwiceArea(kept) == 0 ? [.. ring] : [.. kept];

        long On(long at, IEnumerable<long> levels)
        {
            foreach (var level in levels)
            {
                if (Math.Abs(level - at) < jog / 5)
                {
                    return level;
                }
            }

            return at;
        }
    }

    /// <summary>The same ring listed from its lowest corner, so that it is the same whatever corner it was given from.</summary>
    public static Uv[] FromLeast(IReadOnlyList<Uv> ring)
    {
        var first = 0;
        for (var i = 1; i < ring.Count; i++)
        {
            first = (ring[i].U, ring[i].V).CompareTo((ring[first].U, ring[first].V)) < 0 ? i : first;
        }

        return [.. ring.Skip(first), .. ring.Take(first)];
    }

    private static bool Straight(Uv before, Uv here, Uv after) =>
        Turn(before, here, after) == 0
        || (Math.Abs((double)Turn(before, here, after)) < 2 * DistanceBetween(before, after) && Between(before, here, after));

    private static bool Between(Uv before, Uv here, Uv after) =>
        (((double)here.U - before.U) * ((double)after.U - here.U)) + (((double)here.V - before.V) * ((double)after.V - here.V)) > 0;

    /// <summary>Twice the area of the triangle; positive for a left turn at the middle corner.</summary>
    public static Int128 Turn(Uv a, Uv b, Uv c) =>
        ((Int128)(b.U - a.U) * (c.V - b.V)) - ((Int128)(b.V - a.V) * (c.U - b.U));

    /// <summary>A place inside a simple ring: midway along the widest crossing of the level halfway between two corners' levels.</summary>
    public static Uv PlaceInside(IReadOnlyList<Uv> ring)
    {
        var levels = ring.Select(c => c.V).Distinct().Order().ToList();
        var step = Enumerable.Range(0, levels.Count - 1).MaxBy(i => levels[i + 1] - levels[i]);
        var v = (levels[step] + levels[step + 1]) / 2;
        var cuts = new List<double>();
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a.V <= v != b.V <= v)
            {
                cuts.Add(a.U + ((double)(b.U - a.U) * (v - a.V) / (b.V - a.V)));
            }
        }

        cuts.Sort();
        var widest = Enumerable.Range(0, cuts.Count / 2).MaxBy(i => cuts[(2 * i) + 1] - cuts[2 * i]);
        return new Uv((long)((cuts[2 * widest] + cuts[(2 * widest) + 1]) / 2), v);
    }

    /// <summary>Distance from a place to a straight edge, in units.</summary>
    public static double Distance(Uv place, Uv from, Uv to)
    {
        double du = to.U - from.U, dv = to.V - from.V;
        double pu = place.U - from.U, pv = place.V - from.V;
        var squared = (du * du) + (dv * dv);
        var t = squared == 0 ? 0 : Math.Clamp(((pu * du) + (pv * dv)) / squared, 0, 1);
        return Math.Sqrt(Math.Pow(pu - (t * du), 2) + Math.Pow(pv - (t * dv), 2));
    }

    public static double DistanceBetween(Uv a, Uv b) => Math.Sqrt(Math.Pow(a.U - b.U, 2) + Math.Pow(a.V - b.V, 2));
}
