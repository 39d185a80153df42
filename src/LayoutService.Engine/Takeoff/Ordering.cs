using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Takeoff;

/// <summary>Turns what is needed into what is bought: waste added, packs chosen, amount and mass worked out.</summary>
internal static class Ordering
{
    /// <summary>One kilogram to the gram; masses on lines are rounded to it and the total is their sum.</summary>
    private const int MassPlaces = 3;

    public static TakeoffLine Order(Need need, string? currency)
    {
        var waste = decimal.Round(need.Counted * need.WasteFraction, 6);
        var wanted = RoundUp(need.Counted + waste, need.Measure.Whole ? 0 : 2);
        var counts = PackCover.Cheapest(wanted, need.Packs);
        var bought = new List<PackCount>();
        var quantity = need.Packs.Count == 0 ? wanted : 0m;
        decimal? price = need.Packs.Count == 0 ? null : 0m;
        for (var i = 0; i < counts.Length; i++)
        {
            var pack = need.Packs[i];
            price += counts[i] * pack.Price;
            quantity += counts[i] * pack.Size;
            if (counts[i] > 0)
            {
                bought.Add(new PackCount(pack.Id, pack.Sku, pack.Size, counts[i], pack.Price));
            }
        }

        return new TakeoffLine(
            need.Code,
            need.Description,
            need.Id,
            need.Measure.Unit,
            need.Measure.UnitCode,
            need.Counted,
            waste,
            quantity,
            [.. bought.OrderByDescending(pack => pack.PackSize)],
            currency is null || price is null ? null : MinorUnits.Round(price.Value, currency),
            need.KilogramsEach is null ? null : decimal.Round(need.KilogramsEach.Value * quantity, MassPlaces),
            need.CountedFrom)
        {
            Need = need,
        };
    }

    /// <summary>Sums of lines: the order of the unpriced codes is that of the lines, each once.</summary>
    public static TakeoffTotals Total(IReadOnlyList<TakeoffLine> lines, string? currency, IReadOnlyList<TaxRate>? taxes = null)
    {
        decimal? amount = null;
        var mass = 0m;
        var unpriced = new List<string>();
        foreach (var line in lines)
        {
            mass += line.MassKilograms ?? 0m;
            if (line.Amount is { } part)
            {
                amount = (amount ?? 0m) + part;
            }
            else if (!unpriced.Contains(line.Code))
            {
                unpriced.Add(line.Code);
            }
        }

        return SalesTax.On(lines, new TakeoffTotals(currency, amount, mass, unpriced), taxes ?? []);
    }

    private static decimal RoundUp(decimal value, int places) => places == 0
        ? decimal.Ceiling(value)
        : decimal.Ceiling(value * 100m) / 100m;
}
