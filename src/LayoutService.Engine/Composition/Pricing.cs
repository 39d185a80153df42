using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Gives stock without its own price the price that the list has for it (codes <c>strap</c> and <c>sheet</c>, by id), so
/// that every stage weighs the same prices. A price on the stock itself wins.
/// </summary>
public static class Pricing
{
    public static Survey WithListPrices(Survey survey)
    {
        if (survey.Prices is not { } list)
        {
            return survey;
        }

        return survey with
        {
            Strapping = survey.Strapping with
            {
                Stock = [.. survey.Strapping.Stock.Select(s => s.PackPrice is not null || Find(list, "strap", s.Id) is not { } item
                    ? s
                    : s with { Sku = s.Sku ?? item.Sku, PackSize = (int)item.PackSize, PackPrice = item.PackPrice })],
            },
            Sheets = survey.Sheets with
            {
                Stock = [.. survey.Sheets.Stock.Select(s => s.PackPrice is not null || Find(list, "sheet", s.Id) is not { } item
                    ? s
                    : s with { Sku = s.Sku ?? item.Sku, PackSize = (int)item.PackSize, PackPrice = item.PackPrice })],
            },
        };
    }

    // several packs of one stock: the cheapest by the piece guides the plan; the order covers with all of them
    private static PricedItem? Find(PriceList list, string code, string id)
    {
        var items = list.Items.Where(i => i.Code == code && i.Id == id && i.PackSize >= 1 && i.PackSize == decimal.Truncate(i.PackSize)).ToList();
        return items.Count == 1 ? items[0] : null;
    }
}
