using System.Diagnostics;
using LayoutService.Engine.Cutting;
using Xunit.Abstractions;

namespace LayoutService.Engine.Tests.Cutting;

public class SheetMeasure(ITestOutputHelper output)
{
    [Fact]
    public void Measure()
    {
        const int scenes = 500;
        for (var warm = 0; warm < 2; warm++)
        {
            for (var seed = 0; seed < scenes; seed++)
            {
                SheetCutter.Solve(SheetScenes.Ceiling(seed), SheetCutter.QuickSteps);
                SheetCutter.Estimate(SheetScenes.Ceiling(seed));
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
                var problem = SheetScenes.Ceiling(seed);
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
                gaps.Add(plan.Gap);
                over.Add((double)estimate!.Value / plan.Cost - 1);
                proved += plan.ProvedOptimal ? 1 : 0;
                if (times[^1] > 3000 || plan.Gap > 0.005) output.WriteLine($"seed {seed} n {problem.Wanted.Count} us {times[^1]:F0} gap {plan.Gap:P2}");
            }

            times.Sort();
            estimates.Sort();
            output.WriteLine($"steps {steps}: pieces {pieces / (double)scenes:F1} proved {proved}/{scenes} mean gap {gaps.Average():P3} max {gaps.Max():P2} "
                + $"us median {times[scenes / 2]:F0} p90 {times[scenes * 9 / 10]:F0} max {times[^1]:F0} bytes {bytes / scenes}");
            output.WriteLine($"estimate over: mean {over.Average():P2} max {over.Max():P2} us median {estimates[scenes / 2]:F0} p90 {estimates[scenes * 9 / 10]:F0} bytes {estimateBytes / scenes}");
        }
    }
}
