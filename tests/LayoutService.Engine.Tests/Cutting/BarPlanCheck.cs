using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Cutting;

/// <summary>Recomputes a bar plan from its problem alone.</summary>
internal static class BarPlanCheck
{
    public static void Whole(BarProblem problem, BarPlan plan)
    {
        Ways(problem, plan);
        Sticks(problem, plan);
        Assert.Equal(Joints(problem, plan), plan.Joints);
        Assert.Equal(Shared(problem, plan), plan.SharedBreaks);
        Assert.Equal(Poor(problem, plan), plan.PoorBreaks);
        Assert.True(plan.LowerBound <= plan.Cost);
    }

    /// <summary>Each bar is pieced from its first node to its last, or is told to have no way.</summary>
    private static void Ways(BarProblem problem, BarPlan plan)
    {
        Assert.Equal(problem.Bars.Count, plan.Ways.Count);
        for (int b = 0; b < plan.Ways.Count; b++)
        {
            int at = 0;
            foreach (int p in plan.Ways[b])
            {
                Assert.Equal(at, problem.Bars[b].Pieces[p].From);
                at = problem.Bars[b].Pieces[p].To;
            }

            Assert.Equal(plan.WithoutWay.Contains(b) ? 0 : problem.Bars[b].Nodes.Count - 1, at);
        }
    }

    /// <summary>Each piece of each way and each extra is cut once (or missing), every stick fits and is priced.</summary>
    private static void Sticks(BarProblem problem, BarPlan plan)
    {
        var bought = new int[problem.Kinds.Count];
        var cuts = new List<BarCut>(plan.Missing);
        long cost = 0;
        foreach (BarStick stick in plan.Sticks)
        {
            StickKind kind = problem.Kinds[stick.Kind];
            long usable = kind.Length - problem.EndTrim;
            long least = stick.Cuts.Sum(c => c.Length) + problem.Kerf * (stick.Cuts.Count - 1);
            Assert.NotEmpty(stick.Cuts);
            Assert.True(least <= usable, $"{least} on {usable}");
            Assert.Equal(Math.Max(0, usable - least - problem.Kerf), stick.Offcut);
            cost += kind.Cost;
            bought[stick.Kind]++;
            cuts.AddRange(stick.Cuts);
        }

        Assert.Equal(cost, plan.Cost);
        for (int k = 0; k < bought.Length; k++)
        {
            Assert.True(bought[k] <= (problem.Kinds[k].Quantity ?? int.MaxValue));
        }

        var wanted = new List<BarCut>();
        for (int b = 0; b < plan.Ways.Count; b++)
        {
            wanted.AddRange(plan.Ways[b].Select(p => new BarCut(b, p, problem.Bars[b].Pieces[p].Length)));
        }

        for (int e = 0; e < problem.Extras.Count; e++)
        {
            wanted.AddRange(Enumerable.Repeat(new BarCut(-1, e, problem.Extras[e].Length), problem.Extras[e].Count));
        }

        Assert.Equal(Sorted(wanted), Sorted(cuts));
    }

    private static IEnumerable<BarCut> Sorted(IEnumerable<BarCut> cuts) => cuts.OrderBy(c => (c.Bar, c.Piece, c.Length));

    private static List<BarNode> Breaks(BarProblem problem, BarPlan plan, int bar) =>
        [.. plan.Ways[bar].Take(Math.Max(0, plan.Ways[bar].Count - 1)).Select(p => problem.Bars[bar].Nodes[problem.Bars[bar].Pieces[p].To])];

    private static int Joints(BarProblem problem, BarPlan plan) =>
        Enumerable.Range(0, problem.Bars.Count).Sum(b => Breaks(problem, plan, b).Count);

    private static int Poor(BarProblem problem, BarPlan plan) =>
        Enumerable.Range(0, problem.Bars.Count).Sum(b => Breaks(problem, plan, b).Count(n => n.Grade >= problem.PoorGrade));

    private static int Shared(BarProblem problem, BarPlan plan)
    {
        int shared = 0;
        for (int a = 0; a < problem.Bars.Count; a++)
        {
            for (int b = a + 1; b < problem.Bars.Count; b++)
            {
                if (problem.Bars[a].Neighbours.Contains(b) || problem.Bars[b].Neighbours.Contains(a))
                {
                    shared += Breaks(problem, plan, a).Sum(x => Breaks(problem, plan, b).Count(y => x.Key == y.Key));
                }
            }
        }

        return shared;
    }
}
