using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// A row that a wall square to the joists asks for: its centre, the stretches of wall it serves, whether the room lies
/// towards +u, and whose edges those are (see <see cref="WallEdge.Source"/>).
/// </summary>
public sealed record WallRow(long At, IReadOnlyList<Span> Across, bool InsideUp, IReadOnlyList<int> Sources, bool BothWalls = false)
{
    public long ServedLength => Across.Sum(s => s.Size);

    public bool Overlaps(WallRow other) => Across.Any(a => other.Across.Any(a.Overlaps));
}

/// <summary>
/// Finds the rows that walls ask for. Walls that face the same way within 13 mm share one row, and so do the two sides of
/// a jog smaller than a face and a clear gap: the row is tight to the wall that stands further into the room. A post
/// narrower than the row spacing is passed by: the board spans its edge.
/// </summary>
public static class WallRows
{
    public static List<WallRow> Find(FramedRoom room, RowRules rules)
    {
        var rows = new List<WallRow>();

        // a wall is one wall on both sides of a partition
        var parted = room.Partitions.Where(p => p.StopsBoard).Select(p => p.Wish.Thickness.Units).DefaultIfEmpty().Max();
        foreach (var up in new[] { true, false })
        {
            var sign = up ? 1 : -1;
            var facing = room.Straps.Edges.Concat(UnderStraps(room, rules)).Where(e => e.InsideUp == up && IsSquare(e)).ToLookup(e => Asks(room, rules, e));
            var walls = facing[true]
                .Select(e => (Edge: e, Depth: sign * (up ? e.Along.Hi : e.Along.Lo)))
                .OrderByDescending(w => w.Depth).ThenBy(w => w.Edge.Across.Lo)
                .ToList();
            while (walls.Count > 0)
            {
                var front = walls[0];
                var group = new List<WallEdge> { front.Edge };
                walls.RemoveAt(0);
                for (var i = 0; i < walls.Count;)
                {
                    var behind = front.Depth - walls[i].Depth;
                    var jog = behind < rules.MinGap && group.Any(g => Touch(g.Across, walls[i].Edge.Across, parted)
                        || facing[false].Any(post => Touch(g.Across, post.Across, 0) && Touch(post.Across, walls[i].Edge.Across, 0) && Between(front.Edge, post, walls[i].Edge)));
                    if (behind <= RowRules.ClearGap || jog)
                    {
                        group.Add(walls[i].Edge);
                        walls.RemoveAt(i);
                        i = 0;
                    }
                    else
                    {
                        i++;
                    }
                }

                rows.Add(new WallRow(
                    (sign * front.Depth) + (sign * PastFace(room, rules, front.Edge)),
                    Region.Merge([.. group.Select(g => g.Across)]),
                    up,
                    [.. group.Select(g => g.Source).Distinct().Order()]));
            }
        }

        return MarryNarrowArms(rows, rules).OrderBy(r => r.At).ThenBy(r => r.Across[0].Lo).ToList();
    }

    // the faces of partitions that stand under the straps, but for ends that the board spans
    private static IEnumerable<WallEdge> UnderStraps(FramedRoom room, RowRules rules) => room.Partitions.All(p => p.Stands || !p.StopsBoard)
        ? []
        : room.Board.Edges.Where(e => e.Across.Size > rules.MaxSpacing && room.PartitionAt(e.Source) is { Stands: false });

    // from the face into the room to the row's centre: tight to a wall; half over the plate that is screwed up into it, or as far over a thin one as leaves the gap between its two rows
    private static long PastFace(FramedRoom room, RowRules rules, WallEdge edge) => room.PartitionAt(edge.Source) is { Stands: false } under
        ? Math.Max(0, (rules.MinGap - under.Wish.Thickness.Units + 1) / 2)
        : rules.Half;

    /// <summary>Square to the joists as a tape sees it: out of square by no more than the clear gap over its length.</summary>
    public static bool IsSquare(WallEdge edge) =>
        edge.From.V != edge.To.V && edge.Along.Size <= RowRules.ClearGap && edge.Along.Size * 4 <= edge.Across.Size;

    private static bool Asks(FramedRoom room, RowRules rules, WallEdge edge)
    {
        if (edge.Source >= 0)
        {
            return true;
        }

        if (!room.IsOpening(edge.Source))
        {
            return true;
        }

        var opening = -edge.Source - 1;
        var ring = room.OpeningRings[opening];
        var width = ring.Max(c => c.V) - ring.Min(c => c.V);
        return room.Survey.Room.Openings[opening].Kind != OpeningKind.Post || width > rules.MaxSpacing;
    }

    // a narrow post's side that stands no further back than the wall beyond it joins that wall to the one before it
    private static bool Between(WallEdge front, WallEdge post, WallEdge behind) =>
        Math.Min(front.Along.Lo, behind.Along.Lo) <= post.Along.Hi && post.Along.Lo <= Math.Max(front.Along.Hi, behind.Along.Hi);

    private static bool Touch(Span a, Span b, long parted) => a.Lo <= b.Hi + parted && b.Lo <= a.Hi + parted;

    // an arm too short for two rows side by side has one row, midway, that serves both of its walls
    private static IEnumerable<WallRow> MarryNarrowArms(List<WallRow> rows, RowRules rules)
    {
        for (var i = 0; i < rows.Count; i++)
        {
            for (var j = 0; j < rows.Count; j++)
            {
                var (low, high) = (rows[i], rows[j]);
                if (low.InsideUp && !high.InsideUp && high.At - low.At < rules.Face && high.At - low.At > -rules.Half && low.Overlaps(high))
                {
                    var both = new WallRow(
                        (low.At + high.At) / 2,
                        Region.Merge([.. low.Across, .. high.Across]),
                        low.InsideUp,
                        [.. low.Sources.Concat(high.Sources).Distinct().Order()],
                        true);
                    rows.RemoveAt(Math.Max(i, j));
                    rows.RemoveAt(Math.Min(i, j));
                    rows.Add(both);
                    return MarryNarrowArms(rows, rules);
                }
            }
        }

        return rows;
    }
}
