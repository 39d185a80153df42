using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Strapping;

/// <summary>How the blocks that carry strap ends beside an opening are held.</summary>
public enum BlockPlace
{
    /// <summary>From joist to joist, under nothing but floor.</summary>
    Bay,

    /// <summary>From a joist to what trims the opening.</summary>
    ToTrimmer,

    /// <summary>Along the opening, between two blocks beside it: the strap ends are fastened to this one.</summary>
    AlongOpening,

    /// <summary>From joist to joist beside the opening: it carries an end of the block along it.</summary>
    BesideOpening,
}

/// <summary>
/// Blocks for strap ends that hang in a bay. A block goes across the clear bay from joist to joist; where an opening stands in that
/// bay no wood goes through it. An opening square to the joists that none of them crosses has two blocks beside it and one along it between them, which carries
/// every strap end there; any other takes joists to run through or is
/// to be trimmed (as a stair or well is), and the block goes from the joist to what trims it. Common practice, no source. Cost: strap ends × openings.
/// </summary>
internal static class OpeningBlocks
{
    // half the face of a 2x4 that lies flat, and a little
    private const long Half = 45 * Length.PerMillimetre;

    // a shorter one is a scrap: the end is carried by the joist beside it
    private const long Least = 10 * Length.PerMillimetre;

    /// <summary>What carries a strap's end.</summary>
    /// <param name="room">The framed room.</param>
    /// <param name="place">The strap's end.</param>
    /// <param name="high">Whether the strap comes from the low side.</param>
    /// <param name="bay">The clear bay that it hangs in.</param>
    /// <param name="source">The edge that the strap ends at.</param>
    /// <param name="lines">The strap's line, or none for the board's own edge.</param>
    public static IEnumerable<NailerLine> Of(FramedRoom room, Uv place, bool high, Span bay, int source, IReadOnlyList<int> lines)
    {
        var whole = Block(new Uv(place.U, bay.Lo), new Uv(place.U, bay.Hi), BlockPlace.Bay);
        if (Met(room, place.U, bay, source) is not { } opening)
        {
            return [whole];
        }

        var box = Box(room, opening);
        if (place.U <= box.Along.Lo || place.U >= box.Along.Hi)
        {
            // the strap passes the opening by: its block, which is wider, stands a little aside
            var aside = place.U <= box.Along.Lo ? box.Along.Lo - Half : box.Along.Hi + Half;
            return [Block(new Uv(aside, bay.Lo), new Uv(aside, bay.Hi), BlockPlace.Bay)];
        }

        var own = source == -opening - 1;
        var beside = high
            ? new Span(bay.Lo, own ? place.V : Math.Min(place.V, box.Across.Lo))
            : new Span(own ? place.V : Math.Max(place.V, box.Across.Hi), bay.Hi);
        var along = high ? beside.Hi - Half : beside.Lo + Half;
        if (IsBox(room.OpeningRings[opening]) && !Trimmed(room, opening, box) && beside.Size >= 2 * Half && Beside(box.Along.Lo - Half) is { } low && Beside(box.Along.Hi + Half) is { } far)
        {
            return [low, far, Block(new Uv(box.Along.Lo, along), new Uv(box.Along.Hi, along), BlockPlace.AlongOpening)];
        }

        // where two openings stand in one bay it goes from one to the other
        beside = Clear(room, place with { V = high ? beside.Hi - 1 : beside.Lo + 1 }, beside);
        return beside.Size < Least ? [] : [Block(place with { V = beside.Lo }, place with { V = beside.Hi }, BlockPlace.ToTrimmer)];

        NailerLine Block(Uv from, Uv to, BlockPlace held) => new(NailerRole.Block, from, to, source, lines) { Held = held };

        // in the same bay, in the room, and clear of every opening
        NailerLine? Beside(long u) =>
            NailerLines.BayAt(room, new Uv(u, place.V)) == bay && Met(room, u, bay) is null
                && room.Straps.AcrossAt(u, Half).Any(s => s.Lo <= bay.Lo && bay.Hi <= s.Hi)
                ? Block(new Uv(u, bay.Lo), new Uv(u, bay.Hi), BlockPlace.BesideOpening)
                : null;
    }

    /// <summary>So much of a bay round a place as no opening stands in: a block there goes to what trims the opening.</summary>
    public static Span Clear(FramedRoom room, Uv place, Span bay)
    {
        foreach (var ring in room.OpeningRings)
        {
            foreach (var hole in Inside(ring.Select(c => (c.U, c.V)), place.U))
            {
                bay = hole.Hi <= place.V ? bay with { Lo = Math.Max(bay.Lo, hole.Hi) }
                    : hole.Lo >= place.V ? bay with { Hi = Math.Min(bay.Hi, hole.Lo) }
                    : bay;
            }
        }

        return bay;
    }

    /// <summary>The parts of a stretch along the joists that no opening stands in.</summary>
    public static List<Span> Outside(FramedRoom room, Span along, long v)
    {
        List<Span> left = [along];
        foreach (var ring in room.OpeningRings)
        {
            foreach (var hole in Inside(ring.Select(c => (c.V, c.U)), v))
            {
                left = [.. left.SelectMany(s => new[] { s with { Hi = Math.Min(s.Hi, hole.Lo) }, s with { Lo = Math.Max(s.Lo, hole.Hi) } }).Where(s => s.Size > 0)];
            }
        }

        return left;
    }

    // where a line at a constant first coordinate lies inside a ring, by the second
    private static IEnumerable<Span> Inside(IEnumerable<(long First, long Second)> corners, long first)
    {
        List<(long First, long Second)> ring = [.. corners];
        var cuts = new List<long>(4);
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a.First > first != b.First > first)
            {
                cuts.Add(a.Second + (long)Math.Round((double)(b.Second - a.Second) * (first - a.First) / (b.First - a.First)));
            }
        }

        cuts.Sort();
        for (var i = 0; i + 1 < cuts.Count; i += 2)
        {
            yield return new Span(cuts[i], cuts[i + 1]);
        }
    }

    // the opening that a block here would run through, that at which the strap ends before any other
    private static int? Met(FramedRoom room, long u, Span bay, int source = 0)
    {
        foreach (var i in Enumerable.Range(0, room.OpeningRings.Count).OrderBy(i => source == -i - 1 ? 0 : 1))
        {
            var box = Box(room, i);
            if (box.Along.Lo < u + Half && u - Half < box.Along.Hi && box.Across.Overlaps(bay))
            {
                return i;
            }
        }

        return null;
    }

    private static (Span Along, Span Across) Box(FramedRoom room, int opening)
    {
        var ring = room.OpeningRings[opening];
        var kept = room.Survey.Room.Openings[opening].Clearance.Units;
        return (new Span(ring.Min(c => c.U) - kept, ring.Max(c => c.U) + kept), new Span(ring.Min(c => c.V) - kept, ring.Max(c => c.V) + kept));
    }

    // square to the joists all round: only then does a block along it meet every end
    private static bool IsBox(IReadOnlyList<Uv> ring)
    {
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a.U != b.U && a.V != b.V)
            {
                return false;
            }
        }

        return true;
    }

    private static bool Trimmed(FramedRoom room, int opening, (Span Along, Span Across) box)
    {
        if (room.Survey.Room.Openings[opening].IsWell)
        {
            return true;
        }

        foreach (var joist in room.Joists.At(box.Along.Middle))
        {
            if (joist.Lo < box.Across.Hi && box.Across.Lo < joist.Hi)
            {
                return true;
            }
        }

        return false;
    }
}
