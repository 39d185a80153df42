using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Ceilings;

/// <summary>Writes rings so that the same room in the same pose gives the same list of numbers, and finds the poses with the least.</summary>
internal static class PoseKeys
{
    // those with the least key, in their order
    public static List<PlanFrame> Least(List<PlanFrame> frames, Func<PlanFrame, List<long>> keyOf)
    {
        var least = new List<PlanFrame>(frames.Count);
        List<long>? leastKey = null;
        foreach (var frame in frames)
        {
            var key = keyOf(frame);
            var order = leastKey is null ? -1 : Compare(key, leastKey);
            if (order < 0)
            {
                least.Clear();
                leastKey = key;
            }

            if (order <= 0)
            {
                least.Add(frame);
            }
        }

        return least;
    }

    public static List<long> RingKey(Uv[] ring)
    {
        if (Rings.TwiceArea(ring) < 0)
        {
            Array.Reverse(ring);
        }

        ring = Rings.WithoutStraightCorners(ring);
        var first = 0;
        for (var i = 1; i < ring.Length; i++)
        {
            if ((ring[i].U, ring[i].V).CompareTo((ring[first].U, ring[first].V)) < 0)
            {
                first = i;
            }
        }

        var key = new List<long>(2 * ring.Length);
        for (var i = 0; i < ring.Length; i++)
        {
            var corner = ring[(first + i) % ring.Length];
            key.Add(corner.U);
            key.Add(corner.V);
        }

        return key;
    }

    public static int Compare(List<long> a, List<long> b)
    {
        for (var i = 0; i < Math.Min(a.Count, b.Count); i++)
        {
            if (a[i] != b[i])
            {
                return a[i].CompareTo(b[i]);
            }
        }

        return a.Count.CompareTo(b.Count);
    }
}
