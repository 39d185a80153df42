namespace LayoutService.Api.Hosting;

/// <summary>
/// Lets a bounded number of requests into the engine at once, and a bounded number wait; the rest are told to come back,
/// so that load never becomes memory.
/// </summary>
public sealed class EngineGate : IDisposable
{
    private readonly SemaphoreSlim places;
    private readonly int mostWaiting;
    private int waiting;

    public EngineGate(int places, int mostWaiting)
    {
        this.places = new SemaphoreSlim(places, places);
        this.mostWaiting = mostWaiting;
        Places = places;
    }

    /// <summary>How many may be in the engine at once.</summary>
    public int Places { get; }

    /// <summary>Whether nobody is in the engine.</summary>
    public bool IsIdle => places.CurrentCount == Places;

    /// <summary>A place in the engine, to be given back by disposing of it; null when too many wait already.</summary>
    public async ValueTask<IDisposable?> EnterAsync(CancellationToken stop)
    {
        if (places.Wait(0, stop))
        {
            return new Place(places);
        }

        if (Interlocked.Increment(ref waiting) > mostWaiting)
        {
            Interlocked.Decrement(ref waiting);
            return null;
        }

        try
        {
            await places.WaitAsync(stop);
            return new Place(places);
        }
        finally
        {
            Interlocked.Decrement(ref waiting);
        }
    }

    /// <summary>A place, however long it takes: for callers whose own number is bounded.</summary>
    public async ValueTask<IDisposable> WaitAsync(CancellationToken stop)
    {
        await places.WaitAsync(stop);
        return new Place(places);
    }

    public void Dispose() => places.Dispose();

    private sealed class Place(SemaphoreSlim places) : IDisposable
    {
        public void Dispose() => places.Release();
    }
}
