using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Insulation;

/// <summary>The batts as they will lie. Points are the caller's.</summary>
public sealed record InsulationPlan
{
    public required InsulationPurpose Purpose { get; init; }

    public required IReadOnlyList<BattFill> Fills { get; init; }

    /// <summary>What the warm side of the floor decides about vapour and air barriers; null when it was not said.</summary>
    public Sentence? Barriers { get; init; }

    public required IReadOnlyList<UncoveredPart> Uncovered { get; init; }

    /// <summary>Resistance of the joist layer by parallel paths, m²·K/W; board, floor and films are not in it.</summary>
    public required decimal AreaRsi { get; init; }

    /// <summary>Share of the area that is joists and wood between them, 0 to 1.</summary>
    public required decimal FramingFraction { get; init; }

    /// <summary>Area that was to be filled, joists included, m².</summary>
    public required double AreaSquareMetres { get; init; }

    /// <summary>Heaviest batt over its area, kg/m².</summary>
    public required decimal HeaviestKilogramsPerSquareMetre { get; init; }
}

/// <summary>One strip of batts in one bay.</summary>
public sealed record BattFill
{
    public required string Id { get; init; }

    /// <summary>Id of the bay.</summary>
    public required string Bay { get; init; }

    /// <summary>A simple ring without holes.</summary>
    public required IReadOnlyList<Point> Outline { get; init; }

    public required double AreaSquareMetres { get; init; }

    /// <summary>Depth of the space that it lies in, from <see cref="Top"/> to <see cref="Bottom"/>, down from the underside of the joists (negative is up in the bay).</summary>
    public required Length DepthAvailable { get; init; }

    public required Length Top { get; init; }

    public required Length Bottom { get; init; }

    /// <summary>Thickness as it lies.</summary>
    public required Length Thickness { get; init; }

    /// <summary>The batt that it is cut from.</summary>
    public required string BattId { get; init; }

    /// <summary>True when the batt is split to half its thickness.</summary>
    public required bool Split { get; init; }

    /// <summary>Width to cut: the bay's and what it is squeezed by; never more than the batt's.</summary>
    public required Length Width { get; init; }

    /// <summary>Length to fill, along the joists.</summary>
    public required Length Length { get; init; }

    /// <summary>m²·K/W as it lies.</summary>
    public required decimal Rsi { get; init; }

    public required decimal Kilograms { get; init; }

    public required decimal KilogramsPerSquareMetre { get; init; }

    public required IReadOnlyList<Reason> Reasons { get; init; }
}

/// <summary>A part of a bay without a batt, and why.</summary>
public sealed record UncoveredPart(string Bay, IReadOnlyList<Point> Outline, double AreaSquareMetres, IReadOnlyList<Reason> Reasons);
