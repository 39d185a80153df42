namespace LayoutService.Api.Plans.Answers;

/// <summary>The straps.</summary>
public sealed record StrappingAnswer
{
    /// <summary>`direct` where the board is screwed to the joists: there are no rows then. Absent on straps.</summary>
    public string? Method { get; init; }

    /// <summary>The rows.</summary>
    public required IReadOnlyList<RowAnswer> Rows { get; init; }

    /// <summary>Wood that is no row: ledgers, nailers and blocks.</summary>
    public required IReadOnlyList<NailerAnswer> Nailers { get; init; }

    /// <summary>The plane that the straps are packed to; absent when no underside was read.</summary>
    public StrapPlaneAnswer? Plane { get; init; }

    /// <summary>Packing between joist and strap; none when no underside was read, or all lie within the tolerance.</summary>
    public required IReadOnlyList<ShimAnswer> Shims { get; init; }

    /// <summary>Spacer blocks to cut.</summary>
    public required IReadOnlyList<SpacerAnswer> Spacers { get; init; }

    /// <summary>Each place where a strap is fastened.</summary>
    public required IReadOnlyList<CrossingAnswer> Crossings { get; init; }

    /// <summary>Short lengths laminated over joints.</summary>
    public required IReadOnlyList<ScabAnswer> Scabs { get; init; }

    /// <summary>How to fasten.</summary>
    public required IReadOnlyList<SentenceAnswer> Fastening { get; init; }

    /// <summary>Widest distance between neighbouring rows, on centre.</summary>
    public required decimal WidestSpacing { get; init; }

    /// <summary>The same as text.</summary>
    public required string WidestSpacingText { get; init; }

    /// <summary>The rows that show it.</summary>
    public required IReadOnlyList<string> WidestSpacingRows { get; init; }
}

/// <summary>One line of strapping.</summary>
public sealed record RowAnswer
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Its centre along the joists.</summary>
    public required decimal At { get; init; }

    /// <summary>The same as text.</summary>
    public required string AtText { get; init; }

    /// <summary>True when it does not cross the whole room at its place.</summary>
    public bool? Short { get; init; }

    /// <summary>Tape marks for both ends.</summary>
    public required IReadOnlyList<MarkAnswer> Marks { get; init; }

    /// <summary>On centre from the row before it; absent for the first.</summary>
    public decimal? SpacingBefore { get; init; }

    /// <summary>The same as text.</summary>
    public string? SpacingBeforeText { get; init; }

    /// <summary>Why it is there.</summary>
    public required IReadOnlyList<ReasonAnswer> Reasons { get; init; }

    /// <summary>Its pieces in order.</summary>
    public required IReadOnlyList<PieceAnswer> Pieces { get; init; }
}

/// <summary>A tape mark: the near edge of the strap.</summary>
public sealed record MarkAnswer
{
    /// <summary>Which end of the row.</summary>
    public required string End { get; init; }

    /// <summary>The end of the row.</summary>
    public required PointAnswer At { get; init; }

    /// <summary>From the outline's lowest coordinate along the joists to the near edge of the strap.</summary>
    public required decimal NearEdge { get; init; }

    /// <summary>The same as tape text, to the nearest sixteenth or millimetre.</summary>
    public required string NearEdgeText { get; init; }

    /// <summary>On which side of the mark the strap lies.</summary>
    public required string Side { get; init; }
}

/// <summary>One length of strap in a row.</summary>
public sealed record PieceAnswer
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Start of its centre line.</summary>
    public required PointAnswer From { get; init; }

    /// <summary>End of its centre line.</summary>
    public required PointAnswer To { get; init; }

    /// <summary>From start to end as drawn, wall to wall.</summary>
    public required decimal Length { get; init; }

    /// <summary>The same as text.</summary>
    public required string LengthText { get; init; }

    /// <summary>Length to cut: the drawn one less the end clearance at each wall, plus what a bevel adds.</summary>
    public required decimal CutLength { get; init; }

    /// <summary>The same as tape text, rounded down.</summary>
    public required string CutLengthText { get; init; }

    /// <summary>The stock it is cut from.</summary>
    public required string StockId { get; init; }

    /// <summary>What its start meets.</summary>
    public required string StartJoint { get; init; }

    /// <summary>What its end meets.</summary>
    public required string EndJoint { get; init; }

    /// <summary>Ends that are cut along an oblique wall.</summary>
    public BevelsAnswer? Bevel { get; init; }

    /// <summary>Where it stays loose until batts lie over it; absent for most pieces.</summary>
    public IReadOnlyList<FastenAfterAnswer>? FastenAfter { get; init; }
}

