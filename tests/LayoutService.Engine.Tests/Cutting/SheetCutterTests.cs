using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Cutting;

public class SheetCutterTests
{
    [Fact]
    public void Every_ceiling_plan_can_be_cut_and_keeps_its_tapers()
    {
        for (var seed = 0; seed < 300; seed++)
        {
            var problem = SheetScenes.Ceiling(seed);
            var plan = SheetCutter.Solve(problem, SheetCutter.QuickSteps);
            var faults = SheetGuillotine.Faults(problem, plan);
            Assert.True(faults.Count == 0, $"seed {seed}: {string.Join("; ", faults)}");
            Assert.True(plan.Unplaced.Count == 0, $"seed {seed}: {plan.Unplaced.Count} not placed");
        }
    }

    [Fact]
    public void Every_plan_of_any_rectangles_can_be_cut()
    {
        for (var seed = 0; seed < 300; seed++)
        {
            var problem = SheetScenes.Rectangles(seed);
            var plan = SheetCutter.Solve(problem, SheetCutter.QuickSteps);
            var faults = SheetGuillotine.Faults(problem, plan);
            Assert.True(faults.Count == 0, $"seed {seed}: {string.Join("; ", faults)}");
        }
    }
}
