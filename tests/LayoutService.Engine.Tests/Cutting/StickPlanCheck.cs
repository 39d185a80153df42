using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Cutting;

/// <summary>Recomputes a stick plan from its problem alone.</summary>
internal static class StickPlanCheck
{
    /// <summary>Every stick fits and is priced right, limits hold, and every wanted piece is cut once or listed missing.</summary>
    public static void Whole(StickProblem problem, StickPlan plan)
    {
        var cut = new int[problem.Wanted.Count];
        var bought = new int[problem.Kinds.Count];
        long cost = 0;
        foreach (Stick stick in plan.Sticks)
        {
            StickKind kind = problem.Kinds[stick.Kind];
            long usable = kind.Length - problem.EndTrim;
            long pieces = stick.Pieces.Sum(p => problem.Wanted[p].Length);
            long least = pieces + problem.Kerf * (stick.Pieces.Count - 1);
            Assert.NotEmpty(stick.Pieces);
            Assert.True(least <= usable, $"{least} on {usable}");
            Assert.Equal(Math.Max(0, usable - least - problem.Kerf), stick.Offcut);
            cost += kind.Cost;
            bought[stick.Kind]++;
            foreach (int p in stick.Pieces)
            {
                cut[p]++;
            }
        }

        foreach (int p in plan.Missing)
        {
            cut[p]++;
        }

        Assert.Equal(problem.Wanted.Select(w => w.Count), cut);
        Assert.Equal(cost, plan.Cost);
        Assert.True(plan.LowerBound <= plan.Cost);
        for (int k = 0; k < bought.Length; k++)
        {
            Assert.True(bought[k] <= (problem.Kinds[k].Quantity ?? int.MaxValue));
        }
    }
}
