using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Cutting;

/// <summary>How one sheet is cut, and how many sheets are cut like that.</summary>
internal sealed record SheetDesign(int Kind, int Times, SheetPanelFill.Placed[] Placed, SheetPanelFill.Panel[] Free);

/// <summary>
/// Buys one sheet after another: of every kind the fullest sheet that the remaining pieces give, and of these the one
/// with the most worth per cost ("sequential heuristic procedure" with given piece values). Pieces that take the whole
/// width are chosen by a small exact search over lengths, the rest by <see cref="SheetPanelFill"/> in what remains.
/// Time: sheets × kinds × (search nodes + pieces × panels). No bound; good because worths come from what a type costs
/// when cut alone, or from dual prices.
/// </summary>
internal sealed class SheetGreedy
{
    private const int SearchNodes = 60;

    private readonly SheetTypes types;
    private readonly SheetPanelFill fill;
    private readonly bool[] whole;
    private readonly int[] wholeOrder;
    private readonly int[] restOrder;
    private readonly int[] active;
    private int activeCount;
    private readonly int[] remaining;
    private readonly int[] kindLeft;
    private readonly int[] take;
    private readonly int[] bestTake;
    private readonly int[] sheetTake;
    private readonly double[] paid;
    private double[] worth = [];
    private double bestWorth;
    private int nodes;

    public SheetGreedy(SheetTypes types)
    {
        this.types = types;
        var count = types.Count;
        fill = new SheetPanelFill(types, types.Order.Length);
        whole = new bool[count * types.Kinds];
        remaining = new int[count];
        kindLeft = new int[types.Kinds];
        take = new int[count];
        bestTake = new int[count];
        sheetTake = new int[count];
        paid = new double[count];
        wholeOrder = new int[count];
        restOrder = new int[count];
        active = new int[count];
        var least = types.LeastWidth(types.Demand);
        for (var k = 0; k < types.Kinds; k++)
        {
            for (var t = 0; t < count; t++)
            {
                whole[k * count + t] = types.TakesWholeWidth(t, types.KindWidth[k], least);
            }
        }

        for (var t = 0; t < count; t++)
        {
            wholeOrder[t] = t;
            restOrder[t] = t;
        }

        var length = types.Length;
        Array.Sort(wholeOrder, (a, b) => length[a] != length[b] ? length[b].CompareTo(length[a]) : a.CompareTo(b));
    }

    /// <summary>Pieces of each type that were left over by the last run.</summary>
    public ReadOnlySpan<int> Left => remaining;

    /// <summary>
    /// Moves each worth half way to what a piece of the type cost in the last run, its sheets' cost shared by worth
    /// ("sequential value correction"): what had to go into wasteful sheets is placed earlier next time.
    /// </summary>
    public void Correct(double[] worths)
    {
        for (var t = 0; t < worths.Length; t++)
        {
            worths[t] = types.Demand[t] > 0 ? 0.5 * (worths[t] + paid[t] / types.Demand[t]) : worths[t];
        }
    }

    /// <summary>Cost of the sheets for the whole demand, or long.MaxValue when some piece is left over.</summary>
    public long Run(double[] worths, SheetFirstCut firstCut, List<SheetDesign>? designs)
    {
        types.Demand.CopyTo(remaining, 0);
        types.KindLimit.CopyTo(kindLeft, 0);
        Array.Clear(paid);
        worth = worths;
        SortRest();
        wholeOrder.CopyTo(active, 0);
        activeCount = active.Length;
        var cost = 0L;
        while (true)
        {
            WorkMeter.Spend(8L * types.Count * types.Kinds);
            DropServed();
            var bestKind = -1;
            var bestScore = 0.0;
            for (var k = 0; k < types.Kinds; k++)
            {
                if (kindLeft[k] == 0)
                {
                    continue;
                }

                var score = Fill(k, firstCut) / types.KindCost[k];
                if (score > bestScore * (1 + 1e-12))
                {
                    (bestKind, bestScore) = (k, score);
                    take.CopyTo(sheetTake, 0);
                }
            }

            if (bestKind < 0)
            {
                return Array.TrueForAll(remaining, r => r == 0) ? cost : long.MaxValue;
            }

            var times = kindLeft[bestKind];
            for (var t = 0; t < types.Count; t++)
            {
                times = sheetTake[t] > 0 ? Math.Min(times, remaining[t] / sheetTake[t]) : times;
            }

            if (designs is not null)
            {
                Fill(bestKind, firstCut);
                designs.Add(new SheetDesign(bestKind, times, fill.Pieces.ToArray(), fill.Panels.ToArray()));
            }

            var share = times / bestScore;
            for (var t = 0; t < types.Count; t++)
            {
                remaining[t] -= times * sheetTake[t];
                paid[t] += share * sheetTake[t] * worth[t];
            }

            kindLeft[bestKind] -= kindLeft[bestKind] == int.MaxValue ? 0 : times;
            cost += times * types.KindCost[bestKind];
        }
    }

