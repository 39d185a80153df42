using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Api.Plans.Writing;

/// <summary>Writes the takeoff as it was counted; nothing is rounded to another figure here, and nothing summed.</summary>
internal static class TakeoffWriting
{
    public static TakeoffAnswer Of(TakeoffPlan plan, AnswerInk ink) => new(
        [.. plan.Lines.Select(l => Line(l, ink))],
        Totals(plan.Totals, ink));

    public static TakeoffLineAnswer Line(TakeoffLine l, AnswerInk ink) => new()
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
    };

    public static TakeoffTotalsAnswer Totals(TakeoffTotals totals, AnswerInk ink) => new(
        string.IsNullOrEmpty(totals.Currency) ? null : totals.Currency,
        Money(totals.Amount),
        ink.Mass(totals.MassKilograms),
        totals.Unpriced,
        totals.Taxes.Count == 0
            ? null
            : [.. totals.Taxes.Select(t => new TaxAnswer(t.Name, Figures.Plain(t.Rate, 12), Figures.Plain(t.Base, 6), Figures.Plain(t.Amount, 6)))],
        Money(totals.WithTax));

    /// <summary>An amount as it is, without the trailing zeros that came with a price.</summary>
    public static decimal? Money(decimal? amount) => amount is { } known ? Figures.Plain(known, 6) : null;
}
