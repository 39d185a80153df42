using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Rows that bulkheads below the board want: a side that runs across the joists needs a strap behind its top rail, one
/// short strap past two supports. Sides along the joists cross the rows and need none.
/// </summary>
public static class BulkheadLines
{
    /// <summary>The rows of walls with those of bulkheads boarded above, left out where another row is too near to stand beside.</summary>
    public static List<WallRow> With(FramedRoom room, RowRules rules, List<WallRow> walls)
    {
        var rows = new List<WallRow>(walls);
        foreach (var solid in room.Solids.Where(s => s.Wish.BoardedAbove))
        {
            var source = -(room.OpeningRings.Count + solid.Index + 1);
            foreach (var (from, to) in Sides(solid))
            {
                if (from.U != to.U)
                {
                    continue;
                }

                // walked with the bulkhead on the left: going towards -v it lies towards +u
                var up = to.V < from.V;
                var inward = solid.Board + (solid.Wish.Frame.Face.Units / 2);
                var at = room.SnapNear(from.U + (up ? inward : -inward));
                var across = new Span(Math.Min(from.V, to.V), Math.Max(from.V, to.V));
                if (room.Straps.AcrossAt(at, rules.Half).Any(s => s.Overlaps(across)) && rows.All(r => Math.Abs(r.At - at) >= rules.MinGap))
                {
                    rows.Add(new WallRow(at, [across], up, [source], true));
                }
            }
        }

        return rows.Count == walls.Count ? walls : [.. rows.OrderBy(r => r.At).ThenBy(r => r.Across[0].Lo)];
    }

    /// <summary>True when a bulkhead below the board is screwed to this row.</summary>
    public static bool Under(BulkheadSolid solid, StrapLine line, long half) =>
        solid.Wish.BoardedAbove && Sides(solid).Any(side =>
        {
            var (along, across) = (new Span(Math.Min(side.From.U, side.To.U), Math.Max(side.From.U, side.To.U)), new Span(Math.Min(side.From.V, side.To.V), Math.Max(side.From.V, side.To.V)));
            return along.Lo - half - (along.Size == 0 ? solid.FaceDepth : 0) <= line.At
                && line.At <= along.Hi + half + (along.Size == 0 ? solid.FaceDepth : 0)
                && line.Stretches.Any(s => s.Across.Lo <= across.Hi && across.Lo <= s.Across.Hi);
        });

    /// <summary>True when there is ceiling between two rows, and not only a bulkhead.</summary>
    public static bool Boarded(FramedRoom room, StrapLine own, StrapLine before) =>
        (room.Solids.Count == 0 && room.Partitions.Count == 0) || room.Board.AcrossAt((own.At + before.At) / 2, 0).Any(a => own.Stretches.Any(s => s.Across.Overlaps(a)));

    private static IEnumerable<(Uv From, Uv To)> Sides(BulkheadSolid solid) => solid.Footprint.Patches
        .SelectMany(p => p.Loops)
        .SelectMany(ring => ring.Select((corner, i) => (corner, ring[(i + 1) % ring.Count])));
}
