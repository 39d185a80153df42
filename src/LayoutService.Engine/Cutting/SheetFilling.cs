namespace LayoutService.Engine.Cutting;

/// <summary>The best of several greedy plans, and what each type lacks in it.</summary>
internal sealed record SheetFilling(List<SheetDesign> Designs, long Cost, int[] Left)
{
    /// <param name="types">What to cut.</param>
    /// <param name="prices">Of one piece of each type, from the fractional plan, if there is one.</param>
    /// <param name="runs">Plans tried from each start, worths corrected between them.</param>
    public static SheetFilling Best(SheetTypes types, double[]? prices, int runs)
    {
        var greedy = new SheetGreedy(types);
        var worths = new double[types.Count];
        var alone = new double[types.Count];
        SheetWorths.CutAlone(types, alone);
        SheetFilling? best = null;
        foreach (var firstCut in new[] { SheetFirstCut.LargerRest, SheetFirstCut.Rip, SheetFirstCut.Cross })
        {
            for (var start = 0; start < (prices is null ? 2 : 3); start++)
            {
                SheetWorths.ByArea(types, worths);
                for (var t = 0; t < types.Count; t++)
                {
                    worths[t] = start == 0 ? alone[t] : start == 1 ? worths[t] : prices![t] + alone[t] * 1e-4;
                }

                for (var run = 0; run < runs; run++)
                {
                    var filling = Run(types, greedy, worths, firstCut);
                    best = best is null || filling.IsBetter(best) ? filling : best;
                    greedy.Correct(worths);
                }
            }
        }

        return best!;
    }

    private static SheetFilling Run(SheetTypes types, SheetGreedy greedy, double[] worths, SheetFirstCut firstCut)
    {
        var designs = new List<SheetDesign>();
        greedy.Run(worths, firstCut, designs);
        var cost = 0L;
        foreach (var design in designs)
        {
            cost += design.Times * types.KindCost[design.Kind];
        }

        return new SheetFilling(designs, cost, greedy.Left.ToArray());
    }

    private bool IsBetter(SheetFilling other) =>
        Missing != other.Missing ? Missing < other.Missing : Cost < other.Cost;

    /// <summary>Pieces left over.</summary>
    public int Missing
    {
        get
        {
            var sum = 0;
            foreach (var left in Left)
            {
                sum += left;
            }

            return sum;
        }
    }
}
