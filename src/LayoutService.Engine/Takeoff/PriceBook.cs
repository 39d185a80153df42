using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Takeoff;

/// <summary>The caller's prices as the counter asks for them.</summary>
internal sealed class PriceBook(PriceList? list)
{
    public string? Currency => list?.Currency;

    /// <summary>
    /// Packs on sale for a line. Items that name the line's id come before all others; an item without an id serves every
    /// line of its code.
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
            if (item.Code == code && (item.Id is null || item.Id == id))
            {
                (item.Id is null ? open : named).Add(new Pack(item.Id, item.Sku, item.PackSize, item.PackPrice));
            }
        }

        return named.Count > 0 ? named : open;
    }

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
