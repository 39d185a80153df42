using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Takeoff;

/// <summary>The caller's prices as the counter asks for them.</summary>
internal sealed class PriceBook(PriceList? list)
{
    public string? Currency => list?.Currency;

    /// <summary>
    /// Packs on sale for a line. Items that name the line's id come before all others. An item that names no line serves every
    /// line of its code: its id is the pack's own.
    /// </summary>
    public IReadOnlyList<Pack> Packs(string code, string? id)
    {
        if (list is null)
        {
            return [];
        }

        var named = new List<Pack>();
        var open = new List<Pack>();
        foreach (var item in list.Items)
        {
            if (item.Code == code && (item.Id == id || !NamesLine(item)))
            {
                (item.Id == id && id is not null ? named : open).Add(new Pack(item.Id, item.Sku, item.PackSize, item.PackPrice));
            }
        }

        return named.Count > 0 ? named : open;
    }

    /// <summary>True when an item's id is that of a stock, or of a length of screw, and so of one line alone.</summary>
    private static bool NamesLine(PricedItem item) => item.Id is { } id
        && (item.Code is TakeoffCodes.Strap or TakeoffCodes.Nailer or TakeoffCodes.Sheet or TakeoffCodes.Batt || ScrewLengths.IsName(id));

    /// <summary>Packs of a stock: its own price first, then the list, then its own pack size without a price.</summary>
    public IReadOnlyList<Pack> StockPacks(string code, string id, string? sku, int packSize, decimal? packPrice)
    {
        var own = new Pack(id, sku, packSize, packPrice);
        if (packPrice is not null)
        {
            return [own];
        }

        var listed = Packs(code, id);
        return listed.Count > 0 ? listed
            : packSize > 1 || sku is not null ? [own]
            : [];
    }

    public decimal Waste(string wasteClass, decimal usual) =>
        list is not null && list.Waste.TryGetValue(wasteClass, out var said) ? said : usual;
}
