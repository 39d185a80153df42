using System.Threading.Channels;

namespace LayoutService.Api.Bulk;

/// <summary>
/// One call in bulk. Three things go on side by side: what is sent is read ahead, lines are planned by as many workers as the
/// engine has places, and their answers are written in the order of the lines. The number of answers that wait for an earlier
/// one is bounded, so memory does not grow with the number of lines.
/// </summary>
internal sealed class BulkRun(RoomDesk desk, LineWriter writer, int workers)
{
    /// <summary>Rooms under way for each worker: enough that a slow room seldom leaves the others idle.</summary>
    private const int RoomsForEach = 8;

    private readonly Channel<Underway> toPlan = Channel.CreateUnbounded<Underway>(new() { SingleWriter = true });
    private readonly Channel<Underway> inOrder = Channel.CreateBounded<Underway>(
        new BoundedChannelOptions(workers * RoomsForEach) { SingleWriter = true, SingleReader = true });

    private long handedOut;

    /// <summary>Whether a room is under way, so that the caller may be waiting for us.</summary>
    public bool IsPlanning => Interlocked.Read(ref handedOut) > writer.Written;

    /// <summary>Answers every line of <paramref name="lines"/> and then the summary.</summary>
    /// <param name="lines">The lines that were sent.</param>
    /// <param name="call">What holds for each.</param>
    /// <param name="enough">Cancelled when no further room shall be begun.</param>
    /// <param name="gone">Cancelled when the caller has left.</param>
    public async Task RunAsync(LineQueue lines, BulkCall call, CancellationToken enough, CancellationToken gone)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(gone);
        var planning = Enumerable.Range(0, workers).Select(_ => Task.Run(() => PlanAsync(stop.Token), CancellationToken.None)).ToList();
        var handing = HandOutAsync(lines, call, enough, stop.Token);
        try
        {
            await WriteAsync();
            var all = await handing;
            await writer.FinishAsync(lines.Count, all && lines.ReachedEnd);
        }
        finally
        {
            await stop.CancelAsync();
            await Task.WhenAll(planning);
            await handing;
            GiveBack();
        }
    }

    /// <summary>Gives each line a place in the order and a worker; true when there were no more lines.</summary>
    private async Task<bool> HandOutAsync(LineQueue lines, BulkCall call, CancellationToken enough, CancellationToken stop)
    {
        using var either = CancellationTokenSource.CreateLinkedTokenSource(enough, stop);
        try
        {
            for (var index = 0L; await lines.NextAsync(either.Token) is { } line; index++)
            {
                var room = new Underway(new BulkRoom(call, index, line));
                Interlocked.Increment(ref handedOut);
                await inOrder.Writer.WriteAsync(room, stop);
                toPlan.Writer.TryWrite(room);
                if (enough.IsCancellationRequested)
                {
                    return false;
                }
            }

            return true;
        }
        catch (OperationCanceledException)
        {
            return false;
        }
        finally
        {
            toPlan.Writer.Complete();
            inOrder.Writer.Complete();
        }
    }

    private async Task PlanAsync(CancellationToken stop)
    {
        await foreach (var room in toPlan.Reader.ReadAllAsync(CancellationToken.None))
        {
            try
            {
                stop.ThrowIfCancellationRequested();
                room.Done.SetResult(await desk.AnswerAsync(room.Room, stop));
            }
            catch (OperationCanceledException)
            {
                room.Done.SetCanceled(stop);
            }
        }
    }

    private async Task WriteAsync()
    {
        await foreach (var room in inOrder.Reader.ReadAllAsync(CancellationToken.None))
        {
            var answered = await room.Done.Task;
            var next = inOrder.Reader.TryPeek(out var after) && after.Done.Task.IsCompleted;
            await writer.WriteAsync(answered, next);
        }
    }

    /// <summary>Answers that nobody will write.</summary>
    private void GiveBack()
    {
        while (inOrder.Reader.TryRead(out var room))
        {
            if (room.Done.Task.IsCompletedSuccessfully)
            {
                room.Done.Task.Result.Bytes.Dispose();
            }
        }
    }

    /// <summary>A room that has its place in the order, and its answer once there is one.</summary>
    private sealed record Underway(BulkRoom Room)
    {
        public TaskCompletionSource<RoomAnswered> Done { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);
    }
}