    /// <summary>Pieces that need a factory edge first, then by worth: an insertion sort, for the order changes little.</summary>
    private void SortRest()
    {
        for (var i = 1; i < restOrder.Length; i++)
        {
            var type = restOrder[i];
            var place = i;
            for (; place > 0 && Precedes(type, restOrder[place - 1]); place--)
            {
                restOrder[place] = restOrder[place - 1];
            }

            restOrder[place] = type;
        }
    }

    private bool Precedes(int a, int b) =>
        types.Need[a] != types.Need[b] ? types.Need[a] > types.Need[b] : worth[a] != worth[b] ? worth[a] > worth[b] : a < b;

    /// <summary>Fills one sheet of the kind from the remaining pieces; leaves the counts in <c>take</c>, answers their worth.</summary>
    private double Fill(int kind, SheetFirstCut firstCut)
    {
        Array.Clear(take);
        Array.Clear(bestTake);
        bestWorth = 0;
        nodes = SearchNodes;
        ChooseWhole(kind, 0, types.KindLength[kind], 0);
        bestTake.CopyTo(take, 0);
        fill.Start(types.KindWidth[kind], types.KindLength[kind]);
        var total = bestWorth;
        for (var i = 0; i < activeCount && bestWorth > 0; i++)
        {
            var t = active[i];
            for (var n = take[t]; n > 0; n--)
            {
                fill.TryPlace(t, SheetFirstCut.Cross);
            }
        }

        foreach (var t in restOrder)
        {
            if (remaining[t] == 0 || whole[kind * types.Count + t])
            {
                continue;
            }

            while (take[t] < remaining[t] && fill.TryPlace(t, firstCut))
            {
                take[t]++;
                total += worth[t];
            }
        }

        return total;
    }

    /// <summary>Keeps the types that are still wanted, longest first.</summary>
    private void DropServed()
    {
        var kept = 0;
        for (var i = 0; i < activeCount; i++)
        {
            if (remaining[active[i]] > 0)
            {
                active[kept++] = active[i];
            }
        }

        activeCount = kept;
    }

    /// <summary>Place of the first type, from a place on, that is not longer than the room.</summary>
    private int FirstWithin(int from, long room)
    {
        var to = activeCount;
        while (from < to)
        {
            var middle = (from + to) / 2;
            if (types.Length[active[middle]] > room)
            {
                from = middle + 1;
            }
            else
            {
                to = middle;
            }
        }

        return from;
    }

    /// <summary>Depth first over counts of whole-width types, longest first, most copies first, within a node budget.</summary>
    private void ChooseWhole(int kind, int from, long room, double value)
    {
        if (value > bestWorth * (1 + 1e-12))
        {
            bestWorth = value;
            take.CopyTo(bestTake, 0);
        }

        for (var i = FirstWithin(from, room); i < activeCount; i++)
        {
            var t = active[i];
            var length = types.Length[t];
            if (!whole[kind * types.Count + t])
            {
                continue;
            }

            if (--nodes < 0)
            {
                return;
            }

            var most = (int)Math.Min(remaining[t], room / length);
            for (var n = most; n > 0; n--)
            {
                take[t] = n;
                ChooseWhole(kind, i + 1, room - n * length, value + n * worth[t]);
                if (nodes < 0)
                {
                    break;
                }
            }

            take[t] = 0;
        }
    }
}
