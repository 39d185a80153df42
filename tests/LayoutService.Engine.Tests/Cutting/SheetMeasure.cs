using System.Diagnostics;
using LayoutService.Engine.Cutting;
using Xunit.Abstractions;

namespace LayoutService.Engine.Tests.Cutting;

public class SheetMeasure(ITestOutputHelper output)
{
    [Theory]
    [InlineData("28 ft", 500)]
    [InlineData("28 ft mixed", 200)]
    [InlineData("50 ft", 200)]
    [InlineData("90 ft", 50)]
    [InlineData("rectangles", 100)]
    public void Measure(string name, int scenes)
    {
        Func<int, SheetProblem> scene = name switch
        {
            "28 ft" => s => SheetScenes.Ceiling(s),
            "28 ft mixed" => s => SheetScenes.Ceiling(s, 28, true),
            "50 ft" => s => SheetScenes.Ceiling(s, 50),
            "90 ft" => s => SheetScenes.Ceiling(s, 90),
            _ => s => SheetScenes.Rectangles(s),
        };
        for (var warm = 0; warm < 1; warm++)
        {
            for (var seed = 0; seed < scenes; seed++)
            {
                SheetCutter.Solve(scene(seed), SheetCutter.QuickSteps);
                SheetCutter.Estimate(scene(seed));
            }
        }

        foreach (var steps in new[] { SheetCutter.QuickSteps, SheetCutter.ThoroughSteps })
        {
            var times = new List<double>();
            var estimates = new List<double>();
            var gaps = new List<double>();
            var over = new List<double>();
            var proved = 0;
            long bytes = 0, estimateBytes = 0;
            var pieces = 0;
            for (var seed = 0; seed < scenes; seed++)
            {
                var problem = scene(seed);
                pieces += problem.Wanted.Count;
                var best = double.MaxValue;
                var watch = 0L;
                for (var turn = 0; turn < 3; turn++)
                {
                    watch = Stopwatch.GetTimestamp();
                    SheetCutter.Solve(problem, steps);
                    best = Math.Min(best, Stopwatch.GetElapsedTime(watch).TotalMicroseconds);
                }
                times.Add(best);
                var before = GC.GetAllocatedBytesForCurrentThread();
                var plan = SheetCutter.Solve(problem, steps);
                bytes += GC.GetAllocatedBytesForCurrentThread() - before;
                before = GC.GetAllocatedBytesForCurrentThread();
                watch = Stopwatch.GetTimestamp();
                var estimate = SheetCutter.Estimate(problem);
                estimates.Add(Stopwatch.GetElapsedTime(watch).TotalMicroseconds);
                estimateBytes += GC.GetAllocatedBytesForCurrentThread() - before;
                if (plan.Unplaced.Count == 0) gaps.Add(plan.Gap);
                if (plan.Unplaced.Count > 0) continue;
 if (estimate is not null) over.Add((double)estimate.Value / plan.Cost - 1);
                proved += plan.ProvedOptimal ? 1 : 0;
                if (false && times[^1] > 3000 || plan.Gap > 0.02) output.WriteLine($"seed {seed} n {problem.Wanted.Count} us {times[^1]:F0} gap {plan.Gap:P2}");
            }

            times.Sort();
            estimates.Sort();
            output.WriteLine($"steps {steps}: pieces {pieces / (double)scenes:F1} of {gaps.Count} proved {proved}/{scenes} mean gap {gaps.Average():P3} max {gaps.Max():P2} "
                + $"us median {times[scenes / 2]:F0} p90 {times[scenes * 9 / 10]:F0} max {times[^1]:F0} bytes {bytes / scenes}");
            output.WriteLine($"estimate over: mean {over.Average():P2} max {over.Max():P2} us median {estimates[scenes / 2]:F0} p90 {estimates[scenes * 9 / 10]:F0} bytes {estimateBytes / scenes}");
        }
    }
}
