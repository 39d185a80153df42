using System.IO.Pipelines;
using LayoutService.Api.Hosting;

namespace LayoutService.Api.Bulk;

/// <summary>
/// Reads what a caller sends ahead of the planning, up to a published size, also while the answer is not taken: common clients
/// send everything before they read. Past that size the caller waits, so that memory stays flat.
/// </summary>
internal sealed class AheadReader(Stream body, TimeSpan idle, Func<bool> waitsForUs)
{
    private const int Part = 64 * 1024;

    private readonly Pipe pipe = new(new PipeOptions(
        pauseWriterThreshold: ServiceLimits.BulkReadAheadBytes,
        resumeWriterThreshold: ServiceLimits.BulkReadAheadBytes - (2 * Part),
        minimumSegmentSize: Part,
        useSynchronizationContext: false));

    /// <summary>Where the bytes come out.</summary>
    public PipeReader Bytes => pipe.Reader;

    /// <summary>Whether the body came to its end, rather than broke off or stood still.</summary>
    public bool ReachedEnd { get; private set; }

    /// <summary>Reads to the end of the body, or until stopped.</summary>
    public async Task RunAsync(CancellationToken stop)
    {
        try
        {
            while (await ReadAsync(pipe.Writer.GetMemory(Part), stop) is var read and > 0)
            {
                pipe.Writer.Advance(read);
                if ((await pipe.Writer.FlushAsync(stop)).IsCompleted)
                {
                    return;
                }
            }

            ReachedEnd = true;
        }
        catch (Exception broken) when (broken is IOException or OperationCanceledException or TimeoutException)
        {
            // What came is answered; that it is not all, the summary says.
        }
        finally
        {
            await pipe.Writer.CompleteAsync();
        }
    }

    /// <summary>A caller that waits for our answer to what it sent may be silent meanwhile; else it may not stand still.</summary>
    private async ValueTask<int> ReadAsync(Memory<byte> into, CancellationToken stop)
    {
        var reading = body.ReadAsync(into, stop);
        if (reading.IsCompletedSuccessfully)
        {
            return reading.Result;
        }

        var pending = reading.AsTask();
        while (true)
        {
            try
            {
                return await pending.WaitAsync(idle, CancellationToken.None);
            }
            catch (TimeoutException) when (waitsForUs() && !pending.IsCompleted)
            {
            }
        }
    }
}
