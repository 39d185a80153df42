using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// Short straps run on past what they serve to reach two joists, and two that serve opposite walls of neighbouring arms can
/// run into each other: then one of the two is cut back to a joist, the one that loses less of the wall it serves. Cost: pairs
/// of short rows nearer than a face.
/// </summary>
internal static class ShortStrapsApart
{
    public static void Keep(FramedRoom room, RowRules rules, List<StrapLine> lines)
    {
        for (var a = 0; a < lines.Count; a++)
        {
            for (var b = a + 1; b < lines.Count; b++)
            {
                if (lines[a].Serves is { } low && lines[b].Serves is { } high && low.At != high.At && Math.Abs(low.At - high.At) < rules.Face)
                {
                    Part(room, lines, a, b);
                }
            }
        }
    }

    private static void Part(FramedRoom room, List<StrapLine> lines, int a, int b)
    {
        for (var i = 0; i < lines[a].Stretches.Count; i++)
        {
            for (var j = 0; j < lines[b].Stretches.Count; j++)
            {
                var (one, other) = (lines[a].Stretches[i], lines[b].Stretches[j]);
                if (!one.Across.Overlaps(other.Across))
                {
                    continue;
                }

                var cutOne = CutBack(room, lines[a], one, other.Across);
                var cutOther = CutBack(room, lines[b], other, one.Across);
                var losing = room.Solids.Count > 0 && Math.Abs(lines[a].At - lines[b].At) > RowRules.ClearGap && cutOne is not { Lost: 0 } && cutOther is not { Lost: 0 };
                if (losing && Meeting(room, (lines[a], one), (lines[b], other)) is { } met)
                {
                    lines[a] = With(lines[a], i, met.One);
                    lines[b] = With(lines[b], j, met.Other);
                }
                else if (cutOne is { } first && (cutOther is not { } || first.Lost <= cutOther.Value.Lost))
                {
                    lines[a] = With(lines[a], i, first.Left);
                }
                else if (cutOther is { } second)
                {
                    lines[b] = With(lines[b], j, second.Left);
                }
            }
        }
    }

    // the stretch ended on its last joist before the other: at its middle, or as far past it as what it serves goes and no ledger is needed
    private static (Stretch Left, long Lost)? CutBack(FramedRoom room, StrapLine line, Stretch stretch, Span other)
    {
        var fromHigh = other.Lo > stretch.Across.Lo;
        if (!fromHigh && other.Hi >= stretch.Across.Hi)
        {
            return null;
        }

        var free = fromHigh ? new Span(stretch.Across.Lo, other.Lo) : new Span(other.Hi, stretch.Across.Hi);
        var joists = room.Joists.At(line.At).ToArray().Where(s => free.Holds(s.Middle)).OrderBy(s => s.Middle).ToList();
        if (joists.Count < 2)
        {
            return null;
        }

        var served = line.Serves!.Across;
        var left = fromHigh
            ? stretch with { Across = new Span(free.Lo, End(joists[^1].Middle, joists[^1].Hi, served.Max(s => s.Hi), free.Hi)), HighEnd = StretchEnd.Joist, HighBevel = 0 }
            : stretch with { Across = new Span(-End(-joists[0].Middle, -joists[0].Lo, -served.Min(s => s.Lo), -free.Lo), free.Hi), LowEnd = StretchEnd.Joist, LowBevel = 0 };
        return (left, Served(stretch.Across) - Served(left.Across));

        long Served(Span across) => served.Sum(s => Math.Max(0, s.Meet(across).Size));

        static long End(long middle, long face, long serves, long free) => Math.Max(middle, Math.Min(Math.Min(face + StrapRuns.Overhang, serves), free));
    }

    // each ended where what it serves does, when that is not past where the other begins to serve
    private static (Stretch One, Stretch Other)? Meeting(FramedRoom room, (StrapLine Line, Stretch Stretch) one, (StrapLine Line, Stretch Stretch) other)
    {
        if (one.Stretch.Across.Lo > other.Stretch.Across.Lo)
        {
            return Meeting(room, other, one) is { } turned ? (turned.Other, turned.One) : null;
        }

        var low = one.Line.Serves!.Across.Where(one.Stretch.Across.Overlaps).Max(s => s.Hi);
        var high = other.Line.Serves!.Across.Where(other.Stretch.Across.Overlaps).Min(s => s.Lo);
        return low <= high && EndedAt(room, one.Line.At, one.Stretch, low, true) is { } first && EndedAt(room, other.Line.At, other.Stretch, high, false) is { } second
            ? (first, second) : null;
    }

    // the stretch ended at a place, over its last joist or on a block in the bay there; null where it would not bear
    private static Stretch? EndedAt(FramedRoom room, long at, Stretch stretch, long place, bool high)
    {
        var left = high ? new Span(stretch.Across.Lo, place) : new Span(place, stretch.Across.Hi);
        var joists = room.Joists.At(at).ToArray().Where(s => left.Meet(new Span(s.Lo, s.Hi)).Size >= PieceSupports.Least).OrderBy(s => s.Middle).ToList();
        if (joists.Count == 0)
        {
            return null;
        }

        var past = high ? place - joists[^1].Hi : joists[0].Lo - place;
        var carried = past <= StrapRuns.Overhang && joists[^1].Middle - joists[0].Middle >= PieceSupports.Spread;
        var reach = high ? place - joists[0].Middle : joists[^1].Middle - place;
        if (!carried && (reach < PieceSupports.Spread || NailerLines.BayAt(room, new Uv(at, place)) is null))
        {
            return null;
        }

        var end = carried ? StretchEnd.Joist : StretchEnd.Block;
        return high ? stretch with { Across = left, HighEnd = end, HighBevel = 0 } : stretch with { Across = left, LowEnd = end, LowBevel = 0 };
    }

    private static StrapLine With(StrapLine line, int index, Stretch stretch) =>
        line with { Stretches = [.. line.Stretches.Select((s, i) => i == index ? stretch : s)] };
}
