using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>Why a row lies tight to edges of the outline: walls, edges without one, and lines where the joists change direction, apart.</summary>
internal static class EdgeReasons
{
    /// <param name="room">The room.</param>
    /// <param name="sources">Edges; those of openings, bulkheads and partitions are passed over.</param>
    public static IEnumerable<Reason> Of(FramedRoom room, IReadOnlyList<int> sources)
    {
        var edges = sources.Where(s => s >= 0).SelectMany(room.InLine).Distinct().ToLookup(e => room.IsOf(e, WallKind.Open), room.EdgeId);
        var ids = edges[false].ToLookup(id => id.StartsWith('W'));
        if (edges[true].Any())
        {
            yield return new Reason("wall", [.. edges[true]], "along_open_edge", "Carries the board's edge and its bead where there is no wall.");
        }

        if (ids[true].Any())
        {
            yield return new Reason("wall", [.. ids[true]], "tight_to_wall", "Tight to the wall.");
        }

        if (ids[false].Any())
        {
            yield return new Reason("run-break", [.. ids[false]], "tight_to_run_break", "Carries the board's edge at the line where the joists change direction.");
        }
    }
}
