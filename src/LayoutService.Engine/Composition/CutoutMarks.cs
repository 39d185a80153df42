using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Says where the holes of a board piece are marked. A plan is seen from above and a sheet is cut face up, so one direction
/// is mirrored: with the end that hangs at the lower place along the joists on the left, the edge that hangs at the lower
/// place across them is away from the person where along and across turn as x and y do (joists along x), else near.
/// </summary>
public sealed class CutoutMarks(FramedRoom room, IReadOnlyList<PlacedFixture> fixtures)
{
    public IReadOnlyList<BoardCutout> Of(BoardPart part)
    {
        if (fixtures.Count == 0)
        {
            return [];
        }

        List<BoardCutout>? found = null;
        foreach (var fixture in fixtures)
        {
            if (HoleShapes.Meets(part, fixture.Hole))
            {
                (found ??= []).Add(Mark(part, fixture));
            }
        }

        return found ?? [];
    }

    private BoardCutout Mark(BoardPart part, PlacedFixture fixture)
    {
        var hole = fixture.Hole;
        var corner = Corner(part, hole);
        var (along, across) = (Math.Abs(hole.At.U - corner.U), Math.Abs(hole.At.V - corner.V));
        var lowEnd = room.Frame.AlongIn(corner.U) == Math.Min(room.Frame.AlongIn(part.Along.Lo), room.Frame.AlongIn(part.Along.Hi));
        var lowEdge = room.Frame.AcrossIn(corner.V) == Math.Min(room.Frame.AcrossIn(part.Across.Lo), room.Frame.AcrossIn(part.Across.Hi));
        var left = lowEnd ? "left" : "right";
        var edge = lowEdge == room.Frame.TurnsAsDrawn ? "top" : "bottom";
        var leftEnd = room.Say(room.FromRoom + Math.Min(room.Frame.AlongIn(part.Along.Lo), room.Frame.AlongIn(part.Along.Hi)));
        var cut = fixture.Wish.Cutout;
        var size = cut.Round ? $"round, {room.Say(cut.Width.Units)} across" : $"{room.Say(2 * hole.HalfU)} along the sheet by {room.Say(2 * hole.HalfV)} across it";
        return new BoardCutout(
            fixture.Wish.Id,
            room.Frame.Out(corner),
            fixture.Moved ? room.Frame.Out(hole.At) : fixture.Wish.At,
            cut,
            Sentence.Of(
                "mark_hole",
                $"Face up, the end that hangs at {leftEnd} along on the left: centre {room.Say(along)} from the {left} end, {room.Say(across)} from the {edge} edge; {size}.",
                ("fixture", fixture.Wish.Id),
                ("leftEnd", leftEnd),
                ("fromEnd", room.Say(along)),
                ("end", left),
                ("fromEdge", room.Say(across)),
                ("edge", edge),
                ("size", size)));
    }

    // the corner of the piece's box that is a corner of the piece and nearest to the hole, the lower ones first
    private Uv Corner(BoardPart part, Hole hole)
    {
        var box = new[] { part.Along.Lo, part.Along.Hi }.SelectMany(u => new[] { new Uv(u, part.Across.Lo), new Uv(u, part.Across.Hi) }).ToList();
        var real = box.Where(part.Ring.Contains).ToList();
        return (real.Count > 0 ? real : box)
            .OrderBy(c => Math.Abs(c.U - hole.At.U) + Math.Abs(c.V - hole.At.V))
            .ThenBy(c => room.Frame.AlongIn(c.U))
            .ThenBy(c => room.Frame.AcrossIn(c.V))
            .First();
    }
}
