using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Takeoff;

/// <summary>
/// Taxes on an order. Each is worked out once, on the sum of the amounts, and rounded to the currency's minor unit; never on
/// another tax, and never line by line, so that the order does not depend on how it is divided.
/// </summary>
internal static class SalesTax
{
    public static TakeoffTotals On(IReadOnlyList<TakeoffLine> lines, TakeoffTotals totals, IReadOnlyList<TaxRate> rates)
    {
        if (rates.Count == 0 || totals.Amount is not { } amount || totals.Currency is not { } currency)
        {
            return totals;
        }

        var labour = lines.Where(line => TakeoffCodes.IsLabour(line.Code)).Sum(line => line.Amount ?? 0m);
        var taxes = rates
            .Select(rate => (Rate: rate, Base: rate.OnLabour ? amount : amount - labour))
            .Select(tax => new TaxAmount(tax.Rate.Name, tax.Rate.Rate, tax.Base, MinorUnits.Round(tax.Base * tax.Rate.Rate, currency)))
            .ToList();
        return totals with { Taxes = taxes, WithTax = amount + taxes.Sum(tax => tax.Amount) };
    }
}
