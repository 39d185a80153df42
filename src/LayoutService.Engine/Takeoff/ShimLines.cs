using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Takeoff;

/// <summary>Packing between joists and straps, by thickness.</summary>
internal static class ShimLines
{
    public static IEnumerable<TakeoffLine> Count(TakeoffFacts facts, PriceBook prices) =>
        facts.Strapping.Crossings
            .Where(crossing => crossing.Shims > 0)
            .GroupBy(crossing => crossing.Packing)
            .OrderBy(group => group.Key)
            .Select(group => Ordering.Order(
                new Need
                {
                    Code = TakeoffCodes.Shim,
                    Description = $"Packing for straps, {facts.TapeText(group.Key)} thick, strap wide and joist long",
                    Id = Name(facts, group.Key),
                    Measure = Measure.Piece,
                    Counted = group.Sum(crossing => crossing.Shims),
                    Packs = prices.Packs(TakeoffCodes.Shim, Name(facts, group.Key)),
                    KilogramsEach = null,
                    CountedFrom = $"{group.Count()} crossings off the plane, two pieces at a joint",
                },
                prices.Currency))
            .ToList();

    // 1/4in, 6mm
    private static string Name(TakeoffFacts facts, Length thickness) => facts.Units == Ceilings.UnitSystem.Imperial
        ? $"{TapeText.Imperial(thickness, TapeRounding.Nearest).TrimEnd('"')}in"
        : $"{thickness.Units / Length.PerMillimetre}mm";
}
