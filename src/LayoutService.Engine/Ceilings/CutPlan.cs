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

/// <param name="PieceId">The board piece.</param>
/// <param name="X">Along the sheet.</param>
/// <param name="Y">Across the sheet.</param>
/// <param name="Width">Across the sheet.</param>
/// <param name="Length">Along the sheet.</param>
/// <param name="Turned">It lies with its length across the sheet.</param>
/// <param name="FactoryEdges">How many of its long edges must be the factory's.</param>
public sealed record SheetCut(string PieceId, Length X, Length Y, Length Width, Length Length, bool Turned, int FactoryEdges = 0);

public sealed record SheetOffcut(Length X, Length Y, Length Width, Length Length);

/// <summary>
/// How good a cut plan is: its cost and a bound that no plan for the same use can go below. <see cref="Objective"/> is
/// <c>cost</c> when every stock has a price, else <c>length</c> or <c>area</c>.
/// </summary>
public sealed record CutResult(string Use, string Objective, decimal Cost, decimal LowerBound, decimal Gap, bool ProvedOptimal, string Unit);
