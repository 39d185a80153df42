using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>What a short strap behind a butt weighs against sheets.</summary>
public static class StrapWeight
{
    /// <summary>In the objective's units: a fortieth of the cheapest sheet.</summary>
    public static long Of(Survey survey, StockPrices prices) => survey.Sheets.Stock.Min(prices.Cost) / 40;
}
