namespace LayoutService.Engine.Takeoff;

/// <summary>
/// Problem: buy at least a needed quantity from packs of several sizes at the least cost; among equal costs the least
/// surplus, then the fewest packs. Usual name: unbounded covering knapsack. Method: dynamic programming over exact totals,
/// O(table × packs). Sizes are first divided by their greatest common measure. In some best cover the packs other than
/// the one of the least price per unit (size b) number fewer than b, because among any b of them some sum to a multiple of
/// b and can be exchanged for it at no greater cost; so however large the need, the table stays within b × (largest + 2)
/// and the rest is packs of size b. Exact while table × packs is at most <see cref="WorkLimit"/>; beyond it (sizes in the
/// hundreds with no common measure) the cheapest of the covers by one size, each alone or to top up packs of size b.
/// Chosen over rounding up the best-value pack, which overbuys small needs.
/// </summary>
public static class PackCover
{
    /// <summary>Most comparisons of the table (cells × packs); about 10 ms.</summary>
    public const int WorkLimit = 500_000;

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
        var whole = decimal.Ceiling(need / measure);
        var best = BestValue(packs);
        var value = packs[best].Size / measure;
        var largest = packs.Max(pack => pack.Size) / measure;
        var kept = Math.Min(whole, value * (largest + 1));
        if ((kept + value + largest) * packs.Count > WorkLimit)
        {
            return SimpleCover(need, packs, best);
        }

        var taken = decimal.Floor((whole - kept) / value);
        counts = Exact((int)(whole - (taken * value)), packs, [.. packs.Select(pack => (int)(pack.Size / measure))]);
        counts[best] += (long)taken;
        return counts;
    }

    private static long[] Exact(int need, IReadOnlyList<Pack> packs, int[] sizes)
    {
        var length = need + sizes.Max();
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
            at -= sizes[last[at]];
        }

        return counts;
    }

    private static long[] SimpleCover(decimal need, IReadOnlyList<Pack> packs, int best)
    {
        long[]? chosen = null;
        var least = decimal.MaxValue;
        foreach (var start in (decimal[])[0, decimal.Floor(need / packs[best].Size)])
        {
            var rest = need - (start * packs[best].Size);
            for (var i = 0; i < packs.Count; i++)
            {
                var more = decimal.Ceiling(rest / packs[i].Size);
                var price = (start * Price(packs[best])) + (more * Price(packs[i]));
                if (price < least)
                {
                    least = price;
                    chosen = new long[packs.Count];
                    chosen[best] += (long)start;
                    chosen[i] += (long)more;
                }
            }
        }

        return chosen!;
    }

    private static int BestValue(IReadOnlyList<Pack> packs)
    {
        var best = 0;
        for (var i = 1; i < packs.Count; i++)
        {
            var mine = Price(packs[i]) * packs[best].Size;
            var held = Price(packs[best]) * packs[i].Size;
            if (mine < held || (mine == held && packs[i].Size > packs[best].Size))
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
