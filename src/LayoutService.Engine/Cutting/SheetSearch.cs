namespace LayoutService.Engine.Cutting;

/// <summary>
/// Whole plans from priced patterns. First greedy ones: from nothing, and after the whole part of the fractional plan.
/// Then, while a better cost may exist, depth-first branch and bound: the dearest type still wanted is served by each
/// pattern that holds it, cheapest first; what remains costs at least its worth in prices, so only patterns whose cost
/// exceeds their worth by less than the gap can matter ("reduced cost fixing"). A step is one pattern tried. Finishing within the
/// budget proves the plan best among complete patterns.
/// </summary>
internal sealed class SheetSearch
{
    private const int GreedyRuns = 6;

    private readonly SheetTypes types;
    private readonly SheetPatterns patterns;
    private readonly SheetRelaxation relaxation;
    private readonly int[] counts;
    private readonly double[] worths;
    private readonly double[] paid;
    private readonly long unit;
    private readonly List<SheetCut> cuts = [];

    private readonly List<(SheetPattern Pattern, int Times)> current = [];

    public List<(SheetPattern Pattern, int Times)> Best { get; private set; } = [];

    /// <summary>long.MaxValue while no plan serves everything.</summary>
    public long BestCost { get; private set; } = long.MaxValue;

    /// <summary>No plan costs less.</summary>
    public long Bound { get; private set; }

    public SheetSearch(SheetTypes types, SheetPatterns patterns, SheetRelaxation relaxation)
    {
        this.types = types;
        this.patterns = patterns;
        this.relaxation = relaxation;
        counts = new int[types.Count];

        // Pieces that come along for nothing have price 0; a trace of worth makes the greedy plans take them.
        worths = new double[types.Count];
        paid = new double[types.Count];
        SheetWorths.CutAlone(types, worths);
        for (var t = 0; t < worths.Length; t++)
        {
            worths[t] = relaxation.Prices[t] + worths[t] * 1e-4;
        }

        unit = SheetBounds.Unit(types);
        cuts.Add(SheetBounds.Area(types));
        Bound = SheetBounds.Lift(types, SheetBounds.Fractional(types, cuts[0]));
        if (patterns.Complete)
        {
            cuts.Add(relaxation.Cut);
            Bound = Math.Max(Bound, SheetBounds.Lift(types, relaxation.Bound));
        }
    }

    /// <summary>Prices of the fractional plan.</summary>
    public double[] Prices => relaxation.Prices;

    /// <summary>The best plan, laid out.</summary>
    public List<SheetDesign> Designs => Best.ConvertAll(p => patterns.Lay(p.Pattern, p.Times));

    public void Run(int steps)
    {
        var remaining = (int[])types.Demand.Clone();
        var left = (int[])types.KindLimit.Clone();
        Greedy(remaining, left, 0);
        for (var run = 1; run < GreedyRuns && BestCost > Bound; run++)
        {
            // Half way to what each type cost in the last plan ("sequential value correction").
            for (var t = 0; t < worths.Length; t++)
            {
                worths[t] = types.Demand[t] > 0 ? 0.5 * (worths[t] + paid[t] / types.Demand[t]) : worths[t];
            }

            types.Demand.CopyTo(remaining, 0);
            types.KindLimit.CopyTo(left, 0);
            Greedy(remaining, left, 0);
        }

        if (BestCost > Bound)
        {
            types.Demand.CopyTo(remaining, 0);
            types.KindLimit.CopyTo(left, 0);
            current.Clear();
            var cost = 0L;
            foreach (var (pattern, times) in relaxation.Fractions)
            {
                cost += Take(pattern, (int)Math.Floor(times + 1e-6), remaining, left);
            }

            Greedy(remaining, left, cost);
        }

        if (BestCost > Bound && !patterns.Complete)
        {
            foreach (var cut in SheetSlices.Cuts(types, steps))
            {
                cuts.Add(cut);
                Bound = Math.Max(Bound, SheetBounds.Lift(types, SheetBounds.Fractional(types, cut)));
            }
        }

        if (BestCost > Bound)
        {
            Bound = SheetCoins.LeastSum(types, cuts, Bound, BestCost, Math.Min(steps / 5, 1_000_000));
        }

        if (BestCost > Bound && BestCost < long.MaxValue)
        {
            var tree = new SheetTree(types, patterns, relaxation, unit);
            if (tree.Improve(BestCost, Bound, steps))
            {
                (Best, BestCost) = (tree.Best, tree.BestCost);
            }

            Bound = tree.Finished && patterns.Complete ? BestCost : Bound;
        }
    }

    /// <summary>Takes the pattern as often as it serves wanted pieces only; answers the cost.</summary>
    private long Take(SheetPattern pattern, int most, int[] remaining, int[] left)
    {
        patterns.Count(pattern, counts);
        var times = Math.Min(most, left[pattern.Kind]);
        for (var t = 0; t < counts.Length; t++)
        {
            times = counts[t] > 0 ? Math.Min(times, remaining[t] / counts[t]) : times;
        }

        if (times <= 0)
        {
            return 0;
        }

        for (var t = 0; t < counts.Length; t++)
        {
            remaining[t] -= times * counts[t];
        }

        left[pattern.Kind] -= left[pattern.Kind] == int.MaxValue ? 0 : times;
        current.Add((pattern, times));
        return times * types.KindCost[pattern.Kind];
    }

    private void Greedy(int[] remaining, int[] left, long cost)
    {
        Array.Clear(paid);
        while (Array.Exists(remaining, r => r > 0))
        {
            patterns.Price(worths, remaining);
            var best = -1;
            var bestScore = 0.0;
            for (var k = 0; k < types.Kinds; k++)
            {
                var score = left[k] > 0 ? patterns.BestWorth[k] / types.KindCost[k] : 0;
                if (score > bestScore * (1 + 1e-9))
                {
                    (best, bestScore) = (k, score);
                }
            }

            if (best < 0)
            {
                break;
            }

            var pattern = patterns.Best[best];
            var bought = Take(pattern, int.MaxValue, remaining, left);
            cost += bought;
            for (var t = 0; t < counts.Length; t++)
            {
                paid[t] += bought * counts[t] * worths[t] / patterns.BestWorth[best];
            }
        }

        if (cost < BestCost && Array.TrueForAll(remaining, r => r == 0))
        {
            (BestCost, Best) = (cost, [.. current]);
        }

        current.Clear();
    }
}
