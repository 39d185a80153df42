using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>Edges of the outline without a wall, and the bead along each as far as the board reaches it.</summary>
internal static class OpenEdges
{
    /// <summary>In the order of the outline's edges, then along each as the board's edges lie.</summary>
    public static IReadOnlyList<EdgeBead> Beads(FramedRoom room) => [.. room.Survey.Room.OpenEdges.SelectMany(edge => room.Board.Edges
        .Where(e => e.Source >= 0 && room.InLine(e.Source).Contains(edge))
        .Select(e => Shared(e, room.Outline[edge], room.Outline[(edge + 1) % room.Outline.Count]))
        .OfType<(Uv From, Uv To)>()
        .Select(run => (From: room.Frame.Out(run.From), To: room.Frame.Out(run.To), Length: (long)Math.Round(Rings.DistanceBetween(run.From, run.To))))
        .OrderBy(b => b.From.X.Units).ThenBy(b => b.From.Y.Units).ThenBy(b => b.To.X.Units).ThenBy(b => b.To.Y.Units)
        .Select(b => new EdgeBead(room.EdgeId(edge), b.From, b.To, new Length(b.Length))))];

    // what an edge of the board has of an edge that it lies in line with, which may begin or end within it
    private static (Uv From, Uv To)? Shared(WallEdge board, Uv a, Uv b)
    {
        var (from, to) = (Along(board.From), Along(board.To));
        return Math.Min(Math.Max(from, to), 1) - Math.Max(Math.Min(from, to), 0) > 1e-9 ? (Place(board.From, from), Place(board.To, to)) : null;

        double Along(Uv at) => ((double)(at.U - a.U) * (b.U - a.U) + ((double)(at.V - a.V) * (b.V - a.V))) / (Math.Pow(b.U - a.U, 2) + Math.Pow(b.V - a.V, 2));

        Uv Place(Uv at, double along) => along < 0 ? a : along > 1 ? b : at;
    }
}
