using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// Headers where a row is trimmed round a hole: lengths of strap along the joists beside the hole, fastened to them, from the
/// trimmed row to the rows next to it; along a joist inside the trimmed stretch, from row to row. They carry the board where
/// the row does not. None where straps beside the hole are as near each other as rows may be. Common practice, no source. Cost: trimmed stretches × rows.
/// </summary>
internal static class HoleHeaders
{
    public static IEnumerable<NailerLine> Of(FramedRoom room, RowRules rules, IReadOnlyList<StrapLine> lines)
    {
        var found = new List<NailerLine>();
        for (var l = 0; l < lines.Count; l++)
        {
            foreach (var gap in lines[l].TrimmedGaps())
            {
                Round(found, room, rules, lines, l, gap);
            }
        }

        return found.DistinctBy(n => (n.From, n.To));
    }

    private static void Round(List<NailerLine> found, FramedRoom room, RowRules rules, IReadOnlyList<StrapLine> lines, int line, Span gap)
    {
        if (TrimSpans.Beside(lines, line, -1, gap) is { } one && TrimSpans.Beside(lines, line, 1, gap) is { } two && lines[two].At - lines[one].At <= rules.MaxSpacing)
        {
            // the straps beside the hole carry the board
            return;
        }

        var at = lines[line].At;
        var names = Holes(room, rules, at, gap);
        foreach (var support in room.Joists.At(at).ToArray().Where(s => gap.Lo <= s.Hi && s.Lo <= gap.Hi))
        {
            var inside = gap.Lo < support.Lo && support.Hi < gap.Hi;
            var (below, above) = (Next(lines, line, -1, support.Middle), Next(lines, line, 1, support.Middle));
            if (inside && below is { } low && above is { } high)
            {
                Add(lines[low].At + rules.Half, lines[high].At - rules.Half, low, high);
                continue;
            }

            if (below is { } before)
            {
                Add(lines[before].At + rules.Half, at - rules.Half, before, line);
            }

            if (above is { } after)
            {
                Add(at + rules.Half, lines[after].At - rules.Half, line, after);
            }

            void Add(long from, long to, int oneSide, int otherSide)
            {
                if (to > from && Clear(room, support, from, to))
                {
                    found.Add(new NailerLine(
                        NailerRole.Header, new Uv(from, support.Middle), new Uv(to, support.Middle), 0, [oneSide, otherSide], names));
                }
            }
        }
    }

    /// <summary>The fixtures whose holes a row is trimmed round over a stretch.</summary>
    public static List<string> Holes(FramedRoom room, RowRules rules, long at, Span gap) =>
    [
        .. room.KeepOuts.Firm
            .Where(h => gap.Lo <= h.Across.Lo && h.Across.Hi <= gap.Hi && h.AlongKept.Lo < at + rules.Half && at - rules.Half < h.AlongKept.Hi)
            .Select(h => h.FixtureId)
            .Order(StringComparer.Ordinal),
    ];

    // no header where another hole lies over the joist
    private static bool Clear(FramedRoom room, Support support, long from, long to) =>
        !room.KeepOuts.Firm.Any(h => h.Across.Overlaps(new Span(support.Lo, support.Hi)) && h.Along.Overlaps(new Span(from, to)));

    // the nearest row on one side that passes this joist
    private static int? Next(IReadOnlyList<StrapLine> lines, int line, int step, long across)
    {
        for (var l = line + step; l >= 0 && l < lines.Count; l += step)
        {
            if (lines[l].At != lines[line].At && lines[l].Stretches.Any(s => s.Across.Holds(across)))
            {
                return l;
            }
        }

        return null;
    }
}
