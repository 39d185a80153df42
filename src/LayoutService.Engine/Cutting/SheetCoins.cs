namespace LayoutService.Engine.Cutting;

/// <summary>What one sheet of each kind can be worth at most, under some prices, and what all pieces are worth: a plan's sheets must reach it.</summary>
internal readonly record struct SheetCut(double[] WorthOfKind, double Demand);

/// <summary>
/// The least cost of whole sheets that satisfies every <see cref="SheetCut"/>: a plan buys whole sheets, and no more than
/// there are. Depth first over counts, dearest kind first; exponential in kinds, so under a step limit, past which the
/// bound is returned as it came.
/// </summary>
internal sealed class SheetCoins
{
    private readonly SheetTypes types;
    private readonly List<SheetCut> cuts;
    private readonly long bound;
    private readonly int[] order;
    private readonly double[] missing;
    private long best;
    private int steps;

    private SheetCoins(SheetTypes types, List<SheetCut> cuts, long bound, long known, int steps)
    {
        (this.types, this.cuts, this.bound, this.steps, best) = (types, cuts, bound, steps, known);
        order = new int[types.Kinds];
        for (var k = 0; k < order.Length; k++)
        {
            order[k] = k;
        }

        Array.Sort(order, (a, b) => types.KindCost[a] != types.KindCost[b] ? types.KindCost[b].CompareTo(types.KindCost[a]) : a.CompareTo(b));
        missing = new double[cuts.Count];
        for (var c = 0; c < missing.Length; c++)
        {
            missing[c] = cuts[c].Demand * (1 - 1e-9);
        }
    }

    /// <summary>At least <paramref name="bound"/>; at most <paramref name="known"/>, the cost of a plan.</summary>
    public static long LeastSum(SheetTypes types, List<SheetCut> cuts, long bound, long known, int steps)
    {
        var coins = new SheetCoins(types, cuts, bound, known, steps);
        coins.Add(0, 0);
        return coins.steps < 0 ? bound : Math.Max(bound, coins.best);
    }

    private void Add(int place, long sum)
    {
        if (--steps < 0 || sum >= best || best <= bound || place == order.Length)
        {
            return;
        }

        var kind = order[place];
        var cost = types.KindCost[kind];
        var least = sum >= bound ? 0 : (bound - sum + cost - 1) / cost;
        for (var c = 0; c < missing.Length && least < int.MaxValue; c++)
        {
            if (missing[c] > 0)
            {
                var worth = cuts[c].WorthOfKind[kind];
                least = worth <= 0 ? int.MaxValue : Math.Max(least, (long)Math.Ceiling(missing[c] / worth));
            }
        }

        // With this many of the kind nothing more is needed; with fewer, the cheaper kinds must help.
        if (least <= types.KindLimit[kind] && least < int.MaxValue)
        {
            best = Math.Min(best, sum + least * cost);
        }

        if (place == order.Length - 1)
        {
            return;
        }

        var most = Math.Min(Math.Min(least - 1, types.KindLimit[kind]), (best - 1 - sum) / cost);
        for (var n = 0; n <= most && steps >= 0; n++)
        {
            Buy(kind, n);
            Add(place + 1, sum + n * cost);
            Buy(kind, -n);
        }
    }

    private void Buy(int kind, long count)
    {
        for (var c = 0; c < missing.Length; c++)
        {
            missing[c] -= count * cuts[c].WorthOfKind[kind];
        }
    }
}
