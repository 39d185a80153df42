using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Bulkheads;

/// <summary>
/// The boards: faces from the frame's bottom up past the edge of the ceiling's board (to the board, when it was there
/// first), then the underside over the bottom edges of the faces. Ends meet on rungs and ties.
/// </summary>
internal sealed class BoxBoards(FramedRoom room, BulkheadSolid solid, BulkheadRules rules)
{
    private const long ScrewsApart = 300 * Length.PerMillimetre;
    private const long ScrewFromEdge = 10 * Length.PerMillimetre;

    // corners on whole units may make a board askew so many units longer than it is
    private const long Rounding = 4;

    /// <summary>Length of the joints between underside boards: what their edges come to beyond the outline.</summary>
    public long UndersideJoints(IEnumerable<PlannedBoard> boards) => Math.Max(0, (long)Math.Round(
        (boards.Where(b => b.Face == BoardFace.Underside).Sum(b => Around(b.Outline)) - solid.Footprint.Patches.SelectMany(p => p.Loops).Sum(Around)) / 2));

    private static double Around(IReadOnlyList<Uv> ring) => ring.Select((corner, i) => Rings.DistanceBetween(corner, ring[(i + 1) % ring.Count])).Sum();

    /// <summary>The boards of a face, and the length of the joints between them.</summary>
    public (IReadOnlyList<PlannedBoard> Boards, long Joints) Faces(Side side, IReadOnlyList<double> rungs)
    {
        var height = FaceHeight(side);
        if (height <= 0)
        {
            return ([], 0);
        }

        var stops = Stops(0, side.Length, rungs, rules.SheetLength);
        var strips = (int)((height + rules.SheetWidth - 1) / rules.SheetWidth);
        var boards = new List<PlannedBoard>();
        for (var k = 0; k + 1 < stops.Count; k++)
        {
            var length = Whole((long)Math.Round(stops[k + 1] - stops[k]), rules.SheetLength);
            for (var s = 0; s < strips; s++)
            {
                var width = (height * (s + 1) / strips) - (height * s / strips);
                boards.Add(new PlannedBoard(
                    BoardFace.Face,
                    [side.At(stops[k], 0), side.At(stops[k + 1], 0)],
                    width,
                    length,
                    (double)width * length,
                    Screws(width, length, rungs.Count(r => stops[k] <= r && r <= stops[k + 1]))));
            }
        }

        return (boards, ((stops.Count - 2) * height) + (long)((strips - 1) * side.Length));
    }

    public long FaceHeight(Side side) => side.Kind == SideKind.Step
        ? solid.Underside - room.Solids[side.Other].Underside
        : solid.Drop - solid.Board + (solid.Wish.BoardedAbove ? 0 : solid.CeilingBoard);

    public IEnumerable<PlannedBoard> Undersides(BoxPart part, IReadOnlyList<double> ties)
    {
        var (a, b) = (part.Axis, (U: -part.Axis.V, V: part.Axis.U));
        var along = part.Ring.Select(c => (c.U * a.U) + (c.V * a.V)).ToList();
        var across = part.Ring.Select(c => (c.U * b.U) + (c.V * b.V)).ToList();
        var stops = Stops(along.Min(), along.Max(), ties, rules.SheetLength);
        var width = across.Max() - across.Min();
        var strips = Math.Max(1, (int)Math.Ceiling((width - 1) / rules.SheetWidth));
        var whole = Footprint.Of([part.Ring]);
        for (var k = 0; k + 1 < stops.Count; k++)
        {
            for (var s = 0; s < strips; s++)
            {
                var (low, high) = (across.Min() + (width * s / strips), across.Min() + (width * (s + 1) / strips));
                var slab = new[] { (stops[k], low), (stops[k + 1], low), (stops[k + 1], high), (stops[k], high) }
                    .Select(p => new Uv((long)Math.Round((a.U * p.Item1) + (b.U * p.Item2)), (long)Math.Round((a.V * p.Item1) + (b.V * p.Item2))))
                    .ToArray();
                var patch = whole.Meet(Footprint.Of([slab])).Patches;
                if (patch.Count == 0)
                {
                    continue;
                }

                var ring = patch[0].Outer;
                var (u, v) = (Whole(Extent(ring, a), rules.SheetLength), Whole(Extent(ring, b), rules.SheetWidth));
                yield return new PlannedBoard(
                    BoardFace.Underside, ring, v, u, (double)Rings.TwiceArea(ring) / 2,
                    Screws(v, u, ties.Count(t => stops[k] <= t && t <= stops[k + 1])));
            }
        }
    }

    // as long or wide as the sheet where it is that but for rounding
    private static long Whole(long size, long sheet) => size > sheet && size <= sheet + Rounding ? sheet : size;

    private static long Extent(IReadOnlyList<Uv> ring, (double U, double V) axis)
    {
        var places = ring.Select(c => (c.U * axis.U) + (c.V * axis.V)).ToList();
        return (long)Math.Round(places.Max() - places.Min());
    }

    // along both long edges into rails or ledgers, and across on every rung or tie
    private static int Screws(long width, long length, int crossings) => (2 * Row(length)) + (crossings * Math.Max(0, Row(width) - 2));

    private static int Row(long length)
    {
        var inside = Math.Max(0, length - (2 * ScrewFromEdge));
        return (int)((inside + ScrewsApart - 1) / ScrewsApart) + 1;
    }

    // as few pieces as the longest sheet allows, each as long as it can be and ending on wood
    private static List<double> Stops(double from, double to, IReadOnlyList<double> wood, long longest)
    {
        var stops = new List<double> { from };
        while (to - stops[^1] > longest + 1)
        {
            var reach = stops[^1] + longest;
            var on = wood.Where(w => w > stops[^1] + (longest / 4.0) && w <= reach).DefaultIfEmpty(reach).Max();
            stops.Add(on);
        }

        stops.Add(to);
        return stops;
    }
}
