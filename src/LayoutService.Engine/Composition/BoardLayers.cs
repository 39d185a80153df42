using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>Cuts every layer of board into its parts and finds their seams; the parts of a layer follow those of the one before.</summary>
internal static class BoardLayers
{
    /// <summary>Null where the parts of some layer do not make up the board's area: none is said to be covered that is not.</summary>
    public static (IReadOnlyList<BoardPart> Parts, IReadOnlyList<BoardSeam> Seams)? Of(FramedRoom room, ChosenCeiling chosen)
    {
        var (all, joints, layer) = (new List<BoardPart>(), new List<BoardSeam>(), 0);
        foreach (var layout in chosen.Layers)
        {
            layer++;
            var pieces = new BoardPieces(room);
            var parts = pieces.Cut(layout);
            if (Math.Abs(parts.Sum(p => p.Area) - room.Board.Area) > room.Board.Area * 1e-6)
            {
                return null;
            }

            var seams = new BoardSeams(pieces, layout).Of(parts);
            if (chosen.Upper.Count == 0)
            {
                return (parts, seams);
            }

            joints.AddRange(seams.Select(s => s with { PartA = s.PartA + all.Count, PartB = s.PartB + all.Count }));
            all.AddRange(parts.Select(p => p with { Layer = layer }));
        }

        return (all, joints);
    }
}
