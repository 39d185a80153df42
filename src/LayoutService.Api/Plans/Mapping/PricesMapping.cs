using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.Plans.Mapping;

internal static class PricesMapping
{
    /// <summary>The price list; null when there is neither a currency nor waste, and so no price anywhere.</summary>
    public static PriceList? Of(PricesRequest? prices)
    {
        var waste = WasteOf(prices?.Waste);
        if (prices?.Currency is null && waste.Count == 0 && prices?.Culls is null)
        {
            return null;
        }

        return new PriceList
        {
            Currency = prices!.Currency ?? "",
            Items = [.. (prices.Items ?? []).Select(i => new PricedItem(i.Code!, i.Id, i.Sku, i.PackSize ?? 1, i.PackPrice!.Value))],
            Waste = waste,
            OneByCulls = prices.Culls?.Boards,
            TwoByCulls = prices.Culls?.Dimension,
            Taxes = [.. (prices.Tax ?? []).Select(t => new TaxRate(t.Name!, t.Rate!.Value, t.OnLabour ?? true))],
            Labour = LabourOf(prices.Labour),
        };
    }

    private static LabourRates? LabourOf(LabourRequest? labour) => labour is null
        ? null
        : new(labour.HourPrice!.Value, labour.PerStrapPiece, labour.PerBoardPiece, labour.PerJointLength);

    private static Dictionary<string, decimal> WasteOf(WasteRequest? waste)
    {
        var said = new Dictionary<string, decimal>(StringComparer.Ordinal);
        Add("fasteners", waste?.Fasteners);
        Add("tape", waste?.Tape);
        Add("compound", waste?.Compound);
        Add("adhesive", waste?.Adhesive);
        return said;

        void Add(string name, decimal? fraction)
        {
            if (fraction is { } given)
            {
                said.Add(name, given);
            }
        }
    }
}
