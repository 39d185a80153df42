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
    string CountedFrom)
{
    /// <summary>What the line was ordered from, so that lines of several rooms can be ordered as one; null for labour.</summary>
    internal Need? Need { get; init; }
}

public sealed record PackCount(string? Id, string? Sku, decimal PackSize, long Count, decimal? PackPrice);

/// <summary>
/// Sums of the lines. <see cref="Taxes"/> are worked out on the sum, each rounded to the minor unit; <see cref="WithTax"/> is
/// null when there is no tax or no amount.
/// </summary>
public sealed record TakeoffTotals(string? Currency, decimal? Amount, decimal MassKilograms, IReadOnlyList<string> Unpriced)
{
    public IReadOnlyList<TaxAmount> Taxes { get; init; } = [];

    public decimal? WithTax { get; init; }
}

/// <summary>One tax: <paramref name="Rate"/> of <paramref name="Base"/>.</summary>
public sealed record TaxAmount(string Name, decimal Rate, decimal Base, decimal Amount);
