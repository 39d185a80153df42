namespace LayoutService.Engine.Cutting;

/// <summary>
/// Farley's bound (1990) in whole numbers. Given prices for the lengths, worth says for each kind the most that one stick
/// can hold. Prices are scaled down until no unlimited kind holds more than it costs; a limited kind that still does is
/// charged for the excess once for each stick there is. What all demands are then worth is a lower bound, rounded up to
/// the next cost that can occur.
/// </summary>
internal static class LengthBound
{
    /// <summary>Sum: all demands at their prices. Scale: price units in one unit of cost.</summary>
    public static long Of(Int128 sum, long scale, ReadOnlySpan<long> worth, StockKinds kinds, ReadOnlySpan<int> quantity)
    {
        long above = 1;
        long below = 1;
        for (int kind = 0; kind < kinds.Count; kind++)
        {
            long cost = kinds.Cost[kind] * scale;
            if (kinds.Quantity[kind] == int.MaxValue && (Int128)worth[kind] * above > (Int128)cost * below)
            {
                above = cost;
                below = worth[kind];
            }
        }

        Int128 total = sum * above / below;
        for (int kind = 0; kind < kinds.Count; kind++)
        {
            if (kinds.Quantity[kind] != int.MaxValue)
            {
                Int128 excess = (Int128)worth[kind] * above / below + 1 - (Int128)kinds.Cost[kind] * scale;
                total -= excess > 0 ? excess * quantity[kind] : 0;
            }
        }

        return total <= 0 ? 0 : kinds.RoundUp((long)((total + scale - 1) / scale));
    }

    /// <summary>The plainest: all of the length at the best rate that any kind offers, rounded up to the next cost that can occur.</summary>
    public static long ByRate(Int128 total, StockKinds kinds)
    {
        int best = 0;
        for (int kind = 1; kind < kinds.Count; kind++)
        {
            if ((Int128)kinds.Cost[kind] * kinds.Usable[best] < (Int128)kinds.Cost[best] * kinds.Usable[kind])
            {
                best = kind;
            }
        }

        Int128 usable = Math.Max(1, kinds.Usable[best]);
        return kinds.RoundUp((long)((total * kinds.Cost[best] + usable - 1) / usable));
    }
}
