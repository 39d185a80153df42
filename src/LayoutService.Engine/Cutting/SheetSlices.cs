namespace LayoutService.Engine.Cutting;

/// <summary>
/// A bound for problems too large to list: cut every sheet into thin slices, and let each slice be filled on its own.
/// A piece then needs as many slices as it is thick, of its length each; a slice is a one-dimensional pattern. The least
/// cost of slices in fractions (column generation, knapsack pricing) cannot exceed the cost of any plan: pieces side by
/// side share the sheet's slices, and pieces in a row share their length, whatever the cuts (interval graphs are perfect).
/// Thickness may be any weight, as long as a sheet counts for the most weight that fits side by side in it ("conservative
/// scale", Fekete and Schepers 2004). A piece that may turn is split between both ways at its best.
/// </summary>
internal sealed class SheetSlices
{
    private readonly record struct Way(int Type, long Size, double Weight, bool Edge);

    private const int NodeLimit = 5_000;
    private const int MostRounds = 1_000;
    private const int MostRows = 1_000;

    private readonly SheetTypes types;
    private readonly bool across;
    private readonly List<Way> ways = [];
    private readonly int[] straight;
    private readonly int[] turned;
    private readonly double[] room;

    private SheetSlices(SheetTypes types, bool across, Func<long, byte, double> weigh)
    {
        (this.types, this.across) = (types, across);
        straight = new int[types.Count];
        turned = new int[types.Count];
        room = new double[types.Kinds];
        for (var t = 0; t < types.Count; t++)
        {
            straight[t] = turned[t] = -1;
            if (types.Demand[t] == 0)
            {
                continue;
            }

            for (var k = 0; k < types.Kinds; k++)
            {
                if (straight[t] < 0 && types.LiesStraight(t, types.KindWidth[k]) && types.Length[t] <= types.KindLength[k])
                {
                    straight[t] = AddWay(t, types.Length[t], types.Width[t], weigh);
                }

                if (turned[t] < 0 && types.Turn[t] && types.Length[t] <= types.KindWidth[k] && types.Width[t] <= types.KindLength[k])
                {
                    turned[t] = AddWay(t, types.Width[t], types.Length[t], weigh);
                }
            }
        }

        SetRooms();
    }

    /// <summary>What each of the slicings that are tried demands of a plan's sheets; a step is one knapsack node.</summary>
    public static List<SheetCut> Cuts(SheetTypes types, int steps)
    {
        long widest = 0, longest = 0;
        for (var k = 0; k < types.Kinds; k++)
        {
            widest = Math.Max(widest, types.KindWidth[k]);
            longest = Math.Max(longest, types.KindLength[k]);
        }

        var cuts = new List<SheetCut>();
        foreach (var slices in new SheetSlices[]
        {
            new(types, false, (extent, _) => extent),
            new(types, false, (extent, need) => 2 * extent > widest ? 2 : need > 0 || 2 * extent == widest ? 1 : 0),
            new(types, false, (extent, _) => 3 * extent >= widest ? extent : 0),
            new(types, true, (extent, _) => extent),
            new(types, true, (extent, _) => 2 * extent > longest ? 2 : 2 * extent == longest ? 1 : 0),
            new(types, true, (extent, _) => 3 * extent >= longest ? extent : 0),
        })
        {
            if (slices.Solve(steps / 3) is { } cut)
            {
                cuts.Add(cut);
            }
        }

        return cuts;
    }

    private int AddWay(int type, long along, long beside, Func<long, byte, double> weigh)
    {
        var (size, thick) = across ? (beside, along) : (along, beside);
        ways.Add(new Way(type, size, weigh(thick, types.Need[type]), types.Need[type] == 1));
        return ways.Count - 1;
    }

    private long SizeOf(int kind) => across ? types.KindWidth[kind] : types.KindLength[kind];

    private long ThicknessOf(int kind) => across ? types.KindLength[kind] : types.KindWidth[kind];

    /// <summary>The most weight that fits side by side in each kind of sheet.</summary>
    private void SetRooms()
    {
        var knapsack = new SheetKnapsack(across ? int.MaxValue : 2, NodeLimit);
        for (var i = 0; i < ways.Count; i++)
        {
            var type = ways[i].Type;
            var isTurned = turned[type] == i;
            var thick = across == isTurned ? types.Width[type] : types.Length[type];
            knapsack.Add(thick, ways[i].Weight, types.Demand[type], ways[i].Edge, i);
        }

        knapsack.Sort(ways.Count);
        for (var k = 0; k < room.Length; k++)
        {
            room[k] = knapsack.Most(ThicknessOf(k));
        }
    }

