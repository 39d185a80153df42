using System.Collections.Concurrent;

namespace LayoutService.Api.Hosting;

/// <summary>What a caller has left in the window that runs.</summary>
/// <param name="Allowed">Whether this call may go on.</param>
/// <param name="Limit">Calls in one window.</param>
/// <param name="Left">Calls left after this one.</param>
/// <param name="SecondsToNext">Whole seconds until the next window begins, 1 at least.</param>
internal readonly record struct QuotaUse(bool Allowed, int Limit, int Left, int SecondsToNext);

/// <summary>
/// Counts the calls of each caller in fixed windows of a minute that begin with its first call. Callers whose window is over
/// are forgotten when there are many, so that the number of addresses never becomes memory.
/// </summary>
internal sealed class CallerQuota(TimeProvider clock)
{
    public const int WindowSeconds = 60;

    private const int MostCallers = 10_000;
    private readonly ConcurrentDictionary<string, Window> windows = new(StringComparer.Ordinal);

    public QuotaUse Use(string caller, int limit)
    {
        var now = clock.GetUtcNow();
        if (windows.Count > MostCallers)
        {
            Forget(now);
        }

        var window = windows.GetOrAdd(caller, _ => new Window());
        lock (window)
        {
            if (now >= window.Ends)
            {
                (window.Ends, window.Used) = (now.AddSeconds(WindowSeconds), 0);
            }

            var allowed = window.Used < limit;
            window.Used += allowed ? 1 : 0;
            return new(allowed, limit, limit - window.Used, Math.Max(1, (int)Math.Ceiling((window.Ends - now).TotalSeconds)));
        }
    }

    private void Forget(DateTimeOffset now)
    {
        foreach (var (caller, window) in windows)
        {
            if (now >= window.Ends)
            {
                windows.TryRemove(caller, out _);
            }
        }
    }

    private sealed class Window
    {
        public DateTimeOffset Ends { get; set; }

        public int Used { get; set; }
    }
}
