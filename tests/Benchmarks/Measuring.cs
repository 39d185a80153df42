using System.Diagnostics;

namespace LayoutService.Benchmarks;

/// <summary>
/// Median time of one call by the clock, the fastest call (which other work on the machine disturbs least), and the bytes
/// that a call allocates.
/// </summary>
public readonly record struct Measured(double Milliseconds, double Fastest, long Bytes, int Calls);

/// <summary>Times a call many times over in this process and takes the median.</summary>
public static class Measuring
{
    public static Measured Median(Func<object> call, double seconds, int least = 5)
    {
        var warm = Stopwatch.StartNew();
        for (var i = 0; i < 3 || (warm.Elapsed.TotalSeconds < seconds && i < 2000); i++)
        {
            GC.KeepAlive(call());
        }

        var times = new List<double>();
        var before = GC.GetAllocatedBytesForCurrentThread();
        var watch = Stopwatch.StartNew();
        while (times.Count < least || (watch.Elapsed.TotalSeconds < seconds && times.Count < 5000))
        {
            var from = Stopwatch.GetTimestamp();
            GC.KeepAlive(call());
            times.Add(Stopwatch.GetElapsedTime(from).TotalMilliseconds);
        }

        var bytes = (GC.GetAllocatedBytesForCurrentThread() - before) / times.Count;
        times.Sort();
        return new Measured(times[times.Count / 2], times[0], bytes, times.Count);
    }
}
