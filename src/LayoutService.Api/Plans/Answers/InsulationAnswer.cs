namespace LayoutService.Api.Plans.Answers;

/// <summary>The batts between the joists.</summary>
public sealed record InsulationAnswer
{
    internal static readonly InsulationAnswer None = new() { Purpose = "none", Fills = [], AreaR = 0, FramingFraction = 0, Area = 0, Uncovered = [] };

    /// <summary>What they are for: `sound`, `thermal` or `none`.</summary>
    public required string Purpose { get; init; }

    /// <summary>What the warm side of the floor decides about vapour and air barriers; absent when `room.above.heated` was not said.</summary>
    public SentenceAnswer? Barriers { get; init; }

    /// <summary>Strips of batts, bay by bay.</summary>
    public required IReadOnlyList<FillAnswer> Fills { get; init; }

    /// <summary>
    /// Resistance of the joist layer by parallel paths through batts, joists and bays left open, R or RSI. Board, floor and
    /// surface films are not in it.
    /// </summary>
    public required decimal AreaR { get; init; }

    /// <summary>Share of the area that is joists and wood between them, 0 to 1.</summary>
    public required decimal FramingFraction { get; init; }

    /// <summary>Area that was to be filled, joists included, ft² or m².</summary>
    public required decimal Area { get; init; }

    /// <summary>Parts of bays without a batt.</summary>
    public required IReadOnlyList<UncoveredAnswer> Uncovered { get; init; }
}

/// <summary>One strip of batts in one bay.</summary>
public sealed record FillAnswer
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>The bay, as in `joists.bays`.</summary>
    public required string Bay { get; init; }

    /// <summary>Its outline seen from above.</summary>
    public required IReadOnlyList<PointAnswer> Outline { get; init; }

    /// <summary>Its area, ft² or m².</summary>
    public required decimal Area { get; init; }

    /// <summary>Depth that is free for it, between `top` and `bottom`.</summary>
    public required decimal DepthAvailable { get; init; }

    /// <summary>The same as text.</summary>
    public required string DepthAvailableText { get; init; }

    /// <summary>Top of the free space, down from the underside of the joists; negative is up in the bay.</summary>
    public required decimal Top { get; init; }

    /// <summary>Bottom of the free space, down from the underside of the joists.</summary>
    public required decimal Bottom { get; init; }

    /// <summary>Thickness as it lies.</summary>
    public required decimal Thickness { get; init; }

    /// <summary>The same as text.</summary>
    public required string ThicknessText { get; init; }

    /// <summary>The batt that it is cut from.</summary>
    public required string Batt { get; init; }

    /// <summary>True when the batt is split to half its thickness.</summary>
    public required bool Split { get; init; }

    /// <summary>Width to cut: a little more than the bay's, so that it holds, and never more than the batt's.</summary>
    public required decimal Width { get; init; }

    /// <summary>The same as tape text, rounded down.</summary>
    public required string WidthText { get; init; }

    /// <summary>Length to fill, along the joists.</summary>
    public required decimal Length { get; init; }

    /// <summary>The same as tape text, rounded down.</summary>
    public required string LengthText { get; init; }

    /// <summary>Resistance as it lies, R or RSI.</summary>
    public required decimal R { get; init; }

    /// <summary>Mass, lb or kg.</summary>
    public required decimal Mass { get; init; }

    /// <summary>Mass over its area, lb/ft² or kg/m².</summary>
    public required decimal MassPerArea { get; init; }

    /// <summary>Why it lies so.</summary>
    public required IReadOnlyList<ReasonAnswer> Reasons { get; init; }
}

/// <summary>A part of a bay without a batt.</summary>
/// <param name="Bay">The bay, as in `joists.bays`.</param>
/// <param name="Outline">Its outline seen from above.</param>
/// <param name="Area">Its area, ft² or m².</param>
/// <param name="Reasons">Why there is none.</param>
public sealed record UncoveredAnswer(string Bay, IReadOnlyList<PointAnswer> Outline, decimal Area, IReadOnlyList<ReasonAnswer> Reasons);
