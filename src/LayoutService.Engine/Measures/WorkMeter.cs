namespace LayoutService.Engine.Measures;

/// <summary>
/// Work done on one call, in elementary operations (some 5 to 30 ns each): piece tried on a stick, pattern, pivot's number,
/// support crossed. Counted where loops can grow with the request. A meter has an end: the same request comes to it at the
/// same place on every machine, so to refuse there is a plain answer like any other. At times the meter asks whether anybody
/// still wants the answer. It never changes what is planned.
/// </summary>
/// <param name="most">Operations after which the work is given up.</param>
/// <param name="stop">Cancelled when nobody waits for the answer any more.</param>
/// <remarks>
/// The meter of a thread rather than one handed through every stage: the work of one call is done on one thread, stages stay
/// strangers to it, and a stage that is planned without a meter counts nothing.
/// </remarks>
public sealed class WorkMeter(long most, CancellationToken stop = default)
{
    /// <summary>Operations between two looks at <c>stop</c>: about a millisecond of work.</summary>
    private const long BetweenLooks = 100_000;

    [ThreadStatic]
    private static WorkMeter? onThread;

    private readonly long most = most;

    private long end = most;

    private long nextLook = Math.Min(BetweenLooks, most);

    /// <summary>Operations counted so far.</summary>
    public long Spent { get; private set; }

    /// <summary>Counts operations of the work that runs on this thread, if it is metered.</summary>
    public static void Spend(long operations)
    {
        if (onThread is { } meter)
        {
            meter.Spent += operations;
            if (meter.Spent >= meter.nextLook)
            {
                meter.Look();
            }
        }
    }

    /// <summary>Does the work under a meter, or under none; what it gives, or <paramref name="tooMuch"/> once the meter has run out.</summary>
    /// <exception cref="OperationCanceledException">Nobody waits for the answer any more.</exception>
    public static T Run<T>(WorkMeter? meter, Func<T> work, Func<T> tooMuch)
    {
        var outer = onThread;
        onThread = meter;
        try
        {
            return work();
        }
        catch (SpentException)
        {
            return tooMuch();
        }
        finally
        {
            onThread = outer;
        }
    }

    /// <summary>Does the work with a part of the meter, so that something is left where it is not enough; null when it was not.</summary>
    /// <param name="share">Of the whole meter, what was spent before counted too.</param>
    public static T? Within<T>(decimal share, Func<T> work)
        where T : class
    {
        if (onThread is not { } meter)
        {
            return work();
        }

        var outer = meter.end;
        meter.EndAt(Math.Min(outer, (long)(meter.most * share)));
        try
        {
            return work();
        }
        catch (SpentException) when (meter.Spent < outer)
        {
            return null;
        }
        finally
        {
            meter.EndAt(outer);
        }
    }

    private void EndAt(long operations)
    {
        end = operations;
        nextLook = Math.Min(Spent + BetweenLooks, end);
    }

    private void Look()
    {
        stop.ThrowIfCancellationRequested();
        if (Spent >= end)
        {
            throw new SpentException();
        }

        nextLook = Math.Min(Spent + BetweenLooks, end);
    }

    private sealed class SpentException : Exception;
}
