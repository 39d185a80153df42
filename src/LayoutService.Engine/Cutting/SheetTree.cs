using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Cutting;

/// <summary>The branch and bound of <see cref="SheetSearch"/>.</summary>
internal sealed class SheetTree
{
    private const int CandidateLimit = 20_000;

    /// <summary>A candidate that is not among so many by rising excess is never reached within the steps, or by luck.</summary>
    private const int StepsACandidate = 10;

    private const int FewestKept = 1_000;

    private readonly SheetTypes types;
    private readonly SheetPatterns patterns;
    private readonly SheetRelaxation relaxation;
    private readonly long unit;
    private readonly int[] typeOrder;
    private readonly int[] left;
    private readonly Dictionary<long, long> seen = [];
    private readonly long[] code;
    private readonly bool coded = true;
    private readonly List<SheetPattern> chosen = [];
    private SheetPattern[] candidates = [];
    private int[] wantedTypes = [];
    private int[] wantedCounts = [];
    private int[] wantedFrom = [];
    private double[] excess = [];
    private int[][] byType = [];
    private int steps;

    public List<(SheetPattern Pattern, int Times)> Best { get; private set; } = [];

    public long BestCost { get; private set; }

    /// <summary>Everything that could be better was looked at.</summary>
    public bool Finished { get; private set; }

    public SheetTree(SheetTypes types, SheetPatterns patterns, SheetRelaxation relaxation, long unit)
    {
        (this.types, this.patterns, this.relaxation, this.unit) = (types, patterns, relaxation, unit);
        left = (int[])types.KindLimit.Clone();
        typeOrder = new int[types.Count];
        code = new long[types.Count];
        var product = 1.0;
        var place = 1L;
        for (var t = 0; t < types.Count; t++)
        {
            typeOrder[t] = t;
            code[t] = place;
            product *= types.Demand[t] + 1;
            coded &= product < 4e18;
            place = coded ? place * (types.Demand[t] + 1) : 0;
        }

        coded &= !types.Limited;
        Array.Sort(typeOrder, (a, b) =>
        {
            var order = relaxation.Prices[b].CompareTo(relaxation.Prices[a]);
            return order != 0 ? order : a.CompareTo(b);
        });
    }

    /// <summary>Looks for plans cheaper than the known cost; true when one was found.</summary>
    public bool Improve(long known, long bound, int stepLimit)
    {
        BestCost = known;
        steps = stepLimit;
        var slack = known - unit - relaxation.Bound + known * 1e-9;
        var found = new List<SheetPattern>();
        var costs = new List<double>();
        var whole = patterns.Within(relaxation.Prices, types.Demand, relaxation.KindCost, slack, Math.Min(CandidateLimit, 1_000_000 / types.Count), ref steps, found, costs);
        var most = Math.Max(FewestKept, stepLimit / StepsACandidate);
        Prepare(found, [.. costs], most);
        whole &= found.Count <= most;
        steps = Math.Max(steps, stepLimit / 2);
        var remaining = (int[])types.Demand.Clone();
        var worth = relaxation.Bound;
        Branch(remaining, 0, worth, bound);
        Finished = whole && steps >= 0;
        return Best.Count > 0;
    }

    /// <summary>The candidates by rising excess, of equal ones the first found first, and what each of them gives.</summary>
    private void Prepare(List<SheetPattern> found, double[] costs, int most)
    {
        var n = types.Count;
        var order = new int[found.Count];
        for (var i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        Array.Sort(costs, order);
        for (int from = 0, to = 1; to <= order.Length; to++)
        {
            if (to == order.Length || costs[to] != costs[from])
            {
                Array.Sort(order, from, to - from);
                from = to;
            }
        }

        var kept = Math.Min(most, found.Count);
        candidates = new SheetPattern[kept];
        excess = costs;
        wantedFrom = new int[kept + 1];
        var setTypes = new List<int>(4 * kept);
        var setCounts = new List<int>(4 * kept);
        var pieces = new List<int>();
        var counts = new int[n];
        var lists = new List<int>[n];
        for (var t = 0; t < n; t++)
        {
            lists[t] = [];
        }

        for (var i = 0; i < kept; i++)
        {
            candidates[i] = found[order[i]];
            patterns.Pieces(candidates[i], pieces);
            foreach (var t in pieces)
            {
                counts[t]++;
            }

            foreach (var t in pieces)
            {
                if (counts[t] > 0)
                {
                    lists[t].Add(i);
                    setTypes.Add(t);
                    setCounts.Add(counts[t]);
                    counts[t] = 0;
                }
            }

            wantedFrom[i + 1] = setTypes.Count;
        }

        wantedTypes = [.. setTypes];
        wantedCounts = [.. setCounts];
        byType = Array.ConvertAll(lists, l => l.ToArray());
        Array.Sort(typeOrder, (a, b) =>
        {
            var fewer = byType[a].Length.CompareTo(byType[b].Length);
            return fewer != 0 ? fewer : a.CompareTo(b);
        });
    }

    /// <summary><paramref name="least"/> bounds the whole plan: cost so far plus the worth of what remains.</summary>
    private void Branch(int[] remaining, long cost, double least, long bound)
    {
        if (--steps < 0 || BestCost <= bound)
        {
            return;
        }

        var type = -1;
        foreach (var t in typeOrder)
        {
            if (remaining[t] > 0)
            {
                type = t;
                break;
            }
        }

        if (type < 0)
        {
            // With limited stock left over the cost exceeds its bound, so it is compared for itself.
            if (cost < BestCost)
            {
                BestCost = cost;
                Best = chosen.ConvertAll(p => (p, 1));
            }

            return;
        }

        if (coded && Known(remaining, cost))
        {
            return;
        }

        WorkMeter.Spend(byType[type].Length);
        foreach (var i in byType[type])
        {
            steps--;
            var next = least + excess[i];
            if (next > BestCost - unit + BestCost * 1e-9)
            {
                return;
            }

            var kind = candidates[i].Kind;
            if (left[kind] == 0 || !Covers(remaining, i))
            {
                continue;
            }

            Move(remaining, i, -1);
            left[kind] -= left[kind] == int.MaxValue ? 0 : 1;
            chosen.Add(candidates[i]);
            Branch(remaining, cost + types.KindCost[kind], next, bound);
            chosen.RemoveAt(chosen.Count - 1);
            left[kind] += left[kind] == int.MaxValue ? 0 : 1;
            Move(remaining, i, 1);
            if (steps < 0)
            {
                return;
            }
        }
    }

    private bool Known(int[] remaining, long cost)
    {
        var key = 0L;
        for (var t = 0; t < remaining.Length; t++)
        {
            key += remaining[t] * code[t];
        }

        if (seen.TryGetValue(key, out var before) && before <= cost)
        {
            return true;
        }

        seen[key] = cost;
        return false;
    }

    private bool Covers(int[] remaining, int candidate)
    {
        for (var w = wantedFrom[candidate]; w < wantedFrom[candidate + 1]; w++)
        {
            if (wantedCounts[w] > remaining[wantedTypes[w]])
            {
                return false;
            }
        }

        return true;
    }

    private void Move(int[] remaining, int candidate, int times)
    {
        for (var w = wantedFrom[candidate]; w < wantedFrom[candidate + 1]; w++)
        {
            remaining[wantedTypes[w]] += times * wantedCounts[w];
        }
    }
}
