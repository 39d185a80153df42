using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// Blocks for the plate of a partition that runs along the joists between two of them: 2x4 across the bay, joist to joist, the
/// first and last 150 mm from the plate's ends and none further apart than 600 mm. A block that carries a row's end there does
/// for the plate as well. Under a joist the plate is screwed to it; one that runs askew has
/// blocks where the joists that it crosses are further apart along it. Common practice, no source.
/// </summary>
public static class PartitionBlocks
{
    private const long FromEnd = 150 * Length.PerMillimetre;
    private const long Apart = 600 * Length.PerMillimetre;

    /// <summary>Wood of a joist over a plate that takes its screws, as for a strap's joint.</summary>
    private const long Bearing = 16 * Length.PerMillimetre;

    public static IEnumerable<NailerLine> Of(FramedRoom room, IReadOnlyList<NailerLine> others)
    {
        foreach (var partition in room.Partitions.Where(p => p.Stands))
        {
            for (var i = 0; i + 1 < partition.Line.Count; i++)
            {
                var (from, to) = (partition.Line[i], partition.Line[i + 1]);
                if (from.U == to.U)
                {
                    continue;
                }

                var along = new Span(Math.Max(0, Math.Min(from.U, to.U)), Math.Min(room.Frame.SizeU, Math.Max(from.U, to.U)));
                foreach (var block in from.V == to.V ? Along(room, partition, along, from.V, others) : Askew(room, partition, along, from, to))
                {
                    // one that carries strap ends there carries the plate too
                    if (!others.Any(o => o.Role == NailerRole.Block && o.From == block.From && o.To == block.To))
                    {
                        yield return block;
                    }
                }
            }
        }
    }

    // a plate askew to the joists is screwed to those that it crosses; blocks where they are too far apart along it
    private static IEnumerable<NailerLine> Askew(FramedRoom room, FramedPartition partition, Span along, Uv from, Uv to)
    {
        var slope = (double)(to.V - from.V) / (to.U - from.U);
        var stretch = Math.Sqrt(1 + (slope * slope));
        var crossed = room.Joists.Zones
            .SelectMany(z => Enumerable.Range(z.FirstSupport, z.SupportCount).Select(s => (z.Along, U: from.U + (long)Math.Round((room.Joists.Supports[s].Middle - from.V) / slope))))
            .Where(c => c.Along.Holds(c.U) && along.Holds(c.U)).Select(c => c.U).Distinct().Order().ToList();
        foreach (var u in Places(room, along, crossed, (long)(FromEnd / stretch), (long)(Apart / stretch)))
        {
            var v = from.V + (long)Math.Round(slope * (u - from.U));
            if (partition.Footprint.Holds(new Uv(u, v)) && Bay(room, u, v, partition.Wish.Thickness.Units / 2) is { } found)
            {
                var bay = OpeningBlocks.Clear(room, new Uv(u, v), found);
                yield return new NailerLine(NailerRole.Block, new Uv(u, bay.Lo), new Uv(u, bay.Hi), 0, [], [partition.Wish.Id]);
            }
        }
    }

    private static IEnumerable<NailerLine> Along(FramedRoom room, FramedPartition partition, Span along, long v, IReadOnlyList<NailerLine> others)
    {
        var half = partition.Wish.Thickness.Units / 2;
        foreach (var u in Places(room, along, [.. others.Where(o => Serves(o, v) && along.Holds(o.From.U)).Select(o => o.From.U).Order()], FromEnd, Apart))
        {
            if (partition.Footprint.Holds(new Uv(u, v)) && Bay(room, u, v, half) is { } found)
            {
                var bay = OpeningBlocks.Clear(room, new Uv(u, v), found);
                yield return new NailerLine(NailerRole.Block, new Uv(u, bay.Lo), new Uv(u, bay.Hi), 0, [], [partition.Wish.Id]);
            }
        }
    }

    // what must be added to the blocks that are there: near both ends, and evenly where two are too far apart
    private static IEnumerable<long> Places(FramedRoom room, Span along, List<long> there, long fromEnd, long apart)
    {
        var (first, last) = (Math.Min(along.Lo + fromEnd, along.Middle), Math.Max(along.Hi - fromEnd, along.Middle));
        var marks = new List<(long At, bool There)>(there.Select(at => (at, true)));
        if (there.Count == 0 || there[0] > along.Lo + (2 * fromEnd))
        {
            marks.Insert(0, (first, false));
        }

        if (there.Count == 0 ? last > first : there[^1] < along.Hi - (2 * fromEnd))
        {
            marks.Add((last, false));
        }

        for (var i = 0; i < marks.Count; i++)
        {
            for (long n = 1, spaces = i == 0 ? 0 : (marks[i].At - marks[i - 1].At + apart - 1) / apart; n < spaces; n++)
            {
                yield return room.SnapNear(marks[i - 1].At + ((marks[i].At - marks[i - 1].At) * n / spaces));
            }

            if (!marks[i].There)
            {
                yield return room.SnapNear(marks[i].At);
            }
        }
    }

    private static bool Serves(NailerLine other, long v) =>
        other.Role == NailerRole.Block && Math.Min(other.From.V, other.To.V) <= v && v <= Math.Max(other.From.V, other.To.V);

    // null where a joist lies over the plate, or where there is none on one side
    private static Span? Bay(FramedRoom room, long u, long v, long half)
    {
        Support? below = null;
        foreach (var support in room.Joists.At(u))
        {
            if (Math.Min(support.Hi, v + half) - Math.Max(support.Lo, v - half) >= Bearing)
            {
                return null;
            }

            if (support.Middle > v)
            {
                return below is { } low ? new Span(low.Hi, support.Lo) : null;
            }

            below = support;
        }

        return null;
    }
}
