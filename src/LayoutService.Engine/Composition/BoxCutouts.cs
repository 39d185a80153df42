using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Where the holes of a bulkhead's underside are marked: from the nearest corner of the board piece, along the longer of its
/// two edges there and square off that edge, so that no left or right can be mistaken.
/// </summary>
internal static class BoxCutouts
{
    public static IReadOnlyList<BoardCutout> Of(FramedRoom room, PlannedBoard board, IEnumerable<PlacedFixture> fixtures) =>
        [.. fixtures.Where(f => HoleShapes.Meets(board.Outline, f.Hole)).Select(f => Mark(room, board.Outline, f))];

    private static BoardCutout Mark(FramedRoom room, IReadOnlyList<Uv> ring, PlacedFixture fixture)
    {
        var (hole, cut) = (fixture.Hole, fixture.Wish.Cutout);
        // equally near ones in the caller's order of places
        var corner = Enumerable.Range(0, ring.Count)
            .OrderBy(i => (long)Math.Round(Rings.DistanceBetween(ring[i], hole.At)))
            .ThenBy(i => room.Frame.Out(ring[i]).X.Units)
            .ThenBy(i => room.Frame.Out(ring[i]).Y.Units)
            .First();
        var (here, before, after) = (ring[corner], ring[(corner + ring.Count - 1) % ring.Count], ring[(corner + 1) % ring.Count]);
        var edge = Rings.DistanceBetween(here, before) > Rings.DistanceBetween(here, after) ? before : after;
        var length = Rings.DistanceBetween(here, edge);
        double eu = (edge.U - here.U) / length, ev = (edge.V - here.V) / length, du = hole.At.U - here.U, dv = hole.At.V - here.V;
        var (along, off) = (room.Say((long)Math.Round(Math.Abs((du * eu) + (dv * ev)))), room.Say((long)Math.Round(Math.Abs((du * ev) - (dv * eu)))));
        var size = cut.Round ? $"round, {room.Say(cut.Width.Units)} across" : $"{room.Say(cut.Width.Units)} along x by {room.Say(cut.Height.Units)} along y";
        return new BoardCutout(
            fixture.Wish.Id,
            room.Frame.Out(here),
            fixture.Moved ? room.Frame.Out(hole.At) : fixture.Wish.At,
            cut,
            Sentence.Of(
                "mark_hole_in_bulkhead",
                $"From the corner nearest to it: centre {along} along the longer edge there, {off} square off that edge; {size}.",
                ("fixture", fixture.Wish.Id), ("along", along), ("off", off), ("size", size)));
    }
}
