using System.Diagnostics;

namespace LayoutService.Benchmarks;

/// <summary>Median time of one call, and the bytes that it allocates.</summary>
public readonly record struct Measured(double Milliseconds, long Bytes, int Calls);

/// <summary>Times a call many times over in this process and takes the median, which a busy neighbour disturbs least.</summary>
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
        return new Measured(times[times.Count / 2], bytes, times.Count);
    }
}
