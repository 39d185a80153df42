using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Cutting;

public sealed class StickCutterTests
{
    [Fact]
    public void Small_problems_cost_what_trying_everything_costs()
    {
        for (int seed = 0; seed < 200; seed++)
        {
            var random = new Random(seed);
            StickWanted[] wanted = [.. Enumerable.Range(0, random.Next(1, 7)).Select(_ => new StickWanted(random.Next(200, 900), 1))];
            StickKind[] kinds = [.. Enumerable.Range(0, random.Next(1, 4)).Select(k => new StickKind(1000 + 300 * k, 80 + random.Next(20) + 25 * k, random.Next(3) == 0 ? 1 : null))];
            var problem = new StickProblem(wanted, [.. kinds, new StickKind(1900, 190)], random.Next(0, 30), random.Next(0, 20));

            StickPlan plan = StickCutter.Solve(problem);

            StickPlanCheck.Whole(problem, plan);
            Assert.Empty(plan.Missing);
            Assert.True(Least(problem, 0, []) == plan.Cost, $"seed {seed}: cost {plan.Cost}, least {Least(problem, 0, [])}, bound {plan.LowerBound}");
        }
    }

    [Fact]
    public void One_kerf_is_lost_after_each_piece_that_does_not_end_at_the_stock_s_end()
    {
        StickKind[] kind = [new StickKind(1_003, 1)];
        StickPlan exact = StickCutter.Solve(new StickProblem([new(500, 2)], kind, 3, 0));
        StickPlan oneOver = StickCutter.Solve(new StickProblem([new(501, 1), new(500, 1)], kind, 3, 0));
        StickPlan trimmed = StickCutter.Solve(new StickProblem([new(500, 2)], kind, 3, 1));

        Assert.Equal([1, 2, 2], [exact.Sticks.Count, oneOver.Sticks.Count, trimmed.Sticks.Count]);
        Assert.Equal(0, exact.Sticks[0].Offcut);
        Assert.Equal(499, trimmed.Sticks[0].Offcut);
    }

    [Fact]
    public void Pieces_that_no_stock_can_give_are_missing()
    {
        var problem = new StickProblem([new(900, 1), new(400, 5)], [new StickKind(800, 7, 2)], 0, 0);

        StickPlan plan = StickCutter.Solve(problem);

        StickPlanCheck.Whole(problem, plan);
        Assert.Equal(2, plan.Sticks.Count);
        Assert.Equal([0, 1], plan.Missing.Order());
        Assert.False(plan.ProvedOptimal);
    }

    [Fact]
    public void Few_steps_still_give_a_whole_plan_with_a_valid_bound()
    {
        var random = new Random(5);
        StickWanted[] wanted = [.. Enumerable.Range(0, 120).Select(_ => new StickWanted(random.Next(2_000, 40_000), random.Next(1, 4)))];
        var problem = new StickProblem(wanted, [new StickKind(48_000, 100), new StickKind(36_000, 78)], 24, 24);

        StickPlan few = StickCutter.Solve(problem, 1_000);
        StickPlan many = StickCutter.Solve(problem);

        StickPlanCheck.Whole(problem, few);
        StickPlanCheck.Whole(problem, many);
        Assert.True(many.Cost <= few.Cost);
        Assert.True(few.LowerBound <= many.Cost);
        Assert.True(many.Gap < 0.01, $"gap {many.Gap}");
    }

    /// <summary>Least cost by putting each piece on each open stick or on a new one, kinds chosen when a stick is opened.</summary>
    private static long Least(StickProblem problem, int next, List<(int Kind, long Used)> open)
    {
        if (next == problem.Wanted.Count)
        {
            return open.Sum(s => problem.Kinds[s.Kind].Cost);
        }

        long best = long.MaxValue;
        long size = problem.Wanted[next].Length + problem.Kerf;
        for (int s = 0; s < open.Count; s++)
        {
            (int kind, long used) = open[s];
            if (used + size <= problem.Kinds[kind].Length - problem.EndTrim + problem.Kerf)
            {
                open[s] = (kind, used + size);
                best = Math.Min(best, Least(problem, next + 1, open));
                open[s] = (kind, used);
            }
        }

        for (int kind = 0; kind < problem.Kinds.Count; kind++)
        {
            bool left = open.Count(s => s.Kind == kind) < (problem.Kinds[kind].Quantity ?? int.MaxValue);
            if (left && size <= problem.Kinds[kind].Length - problem.EndTrim + problem.Kerf)
            {
                open.Add((kind, size));
                best = Math.Min(best, Least(problem, next + 1, open));
                open.RemoveAt(open.Count - 1);
            }
        }

        return best;
    }
}
