using System.IO.Pipelines;
using LayoutService.Api.Bulk.Answers;

namespace LayoutService.Api.Bulk;

/// <summary>Writes lines out as they are ready, many at a time when many are, and does not wait for ever for a caller that takes none.</summary>
internal sealed class LineWriter(PipeWriter answer, TimeSpan idle, CancellationToken stop)
{
    private const int MostHeld = 64 * 1024;
    private long held;
    private long written;

    /// <summary>Lines written; another thread may ask.</summary>
    public long Written => Interlocked.Read(ref written);

    public long Planned { get; private set; }

    /// <summary>Writes a room's line and gives its bytes back.</summary>
    public async ValueTask WriteAsync(RoomAnswered room, bool moreIsReady)
    {
        using (room.Bytes)
        {
            Copy(room.Bytes.Written.Span);
        }

        Interlocked.Increment(ref written);
        Planned += room.Planned ? 1 : 0;
        if (!moreIsReady || held >= MostHeld)
        {
            await FlushAsync();
        }
    }

    /// <summary>Writes the last line.</summary>
    public async ValueTask FinishAsync(long lines, bool complete)
    {
        using var bytes = new PooledBytes();
        RoomDesk.Write(bytes, new()
        {
            Kind = BulkLineWord.Summary,
            Index = Written,
            Line = lines,
            Status = StatusCodes.Status200OK,
            Summary = new() { Count = Written, Ok = Planned, Failed = Written - Planned, Complete = complete, NextIndex = Written },
        });
        Copy(bytes.Written.Span);
        await FlushAsync();
    }

    /// <summary>In parts, so that the server need not lend one array as large as the line.</summary>
    private void Copy(ReadOnlySpan<byte> bytes)
    {
        held += bytes.Length;
        while (!bytes.IsEmpty)
        {
            var room = answer.GetSpan();
            var part = Math.Min(room.Length, bytes.Length);
            bytes[..part].CopyTo(room);
            answer.Advance(part);
            bytes = bytes[part..];
        }
    }

    /// <summary>A caller that takes nothing for too long is taken to have left.</summary>
    private async ValueTask FlushAsync()
    {
        held = 0;
        var taking = answer.FlushAsync(stop);
        if (!taking.IsCompletedSuccessfully)
        {
            await taking.AsTask().WaitAsync(idle, CancellationToken.None);
        }

        stop.ThrowIfCancellationRequested();
    }
}
