using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Strapping;

/// <summary>A row trimmed round a hole: which line, over what stretch, and how far the board spans there.</summary>
internal readonly record struct TrimSpan(int Line, Span Gap, long Widest);

/// <summary>
/// How far the board spans where a row is trimmed round a hole: from row to row past the trimmed one, or from header to header,
/// whichever is less. Cost: trimmed stretches × (rows + headers).
/// </summary>
internal static class TrimSpans
{
    /// <summary>Those that are wider than the row spacing.</summary>
    public static IEnumerable<TrimSpan> Wide(FramedRoom room, RowRules rules, IReadOnlyList<StrapLine> lines)
    {
        if (room.KeepOuts.Firm.Count == 0)
        {
            yield break;
        }

        List<NailerLine>? headers = null;
        for (var l = 0; l < lines.Count; l++)
        {
            foreach (var gap in lines[l].TrimmedGaps())
            {
                var past = Beside(lines, l, -1, gap) is { } below && Beside(lines, l, 1, gap) is { } above ? lines[above].At - lines[below].At : long.MaxValue;
                if (past <= rules.MaxSpacing)
                {
                    continue;
                }

                headers ??= [.. HoleHeaders.Of(room, rules, lines)];
                var places = headers
                    .Where(h => h.Lines.Contains(l) && gap.Lo - rules.MaxSpacing < h.From.V && h.From.V < gap.Hi + rules.MaxSpacing)
                    .Select(h => h.From.V).Distinct().Order().ToList();
                var between = places.Count < 2 ? long.MaxValue : places.Zip(places.Skip(1), (a, b) => b - a).Max();
                if (Math.Min(between, past) is var widest && widest > rules.MaxSpacing)
                {
                    yield return new TrimSpan(l, gap, Math.Min(widest, gap.Size + rules.MaxSpacing));
                }
            }
        }
    }

    /// <summary>The nearest line on one side that passes the whole trimmed stretch.</summary>
    public static int? Beside(IReadOnlyList<StrapLine> lines, int line, int step, Span gap)
    {
        for (var l = line + step; l >= 0 && l < lines.Count; l += step)
        {
            if (lines[l].At != lines[line].At && lines[l].Stretches.Any(s => s.Across.Lo <= gap.Lo && gap.Hi <= s.Across.Hi))
            {
                return l;
            }
        }

        return null;
    }
}
