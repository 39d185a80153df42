namespace LayoutService.Engine.Cutting;

/// <summary>The best of several greedy plans, and what each type lacks in it.</summary>
internal sealed record SheetFilling(List<SheetDesign> Designs, long Cost, int[] Left)
{
    public static SheetFilling Best(SheetTypes types, double[] prices)
    {
        var greedy = new SheetGreedy(types);
        var alone = new double[types.Count];
        var area = new double[types.Count];
        SheetWorths.CutAlone(types, alone);
        SheetWorths.ByArea(types, area);
        var priced = new double[types.Count];
        for (var t = 0; t < types.Count; t++)
        {
            priced[t] = prices[t] + alone[t] * 1e-4;
        }

        SheetFilling? best = null;
        foreach (var worths in new[] { priced, alone, area })
        {
            foreach (var firstCut in new[] { SheetFirstCut.LargerRest, SheetFirstCut.Rip, SheetFirstCut.Cross })
            {
                var designs = new List<SheetDesign>();
                greedy.Run(worths, firstCut, designs);
                var cost = 0L;
                foreach (var design in designs)
                {
                    cost += design.Times * types.KindCost[design.Kind];
                }

                var filling = new SheetFilling(designs, cost, greedy.Left.ToArray());
                if (best is null || filling.Missing < best.Missing || (filling.Missing == best.Missing && cost < best.Cost))
                {
                    best = filling;
                }
            }
        }

        return best!;
    }

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
