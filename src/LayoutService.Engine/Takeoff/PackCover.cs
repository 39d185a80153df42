namespace LayoutService.Engine.Takeoff;

/// <summary>
/// Problem: buy at least a needed quantity from packs of several sizes at the least cost; among equal costs the least
/// surplus, then the fewest packs. Usual name: unbounded covering knapsack. Method: dynamic programming over exact totals,
/// O(table × packs). Sizes are first divided by their greatest common measure. In some best cover the packs other than
/// the one of the least price per unit (size b) number fewer than b, because among any b of them some sum to a multiple of
/// b and can be exchanged for it at no greater cost; so however large the need, the table stays within b × (largest + 1)
/// and the rest is packs of size b. Exact while that table has at most <see cref="TableLimit"/> cells; beyond it (sizes with
/// no common measure, in the thousands) the cheapest of the covers by one size, each alone or to top up packs of size b.
/// Chosen over rounding up the best-value pack, which overbuys small needs.
/// </summary>
public static class PackCover
{
    /// <summary>Most cells of the table, about 5 MB.</summary>
    public const int TableLimit = 200_000;

    /// <summary>How many of each pack to buy, in the order of <paramref name="packs"/>; sizes must be above zero.</summary>
    public static long[] Cheapest(decimal need, IReadOnlyList<Pack> packs)
    {
        var counts = new long[packs.Count];
        if (need <= 0 || packs.Count == 0)
        {
            return counts;
        }

        if (packs.Count == 1)
        {
            counts[0] = (long)decimal.Ceiling(need / packs[0].Size);
            return counts;
        }

        var measure = packs[0].Size;
        foreach (var pack in packs)
        {
            measure = CommonMeasure(measure, pack.Size);
        }

        // Totals are whole measures, so the need may be rounded up to one.
        var whole = (long)decimal.Ceiling(need / measure);
        var sizes = new long[packs.Count];
        for (var i = 0; i < sizes.Length; i++)
        {
            sizes[i] = (long)(packs[i].Size / measure);
        }

        var best = BestValue(packs, sizes);
        var largest = sizes.Max();
        var kept = Math.Min((decimal)whole, (decimal)sizes[best] * (largest + 1));
        if (kept + largest > TableLimit)
        {
            return SimpleCover(whole, packs, sizes, best);
        }

        var taken = (whole - (long)kept) / sizes[best];
        counts = Exact((int)(whole - (taken * sizes[best])), packs, sizes);
        counts[best] += taken;
        return counts;
    }

    private static long[] Exact(int need, IReadOnlyList<Pack> packs, long[] sizes)
    {
        var length = need + (int)sizes.Max();
        var cost = new decimal[length];
        var number = new int[length];
        var last = new int[length];
        Array.Fill(last, -1);
        for (var total = 1; total < length; total++)
        {
            for (var i = 0; i < sizes.Length; i++)
            {
                var before = total - sizes[i];
                if (before < 0 || before >= need || (before > 0 && last[before] < 0))
                {
                    continue;
                }

                var price = cost[before] + Price(packs[i]);
                var packsUsed = number[before] + 1;
                if (last[total] < 0 || price < cost[total] || (price == cost[total] && packsUsed < number[total]))
                {
                    (cost[total], number[total], last[total]) = (price, packsUsed, i);
                }
            }
        }

        var at = -1;
        for (var total = need; total < length; total++)
        {
            if (last[total] >= 0 && (at < 0 || cost[total] < cost[at]))
            {
                at = total;
            }
        }

        var counts = new long[packs.Count];
        while (at > 0)
        {
            counts[last[at]]++;
            at -= (int)sizes[last[at]];
        }

        return counts;
    }

    private static long[] SimpleCover(long need, IReadOnlyList<Pack> packs, long[] sizes, int best)
    {
        long[]? chosen = null;
        var least = decimal.MaxValue;
        foreach (var start in (long[])[0, need / sizes[best]])
        {
            var rest = need - (start * sizes[best]);
            for (var i = 0; i < sizes.Length; i++)
            {
                var more = (rest / sizes[i]) + (rest % sizes[i] == 0 ? 0 : 1);
                var price = (start * Price(packs[best])) + (more * Price(packs[i]));
                if (price < least)
                {
                    least = price;
                    chosen = new long[packs.Count];
                    chosen[best] += start;
                    chosen[i] += more;
                }
            }
        }

        return chosen!;
    }

    private static int BestValue(IReadOnlyList<Pack> packs, long[] sizes)
    {
        var best = 0;
        for (var i = 1; i < sizes.Length; i++)
        {
            var mine = Price(packs[i]) * sizes[best];
            var held = Price(packs[best]) * sizes[i];
            if (mine < held || (mine == held && sizes[i] > sizes[best]))
            {
                best = i;
            }
        }

        return best;
    }

    /// <summary>Packs without a price compare by what they hold, so that the least surplus wins.</summary>
    private static decimal Price(Pack pack) => pack.Price ?? pack.Size;

    private static decimal CommonMeasure(decimal a, decimal b)
    {
        while (b != 0)
        {
            (a, b) = (b, a % b);
        }

        return a;
    }
}
