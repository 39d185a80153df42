namespace LayoutService.Engine.Takeoff;

/// <summary>
/// Counts what to order from the plans as drawn: lumber and sheets from the cut plan, fasteners where they are driven,
/// finish from joints and area. The only place where anything is counted for an order.
/// </summary>
public static class TakeoffCounter
{
    /// <summary>
    /// The order, in the order of the job. Amounts are exact decimals: packs × price, to the currency's minor unit on each
    /// line; the total is the sum of the lines. Culls and what is not in the plan are never hidden in waste.
    /// </summary>
    public static TakeoffPlan Count(TakeoffFacts facts)
    {
        var prices = new PriceBook(facts.Prices);
        List<TakeoffLine> lines =
        [
            .. LumberLines.Count(facts, prices),
            .. BoxLines.Lumber(facts, prices),
            .. SheetLines.Count(facts, prices),
            .. BattLines.Count(facts, prices),
            .. ShimLines.Count(facts, prices),
            .. FastenerLines.Count(facts, prices),
            .. FinishLines.Count(facts, prices),
            .. BoxLines.Finish(facts, prices),
            .. FixtureLines.Count(facts, prices),
            .. LabourLines.Count(facts),
        ];
        return new TakeoffPlan(lines, Ordering.Total(lines, prices.Currency, facts.Prices?.Taxes));
    }
}
