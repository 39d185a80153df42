using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Cutting;

public sealed class BarCutterTests
{
    [Fact]
    public void Quick_plans_of_seeded_rooms_are_whole_and_without_violations()
    {
        for (int seed = 0; seed < 300; seed++)
        {
            BarProblem problem = SeededRooms.Make(seed);
            BarPlan plan = BarCutter.Solve(problem);
            BarPlanCheck.Whole(problem, plan);
            Assert.True(plan.Missing.Count == 0 && plan.WithoutWay.Count == 0, $"seed {seed}");
            Assert.True(plan.SharedBreaks + plan.PoorBreaks == 0, $"seed {seed}");
        }
    }

    [Fact]
    public void Thorough_is_never_worse_than_quick_and_its_bound_never_lower()
    {
        for (int seed = 0; seed < 4; seed++)
        {
            BarProblem problem = SeededRooms.Make(seed, 3, 5);
            BarPlan quick = BarCutter.Solve(problem);
            BarPlan thorough = BarCutter.Solve(problem, BarEffort.Thorough);
            BarPlanCheck.Whole(problem, thorough);
            int quickViolations = quick.SharedBreaks + quick.PoorBreaks;
            int violations = thorough.SharedBreaks + thorough.PoorBreaks;
            Assert.True(violations < quickViolations || (violations == quickViolations && thorough.Cost <= quick.Cost), $"seed {seed}");
            Assert.True(thorough.LowerBound >= quick.LowerBound, $"seed {seed}");
        }
    }

    [Fact]
    public void The_same_problem_gives_the_same_plan()
    {
        BarProblem problem = SeededRooms.Make(3, 3, 5);

        BarPlan first = BarCutter.Solve(problem, BarEffort.Thorough);
        BarPlan second = BarCutter.Solve(problem, BarEffort.Thorough);

        Assert.Equal(first.Cost, second.Cost);
        Assert.Equal(first.Ways.SelectMany(w => w), second.Ways.SelectMany(w => w));
        Assert.Equal(first.Sticks.SelectMany(s => s.Cuts), second.Sticks.SelectMany(s => s.Cuts));
    }

    [Theory]
    [InlineData(BarEffort.Quick)]
    [InlineData(BarEffort.Thorough)]
    public void Limited_stock_is_never_exceeded_and_shortage_is_told(BarEffort effort)
    {
        for (int seed = 0; seed < 2; seed++)
        {
            BarProblem room = SeededRooms.Make(seed, 3, 5);
            BarProblem limited = room with { Kinds = [.. room.Kinds.Select((k, i) => k with { Quantity = i == 0 ? 2 : 6 })] };
            BarPlanCheck.Whole(limited, BarCutter.Solve(limited, effort));
            BarProblem plenty = room with { Kinds = [.. room.Kinds.Select((k, i) => k with { Quantity = i == 0 ? 2 : 200 })] };
            BarPlan plan = BarCutter.Solve(plenty, effort);
            BarPlanCheck.Whole(plenty, plan);
            Assert.Empty(plan.Missing);
        }
    }

    [Fact]
    public void A_bar_that_no_stock_can_piece_is_told()
    {
        var bar = new Bar([new(-1, 0), new(-1, 0)], [new(0, 1, 5_000)], []);
        var problem = new BarProblem([bar], [new StickWanted(9_000, 2)], [new StickKind(4_000, 10)], 3, 3, 5);

        BarPlan plan = BarCutter.Solve(problem);

        Assert.Equal([0], plan.WithoutWay);
        Assert.Equal(2, plan.Missing.Count);
        Assert.False(plan.ProvedOptimal);
        BarPlanCheck.Whole(problem, plan);
    }

    [Fact]
    public void Extras_come_out_of_offcuts()
    {
        var bar = new Bar([new(-1, 0), new(-1, 0)], [new(0, 1, 3_000)], []);
        var problem = new BarProblem([bar, bar], [new StickWanted(900, 2)], [new StickKind(4_000, 10)], 3, 3, 5);

        BarPlan plan = BarCutter.Solve(problem);

        BarPlanCheck.Whole(problem, plan);
        Assert.Equal(20, plan.Cost);
        Assert.True(plan.ProvedOptimal);
    }
}
