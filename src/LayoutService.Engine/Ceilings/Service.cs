using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

public enum ServiceKind
{
    Duct,
    PannedReturn,
    Pipe,
    Drain,
    Beam,
    Cable,
    Box,
    Valve,
    GasValve,
    Damper,
    Cleanout,
    Other,
}

/// <summary>
/// Something that runs or sits between or under the joists: seen from above a path with a width, or an outline; in height
/// from <see cref="Top"/> to <see cref="Bottom"/>, both measured down from the underside of the joists (negative is up in
/// the bay).
/// </summary>
public sealed record Service
{
    public required string Id { get; init; }

    public required ServiceKind Kind { get; init; }

    /// <summary>Corners of the centre line, two at least; null when an outline was given.</summary>
    public IReadOnlyList<Point>? Path { get; init; }

    /// <summary>Square to the path; null when an outline was given.</summary>
    public Length? Width { get; init; }

    /// <summary>An open ring; null when a path was given.</summary>
    public IReadOnlyList<Point>? Outline { get; init; }

    public required Length Top { get; init; }

    public required Length Bottom { get; init; }

    /// <summary>Distance that wood, board and batts keep from it, on every side.</summary>
    public required Length Clearance { get; init; }

    /// <summary>True when it gets hot.</summary>
    public required bool Hot { get; init; }

    /// <summary>True when someone must be able to reach it after the ceiling is closed.</summary>
    public required bool NeedsReach { get; init; }

    /// <summary>
    /// The rings that it covers, seen from above and grown by <paramref name="grow"/> across the path: its outline as given
    /// (not grown), or one four-cornered ring for each leg of the path, which at a bend reach half the width past the corner,
    /// so that no wedge is left open.
    /// </summary>
    public IReadOnlyList<IReadOnlyList<Point>> Rings(Length grow = default) =>
        Outline is not null ? [Outline] : PathStrips.Of(Path!, new Length((Width!.Value.Units / 2) + grow.Units));

    /// <summary>What it covers, seen from above, in the working frame.</summary>
    public Footprint In(PlanFrame frame) => Footprint.Of(Rings().Select(ring => (IReadOnlyList<Uv>)[.. ring.Select(frame.In)]));
}
