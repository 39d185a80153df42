namespace LayoutService.Api.Plans.Answers;

/// <summary>What to order.</summary>
/// <param name="Lines">Line by line.</param>
/// <param name="Totals">The sums.</param>
public sealed record TakeoffAnswer(IReadOnlyList<TakeoffLineAnswer> Lines, TakeoffTotalsAnswer Totals);

/// <summary>One line of the order.</summary>
public sealed record TakeoffLineAnswer
{
    /// <summary>Stable code.</summary>
    public required string Code { get; init; }

    /// <summary>Description.</summary>
    public required string Description { get; init; }

    /// <summary>Id of the stock, where the line is for one.</summary>
    public string? Id { get; init; }

    /// <summary>Unit in words.</summary>
    public required string Unit { get; init; }

    /// <summary>UN/CEFACT Recommendation 20 code of the unit.</summary>
    public required string UnitCode { get; init; }

    /// <summary>What the layout needs.</summary>
    public required decimal Counted { get; init; }

    /// <summary>What a stated convention adds.</summary>
    public required decimal Waste { get; init; }

    /// <summary>What the packs bought hold.</summary>
    public required decimal Quantity { get; init; }

    /// <summary>The packs.</summary>
    public required IReadOnlyList<PackAnswer> Packs { get; init; }

    /// <summary>Amount of money; absent without a price.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Mass, lb or kg.</summary>
    public decimal? Mass { get; init; }

    /// <summary>What it was counted from.</summary>
    public required string CountedFrom { get; init; }
}

/// <summary>How many of one pack.</summary>
/// <param name="Id">The caller's id for the pack.</param>
/// <param name="Sku">The yard's number for it.</param>
/// <param name="PackSize">How much is in it.</param>
/// <param name="Count">How many.</param>
/// <param name="PackPrice">Price of one.</param>
public sealed record PackAnswer(string? Id, string? Sku, decimal PackSize, long Count, decimal? PackPrice);

/// <summary>The sums of an order.</summary>
/// <param name="Currency">ISO 4217 code; absent without prices.</param>
/// <param name="Amount">Sum of the amounts.</param>
/// <param name="Mass">Sum of the masses, lb or kg.</param>
/// <param name="Unpriced">Codes of the lines without a price.</param>
/// <param name="Taxes">The taxes; absent without any.</param>
/// <param name="WithTax">Amount and taxes; absent without any.</param>
public sealed record TakeoffTotalsAnswer(
    string? Currency, decimal? Amount, decimal Mass, IReadOnlyList<string> Unpriced, IReadOnlyList<TaxAnswer>? Taxes, decimal? WithTax);

/// <summary>One tax, rounded to the currency's minor unit.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Rate">Fraction of the base.</param>
/// <param name="Base">Sum of the amounts that it is charged on.</param>
/// <param name="Amount">The tax.</param>
public sealed record TaxAnswer(string Name, decimal Rate, decimal Base, decimal Amount);
