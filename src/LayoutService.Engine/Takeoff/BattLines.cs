using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Insulation;

namespace LayoutService.Engine.Takeoff;

/// <summary>Batts, a line for each batt that is used, thickest first; what is cut off in one bay serves another.</summary>
internal static class BattLines
{
    public static IEnumerable<TakeoffLine> Count(TakeoffFacts facts, PriceBook prices)
    {
        if (facts.Insulation is not { } plan || facts.InsulationWish is not { } wish)
        {
            return [];
        }

        var fills = plan.Fills.ToLookup(f => f.BattId);
        return [.. wish.Batts
            .Where(b => fills.Contains(b.Id))
            .OrderByDescending(b => b.Thickness)
            .ThenByDescending(b => b.Width)
            .Select(b => Ordering.Order(Whole(facts, prices, b, [.. fills[b.Id]]), prices.Currency))];
    }

    private static Need Whole(TakeoffFacts facts, PriceBook prices, Batt batt, List<BattFill> fills) => new()
    {
        Code = TakeoffCodes.Batt,
        Description = $"Batt, {facts.TapeText(batt.Thickness)} thick, {facts.TapeText(batt.Width)} × {facts.TapeText(batt.Length)}",
        Id = batt.Id,
        Measure = Measure.Batt,
        Counted = BattCuts.Count(batt, fills),
        Packs = prices.StockPacks(TakeoffCodes.Batt, batt.Id, null, batt.PackSize, batt.PackPrice),
        KilogramsEach = facts.Masses.BattKilograms(batt.Thickness, batt.Width, batt.Length),
        CountedFrom = string.Create(
            CultureInfo.InvariantCulture, $"{fills.Count} strips in {fills.DistinctBy(f => f.Bay).Count()} bays, offcuts reused{(fills.Any(f => f.Split) ? "; two layers from a split batt" : string.Empty)}"),
    };
}
