using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Api.Plans.Writing;

/// <summary>Writes the takeoff as it was counted; nothing is rounded to another figure here, and nothing summed.</summary>
internal static class TakeoffWriting
{
    public static TakeoffAnswer Of(TakeoffPlan plan, AnswerInk ink) => new(
        [.. plan.Lines.Select(l => new TakeoffLineAnswer
        {
            Code = l.Code,
            Description = l.Description,
            Id = l.Id,
            Unit = l.Unit,
            UnitCode = l.UnitCode,
            Counted = Figures.Plain(l.Counted, 6),
            Waste = Figures.Plain(l.Waste, 6),
            Quantity = Figures.Plain(l.Quantity, 6),
            Packs = [.. l.Packs.Select(p => new PackAnswer(p.Id, p.Sku, Figures.Plain(p.PackSize, 6), p.Count, Money(p.PackPrice)))],
            Amount = Money(l.Amount),
            Mass = l.MassKilograms is { } mass ? ink.Mass(mass) : null,
            CountedFrom = l.CountedFrom,
        })],
        new(
            string.IsNullOrEmpty(plan.Totals.Currency) ? null : plan.Totals.Currency,
            Money(plan.Totals.Amount),
            ink.Mass(plan.Totals.MassKilograms),
            plan.Totals.Unpriced));

    /// <summary>An amount as it is, without the trailing zeros that came with a price.</summary>
    private static decimal? Money(decimal? amount) => amount is { } known ? Figures.Plain(known, 6) : null;
}
