using System.Diagnostics;

namespace LayoutService.Benchmarks;

/// <summary>
/// Median time of one call by the clock, the processor's time for one call (all threads of the process, so the collector
/// too), and the bytes that a call allocates.
/// </summary>
public readonly record struct Measured(double Milliseconds, double Processor, long Bytes, int Calls);

/// <summary>Times a call many times over in this process and takes the median.</summary>
public static class Measuring
{
    public static Measured Median(Func<object> call, double seconds, int least = 5)
    {
        var warm = Stopwatch.StartNew();
        for (var i = 0; i < 3 || (warm.Elapsed.TotalSeconds < seconds / 2 && i < 400); i++)
        {
            GC.KeepAlive(call());
        }

        var times = new List<double>();
        var used = Environment.CpuUsage.TotalTime;
        var before = GC.GetAllocatedBytesForCurrentThread();
        var watch = Stopwatch.StartNew();
        while (times.Count < least || (watch.Elapsed.TotalSeconds < seconds && times.Count < 5000))
        {
            var from = Stopwatch.GetTimestamp();
            GC.KeepAlive(call());
            times.Add(Stopwatch.GetElapsedTime(from).TotalMilliseconds);
        }

        var bytes = (GC.GetAllocatedBytesForCurrentThread() - before) / times.Count;
        var processor = (Environment.CpuUsage.TotalTime - used).TotalMilliseconds / times.Count;
        times.Sort();
        return new Measured(times[times.Count / 2], processor, bytes, times.Count);
    }
}
