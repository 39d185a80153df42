namespace LayoutService.Api.Plans.Answers;

/// <summary>Which piece is cut from which length and sheet.</summary>
public sealed record CutPlanAnswer
{
    /// <summary>The lengths bought and the cuts made of each.</summary>
    public required IReadOnlyList<StickAnswer> Stock { get; init; }

    /// <summary>The sheets bought and the cuts made of each.</summary>
    public required IReadOnlyList<CutSheetAnswer> SheetStock { get; init; }

    /// <summary>Wood lost by one saw cut; one after each piece that does not end at the stock's end.</summary>
    public required decimal Kerf { get; init; }

    /// <summary>Wood cut off one end of each length.</summary>
    public required decimal EndTrim { get; init; }

    /// <summary>How good the plan is, for each use.</summary>
    public required IReadOnlyList<CutResultAnswer> Results { get; init; }
}

/// <summary>One length bought.</summary>
public sealed record StickAnswer
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Its size; a cut plan without a ceiling has it when the request names it.</summary>
    public required string? Size { get; init; }

    /// <summary>Its length.</summary>
    public required decimal Length { get; init; }

    /// <summary>The same as text.</summary>
    public required string LengthText { get; init; }

    /// <summary>The stock it is.</summary>
    public required string StockId { get; init; }

    /// <summary>The cuts in order.</summary>
    public required IReadOnlyList<CutAnswer> Cuts { get; init; }

    /// <summary>What is left over.</summary>
    public required decimal Offcut { get; init; }

    /// <summary>The same as text.</summary>
    public required string OffcutText { get; init; }
}

/// <summary>One cut of a length.</summary>
/// <param name="PieceId">The piece.</param>
/// <param name="Length">Length to cut.</param>
/// <param name="LengthText">The same as tape text, rounded down.</param>
public sealed record CutAnswer(string PieceId, decimal Length, string LengthText);

/// <summary>One sheet bought. x runs along its length, y across its width.</summary>
public sealed record CutSheetAnswer
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Its width.</summary>
    public required decimal Width { get; init; }

    /// <summary>Its length.</summary>
    public required decimal Length { get; init; }

    /// <summary>The stock it is.</summary>
    public required string StockId { get; init; }

    /// <summary>The cuts in guillotine order.</summary>
    public required IReadOnlyList<SheetCutAnswer> Cuts { get; init; }

    /// <summary>What is left over.</summary>
    public required IReadOnlyList<OffcutAnswer> Offcuts { get; init; }
}

/// <summary>One part of a sheet.</summary>
public sealed record SheetCutAnswer
{
    /// <summary>The board piece.</summary>
    public required string PieceId { get; init; }

    /// <summary>Along the sheet.</summary>
    public required decimal X { get; init; }

    /// <summary>Across the sheet.</summary>
    public required decimal Y { get; init; }

    /// <summary>Across the sheet.</summary>
    public required decimal Width { get; init; }

    /// <summary>Along the sheet.</summary>
    public required decimal Length { get; init; }

    /// <summary>Width as tape text, rounded down.</summary>
    public required string WidthText { get; init; }

    /// <summary>Length as tape text, rounded down.</summary>
    public required string LengthText { get; init; }

    /// <summary>True when the piece hangs the other way round.</summary>
    public required bool Turned { get; init; }
}

/// <summary>A part of a sheet that is left over.</summary>
/// <param name="X">Along the sheet.</param>
/// <param name="Y">Across the sheet.</param>
/// <param name="Width">Across the sheet.</param>
/// <param name="Length">Along the sheet.</param>
public sealed record OffcutAnswer(decimal X, decimal Y, decimal Width, decimal Length);

/// <summary>How good a cut plan is.</summary>
/// <param name="Use">What it is for.</param>
/// <param name="Objective">What was made least: `cost`, `length` or `area`.</param>
/// <param name="Cost">What the plan has of it.</param>
/// <param name="LowerBound">What no plan can go below.</param>
/// <param name="Gap">(cost − bound) / bound.</param>
/// <param name="ProvedOptimal">True when no plan can be better.</param>
/// <param name="Unit">Unit of cost and bound.</param>
public sealed record CutResultAnswer(
    string Use, string Objective, decimal Cost, decimal LowerBound, decimal Gap, bool ProvedOptimal, string Unit);
