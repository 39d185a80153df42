namespace LayoutService.Engine.Cutting;

/// <summary>
/// Least cost when patterns may be used in fractions (Gilmore and Gomory's linear program by column generation, with
/// exact pricing over <see cref="SheetPatterns"/>). Its prices, scaled until no pattern is worth more than it costs,
/// give a bound that holds whenever the patterns are complete (Farley's bound), even if the iteration was cut short.
/// </summary>
internal sealed class SheetRelaxation
{
    private const int MostRounds = 1_000;

    private readonly SheetTypes types;

    /// <summary>Price of one piece of each type; no pattern is worth more than it costs.</summary>
    public readonly double[] Prices;

    /// <summary>Cost of each kind plus what a unit of its limited stock is worth.</summary>
    public readonly double[] KindCost;

    /// <summary>No whole or fractional plan costs less.</summary>
    public double Bound { get; private set; }

    /// <summary>Patterns of the basis and how often the fractional plan uses them.</summary>
    public readonly List<(SheetPattern Pattern, double Times)> Fractions = [];

    public int Rounds { get; private set; }

    /// <summary>What the prices demand of a plan's sheets.</summary>
    public SheetCut Cut { get; private set; }

    public SheetRelaxation(SheetTypes types, SheetPatterns patterns, long steps)
    {
        this.types = types;
        var limited = new int[types.Kinds];
        var rows = types.Count;
        for (var k = 0; k < types.Kinds; k++)
        {
            limited[k] = types.KindLimit[k] == int.MaxValue ? -1 : rows++;
        }

        var master = new SheetMaster(Demand(limited, rows), Units(rows, out var costs), costs);
        var columns = new List<SheetPattern>();
        var counts = new int[types.Count];
        var column = new double[rows];
        var pivots = MostRounds * 8;
        for (; Rounds < MostRounds && master.Steps + (long)Rounds * patterns.PriceSteps < steps; Rounds++)
        {
            if (!master.EnterSurplus(ref pivots))
            {
                break;
            }

            patterns.Price(master.Price, types.Demand);
            var entered = false;
            for (var k = 0; k < types.Kinds; k++)
            {
                if (patterns.BestWorth[k] <= 0)
                {
                    continue;
                }

                patterns.Count(patterns.Best[k], counts);
                var worth = 0.0;
                for (var t = 0; t < counts.Length; t++)
                {
                    column[t] = counts[t];
                    worth += counts[t] * master.Price[t];
                }

                column.AsSpan(types.Count).Clear();
                if (limited[k] >= 0)
                {
                    column[limited[k]] = -1;
                    worth -= master.Price[limited[k]];
                }

                if (worth > types.KindCost[k] * (1 + 1e-9) && master.Enter(column, types.KindCost[k], columns.Count))
                {
                    columns.Add(patterns.Best[k]);
                    entered = true;
                }
            }

            if (!entered)
            {
                break;
            }
        }

        Prices = new double[types.Count];
        KindCost = new double[types.Kinds];
        SetBound(master, patterns, limited);
        for (var i = 0; i < rows; i++)
        {
            if (master.Basis[i] >= 0 && master.Value[i] > 1e-9)
            {
                Fractions.Add((columns[master.Basis[i]], master.Value[i]));
            }
        }
    }

    private double[] Demand(int[] limited, int rows)
    {
        var demand = new double[rows];
        for (var t = 0; t < types.Count; t++)
        {
            demand[t] = types.Demand[t];
        }

        for (var k = 0; k < types.Kinds; k++)
        {
            if (limited[k] >= 0)
            {
                demand[limited[k]] = -types.KindLimit[k];
            }
        }

        return demand;
    }

    /// <summary>Starting columns: each type cut alone; far dearer stand-ins where stock is limited, and its slack.</summary>
    private double[] Units(int rows, out double[] costs)
    {
        var units = new double[rows];
        costs = new double[rows];
        var dearest = 1.0;
        foreach (var cost in types.KindCost)
        {
            dearest = Math.Max(dearest, cost);
        }

        for (var t = 0; t < rows; t++)
        {
            (units[t], costs[t]) = t < types.Count ? (1, dearest * 1000) : (-1, 0);
        }

        for (var t = 0; t < types.Count && !types.Limited; t++)
        {
            for (var k = 0; k < types.Kinds; k++)
            {
                var copies = Math.Min(types.Demand[t], SheetWorths.CopiesAlone(types, t, types.KindWidth[k], types.KindLength[k]));
                if (copies > 0 && types.KindCost[k] * units[t] < costs[t] * copies)
                {
                    (units[t], costs[t]) = (copies, types.KindCost[k]);
                }
            }
        }

        return units;
    }

    private void SetBound(SheetMaster master, SheetPatterns patterns, int[] limited)
    {
        for (var t = 0; t < types.Count; t++)
        {
            Prices[t] = Math.Max(0, master.Price[t]);
        }

        patterns.Price(Prices, types.Demand);
        var scale = 1.0;
        for (var k = 0; k < types.Kinds; k++)
        {
            KindCost[k] = limited[k] < 0 ? 0 : Math.Max(0, master.Price[limited[k]]);
            var worth = patterns.BestWorth[k] - KindCost[k];
            scale = worth > types.KindCost[k] ? Math.Min(scale, types.KindCost[k] / worth) : scale;
        }

        var worths = (double[])patterns.BestWorth.Clone();
        for (var k = 0; k < worths.Length; k++)
        {
            worths[k] *= scale;
        }

        for (var t = 0; t < types.Count; t++)
        {
            Prices[t] *= scale;
            Bound += Prices[t] * types.Demand[t];
        }

        Cut = new SheetCut(worths, Bound);
        for (var k = 0; k < types.Kinds; k++)
        {
            KindCost[k] *= scale;
            Bound -= limited[k] < 0 ? 0 : KindCost[k] * types.KindLimit[k];
            KindCost[k] += types.KindCost[k];
        }
    }
}
