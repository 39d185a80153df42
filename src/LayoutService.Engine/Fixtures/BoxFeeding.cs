using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Fixtures;

/// <summary>
/// Whether a driver box goes up through its hole and finds a bay. It is pushed through end on, so its two smaller sizes
/// must pass: through the whole hole, or through what a joist over the hole leaves open on one side. Worked out here.
/// </summary>
public static class BoxFeeding
{
    /// <summary>True when the box passes the open hole.</summary>
    public static bool Passes(RemoteBox box, Hole hole)
    {
        var sizes = box.Sorted;
        return hole.Round
            ? Math.Sqrt(((double)sizes[0] * sizes[0]) + ((double)sizes[1] * sizes[1])) <= 2 * hole.HalfU
            : (sizes[0] <= 2 * hole.HalfU && sizes[1] <= 2 * hole.HalfV) || (sizes[1] <= 2 * hole.HalfU && sizes[0] <= 2 * hole.HalfV);
    }

    /// <summary>
    /// How near the hole's centre may come to a joist's face before the box no longer passes beside the joist, in units;
    /// negative when it may lie under the joist. Found by halving: more open hole never makes it harder.
    /// </summary>
    public static long LeastFromFace(RemoteBox box, Hole hole)
    {
        var sizes = box.Sorted;
        var (under, clear) = (-hole.HalfV, hole.HalfV);
        while (clear - under > 1)
        {
            var middle = (under + clear) / 2;
            if (PassesBeside(sizes, hole, middle))
            {
                clear = middle;
            }
            else
            {
                under = middle;
            }
        }

        return clear;
    }

    // the open part of the hole reaches from the face (at -fromFace from the centre) to the far edge
    private static bool PassesBeside(long[] sizes, Hole hole, long fromFace)
    {
        return Fits(sizes[0], sizes[1]) || Fits(sizes[1], sizes[0]);

        bool Fits(long across, long along)
        {
            if (!hole.Round)
            {
                return across <= hole.HalfV + fromFace && along <= 2 * hole.HalfU;
            }

            // the best rectangle of this size lies with its nearer side on the face, or astride the centre
            var near = Math.Max(-fromFace, -across / 2);
            var far = near + across;
            var reach = Math.Max(Math.Abs(near), Math.Abs(far));
            return reach <= hole.HalfU && Math.Sqrt(((double)hole.HalfU * hole.HalfU) - ((double)reach * reach)) * 2 >= along;
        }
    }

    /// <summary>True when the box, laid flat, goes into a bay of this clear width, and between joists of this depth when it is known.</summary>
    public static bool Parks(RemoteBox box, long bay, long? joistDepth)
    {
        var sizes = box.Sorted;
        return sizes[1] <= bay && (joistDepth is not { } depth || sizes[0] <= depth);
    }
}
