namespace LayoutService.Engine.Cutting;

/// <summary>
/// The least sum of whole sheets' costs that is not below a bound: a plan buys whole sheets, so its cost is such a sum.
/// Depth first over counts, dearest kind first, the cheapest by division; exponential in kinds, so under a step limit,
/// past which the bound is returned as it came.
/// </summary>
internal static class SheetCoins
{
    public static long LeastSum(SheetTypes types, long bound, long known, int steps)
    {
        var costs = new List<(long Cost, int Limit)>();
        for (var k = 0; k < types.Kinds; k++)
        {
            costs.Add((types.KindCost[k], types.KindLimit[k]));
        }

        costs.Sort((a, b) => b.Cost.CompareTo(a.Cost));
        var best = known;
        Add(0, 0);
        return steps < 0 ? bound : best;

        void Add(int kind, long sum)
        {
            if (--steps < 0 || sum >= best || best == bound)
            {
                return;
            }

            if (sum >= bound)
            {
                best = sum;
                return;
            }

            if (kind == costs.Count)
            {
                return;
            }

            var (cost, limit) = costs[kind];
            var enough = (bound - sum + cost - 1) / cost;
            for (var n = Math.Min(enough, limit); n >= 0 && steps >= 0; n--)
            {
                if (kind == costs.Count - 1 && n < enough)
                {
                    return;
                }

                Add(kind + 1, sum + n * cost);
            }
        }
    }
}
