using System.Buffers;
using LayoutService.Api.Hosting;

namespace LayoutService.Api.Bulk;

/// <summary>
/// Cuts bytes into lines as they come. A line ends with LF, or CR LF; blank lines are counted and passed over, as is a byte
/// order mark in front. Of a line past the limit nothing is kept but that it was there.
/// </summary>
internal sealed class LineCutter
{
    private ArrayBufferWriter<byte>? begun;
    private bool tooLong;

    /// <summary>Lines read so far, blank ones too.</summary>
    public long Lines { get; private set; }

    /// <summary>Takes one line off the front; false when there is no whole line, and then all of it is kept for later.</summary>
    public bool TryCut(ref ReadOnlySequence<byte> bytes, out InputLine line)
    {
        while (bytes.PositionOf((byte)'\n') is { } end)
        {
            Keep(bytes.Slice(0, end));
            bytes = bytes.Slice(bytes.GetPosition(1, end));
            if (TryFinish(out line))
            {
                return true;
            }
        }

        Keep(bytes);
        bytes = bytes.Slice(bytes.End);
        line = default;
        return false;
    }

    /// <summary>The last line, when it has no end of its own and is not blank.</summary>
    public bool TryLast(out InputLine line)
    {
        line = default;
        return (begun is not null || tooLong) && TryFinish(out line);
    }

    private void Keep(ReadOnlySequence<byte> part)
    {
        if (part.IsEmpty || tooLong)
        {
            return;
        }

        // one byte more than the limit, for a CR that is no part of the line
        if ((begun?.WrittenCount ?? 0) + part.Length > ServiceLimits.MaxBodyBytes + 1)
        {
            tooLong = true;
            begun = null;
            return;
        }

        begun ??= new ArrayBufferWriter<byte>((int)part.Length);
        foreach (var segment in part)
        {
            begun.Write(segment.Span);
        }
    }

    /// <summary>Ends the line; false when it is blank.</summary>
    private bool TryFinish(out InputLine line)
    {
        Lines++;
        var json = begun?.WrittenMemory ?? ReadOnlyMemory<byte>.Empty;
        if (Lines == 1 && json.Span.StartsWith("\uFEFF"u8))
        {
            json = json[3..];
        }

        if (json.Span.EndsWith("\r"u8))
        {
            json = json[..^1];
        }

        var over = tooLong || json.Length > ServiceLimits.MaxBodyBytes;
        begun = null;
        tooLong = false;
        line = new(Lines, over ? default : json, over);
        return over || json.Span.IndexOfAnyExcept(" \t\r"u8) >= 0;
    }
}
