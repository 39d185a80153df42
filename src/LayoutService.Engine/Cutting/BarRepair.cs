using LayoutService.Engine.Measures;
using System.Runtime.InteropServices;

namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: a good solution, made better. Method: large neighbourhood search (Shaw 1998): take a few runs that share
/// sticks off, piece them again with a beam on top of what stays, keep the result when it is better or, early on, little
/// worse (simulated annealing). A rest that can still hold a piece counts for something early on, so that waste gathers
/// in one stick until that stick can go. The sequence of choices is a fixed arithmetic one, so the answer is the same
/// every time. Cost: steps bound it. Why this one: a room's loss hides in groups of two to five runs that exchange
/// offcuts.
/// </summary>
internal sealed class BarRepair(BarCase bars, BarJudge judge, BarBeam beam, BarStagger stagger, BarWeights weights, BarRepairStyle style)
{
    private readonly List<int> _chosen = [];
    private readonly List<int> _near = [];
    private readonly BarChance _chance = new();

    /// <summary>Improves from the start until the steps are spent or the bound is reached; best ends with the best solution seen.</summary>
    public BarScore Run(BarSolution start, BarSolution best, BarScore bestScore, BarPrices[] prices, long bound, long steps)
    {
        if (bars.Runs.Length < 2)
        {
            return bestScore;
        }

        var now = new BarSolution(bars);
        now.CopyFrom(start);
        BarScore score = judge.Of(start);
        long begin = beam.Work;
        double closing = prices[0].Closing(now.Content);
        while (beam.Work - begin < steps && (bestScore.Violations > 0 || bestScore.Cost > bound))
        {
            double spent = (beam.Work - begin) / (double)steps;
            double hope = style.Hope * (1 - spent);
            WorkMeter.Spend(bars.Runs.Length);
            now.Mark();
            Change(now, prices, spent, hope);
            BarScore after = judge.Of(now);
            double closingAfter = prices[0].Closing(now.Content);
            if (!Accept(score, after, hope * (closing - closingAfter), spent))
            {
                now.Undo();
                continue;
            }

            score = after;
            closing = closingAfter;
            now.Tidy();
            if (score.CompareTo(bestScore) < 0)
            {
                bestScore = score;
                best.CopyFrom(now);
            }
        }

        return bestScore;
    }

    private void Change(BarSolution now, BarPrices[] prices, double spent, double hope)
    {
        Choose(now);
        foreach (int run in _chosen)
        {
            now.Remove(run);
        }

        BarPrices by = prices[Next(prices.Length)];
        double share = (Next(4) + 0.5) / 4;
        beam.Place(now, CollectionsMarshal.AsSpan(_chosen), by, new BarBeamStyle(style.Width, share, Violation(spent), hope));
        stagger.Settle(now);
    }

    private bool Accept(BarScore before, BarScore after, double hopeLost, double spent)
    {
        double worse = after.Cost - before.Cost + (after.Violations - before.Violations) * Violation(spent) + hopeLost;
        if (worse < -1e-6 || (worse < 1e-6 && after.CompareTo(before) <= 0))
        {
            return true;
        }

        double heat = style.Heat * bars.Kinds.LargestCost * (1 - spent) * (1 - spent);
        return heat > 0 && worse < -heat * Math.Log((Next(1 << 20) + 1) / (double)(1 << 20));
    }

    /// <summary>
    /// What a violation weighs: a third of a stick at first, so that the search can pass through one, more than any gain
    /// later.
    /// </summary>
    private double Violation(double spent) => spent > 0.8 || style.Heat == 0 ? weights.Violation : weights.Violation * 0.003;

    private void Choose(BarSolution now)
    {
        int size = Next(100) < style.LargePercent ? style.MostRuns + 1 + Next(5) : 2 + Next(style.MostRuns - 1);
        size = Math.Min(bars.Runs.Length, size);
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
            }

            if (!_chosen.Contains(next))
            {
                _chosen.Insert(Next(_chosen.Count + 1), next);
            }
        }
    }

    /// <summary>Runs that share a stick with this one and are not chosen yet.</summary>
    private void Sharing(BarSolution now, int run)
    {
        _near.Clear();
        for (int other = 0; other < bars.Runs.Length; other++)
        {
            if (Share(now.Sticks[run], now.Sticks[other]) && !_chosen.Contains(other))
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

    private int Next(int below) => _chance.Next(below);
}
