using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

public enum OpeningKind
{
    Post,
    Chimney,
    Stair,
    Other,

    /// <summary>Open to the floor above, without a stair.</summary>
    Well,
}

/// <summary>A hole in the ceiling: a post, chimney or stair that the sheets go round.</summary>
public sealed record Opening(string Id, OpeningKind Kind, IReadOnlyList<Point> Outline, Length Clearance)
{
    /// <summary>Of a stair: plumb from the finished nosings up to the underside of the joists where its well begins; null when not said.</summary>
    public Length? Headroom { get; init; }

    /// <summary>True for a hole whose edge shows from below: the board is trimmed and beaded round it.</summary>
    public bool IsWell => Kind is OpeningKind.Stair or OpeningKind.Well;
}
