using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Bulkheads;

/// <summary>
/// Frames, boards and trims every bulkhead of a room. Each is a box with sides (walls, faces, other bulkheads), divided into
/// convex parts; ladders stand along faces, ledgers along walls, ties cross the parts.
/// </summary>
public static class BulkheadPlanner
{
    /// <param name="room">The framed room, with its bulkheads sized and joined.</param>
    /// <param name="rows">The rows as they lie: what a bulkhead below the board is screwed to.</param>
    /// <param name="rules">Spacings and stock.</param>
    public static IReadOnlyList<PlannedBulkhead> Plan(FramedRoom room, IReadOnlyList<BearingLine> rows, BulkheadRules rules) =>
        [.. room.Solids.Select(solid => Box(room, rows, rules, solid))];

    private static PlannedBulkhead Box(FramedRoom room, IReadOnlyList<BearingLine> rows, BulkheadRules rules, BulkheadSolid solid)
    {
        var loops = new BoxSides(room).Of(solid);
        var parts = new BoxParts(loops, solid.Wish.Frame.Face.Units);
        var corners = loops.Select((loop, l) => new BoxCorners(loop, parts.Backward(l))).ToList();
        var frame = new BoxFrame(room, solid, rules, new RailBacking(room, rows, rules));
        var boards = new BoxBoards(room, solid, rules);
        var trim = new BoxTrim(solid, boards);
        for (var l = 0; l < loops.Count; l++)
        {
            frame.Lay(loops[l], corners[l]);
            trim.Add(loops[l]);
        }

        foreach (var carrier in parts.Carriers(l => corners[l]))
        {
            frame.Lay(carrier);
        }

        var pieces = new List<PlannedBoard>();
        var joints = 0L;
        // a face too short for a ladder is boarded all the same
        foreach (var side in loops.SelectMany(l => l).Where(s => s.Boarded))
        {
            var (face, between) = boards.Faces(side, frame.Rungs.GetValueOrDefault(side) ?? []);
            pieces.AddRange(face);
            joints += between;
        }

        foreach (var part in parts.Parts(solid.Footprint))
        {
            var ties = frame.Ties(part);
            pieces.AddRange(boards.Undersides(part, ties));
        }

        return new PlannedBulkhead(
            solid,
            [.. loops.SelectMany(l => l).Where(s => s.Kind is SideKind.Step or SideKind.Rest).Select(s => s.Other).Distinct().Order()],
            frame.Members,
            pieces,
            trim.Beads,
            trim.InsideCorners,
            trim.Fireblocking,
            joints + boards.UndersideJoints(pieces));
    }
}
