using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Takeoff;

/// <summary>What fixtures need that the yard sells: boxes for alarms, boxes and fans, and access doors. The fixtures themselves are their trades'.</summary>
internal static class FixtureLines
{
    public static IEnumerable<TakeoffLine> Count(TakeoffFacts facts, PriceBook prices)
    {
        var kinds = facts.Fixtures.Fixtures.Where(f => !f.Wish.AccessPanel).ToLookup(f => f.Wish.Kind);
        Need[] needs =
        [
            Of(TakeoffCodes.FixtureBox, "Ceiling box for an alarm or a surface fixture", kinds[FixtureKind.Alarm].Count() + kinds[FixtureKind.Box].Count(), "alarms and boxes"),
            Of(TakeoffCodes.FanBox, "Ceiling box rated for a fan", kinds[FixtureKind.Fan].Count(), "fans"),
            .. kinds[FixtureKind.AccessDoor]
                .GroupBy(f => f.Wish.Cutout.Round
                    ? $"{facts.TapeText(f.Wish.Cutout.Width)} round"
                    : $"{facts.TapeText(f.Wish.Cutout.Width)} by {facts.TapeText(f.Wish.Cutout.Height)}")
                .Select(size => Of(TakeoffCodes.AccessDoor, $"Access door for a hole of {size.Key}", size.Count(), "access doors of this size")),
        ];
        return needs.Where(need => need.Counted > 0)
            .Select(need => Ordering.Order(need with { Packs = prices.Packs(need.Code, need.Id) }, prices.Currency))
            .ToList();
    }

    private static Need Of(string code, string description, int count, string from) => new()
    {
        Code = code,
        Description = description,
        Measure = Measure.Piece,
        Counted = count,
        KilogramsEach = null,
        CountedFrom = System.FormattableString.Invariant($"{count} {from}"),
    };
}
