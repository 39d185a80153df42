namespace LayoutService.Engine.Ceilings;

/// <summary>What stands at an edge of the ceiling, by where it comes from (see <see cref="Geometry.WallEdge.Source"/>).</summary>
public static class RoomEdges
{
    /// <summary>The ids of the wall at an edge, and of what goes on in line with it where this is a part of a room.</summary>
    public static IEnumerable<string> WallIds(this FramedRoom room, int source) => room.InLine(source).Select(room.EdgeId);

    /// <summary>An edge of the outline, and where this is a part of a room those that go on in line with it.</summary>
    public static IEnumerable<int> InLine(this FramedRoom room, int source) => room.Survey.Part is { } part ? part.InLine(source, room.Outline) : [source];

    /// <summary>The id of an edge of the outline.</summary>
    public static string EdgeId(this FramedRoom room, int edge) => room.Survey.Part is { } part ? part.EdgeIds[edge] : $"W{edge + 1}";

    /// <summary>True where the joists change direction at an edge, or at one in line with it.</summary>
    public static bool OnLine(this FramedRoom room, int source) =>
        source >= 0 && room.Survey.Part is { } part && part.InLine(source, room.Outline).Any(part.OnLine.Contains);

    /// <summary>The bulkhead whose edge this is, or null when it is a wall's or an opening's.</summary>
    public static BulkheadSolid? BulkheadAt(this FramedRoom room, int source) =>
        source < -room.OpeningRings.Count && -source - 1 - room.OpeningRings.Count < room.Solids.Count ? room.Solids[-source - 1 - room.OpeningRings.Count] : null;

    /// <summary>The partition whose edge this is, or null when it is another's.</summary>
    public static FramedPartition? PartitionAt(this FramedRoom room, int source) => source < -room.OpeningRings.Count - room.Solids.Count
        ? room.Partitions.Where(p => p.StopsBoard).OrderByDescending(p => p.Stands).ElementAt(-source - 1 - room.OpeningRings.Count - room.Solids.Count)
        : null;

    /// <summary>True for the edge of a stair or well.</summary>
    public static bool IsWell(this FramedRoom room, int source) => room.IsOpening(source) && room.Survey.Room.Openings[-source - 1].IsWell;

    /// <summary>True for an edge of the outline without a wall, or one that such an edge goes on from in line.</summary>
    public static bool IsOpenEdge(this FramedRoom room, int source) =>
        source >= 0 && room.Survey.Room.Walls.Count > 0 && room.InLine(source).Any(e => room.IsOf(e, WallKind.Open));

    /// <summary>True for an edge that shows and is beaded: of a stair or well, or one without a wall.</summary>
    public static bool Shows(this FramedRoom room, int source) => room.IsWell(source) || room.IsOpenEdge(source);

    /// <summary>True where no wall stands that a ledger or a nailer could be fastened to.</summary>
    public static bool HoldsNothing(this FramedRoom room, int source) =>
        room.IsOpenEdge(source) || room.IsOf(source, WallKind.Later);

    /// <summary>True for an edge of the outline at which a wall of this kind stands.</summary>
    public static bool IsOf(this FramedRoom room, int edge, WallKind kind) => room.Survey.Room.Walls.TryGetValue(edge, out var stands) && stands == kind;

    /// <summary>True for the edge of an opening.</summary>
    public static bool IsOpening(this FramedRoom room, int source) => source < 0 && source >= -room.OpeningRings.Count;
}
