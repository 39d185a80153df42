using LayoutService.Engine.Measures;

namespace LayoutService.Api.Hosting;

/// <summary>
/// Lets a bounded number of requests into the engine at once, and a bounded number wait; the rest are told to come back,
/// so that load never becomes memory. Whoever is in has a bounded time.
/// </summary>
/// <param name="places">How many may be in the engine at once.</param>
/// <param name="mostWaiting">How many may wait.</param>
/// <param name="longest">How long one call may be in the engine.</param>
public sealed class EngineGate(int places, int mostWaiting, TimeSpan longest) : IDisposable
{
    private readonly SemaphoreSlim free = new(places, places);
    private int waiting;

    /// <summary>How many may be in the engine at once.</summary>
    public int Places { get; } = places;

    /// <summary>How many are in the engine now.</summary>
    public int Taken => Places - free.CurrentCount;

    /// <summary>How many wait now.</summary>
    public int Waiting => Volatile.Read(ref waiting);

    /// <summary>Whether nobody is in the engine.</summary>
    public bool IsIdle => Taken == 0;

    /// <summary>A place in the engine, to be given back by disposing of it; null when too many wait already.</summary>
    public async ValueTask<EnginePlace?> EnterAsync(CancellationToken stop)
    {
        if (free.Wait(0, stop))
        {
            return new EnginePlace(free, longest, stop);
        }

        if (Interlocked.Increment(ref waiting) > mostWaiting)
        {
            Interlocked.Decrement(ref waiting);
            return null;
        }

        try
        {
            return await WaitAsync(stop);
        }
        finally
        {
            Interlocked.Decrement(ref waiting);
        }
    }

    /// <summary>A place, however long it takes: for callers whose own number is bounded.</summary>
    public async ValueTask<EnginePlace> WaitAsync(CancellationToken stop)
    {
        await free.WaitAsync(stop);
        return new EnginePlace(free, longest, stop);
    }

    public void Dispose() => free.Dispose();
}

/// <summary>A place in the engine, and the end of what may be done in it.</summary>
public sealed class EnginePlace : IDisposable
{
    private readonly SemaphoreSlim free;
    private readonly CancellationTokenSource end;
    private readonly EngineWatch watch = new();
    private WorkMeter? meter;

    internal EnginePlace(SemaphoreSlim free, TimeSpan longest, CancellationToken caller)
    {
        this.free = free;
        end = CancellationTokenSource.CreateLinkedTokenSource(caller);
        end.CancelAfter(longest);
    }

    /// <summary>Cancelled when the caller has left or the time is up.</summary>
    public CancellationToken Stop => end.Token;

    /// <summary>A new meter for one room, one order or one cut plan.</summary>
    public WorkMeter Meter()
    {
        watch.Add(meter);
        return meter = new WorkMeter(ServiceLimits.MaxWork, end.Token);
    }

    public void Dispose()
    {
        watch.Add(meter);
        watch.Finish();
        end.Dispose();
        free.Release();
    }
}
