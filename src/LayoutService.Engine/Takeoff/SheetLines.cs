using System.Globalization;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Takeoff;

/// <summary>Whole sheets by stock, counted as sheets of the cut plan; longest first, then widest.</summary>
internal static class SheetLines
{
    public static IEnumerable<TakeoffLine> Count(TakeoffFacts facts, PriceBook prices) =>
        facts.CutPlan.Sheets
            .GroupBy(sheet => sheet.StockId)
            .Select(stock => stock.ToList())
            .OrderByDescending(stock => stock[0].Length)
            .ThenByDescending(stock => stock[0].Width)
            .Select(stock => Ordering.Order(Whole(facts, prices, stock), prices.Currency))
            .ToList();

    private static Need Whole(TakeoffFacts facts, PriceBook prices, List<CutSheet> sheets)
    {
        var first = sheets[0];
        var wish = facts.SheetWish;
        var stock = wish.Stock.FirstOrDefault(known => known.Id == first.StockId);
        return new Need
        {
            Code = TakeoffCodes.Sheet,
            Description = $"Gypsum board, {wish.Type}, {facts.TapeText(wish.Thickness)}, "
                + $"{facts.TapeText(first.Width)} × {facts.TapeText(first.Length)}",
            Id = first.StockId,
            Measure = Measure.Sheet,
            Counted = sheets.Count,
            Packs = stock is null
                ? prices.Packs(TakeoffCodes.Sheet, first.StockId)
                : prices.StockPacks(TakeoffCodes.Sheet, stock.Id, stock.Sku, stock.PackSize, stock.PackPrice),
            KilogramsEach = facts.Masses.SheetKilograms(wish.Type, wish.Thickness, first.Width, first.Length),
            CountedFrom = $"{Measures.Counted.Of(sheets.Count, "sheet")} in the cut plan",
        };
    }
}
