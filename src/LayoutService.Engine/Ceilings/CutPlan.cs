using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>Which piece is cut from which stick and sheet.</summary>
public sealed record CutPlan(
    IReadOnlyList<Stick> Sticks,
    IReadOnlyList<CutSheet> Sheets,
    Length Kerf,
    Length EndTrim,
    IReadOnlyList<CutResult> Results);

/// <summary>One bought length and what is cut from it, in order; one kerf after each piece that does not end at the stock's end.</summary>
public sealed record Stick(string Id, string Size, Length Length, string StockId, IReadOnlyList<StickCut> Cuts, Length Offcut);

public sealed record StickCut(string PieceId, Length Length);

/// <summary>One bought sheet and the guillotine cuts made of it. x runs along the sheet's length, y across its width.</summary>
public sealed record CutSheet(
    string Id, Length Width, Length Length, string StockId, IReadOnlyList<SheetCut> Cuts, IReadOnlyList<SheetOffcut> Offcuts);

public sealed record SheetCut(string PieceId, Length X, Length Y, Length Width, Length Length, bool Turned);

public sealed record SheetOffcut(Length X, Length Y, Length Width, Length Length);

/// <summary>
/// How good a cut plan is: its cost and a bound that no plan for the same use can go below. <see cref="Objective"/> is
/// <c>cost</c> when every stock has a price, else <c>length</c> or <c>area</c>.
/// </summary>
public sealed record CutResult(string Use, string Objective, decimal Cost, decimal LowerBound, decimal Gap, bool ProvedOptimal, string Unit);
