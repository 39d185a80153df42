namespace LayoutService.Engine.Cutting;

/// <summary>
/// Cuts wanted rectangles from sheets at least cost, with cuts that run from edge to edge of the panel being cut
/// (two-dimensional guillotine cutting stock with several sheet sizes). Deterministic; knows no ceilings.
/// </summary>
/// <remarks>
/// When every way to cut one sheet can be listed (a ceiling's board as a rule), the plan comes from the linear program
/// over all of them and branch and bound, and is mostly proved best. Otherwise it comes from greedy filling, with a
/// weaker bound. Budgets are counted in steps, so one problem has one answer.
/// </remarks>
public static class SheetCutter
{
    /// <summary>Steps of the quick effort; a step is one pair of boxes joined or one pattern tried, some tens of nanoseconds.</summary>
    public const int QuickSteps = 40_000;

    /// <summary>Above this many different pieces nothing is listed: greedy filling and the area's bound alone.</summary>
    private const int MostTypesListed = 400;

    /// <summary>Steps of the thorough effort.</summary>
    public const int ThoroughSteps = 10_000_000;

    /// <summary>
    /// Cost of a feasible plan by the greedy part alone, for a search that asks thousands of times;
    /// null when some piece fits no sheet or the stock does not suffice.
    /// </summary>
    /// <param name="problem">What to cut.</param>
    /// <param name="runs">Greedy plans tried, each with corrected worths; time is in proportion.</param>
    public static long? Estimate(SheetProblem problem, int runs = 4)
    {
        var types = new SheetTypes(problem);
        var greedy = new SheetGreedy(types);
        var worths = new double[types.Count];
        SheetWorths.CutAlone(types, worths);
        var cost = greedy.Run(worths, SheetFirstCut.LargerRest, null);
        for (var run = 1; run < runs; run++)
        {
            greedy.Correct(worths);
            cost = Math.Min(cost, greedy.Run(worths, SheetFirstCut.LargerRest, null));
        }

        return cost == long.MaxValue ? null : cost / types.CostScale;
    }

    /// <summary>Cost and number of sheets of a plan by the greedy part alone; null where <see cref="Estimate"/> is.</summary>
    public static (long Cost, int Sheets)? Count(SheetProblem problem, int runs = 4)
    {
        var types = new SheetTypes(problem);
        var greedy = new SheetGreedy(types);
        var worths = new double[types.Count];
        SheetWorths.CutAlone(types, worths);
        (long Cost, int Sheets) best = (long.MaxValue, 0);
        for (var run = 0; run < runs; run++)
        {
            var designs = new List<SheetDesign>();
            if (greedy.Run(worths, SheetFirstCut.LargerRest, designs) is var cost && cost < best.Cost)
            {
                best = (cost, designs.Sum(d => d.Times));
            }

            greedy.Correct(worths);
        }

        return best.Cost == long.MaxValue ? null : (best.Cost / types.CostScale, best.Sheets);
    }

    /// <summary>The best plan found within the budget of steps, and a bound that no plan can go below.</summary>
    public static SheetSolution Solve(SheetProblem problem, int steps)
    {
        var types = new SheetTypes(problem);
        var unplaced = GiveUpMisfits(types);
        if (Array.TrueForAll(types.Demand, d => d == 0))
        {
            return new SheetSolution { Sheets = [], Unplaced = unplaced, Cost = 0, LowerBound = 0 };
        }

        var bound = SheetBounds.Lift(types, SheetBounds.Fractional(types, SheetBounds.Area(types)));
        SheetSearch? search = null;
        if (types.Count <= MostTypesListed)
        {
            var patterns = new SheetPatterns(types, steps, Math.Clamp(steps / 20, 500, 20_000));
            search = new SheetSearch(types, patterns, new SheetRelaxation(types, patterns, 2L * steps));
            search.Run(steps);
            bound = search.Bound;
            if (patterns.Complete && search.BestCost < long.MaxValue)
            {
                return Solution(problem, types, search.Designs, unplaced, bound);
            }
        }

        var filling = SheetFilling.Best(types, search?.Prices, FillingRuns(types, steps));
        if (search?.BestCost < long.MaxValue && (filling.Missing > 0 || search.BestCost <= filling.Cost))
        {
            return Solution(problem, types, search.Designs, unplaced, bound);
        }

        for (var t = 0; t < types.Count; t++)
        {
            for (var n = 0; n < filling.Left[t]; n++)
            {
                unplaced.Add(types.Order[types.First[t + 1] - 1 - n]);
            }
        }

        bound = unplaced.Count > 0 ? 0 : bound;
        return Solution(problem, types, filling.Designs, unplaced, bound);
    }

    /// <summary>Greedy plans from each start: one takes about 3 steps for each pair of types, and there are 9 starts.</summary>
    private static int FillingRuns(SheetTypes types, int steps) =>
        (int)Math.Clamp(steps / (27L * types.Count * types.Count), 4, 100);

    private static SheetSolution Solution(
        SheetProblem problem, SheetTypes types, List<SheetDesign> designs, List<int> unplaced, long bound)
    {
        var sheets = SheetDrawing.Draw(problem, types, designs);
        var cost = 0L;
        foreach (var sheet in sheets)
        {
            cost += problem.Stock[sheet.Kind].Cost;
        }

        // Of a scaled bound, up to one a piece may stand for free sheets.
        bound = types.CostScale == 1 ? bound : (long)Math.Ceiling((double)(bound - types.Order.Length) / types.CostScale);
        return new SheetSolution { Sheets = sheets, Unplaced = unplaced, Cost = cost, LowerBound = Math.Clamp(bound, 0, cost) };
    }

    /// <summary>Takes out the pieces that fit no kind of sheet; answers their indices.</summary>
    private static List<int> GiveUpMisfits(SheetTypes types)
    {
        var misfits = new List<int>();
        for (var t = 0; t < types.Count; t++)
        {
            var fits = false;
            for (var k = 0; k < types.Kinds; k++)
            {
                fits |= types.KindLimit[k] > 0 && types.Fits(t, types.KindWidth[k], types.KindLength[k]);
            }

            if (!fits)
            {
                types.Demand[t] = 0;
                misfits.AddRange(types.Order.AsSpan(types.First[t], types.First[t + 1] - types.First[t]));
            }
        }

        return misfits;
    }
}
