using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// Trims a row round the holes that it would pass through: the strap stops at the near faces of the joists on both sides of
/// the hole, where its ends are fastened, and headers carry the board there (see <see cref="HoleHeaders"/>). What is left
/// between two holes and does not bear on two joists 300 mm apart is left out. A hole with no joist between it and a wall,
/// 300 mm off it, is not trimmed round: that conflict is told. Common practice, no source.
/// </summary>
internal static class HoleTrims
{
    private const long SupportSpread = 300 * Length.PerMillimetre;

    /// <summary>The row as it is left.</summary>
    /// <param name="room">The framed room with its holes.</param>
    /// <param name="rules">The distances that rows keep.</param>
    /// <param name="wallRows">Rows that walls ask for: none is trimmed where it serves its wall.</param>
    /// <param name="at">Where the row lies.</param>
    /// <param name="stretches">The row from wall to wall.</param>
    public static List<Stretch> Of(FramedRoom room, RowRules rules, IReadOnlyList<WallRow> wallRows, long at, List<Stretch> stretches)
    {
        var served = wallRows.Where(w => w.At == at).SelectMany(w => w.Across).ToList();

        var found = new List<Stretch>(stretches.Count + 1);
        foreach (var stretch in stretches)
        {
            var gaps = Gaps(room, rules, at, stretch, served);
            var rest = stretch;
            foreach (var gap in gaps)
            {
                found.Add(rest with { Across = new Span(rest.Across.Lo, gap.Lo), HighEnd = StretchEnd.Fixture, HighBevel = 0 });
                rest = rest with { Across = new Span(gap.Hi, rest.Across.Hi), LowEnd = StretchEnd.Fixture, LowBevel = 0 };
            }

            found.Add(rest);
        }

        return found;
    }

    // from joist face to joist face round each hole; holes with too little strap between them share one
    private static List<Span> Gaps(FramedRoom room, RowRules rules, long at, Stretch stretch, List<Span> served)
    {
        var gaps = new List<Span>();
        var zone = room.Joists.ZoneAt(at);
        if (room.Joists.Zones.Length > 1 && !zone.Along.Holds(new Span(at - rules.MaxSpacing, at + rules.MaxSpacing)))
        {
            // headers would run off the end of their joists
            return gaps;
        }

        var supports = room.Joists.At(at).ToArray();
        foreach (var hole in room.KeepOuts.Firm)
        {
            var (along, across) = (hole.AlongKept, hole.AcrossKept);
            if (at + rules.Half <= along.Lo || at - rules.Half >= along.Hi || !across.Overlaps(stretch.Across))
            {
                continue;
            }

            var low = Array.FindLastIndex(supports, s => s.Hi <= across.Lo);
            var high = Array.FindIndex(supports, s => s.Lo >= across.Hi);
            if (low >= 0 && high >= 0 && supports[low].Middle - stretch.Across.Lo >= SupportSpread && stretch.Across.Hi - supports[high].Middle >= SupportSpread)
            {
                gaps.Add(new Span(supports[low].Hi, supports[high].Lo));
            }
        }

        gaps.RemoveAll(g => served.Exists(g.Overlaps));
        gaps.Sort(static (a, b) => a.Lo.CompareTo(b.Lo));
        for (var i = 0; i + 1 < gaps.Count;)
        {
            var between = new Span(gaps[i].Hi, gaps[i + 1].Lo);
            var carried = supports.Where(s => between.Holds(s.Lo) && between.Holds(s.Hi)).ToList();
            if (carried.Count < 2 || carried[^1].Middle - carried[0].Middle < SupportSpread)
            {
                gaps[i] = new Span(gaps[i].Lo, Math.Max(gaps[i].Hi, gaps[i + 1].Hi));
                gaps.RemoveAt(i + 1);
            }
            else
            {
                i++;
            }
        }

        return gaps;
    }
}
