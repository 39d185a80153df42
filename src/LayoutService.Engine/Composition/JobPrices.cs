using System.Globalization;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>What a price list says of buying, as one text: rooms with the same text buy together.</summary>
internal static class JobPrices
{
    public static string Key(PriceList? prices) => prices is null
        ? string.Empty
        : string.Create(CultureInfo.InvariantCulture, $"{prices.Currency}\n{prices.OneByCulls}\n{prices.TwoByCulls}\n")
            + string.Join('\n', prices.Items.Select(i => string.Create(CultureInfo.InvariantCulture, $"{i.Code}|{i.Id}|{i.Sku}|{i.PackSize}|{i.PackPrice}")));
}
