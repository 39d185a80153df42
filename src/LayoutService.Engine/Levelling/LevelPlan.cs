using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Levelling;

/// <summary>
/// One strap under one joist: the row's number, the joist's index, the place, the level of the underside there, whether the
/// joist was read itself, and whether two strap ends meet there.
/// </summary>
public readonly record struct LevelCrossing(int Row, int Run, int Joist, Uv At, long Level, bool Measured, bool Joint);

/// <summary>A crossing with packing: the gap down to the plane, and the packing that fills it in whole steps.</summary>
public readonly record struct PackedCrossing(LevelCrossing Crossing, long Gap, long Thickness);

/// <summary>
/// A joist too high to pack, over the stretch along it where that is so: wood beside it brings its lower edge to the plane. On
/// both sides where two strap ends meet under it. <see cref="Gap"/> is the greatest.
/// </summary>
public sealed record SisteredJoist(int Joist, Span Along, IReadOnlyList<int> Rows, bool BothSides, long Gap);

/// <summary>The plane that the straps are brought to, and what brings them there.</summary>
public sealed record LevelPlan
{
    /// <summary>The lowest crossing; the plane is level and touches it, unless it was given.</summary>
    public required LevelCrossing Lowest { get; init; }

    public required long Plane { get; init; }

    /// <summary>The greatest step between neighbouring crossings as found, and the rows that show it, or the greatest that is left where that is above the limit.</summary>
    public required long StepFound { get; init; }

    public required IReadOnlyList<int> StepRows { get; init; }

    /// <summary>The greatest step that is left when all is packed.</summary>
    public required long StepLeft { get; init; }

    public required IReadOnlyList<PackedCrossing> Packed { get; init; }

    public required IReadOnlyList<SisteredJoist> Sistered { get; init; }

    /// <summary>Crossings whose joist was not read itself.</summary>
    public required int Estimated { get; init; }
}
