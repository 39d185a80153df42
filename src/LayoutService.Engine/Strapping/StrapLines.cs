using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// Lays rows between the walls. A row goes wherever its whole face fits; at an oblique wall its end is bevelled to the
/// wall, up to 75 degrees off square (common practice, no source); a steeper end is cut square where the face still fits.
/// </summary>
public sealed class StrapLines(FramedRoom room, RowRules rules)
{
    /// <summary>An end is bevelled up to so many degrees off square, and cut square beyond. Common practice, no source.</summary>
    public const double SteepestBevel = 75;

    // what rounding leaves between an end and the edge that it stops at, units
    private const long Touches = 8;
    private const long SupportSpread = 300 * Length.PerMillimetre;

    // many candidates share rows: a row at one place is laid once
    private readonly Dictionary<long, StrapLine> _laid = [];
    private readonly Dictionary<WallRow, StrapLine> _laidShort = [];
    private List<WallRow>? _wallRows;

    public List<StrapLine> Lay(IReadOnlyList<long> through, IReadOnlyList<WallRow> locals)
    {
        var lines = new List<StrapLine>(through.Count + locals.Count);
        foreach (var at in through)
        {
            if (!_laid.TryGetValue(at, out var line))
            {
                _laid[at] = line = new StrapLine(at, true, Stretches(at), null);
            }

            lines.Add(line);
        }

        // a short one in line with a row through the room is a part of it
        foreach (var local in locals.Where(l => !through.Contains(l.At)))
        {
            if (!_laidShort.TryGetValue(local, out var line))
            {
                _laidShort[local] = line = new StrapLine(local.At, false, Short(local.At, local.Across), local);
            }

            lines.Add(line);
        }

        if (locals.Count > 1)
        {
            ShortStrapsApart.Keep(room, rules, lines);
        }

        lines.RemoveAll(l => l.Stretches.Count == 0);
        lines.Sort(static (a, b) => a.At != b.At ? a.At.CompareTo(b.At) : a.Stretches[0].Across.Lo.CompareTo(b.Stretches[0].Across.Lo));
        return lines;
    }

    /// <summary>Short straps over given stretches: run on past two supports at least 300 mm apart, or to the wall.</summary>
    public List<Stretch> Short(long at, IReadOnlyList<Span> served)
    {
        var found = new List<Stretch>();
        foreach (var whole in Stretches(at))
        {
            foreach (var part in served)
            {
                var meet = whole.Across.Meet(part);
                if (meet.Size <= 0)
                {
                    continue;
                }

                var cut = ToEdgesThatShow(whole, PastTwoSupports(at, whole.Across, meet));
                found.Add(whole with
                {
                    Across = cut,
                    LowEnd = cut.Lo == whole.Across.Lo ? whole.LowEnd : StretchEnd.Joist,
                    HighEnd = cut.Hi == whole.Across.Hi ? whole.HighEnd : StretchEnd.Joist,
                    LowBevel = cut.Lo == whole.Across.Lo ? whole.LowBevel : 0,
                    HighBevel = cut.Hi == whole.Across.Hi ? whole.HighBevel : 0,
                });
            }
        }

        return room.KeepOuts.Firm.Count == 0 ? MergeOverlaps(found) : WithoutHalfTrims(MergeOverlaps(found));
    }

    // the strap beyond a hole may serve nothing and be left out: then this one just ends on its joist
    private static List<Stretch> WithoutHalfTrims(List<Stretch> found)
    {
        for (var i = 0; i < found.Count; i++)
        {
            var low = found[i].LowEnd == StretchEnd.Fixture && (i == 0 || found[i - 1].HighEnd != StretchEnd.Fixture);
            var high = found[i].HighEnd == StretchEnd.Fixture && (i + 1 == found.Count || found[i + 1].LowEnd != StretchEnd.Fixture);
            found[i] = found[i] with { LowEnd = low ? StretchEnd.Joist : found[i].LowEnd, HighEnd = high ? StretchEnd.Joist : found[i].HighEnd };
        }

        return found;
    }

    private static List<Stretch> MergeOverlaps(List<Stretch> found)
    {
        for (var i = 0; i + 1 < found.Count;)
        {
            var (a, b) = (found[i], found[i + 1]);
            if (b.Across.Lo <= a.Across.Hi)
            {
                found[i] = b.Across.Hi <= a.Across.Hi
                    ? a
                    : a with { Across = new Span(a.Across.Lo, b.Across.Hi), HighEnd = b.HighEnd, HighSource = b.HighSource, HighBevel = b.HighBevel, HighLongUp = b.HighLongUp };
                found.RemoveAt(i + 1);
            }
            else
            {
                i++;
            }
        }

        return found;
    }

    // the edge of a well has wood behind all of it: a strap that would stop less than its face short of one runs on to it
    private Span ToEdgesThatShow(Stretch whole, Span cut) => new(
        room.Shows(whole.LowSource) && cut.Lo - whole.Across.Lo < rules.Face ? whole.Across.Lo : cut.Lo,
        room.Shows(whole.HighSource) && whole.Across.Hi - cut.Hi < rules.Face ? whole.Across.Hi : cut.Hi);