    private SheetCut? Solve(int steps)
    {
        // Rows: one a way, then one a type that can lie both ways.
        var rows = ways.Count;
        var share = new int[types.Count];
        for (var t = 0; t < types.Count; t++)
        {
            share[t] = straight[t] >= 0 && turned[t] >= 0 ? rows++ : -1;
        }

        var scale = 0.0;
        var dearest = 0L;
        for (var k = 0; k < room.Length; k++)
        {
            scale = Math.Max(scale, room[k]);
            dearest = Math.Max(dearest, types.KindCost[k]);
        }

        if (scale == 0)
        {
            return null;
        }

        if (rows > MostRows)
        {
            return null;
        }

        var demand = new double[rows];
        var unit = new double[rows];
        var cost = new double[rows];
        Array.Fill(unit, 1);
        Array.Fill(cost, 1000.0 * dearest);
        for (var i = 0; i < ways.Count; i++)
        {
            demand[i] = share[ways[i].Type] < 0 ? ways[i].Weight / scale * types.Demand[ways[i].Type] : 0;
        }

        for (var t = 0; t < types.Count; t++)
        {
            if (share[t] >= 0)
            {
                demand[share[t]] = types.Demand[t];
            }
        }

        var master = new SheetMaster(demand, unit, cost);
        var column = new double[rows];
        var knapsack = new SheetKnapsack(across ? 2 : int.MaxValue, NodeLimit);
        var pivots = MostRounds * 8;
        for (var round = 0; round < MostRounds && knapsack.Nodes + master.Steps < steps; round++)
        {
            if (!master.EnterSurplus(ref pivots))
            {
                break;
            }

            var entered = Share(master, share, column, scale);
            Stock(knapsack, master.Price);
            for (var k = 0; k < room.Length; k++)
            {
                if (room[k] <= 0)
                {
                    continue;
                }

                knapsack.Most(SizeOf(k));
                Array.Clear(column);
                var worth = 0.0;
                for (var i = 0; i < ways.Count; i++)
                {
                    column[i] = knapsack.Best[i];
                    worth += column[i] * master.Price[i];
                }

                var price = types.KindCost[k] / room[k] * scale;
                entered |= worth > price * (1 + 1e-9) && master.Enter(column, price, round);
            }

            if (!entered)
            {
                break;
            }
        }

        return Farley(knapsack, master.Price, scale);
    }

    /// <summary>Columns that let a turning type lie one way: it then needs that way's slices.</summary>
    private bool Share(SheetMaster master, int[] share, double[] column, double scale)
    {
        var entered = false;
        for (var i = 0; i < ways.Count; i++)
        {
            var row = share[ways[i].Type];
            if (row >= 0 && master.Price[row] - ways[i].Weight / scale * master.Price[i] > 1e-7)
            {
                Array.Clear(column);
                column[row] = 1;
                column[i] = -ways[i].Weight / scale;
                entered |= master.Enter(column, 0, -1);
            }
        }

        return entered;
    }

    private void Stock(SheetKnapsack knapsack, ReadOnlySpan<double> prices)
    {
        knapsack.Clear();
        for (var i = 0; i < ways.Count; i++)
        {
            knapsack.Add(ways[i].Size, prices[i], types.Demand[ways[i].Type], ways[i].Edge, i);
        }

        knapsack.Sort(ways.Count);
    }

    /// <summary>What a sheet of each kind can be worth at most under the prices; each type counts by its cheaper way.</summary>
    private SheetCut Farley(SheetKnapsack knapsack, ReadOnlySpan<double> prices, double scale)
    {
        Stock(knapsack, prices);
        var worths = new double[room.Length];
        for (var k = 0; k < room.Length; k++)
        {
            worths[k] = room[k] > 0 ? knapsack.Most(SizeOf(k)) * room[k] / scale : 0;
        }

        var sum = 0.0;
        for (var t = 0; t < types.Count; t++)
        {
            var least = double.MaxValue;
            foreach (var i in (ReadOnlySpan<int>)[straight[t], turned[t]])
            {
                least = i < 0 ? least : Math.Min(least, Math.Max(0, prices[i]) * ways[i].Weight / scale);
            }

            sum += least == double.MaxValue ? 0 : least * types.Demand[t];
        }

        return new SheetCut(worths, sum);
    }
}
