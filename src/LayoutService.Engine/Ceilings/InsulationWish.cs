using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>What the batts are for; decides what is said about them, not how they are laid.</summary>
public enum InsulationPurpose
{
    Sound,
    Thermal,
}

/// <summary>Batts between the joists. A survey without one wants none.</summary>
public sealed record InsulationWish
{
    public required InsulationPurpose Purpose { get; init; }

    /// <summary>At least one.</summary>
    public required IReadOnlyList<Batt> Batts { get; init; }

    /// <summary>The part of the room that is filled, an open ring; null for all of it.</summary>
    public IReadOnlyList<Point>? Region { get; init; }

    /// <summary>Depth of the joists of each field: their own, or what is assumed where that was not measured.</summary>
    public required IReadOnlyList<Length> JoistDepths { get; init; }
}

/// <summary>
/// A batt that can be bought. <see cref="Thickness"/> is before it is squeezed; <see cref="Rsi"/> is its resistance at that
/// thickness, m²·K/W. A splittable batt can be split to half its thickness.
/// </summary>
public sealed record Batt(
    string Id, Length Thickness, Length Width, Length Length, decimal Rsi, bool Splittable, int PackSize = 1, decimal? PackPrice = null);
