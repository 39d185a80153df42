using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Cutting;

/// <summary>One way to cut a sheet: a set of whole-width pieces in a row, then a set of rips in the rest.</summary>
internal readonly record struct SheetPattern(int Kind, int Group, int Full, int Rips);

/// <summary>
/// All ways to cut each kind of sheet, as pairs of a <see cref="SheetFullPatterns"/> set and a <see cref="SheetRipTable"/>
/// set whose lengths fit together. That loses nothing: nothing can lie beside a whole-width piece, so such pieces can be
/// slid to one end and the rest closed up. Pricing (the best pair under given prices) takes time sets × kinds.
/// </summary>
internal sealed class SheetPatterns
{
    private sealed class Group
    {
        public required int[] Kinds;
        public required SheetFullPatterns Full;
        public required SheetRipTable Rips;

        /// <summary>For kind i and rip set r: how many full sets fit beside it; at [i * Rips.Sets + r].</summary>
        public required int[] Reach;
        public required double[] FullWorth;
        public required double[] RipWorth;
        public required int[] BestFull;
    }

    private readonly SheetTypes types;
    private readonly List<Group> groups = [];

    /// <summary>Worth of the best pattern of each kind, and that pattern, after <see cref="Price"/>.</summary>
    public readonly double[] BestWorth;
    public readonly SheetPattern[] Best;

    public bool Complete { get; } = true;

    /// <summary>Work of one <see cref="Price"/>, in steps.</summary>
    public int PriceSteps { get; }

    public SheetPatterns(SheetTypes types, int stepLimit, int setLimit)
    {
        this.types = types;
        BestWorth = new double[types.Kinds];
        Best = new SheetPattern[types.Kinds];
        var least = types.LeastWidth(types.Demand);
        for (var k = 0; k < types.Kinds; k++)
        {
            var width = types.KindWidth[k];
            if (Array.IndexOf(types.KindWidth, width) < k)
            {
                continue;
            }

            var kinds = new List<int>();
            var longest = 0L;
            for (var other = k; other < types.Kinds; other++)
            {
                if (types.KindWidth[other] == width)
                {
                    kinds.Add(other);
                    longest = Math.Max(longest, types.KindLength[other]);
                }
            }

            var full = new List<int>();
            var rips = new List<int>();
            for (var t = 0; t < types.Count; t++)
            {
                if (types.Demand[t] > 0 && types.Fits(t, width, longest))
                {
                    (types.TakesWholeWidth(t, width, least) ? full : rips).Add(t);
                }
            }

            var fullSets = new SheetFullPatterns(types, [.. full], longest, 4 * setLimit);
            var ripSets = new SheetRipTable(types, [.. rips], width, longest, stepLimit, setLimit);
            Complete &= fullSets.Complete && ripSets.Complete;
            PriceSteps += (fullSets.Sets + (ripSets.Sets * (kinds.Count + 1))) / 8;
            groups.Add(new Group
            {
                Kinds = [.. kinds],
                Full = fullSets,
                Rips = ripSets,
                Reach = Reaches(kinds, fullSets, ripSets),
                FullWorth = new double[fullSets.Sets],
                RipWorth = new double[ripSets.Sets],
                BestFull = new int[fullSets.Sets],
            });
        }
    }

    private int[] Reaches(List<int> kinds, SheetFullPatterns full, SheetRipTable rips)
    {
        var reach = new int[kinds.Count * rips.Sets];
        for (var i = 0; i < kinds.Count; i++)
        {
            // Rip sets come by rising stretch, so the reach only falls.
            var fits = full.Sets;
            for (var r = 0; r < rips.Sets; r++)
            {
                var room = types.KindLength[kinds[i]] - rips.Stretch[r];
                while (fits > 0 && full.Length[fits - 1] > room)
                {
                    fits--;
                }

                reach[i * rips.Sets + r] = fits;
            }
        }

        return reach;
    }

    /// <summary>Finds for every kind the pattern of most worth that wants no more pieces than remain.</summary>
    public void Price(ReadOnlySpan<double> prices, ReadOnlySpan<int> remaining)
    {
        for (var g = 0; g < groups.Count; g++)
        {
            var group = groups[g];
            SetWorths(group, prices, remaining);
            var full = group.FullWorth;
            var best = group.BestFull;
            for (var i = 0; i < group.Kinds.Length; i++)
            {
                var kind = group.Kinds[i];
                BestWorth[kind] = 0;
                Best[kind] = new SheetPattern(kind, g, 0, 0);
                for (var r = 0; r < group.RipWorth.Length; r++)
                {
                    var reach = group.Reach[i * group.RipWorth.Length + r];
                    if (reach == 0)
                    {
                        break;
                    }

                    var f = best[reach - 1];
                    var worth = full[f] + group.RipWorth[r];
                    if (worth > BestWorth[kind])
                    {
                        BestWorth[kind] = worth;
                        Best[kind] = new SheetPattern(kind, g, f, r);
                    }
                }
            }
        }
    }

