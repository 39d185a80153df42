using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Ceilings;

/// <summary>A strap or a seam as a box seen from above, in the working frame; <see cref="Index"/> is its number in the list it came from.</summary>
public readonly record struct PlanBox(Span Along, Span Across, int Index)
{
    /// <summary>The same box with along and across changed over.</summary>
    public PlanBox Turned() => new(Across, Along, Index);

    /// <summary>Clear distance from a hole's edge, in units; 0 where they meet.</summary>
    public double DistanceTo(Hole hole)
    {
        if (hole.Round)
        {
            var (u, v) = (Off(hole.At.U, Along), Off(hole.At.V, Across));
            return Math.Max(0, Math.Sqrt(((double)u * u) + ((double)v * v)) - hole.HalfU);
        }

        var (du, dv) = (Between(hole.Along, Along), Between(hole.Across, Across));
        return Math.Sqrt(((double)du * du) + ((double)dv * dv));
    }

    private static long Off(long at, Span span) => Math.Max(0, Math.Max(span.Lo - at, at - span.Hi));

    private static long Between(Span a, Span b) => Math.Max(0, Math.Max(a.Lo - b.Hi, b.Lo - a.Hi));
}
