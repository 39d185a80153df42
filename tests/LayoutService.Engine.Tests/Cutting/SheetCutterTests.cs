using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Cutting;

public class SheetCutterTests
{
    private const long Inch = SheetScenes.Inch;

    private static readonly SheetKind EightFoot = new(48 * Inch, 96 * Inch, 1200);

    /// <summary>Thresholds are what was reached on these seeds, with a little room; times stand in the performance notes.</summary>
    [Fact]
    public void Typical_ceilings_are_cut_as_told_and_nearly_all_proved_best_at_quick_effort()
    {
        const int scenes = 500;
        var proved = 0;
        var gaps = 0.0;
        var over = 0.0;
        for (var seed = 0; seed < scenes; seed++)
        {
            var problem = SheetScenes.Ceiling(seed);
            var plan = SheetCutter.Solve(problem, SheetCutter.QuickSteps);
            var faults = SheetGuillotine.Faults(problem, plan);
            Assert.True(faults.Count == 0, $"seed {seed}: {string.Join("; ", faults)}");
            Assert.True(plan.Unplaced.Count == 0, $"seed {seed}: {plan.Unplaced.Count} not placed");
            Assert.True(plan.LowerBound >= AreaBound(problem), $"seed {seed}: bound {plan.LowerBound} below the area's");
            var estimate = SheetCutter.Estimate(problem);
            Assert.True(estimate >= plan.LowerBound, $"seed {seed}: estimate {estimate} below the bound {plan.LowerBound}");
            proved += plan.ProvedOptimal ? 1 : 0;
            gaps += plan.Gap / scenes;
            over += ((double)estimate!.Value / plan.Cost - 1) / scenes;
        }

        Assert.True(proved >= 490, $"{proved} proved");
        Assert.True(gaps <= 0.0005, $"mean gap {gaps:P3}");
        Assert.True(over <= 0.01, $"estimates {over:P2} over");
    }

    [Fact]
    public void Sheets_of_two_widths_are_mixed_without_losing_a_taper()
    {
        for (var seed = 0; seed < 100; seed++)
        {
            var problem = SheetScenes.Ceiling(seed, 28, mixedWidths: true);
            var plan = SheetCutter.Solve(problem, SheetCutter.QuickSteps);
            var faults = SheetGuillotine.Faults(problem, plan);
            Assert.True(faults.Count == 0, $"seed {seed}: {string.Join("; ", faults)}");
        }
    }

    [Fact]
    public void Every_plan_of_any_rectangles_can_be_cut()
    {
        for (var seed = 0; seed < 150; seed++)
        {
            var problem = SheetScenes.Rectangles(seed);
            var plan = SheetCutter.Solve(problem, 5_000);
            var faults = SheetGuillotine.Faults(problem, plan);
            Assert.True(faults.Count == 0, $"seed {seed}: {string.Join("; ", faults)}");
        }
    }

    [Fact]
    public void One_sheet_gives_two_field_rips_but_three_plain_strips()
    {
        Assert.Equal(2, Sheets(FactoryEdges.One, 3, 14));
        Assert.Equal(1, Sheets(FactoryEdges.One, 2, 14));
        Assert.Equal(1, Sheets(FactoryEdges.None, 3, 14));

        static int Sheets(FactoryEdges edges, int count, long width) => SheetCutter.Solve(
            new SheetProblem { Wanted = [.. Enumerable.Repeat(new SheetWanted(width * Inch, 96 * Inch, edges), count)], Stock = [EightFoot] },
            SheetCutter.QuickSteps).Sheets.Count;
    }

    [Fact]
    public void Plain_strips_come_from_between_two_field_rips()
    {
        var problem = new SheetProblem
        {
            Wanted =
            [
                new SheetWanted(16 * Inch, 96 * Inch, FactoryEdges.One),
                new SheetWanted(16 * Inch, 96 * Inch),
                new SheetWanted(16 * Inch, 96 * Inch, FactoryEdges.One),
            ],
            Stock = [EightFoot],
        };
        var plan = SheetCutter.Solve(problem, SheetCutter.QuickSteps);
        Assert.Empty(SheetGuillotine.Faults(problem, plan));
        Assert.Empty(Assert.Single(plan.Sheets).Offcuts);
        Assert.True(plan.ProvedOptimal);
    }

    [Fact]
    public void A_kerf_is_lost_between_pieces_and_not_at_the_sheets_end()
    {
        var kerf = Inch / 8;
        var half = new SheetWanted(48 * Inch, (96 * Inch - kerf) / 2);
        var problem = new SheetProblem { Wanted = [half, half], Stock = [EightFoot], Kerf = kerf };
        Assert.Single(SheetCutter.Solve(problem, SheetCutter.QuickSteps).Sheets);
        Assert.Equal(2, SheetCutter.Solve(problem with { Kerf = kerf + 2 }, SheetCutter.QuickSteps).Sheets.Count);
    }

    [Fact]
    public void Pieces_that_fit_no_sheet_are_named_and_the_rest_is_cut()
    {
        var problem = new SheetProblem
        {
            Wanted = [new SheetWanted(48 * Inch, 97 * Inch), new SheetWanted(48 * Inch, 90 * Inch), new SheetWanted(40 * Inch, 20 * Inch, FactoryEdges.Both)],
            Stock = [EightFoot],
        };
        var plan = SheetCutter.Solve(problem, SheetCutter.QuickSteps);
        Assert.Equal([0, 2], plan.Unplaced.Order());
        Assert.Single(plan.Sheets);
        Assert.Null(SheetCutter.Estimate(problem));
    }

    [Fact]
    public void Stock_that_does_not_suffice_leaves_pieces_over()
    {
        var problem = new SheetProblem
        {
            Wanted = [.. Enumerable.Repeat(new SheetWanted(48 * Inch, 60 * Inch), 3)],
            Stock = [EightFoot with { Quantity = 2 }],
        };
        var plan = SheetCutter.Solve(problem, SheetCutter.QuickSteps);
        Assert.Single(plan.Unplaced);
        Assert.Equal(2, plan.Sheets.Count);
        Assert.False(plan.ProvedOptimal);
    }

    [Fact]
    public void Sheets_that_cost_nothing_are_used_up_first()
    {
        var problem = new SheetProblem
        {
            Wanted = [.. Enumerable.Repeat(new SheetWanted(48 * Inch, 60 * Inch), 3)],
            Stock = [EightFoot, new SheetKind(48 * Inch, 61 * Inch, 0, 2)],
        };
        var plan = SheetCutter.Solve(problem, SheetCutter.QuickSteps);
        Assert.Equal((1200, 1200, true), (plan.Cost, plan.LowerBound, plan.ProvedOptimal));
        Assert.Equal(1200, SheetCutter.Estimate(problem));
    }

    [Fact]
    public void The_same_problem_has_the_same_plan()
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var first = SheetCutter.Solve(SheetScenes.Rectangles(seed), SheetCutter.QuickSteps);
            var again = SheetCutter.Solve(SheetScenes.Rectangles(seed), SheetCutter.QuickSteps);
            Assert.Equal(first.Sheets.SelectMany(s => s.Cuts), again.Sheets.SelectMany(s => s.Cuts));
            Assert.Equal((first.Cost, first.LowerBound), (again.Cost, again.LowerBound));
        }
    }

    private static long AreaBound(SheetProblem problem)
    {
        var area = problem.Wanted.Sum(w => (decimal)w.Width * w.Length);
        return (long)Math.Ceiling(problem.Stock.Min(s => area * s.Cost / ((decimal)s.Width * s.Length)));
    }
}
