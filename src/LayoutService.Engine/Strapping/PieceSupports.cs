using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Strapping;

/// <summary>What a piece of strap must bear on. Common practice, no source.</summary>
internal static class PieceSupports
{
    /// <summary>Bearing of an end on a support: 16 mm.</summary>
    public const long Least = 16 * Length.PerMillimetre;

    /// <summary>The outer supports of a piece are this far apart at least: 300 mm.</summary>
    public const long Spread = 300 * Length.PerMillimetre;

    /// <summary>True when the supports carry a piece; those before the first given one do not reach it.</summary>
    public static bool Bear(List<RunSupport> supports, int at, long from, long to)
    {
        long first = long.MaxValue, last = long.MinValue;
        for (; at < supports.Count; at++)
        {
            var support = supports[at];
            if (support.Lo >= to && at + 1 < supports.Count)
            {
                // joists from here on lie beyond the piece; a ledger at the end comes last
                at = supports.Count - 2;
                continue;
            }

            if (Math.Min(to, support.Hi) - Math.Max(from, support.Lo) >= Least)
            {
                first = Math.Min(first, support.Middle);
                last = Math.Max(last, support.Middle);
            }
        }

        return first < last && last - first >= Spread;
    }
}
