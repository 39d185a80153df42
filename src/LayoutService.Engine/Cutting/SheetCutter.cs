namespace LayoutService.Engine.Cutting;

/// <summary>
/// Cuts wanted rectangles from sheets at least cost, with cuts that run from edge to edge of the panel being cut
/// (two-dimensional guillotine cutting stock with several sheet sizes). Deterministic; knows no ceilings.
/// </summary>
public static class SheetCutter
{
    /// <summary>Steps of the quick effort.</summary>
    public const int QuickSteps = 20_000;

    /// <summary>Steps of the thorough effort.</summary>
    public const int ThoroughSteps = 5_000_000;

    /// <summary>
    /// Cost of a feasible plan by the greedy part alone, for a search that asks thousands of times;
    /// null when some piece fits no sheet or the stock does not suffice.
    /// </summary>
    public static long? Estimate(SheetProblem problem)
    {
        var types = new SheetTypes(problem);
        var greedy = new SheetGreedy(types);
        var worths = new double[types.Count];
        SheetWorths.CutAlone(types, worths);
        var cost = greedy.Run(worths, SheetFirstCut.LargerRest, null);
        SheetWorths.ByArea(types, worths);
        cost = Math.Min(cost, greedy.Run(worths, SheetFirstCut.LargerRest, null));
        return cost == long.MaxValue ? null : cost;
    }

    /// <summary>The best plan found within the budget of steps, and a bound that no plan can go below.</summary>
    public static SheetSolution Solve(SheetProblem problem, int steps)
    {
        var types = new SheetTypes(problem);
        var greedy = new SheetGreedy(types);
        var worths = new double[types.Count];
        List<SheetDesign>? best = null;
        long bestCost = 0, bestLeft = 0;
        int[] left = [];
        foreach (var alone in (ReadOnlySpan<bool>)[true, false])
        {
            if (alone)
            {
                SheetWorths.CutAlone(types, worths);
            }
            else
            {
                SheetWorths.ByArea(types, worths);
            }

            foreach (var firstCut in (ReadOnlySpan<SheetFirstCut>)[SheetFirstCut.LargerRest, SheetFirstCut.Rip, SheetFirstCut.Cross])
            {
                var designs = new List<SheetDesign>();
                greedy.Run(worths, firstCut, designs);
                var cost = designs.Sum(d => d.Times * types.KindCost[d.Kind]);
                var missing = 0L;
                foreach (var n in greedy.Left)
                {
                    missing += n;
                }

                if (best is null || missing < bestLeft || (missing == bestLeft && cost < bestCost))
                {
                    (best, bestCost, bestLeft) = (designs, cost, missing);
                    left = greedy.Left.ToArray();
                }
            }
        }

        var unplaced = new List<int>();
        for (var t = 0; t < types.Count; t++)
        {
            for (var n = 0; n < left[t]; n++)
            {
                unplaced.Add(types.Order[types.First[t + 1] - 1 - n]);
            }
        }

        var bound = unplaced.Count > 0 ? 0 : AreaBound(types);
        return new SheetSolution
        {
            Sheets = SheetDrawing.Draw(problem, types, best!),
            Unplaced = unplaced,
            Cost = bestCost,
            LowerBound = Math.Min(bound, bestCost),
        };
    }

    private static long AreaBound(SheetTypes types)
    {
        var area = 0m;
        for (var t = 0; t < types.Count; t++)
        {
            area += (decimal)types.Width[t] * types.Length[t] * types.Demand[t];
        }

        var least = decimal.MaxValue;
        for (var k = 0; k < types.Kinds; k++)
        {
            least = Math.Min(least, area * types.KindCost[k] / ((decimal)types.KindWidth[k] * types.KindLength[k]));
        }

        return (long)decimal.Ceiling(least - 0.000001m);
    }
}
