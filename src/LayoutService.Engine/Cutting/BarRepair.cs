namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: a good solution, made better. Method: large neighbourhood search (Shaw 1998): take a few runs that share
/// sticks off, piece them again with a beam on top of what stays, keep the result when it is better or, early on, little
/// worse (simulated annealing). The sequence of choices is a fixed arithmetic one, so the answer is the same every time.
/// Cost: steps bound it. Why this one: a room's loss hides in groups of two to five runs that exchange offcuts.
/// </summary>
internal sealed class BarRepair(BarCase bars, BarJudge judge, BarBeam beam, BarStagger stagger, BarWeights weights)
{
    private readonly List<int> _chosen = [];
    private readonly List<int> _near = [];
    private ulong _state = 0x9E3779B97F4A7C15UL;

    public static int MostRuns { get; set; } = 4;

    public static int Width { get; set; } = 6;

    public static double Heat { get; set; } = 0.1;

    /// <summary>Improves until the steps are spent or the bound is reached; best ends with the best solution seen.</summary>
    public BarScore Run(BarSolution best, BarScore bestScore, BarPrices[] prices, long bound, long steps)
    {
        var now = new BarSolution(bars);
        now.CopyFrom(best);
        var before = new BarSolution(bars);
        BarScore score = bestScore;
        long begin = beam.Work;
        double hopeBefore = prices[0].Closing(now.Content);
        while (beam.Work - begin < steps && (bestScore.Violations > 0 || bestScore.Cost > bound))
        {
            double spent = (beam.Work - begin) / (double)steps;
            double hope = Hope * (1 - spent);
            Choose(now);
            before.CopyFrom(now);
            foreach (int run in _chosen)
            {
                now.Remove(run);
            }

            BarPrices by = prices[Next(prices.Length)];
            double share = (Next(4) + 0.5) / 4;
            beam.Place(now, System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_chosen), by, Width, share, Soft(spent), hope);
            stagger.Settle(now);
            BarScore after = judge.Of(now);
            double hopeAfter = prices[0].Closing(now.Content);
            if (!Accept(score, after, hope * (hopeBefore - hopeAfter), spent))
            {
                (now, before) = (before, now);
                continue;
            }

            score = after;
            hopeBefore = hopeAfter;
            now.Tidy();
            if (score.CompareTo(bestScore) < 0)
            {
                bestScore = score;
                best.CopyFrom(now);
            }
        }

        return bestScore;
    }

    private bool Accept(BarScore before, BarScore after, double hopeLost, double spent)
    {
        double worse = after.Cost - before.Cost + (after.Violations - before.Violations) * Soft(spent) + hopeLost;
        if (worse < -1e-6 || (worse < 1e-6 && after.CompareTo(before) <= 0))
        {
            return true;
        }

        double heat = Heat * bars.Kinds.LargestCost * (1 - spent) * (1 - spent);
        return heat > 0 && worse < -heat * Math.Log((Next(1 << 20) + 1) / (double)(1 << 20));
    }

    public static double Hope { get; set; } = 0.5;

    /// <summary>What a violation weighs: little early on, so that the search can pass through one, more than any gain later.</summary>
    private double Soft(double spent) => spent > 0.8 ? weights.Violation : weights.Violation * 0.01 * SoftFactor;

    public static double SoftFactor { get; set; } = 0.3;

    private void Choose(BarSolution now)
    {
        int size = Math.Min(bars.Runs.Length, 2 + Next(MostRuns - 1));
        _chosen.Clear();
        _chosen.Add(Next(bars.Runs.Length));
        while (_chosen.Count < size)
        {
            int next = -1;
            if (Next(4) != 0)
            {
                Sharing(now, _chosen[Next(_chosen.Count)]);
                next = _near.Count == 0 ? -1 : _near[Next(_near.Count)];
            }

            if (next < 0)
            {
                next = Next(bars.Runs.Length);
                if (_chosen.Contains(next))
                {
                    continue;
                }
            }

            _chosen.Insert(Next(_chosen.Count + 1), next);
        }
    }

    /// <summary>Runs that share a stick with this one and are not chosen yet.</summary>
    private void Sharing(BarSolution now, int run)
    {
        _near.Clear();
        for (int other = 0; other < bars.Runs.Length; other++)
        {
            if (!_chosen.Contains(other) && Share(now.Sticks[run], now.Sticks[other]))
            {
                _near.Add(other);
            }
        }
    }

    private static bool Share(List<int> a, List<int> b)
    {
        foreach (int stick in a)
        {
            if (b.Contains(stick))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The next of a fixed sequence (xorshift), from 0 to below − 1.</summary>
    private int Next(int below)
    {
        _state ^= _state << 13;
        _state ^= _state >> 7;
        _state ^= _state << 17;
        return (int)((_state >> 33) % (ulong)below);
    }
}