/// <summary>A crossing that is fastened only when the batts that slide over the strap lie in their bay.</summary>
/// <param name="SupportId">The joist.</param>
/// <param name="Of">The fills that come first.</param>
/// <param name="Code">Stable code of the reason.</param>
/// <param name="Text">The reason.</param>
public sealed record FastenAfterAnswer(string SupportId, IReadOnlyList<string> Of, string Code, string Text);

/// <summary>The bevels of a piece.</summary>
/// <param name="Start">At its start.</param>
/// <param name="End">At its end.</param>
public sealed record BevelsAnswer(BevelAnswer? Start, BevelAnswer? End);

/// <summary>An end cut along an oblique wall.</summary>
/// <param name="Degrees">Degrees off square.</param>
/// <param name="LongPoint">How far the long point stands past the centre line.</param>
/// <param name="LongPointText">The same as text.</param>
/// <param name="LongEdge">Which edge of the strap has the long point.</param>
public sealed record BevelAnswer(decimal Degrees, decimal LongPoint, string LongPointText, string LongEdge);

/// <summary>Wood that is no row.</summary>
public sealed record NailerAnswer
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>`ledger`, `wall-nailer`, `block`, `header` beside a hole that a row is trimmed round, or `sister` beside a joist that is too high to pack.</summary>
    public required string Role { get; init; }

    /// <summary>Start of its centre line.</summary>
    public required PointAnswer From { get; init; }

    /// <summary>End of its centre line.</summary>
    public required PointAnswer To { get; init; }

    /// <summary>Its length as drawn.</summary>
    public required decimal Length { get; init; }

    /// <summary>The same as text.</summary>
    public required string LengthText { get; init; }

    /// <summary>Length to cut.</summary>
    public required decimal CutLength { get; init; }

    /// <summary>The same as tape text, rounded down.</summary>
    public required string CutLengthText { get; init; }

    /// <summary>The stock it is cut from.</summary>
    public required string StockId { get; init; }

    /// <summary>Why it is there.</summary>
    public required IReadOnlyList<ReasonAnswer> Reasons { get; init; }
}

/// <summary>Packing between a joist and a strap.</summary>
/// <param name="RowId">The row.</param>
/// <param name="SupportId">The joist.</param>
/// <param name="At">The place.</param>
/// <param name="Gap">From the plane up to the joist, as read.</param>
/// <param name="Thickness">How thick: the gap to the nearest sixteenth or millimetre.</param>
/// <param name="ThicknessText">The same as tape text.</param>
/// <param name="Count">How many pieces: one, or one under each of two strap ends that meet there.</param>
public sealed record ShimAnswer(string RowId, string SupportId, PointAnswer At, decimal Gap, decimal Thickness, string ThicknessText, int Count);

/// <summary>The level plane of the straps' upper side: it touches the lowest crossing.</summary>
/// <param name="Level">Its level, as the readings count.</param>
/// <param name="RowId">The row of the lowest crossing.</param>
/// <param name="SupportId">The joist of the lowest crossing.</param>
/// <param name="At">The place of the lowest crossing.</param>
/// <param name="StepFound">Greatest step between neighbouring crossings as found.</param>
/// <param name="StepLeft">The same when all is packed.</param>
/// <param name="StepRows">The rows that show the greatest step as found.</param>
/// <param name="Estimated">Crossings under joists that were not read themselves.</param>
public sealed record StrapPlaneAnswer(
    decimal Level, string RowId, string SupportId, PointAnswer At, decimal StepFound, decimal StepLeft, IReadOnlyList<string> StepRows, int Estimated);

/// <summary>A loose block cut to the clear gap between two straps.</summary>
/// <param name="Length">The gap.</param>
/// <param name="LengthText">The same as tape text.</param>
/// <param name="Between">The rows it serves.</param>
public sealed record SpacerAnswer(decimal Length, string LengthText, IReadOnlyList<string> Between);

/// <summary>One strap on one support.</summary>
/// <param name="RowId">The row.</param>
/// <param name="SupportId">The joist, ledger or nailer.</param>
/// <param name="At">The place.</param>
/// <param name="Kind">`plain`, or `joint` where two strap ends meet.</param>
/// <param name="Fasteners">How many fasteners.</param>
public sealed record CrossingAnswer(string RowId, string SupportId, PointAnswer At, string Kind, int Fasteners);

/// <summary>A short length laminated over a joint between joists.</summary>
/// <param name="Id">Its id.</param>
/// <param name="RowId">The row.</param>
/// <param name="At">Its middle.</param>
/// <param name="Length">Its length.</param>
/// <param name="LengthText">The same as tape text.</param>
/// <param name="StockId">The stock it is cut from.</param>
public sealed record ScabAnswer(string Id, string RowId, PointAnswer At, decimal Length, string LengthText, string StockId);