    private Span PastTwoSupports(long at, Span whole, Span part)
    {
        var supports = room.Joists.At(at).ToArray();
        int Below(long v) => Array.FindLastIndex(supports, s => s.Middle <= v && s.Middle > whole.Lo);
        int Above(long v) => Array.FindIndex(supports, s => s.Middle >= v && s.Middle < whole.Hi);
        var (lo, hi) = (part.Lo, part.Hi);
        if (lo > whole.Lo)
        {
            lo = Below(lo) is >= 0 and var i ? supports[i].Middle : whole.Lo;
        }

        if (hi < whole.Hi)
        {
            hi = Above(hi) is >= 0 and var i ? supports[i].Middle : whole.Hi;
        }

        while (Spread(supports, new Span(lo, hi)) < SupportSpread && (lo > whole.Lo || hi < whole.Hi))
        {
            var down = lo > whole.Lo ? (Below(lo - 1) is >= 0 and var d ? supports[d].Middle : whole.Lo) : long.MinValue;
            var up = hi < whole.Hi ? (Above(hi + 1) is >= 0 and var u ? supports[u].Middle : whole.Hi) : long.MaxValue;
            if (up == long.MaxValue || (down != long.MinValue && lo - down <= up - hi))
            {
                lo = down;
            }
            else
            {
                hi = up;
            }
        }

        return new Span(lo, hi);
    }

    private static long Spread(Support[] supports, Span across)
    {
        var first = Array.FindIndex(supports, s => across.Holds(s.Middle));
        var last = Array.FindLastIndex(supports, s => across.Holds(s.Middle));
        return first < 0 ? 0 : supports[last].Middle - supports[first].Middle;
    }

    private List<Stretch> Stretches(long at)
    {
        var region = room.Straps;
        var strict = region.AcrossAt(at, rules.Half);
        var centre = region.AcrossAt(at, 0);
        var found = new List<Stretch>(strict.Count);
        foreach (var span in strict)
        {
            if (span.Size < rules.Face)
            {
                continue;
            }

            var whole = centre.Find(c => c.Lo <= span.Lo && span.Hi <= c.Hi);
            var (lo, lowSource, lowBevel, lowUp) = EndAt(region, at, whole.Lo, span.Lo);
            var (hi, highSource, highBevel, highUp) = EndAt(region, at, whole.Hi, span.Hi);
            found.Add(new Stretch(
                new Span(lo, hi),
                EndKind(lowSource, new Uv(at, whole.Lo), lo),
                EndKind(highSource, new Uv(at, whole.Hi), hi),
                lowSource,
                highSource,
                lowBevel,
                highBevel,
                lowUp,
                highUp));
        }

        return room.KeepOuts.Firm.Count == 0 ? found : HoleTrims.Of(room, rules, _wallRows ??= WallRows.Find(room, rules), at, found);
    }

    // a bulkhead that ends square may stand in line with a wall: one edge, of which a part is the bulkhead's
    private StretchEnd EndKind(int source, Uv end, long stop) =>
        room.BulkheadAt(source) is not null || (source >= 0 && room.Solids.Count > 0 && !OnOutline(end) && !CornerOnOutline(end, stop)) ? StretchEnd.Bulkhead : room.IsOpening(source) ? StretchEnd.Opening : StretchEnd.Wall;

    // a strap that only brushes a wall's corner: its centre line runs on past where it is cut off
    private bool CornerOnOutline(Uv end, long stop) =>
        Math.Abs(end.V - stop) > 1 && (OnOutline(new Uv(end.U - rules.Half, stop)) || OnOutline(new Uv(end.U + rules.Half, stop)));

    private bool OnOutline(Uv end)
    {
        var near = false;
        for (var i = 0; i < room.Outline.Count && !near; i++)
        {
            near = Rings.Distance(end, room.Outline[i], room.Outline[(i + 1) % room.Outline.Count]) < Touches;
        }

        return near;
    }

    // where the strap ends: on the wall with a bevel where one oblique wall cuts the whole face cleanly, else square
    private (long At, int Source, double Bevel, bool LongUp) EndAt(Region region, long u, long centreEnd, long strictEnd)
    {
        if (Math.Abs(centreEnd - strictEnd) > 1)
        {
            foreach (var edge in region.Edges)
            {
                if (edge.Parallel || edge.From.U == edge.To.U || !edge.Along.Holds(new Span(u - rules.Half, u + rules.Half)))
                {
                    continue;
                }

                var slope = (double)(edge.To.V - edge.From.V) / (edge.To.U - edge.From.U);
                var v = edge.From.V + (slope * (u - edge.From.U));
                var degrees = Math.Atan(Math.Abs(slope)) * 180 / Math.PI;
                if (Math.Abs(v - centreEnd) <= 2 && degrees <= SteepestBevel
                    && Math.Abs(centreEnd - strictEnd) <= (rules.Half * Math.Abs(slope)) + 2)
                {
                    var high = centreEnd > strictEnd;
                    return (centreEnd, edge.Source, degrees, slope > 0 == high);
                }
            }
        }

        return (strictEnd, SourceAt(region, u, strictEnd), 0, false);
    }

    // beside a bulkhead an end cut square may stop where a corner of it meets one edge while its middle is nearer to another
    private int SourceAt(Region region, long u, long strictEnd)
    {
        var (source, distance) = Nearest(region, new Uv(u, strictEnd));
        foreach (var corner in room.Solids.Count > 0 && distance > Touches ? (ReadOnlySpan<long>)[u - rules.Half, u + rules.Half] : [])
        {
            var (met, off) = Nearest(region, new Uv(corner, strictEnd));
            if (off < Touches)
            {
                return met;
            }
        }

        return source;
    }

    private static (int Source, double Distance) Nearest(Region region, Uv place)
    {
        var best = double.MaxValue;
        var source = 0;
        foreach (var edge in region.Edges)
        {
            var distance = Rings.Distance(place, edge.From, edge.To);
            if (distance < best)
            {
                (best, source) = (distance, edge.Source);
            }
        }

        return (source, best);
    }
}
