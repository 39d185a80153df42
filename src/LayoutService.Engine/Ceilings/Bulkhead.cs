using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>
/// A box below the ceiling that is wanted: along edges of the outline with a width, round services, or by an outline; one
/// of the three.
/// </summary>
public sealed record BulkheadWish
{
    public required string Id { get; init; }

    /// <summary>Edges of the room's outline; empty when it does not run along walls.</summary>
    public IReadOnlyList<int> Edges { get; init; } = [];

    /// <summary>Ids of the services that it is sized from; empty when it is not.</summary>
    public IReadOnlyList<string> Hides { get; init; } = [];

    /// <summary>An open ring, finished faces; null when it has none of its own.</summary>
    public IReadOnlyList<Point>? Outline { get; init; }

    /// <summary>Finished width from the outline of the room; given with edges only.</summary>
    public Length? Width { get; init; }

    /// <summary>From the finished ceiling down to the finished underside; null when it follows from what is hidden.</summary>
    public Length? Drop { get; init; }

    public required FrameWish Frame { get; init; }

    /// <summary>True when the ceiling is boarded first and the bulkhead hangs below the board.</summary>
    public bool BoardedAbove { get; init; }
}

/// <summary>The wood of a bulkhead's frame. Rails, ledgers and ties lie flat: thickness up, face across.</summary>
public sealed record FrameWish(string Size, Length Thickness, Length Face, IReadOnlyList<StickStock> Stock);

/// <summary>
/// A bulkhead as it takes room from the ceiling, in the working frame; heights run down from the underside of the joists.
/// Where two overlap the deeper has the overlap, so footprints never do.
/// </summary>
public sealed record BulkheadSolid
{
    public required int Index { get; init; }

    public required BulkheadWish Wish { get; init; }

    public required Footprint Footprint { get; init; }

    /// <summary>From the finished ceiling to the finished underside.</summary>
    public required long Drop { get; init; }

    /// <summary>Top of the frame: at the joists or an old ceiling that stays, or at the finished ceiling when it is boarded above.</summary>
    public required long Top { get; init; }

    /// <summary>Bottom of the frame.</summary>
    public required long FrameBottom { get; init; }

    /// <summary>Finished underside.</summary>
    public required long Underside { get; init; }

    /// <summary>Thickness of the one layer of board on faces and underside.</summary>
    public required long Board { get; init; }

    /// <summary>Thickness of all the board of the ceiling beside it.</summary>
    public required long CeilingBoard { get; init; }

    public string Id => Wish.Id;

    /// <summary>A service in it must end above this: the top of the ties.</summary>
    public long ClearTo => FrameBottom - Wish.Frame.Thickness.Units;

    /// <summary>What frame and board take of the footprint at a face.</summary>
    public long FaceDepth => Board + Wish.Frame.Face.Units;
}
