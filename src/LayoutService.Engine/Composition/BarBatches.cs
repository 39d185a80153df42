using LayoutService.Engine.Cutting;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Breaks and cuts bars; a very large floor in batches of neighbouring bars, since the cutter's work grows with the square
/// of the sticks; the batches share the steps of a thorough search. A batch keeps off the breaks of the bars solved before
/// it. With limited stock there is one batch. The bound of several batches is given as 0: theirs do not add up to one for all.
/// </summary>
public static class BarBatches
{
    private const long SticksInBatch = 400;

    public static BarPlan Solve(BarProblem problem, BarEffort effort)
    {
        var sticks = problem.Bars.Sum(b => 1 + ((b.Nodes.Count - 1) / Math.Max(1, LongestReach(b))));
        if (sticks <= SticksInBatch || problem.Kinds.Any(k => k.Quantity is not null))
        {
            return BarCutter.Solve(problem, effort);
        }

        var batches = (int)Math.Min(problem.Bars.Count, (sticks + SticksInBatch - 1) / SticksInBatch);
        var ways = new List<IReadOnlyList<int>>();
        var plans = new List<(int First, BarPlan Plan)>();
        for (var b = 0; b < batches; b++)
        {
            var (first, end) = (problem.Bars.Count * b / batches, problem.Bars.Count * (b + 1) / batches);
            var bars = Enumerable.Range(first, end - first).Select(i => Within(problem.Bars, i, first, end, ways)).ToList();
            var plan = BarCutter.Solve(problem with { Bars = bars, Extras = b == batches - 1 ? problem.Extras : [] }, effort, batches);
            ways.AddRange(plan.Ways);
            plans.Add((first, plan));
        }

        return new BarPlan(
            ways,
            [.. plans.SelectMany(p => p.Plan.Sticks.Select(s => s with { Cuts = [.. s.Cuts.Select(c => Moved(c, p.First))] }))],
            [.. plans.SelectMany(p => p.Plan.Missing.Select(c => Moved(c, p.First)))],
            [.. plans.SelectMany(p => p.Plan.WithoutWay.Select(w => w + p.First))],
            plans.Sum(p => p.Plan.Cost),
            0,
            plans.Sum(p => p.Plan.Joints),
            plans.Sum(p => p.Plan.SharedBreaks),
            plans.Sum(p => p.Plan.PoorBreaks));
    }

    // nodes that the longest piece passes
    private static long LongestReach(Bar bar)
    {
        long reach = 0;
        foreach (var piece in bar.Pieces)
        {
            reach = Math.Max(reach, piece.To - piece.From);
        }

        return reach;
    }

    private static BarCut Moved(BarCut cut, int first) => cut.Bar < 0 ? cut : cut with { Bar = cut.Bar + first };

    // a bar of a batch: neighbours of the same batch by their new number, breaks of those solved before as poor places
    private static Bar Within(IReadOnlyList<Bar> bars, int index, int first, int end, List<IReadOnlyList<int>> ways)
    {
        var bar = bars[index];
        if (bar.Neighbours.All(n => first <= n && n < end))
        {
            return bar with { Neighbours = [.. bar.Neighbours.Select(n => n - first)] };
        }

        var taken = bar.Neighbours
            .Where(n => n < ways.Count)
            .SelectMany(n => ways[n].Skip(1).Select(p => bars[n].Nodes[bars[n].Pieces[p].From].Key))
            .ToHashSet();
        return bar with
        {
            Nodes = [.. bar.Nodes.Select(n => taken.Contains(n.Key) && n.Grade < StrapRuns.PoorGrade ? n with { Grade = n.Grade + StrapRuns.PoorGrade } : n)],
            Neighbours = [.. bar.Neighbours.Where(n => first <= n && n < end).Select(n => n - first)],
        };
    }
}
