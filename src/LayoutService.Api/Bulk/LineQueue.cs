using System.IO.Pipelines;

namespace LayoutService.Api.Bulk;

/// <summary>The lines that were sent, one after the other, cut from what was read ahead.</summary>
internal sealed class LineQueue(AheadReader ahead)
{
    private readonly LineCutter cutter = new();
    private InputLine? putBack;

    /// <summary>Lines cut so far, blank ones too.</summary>
    public long Count => cutter.Lines;

    /// <summary>Whether everything that was sent came.</summary>
    public bool ReachedEnd => ahead.ReachedEnd;

    /// <summary>The next line that is not blank; null after the last. What broke off in the middle of a line is no line.</summary>
    public async ValueTask<InputLine?> NextAsync(CancellationToken stop)
    {
        if (putBack is { } first)
        {
            putBack = null;
            return first;
        }

        while (true)
        {
            var got = await ahead.Bytes.ReadAsync(stop);
            var rest = got.Buffer;
            var found = cutter.TryCut(ref rest, out var line);
            ahead.Bytes.AdvanceTo(rest.Start);
            if (found)
            {
                return line;
            }

            if (got.IsCompleted)
            {
                return ahead.ReachedEnd && cutter.TryLast(out line) ? line : null;
            }
        }
    }

    /// <summary>Puts a line back, to come next.</summary>
    public void PutBack(InputLine line) => putBack = line;
}