    private static void SetWorths(Group group, ReadOnlySpan<double> prices, ReadOnlySpan<int> remaining)
    {
        var (full, rips) = (group.Full, group.Rips);
        SetWorths(group.FullWorth, full.FullTypes, full.AddedCount, full.Parent, full.Added, prices, remaining);
        SetWorths(group.RipWorth, rips.RipTypes, rips.AddedCount, rips.Parent, rips.Added, prices, remaining);
        var worth = group.FullWorth;
        var best = group.BestFull;
        for (var f = 1; f < best.Length; f++)
        {
            best[f] = worth[f] > worth[best[f - 1]] ? f : best[f - 1];
        }
    }

    /// <summary>Worth of each set, from the set it grew from; minus infinity for one that wants more than remains.</summary>
    private static void SetWorths(
        double[] worths, int[] setTypes, int[] addedCount, int[] parents, int[] added, ReadOnlySpan<double> prices, ReadOnlySpan<int> remaining)
    {
        for (var s = 1; s < worths.Length; s++)
        {
            var type = setTypes[added[s]];
            worths[s] = addedCount[s] > remaining[type] ? double.NegativeInfinity : worths[parents[s]] + prices[type];
        }
    }

    /// <summary>Adds every pattern whose cost exceeds its worth by at most <paramref name="slack"/>, with that excess; false when there are too many.</summary>
    public bool Within(
        ReadOnlySpan<double> prices, ReadOnlySpan<int> remaining, ReadOnlySpan<double> kindCost, double slack, int limit, ref int steps, List<SheetPattern> found, List<double> excess)
    {
        for (var g = 0; g < groups.Count; g++)
        {
            var group = groups[g];
            SetWorths(group, prices, remaining);
            for (var i = 0; i < group.Kinds.Length; i++)
            {
                var kind = group.Kinds[i];
                for (var r = 0; r < group.RipWorth.Length; r++)
                {
                    var reach = group.Reach[i * group.RipWorth.Length + r];
                    var least = kindCost[kind] - slack - group.RipWorth[r];
                    if (reach == 0)
                    {
                        break;
                    }

                    if (group.FullWorth[group.BestFull[reach - 1]] < least)
                    {
                        continue;
                    }

                    steps -= reach;
                    WorkMeter.Spend(reach);
                    if (steps < 0)
                    {
                        return false;
                    }

                    for (var f = r == 0 ? 1 : 0; f < reach; f++)
                    {
                        if (group.FullWorth[f] >= least)
                        {
                            if (found.Count >= limit)
                            {
                                return false;
                            }

                            found.Add(new SheetPattern(kind, g, f, r));
                            excess.Add(kindCost[kind] - (group.FullWorth[f] + group.RipWorth[r]));
                        }
                    }
                }
            }
        }

        return true;
    }

    /// <summary>Writes the type of each piece that the pattern gives.</summary>
    public void Pieces(SheetPattern pattern, List<int> into)
    {
        into.Clear();
        var group = groups[pattern.Group];
        for (var set = pattern.Full; set > 0; set = group.Full.Parent[set])
        {
            into.Add(group.Full.FullTypes[group.Full.Added[set]]);
        }

        for (var set = pattern.Rips; set > 0; set = group.Rips.Parent[set])
        {
            into.Add(group.Rips.RipTypes[group.Rips.Added[set]]);
        }
    }

    /// <summary>Writes how many pieces of each type the pattern gives.</summary>
    public void Count(SheetPattern pattern, Span<int> counts)
    {
        counts.Clear();
        var group = groups[pattern.Group];
        Scatter(group.Full.FullTypes, group.Full.Parent, group.Full.Added, pattern.Full, counts);
        Scatter(group.Rips.RipTypes, group.Rips.Parent, group.Rips.Added, pattern.Rips, counts);
    }

    private static void Scatter(int[] setTypes, int[] parents, int[] added, int set, Span<int> counts)
    {
        for (; set > 0; set = parents[set])
        {
            counts[setTypes[added[set]]]++;
        }
    }

    /// <summary>Lays the pattern out: whole-width pieces from one end, longest first, then the rips, then the offcut.</summary>
    public SheetDesign Lay(SheetPattern pattern, int times)
    {
        var group = groups[pattern.Group];
        var width = types.KindWidth[pattern.Kind];
        var layout = new SheetLayout(types, group.Rips);
        var full = group.Full;
        var order = (int[])full.FullTypes.Clone();
        var counts = new int[types.Count];
        Scatter(full.FullTypes, full.Parent, full.Added, pattern.Full, counts);
        Array.Sort(order, (a, b) => types.Length[a] != types.Length[b] ? types.Length[b].CompareTo(types.Length[a]) : a.CompareTo(b));
        var x = 0L;
        foreach (var t in order)
        {
            for (var n = 0; n < counts[t]; n++)
            {
                layout.WholeWidth(t, x, width);
                x += types.Length[t];
            }
        }

        layout.Rest(pattern.Rips, x, width, types.KindLength[pattern.Kind] - x);
        return new SheetDesign(pattern.Kind, times, [.. layout.Placed], [.. layout.Free]);
    }
}
