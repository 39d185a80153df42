using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Takeoff;

/// <summary>What to order, line by line, and the sums.</summary>
public sealed record TakeoffPlan(IReadOnlyList<TakeoffLine> Lines, TakeoffTotals Totals);

/// <summary>
/// One line of the order. <see cref="Counted"/> is what the layout needs, <see cref="Waste"/> what a stated convention adds,
/// <see cref="Quantity"/> what the packs bought hold. <see cref="MassKilograms"/> is of the quantity bought.
/// </summary>
public sealed record TakeoffLine(
    string Code,
    string Description,
    string? Id,
    string Unit,
    string UnitCode,
    decimal Counted,
    decimal Waste,
    decimal Quantity,
    IReadOnlyList<PackCount> Packs,
    decimal? Amount,
    decimal? MassKilograms,
    string CountedFrom);

public sealed record PackCount(string? Id, string? Sku, decimal PackSize, long Count, decimal? PackPrice);

public sealed record TakeoffTotals(string? Currency, decimal? Amount, decimal MassKilograms, IReadOnlyList<string> Unpriced);
