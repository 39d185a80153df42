using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Composition;

/// <summary>Puts the order of a job together: cut plan, takeoff, what each room has of it, and what pooling saves.</summary>
internal static class JobWriter
{
    public static JobPlan Write(IReadOnlyList<JobRoom> rooms, IReadOnlyList<LumberPool> lumber, IReadOnlyList<BoardPool> boards)
    {
        var takeoff = new JobTakeoff(rooms);
        var (lumberLines, sticksTogether) = takeoff.Lumber(lumber);
        var (sheetLines, sheetsTogether) = takeoff.Sheets(boards);
        var cut = new CutPlan(
            [.. lumber.SelectMany(p => sticksTogether ? p.Together : p.Apart).Select((s, i) => s with { Id = $"K{i + 1}" })],
            [.. boards.SelectMany(p => sheetsTogether ? p.Together : p.Apart).Select((s, i) => s with { Id = $"B{i + 1}" })],
            rooms[0].Survey.Strapping.Kerf,
            rooms[0].Survey.Strapping.EndTrim,
            [.. lumber.Select(p => p.Result), .. boards.Select(p => p.Result)]);
        var rest = takeoff.Rest([.. lumberLines, .. sheetLines]);
        var shared = lumberLines.Select(l => new JobTakeoff.Shared(l, JobWeights.OfSticks(rooms, cut, l)))
            .Concat(sheetLines.Select(l => new JobTakeoff.Shared(l, JobWeights.OfSheets(rooms, cut, l))))
            .Concat(rest)
            .ToList();
        List<TakeoffLine> lines = [.. shared.Select(s => s.Line)];
        var taxes = rooms.Select(r => r.Survey.Prices?.Taxes).FirstOrDefault(t => t is { Count: > 0 });
        var totals = Ordering.Total(lines, takeoff.Currency, taxes);
        return new JobPlan(cut, new TakeoffPlan(lines, totals), Shares(rooms, cut, shared, totals), Saving(rooms, cut, totals));
    }

    private static IReadOnlyList<RoomShare> Shares(
        IReadOnlyList<JobRoom> rooms, CutPlan cut, IReadOnlyList<JobTakeoff.Shared> shared, TakeoffTotals totals)
    {
        var amounts = new decimal[rooms.Count];
        foreach (var (line, weights) in shared)
        {
            if (line.Amount is { } amount && totals.Currency is { } currency)
            {
                var parts = Allocation.Of(amount, [.. Enumerable.Range(0, rooms.Count).Select(r => weights.GetValueOrDefault(r))], currency);
                for (var r = 0; r < parts.Length; r++)
                {
                    amounts[r] += parts[r];
                }
            }
        }

        var taxes = totals.Taxes.Select(tax => Allocation.Of(tax.Amount, amounts, totals.Currency!)).ToList();
        return [.. rooms.Select((room, r) => new RoomShare(
            totals.Amount is null ? null : amounts[r],
            [.. taxes.Select(tax => tax[r])],
            totals.WithTax is null ? null : amounts[r] + taxes.Sum(tax => tax[r]),
            JobSteps.Of(room, cut)))];
    }

    private static JobSaving Saving(IReadOnlyList<JobRoom> rooms, CutPlan cut, TakeoffTotals totals)
    {
        var priced = rooms.Where(r => r.Plan.Takeoff.Totals.Amount is not null).ToList();
        return new JobSaving(
            priced.Count == 0 ? null : priced.Sum(r => r.Plan.Takeoff.Totals.Amount),
            totals.Amount,
            rooms.Sum(r => r.Plan.CutPlan.Sticks.Count),
            cut.Sticks.Count,
            rooms.Sum(r => r.Plan.CutPlan.Sheets.Count),
            cut.Sheets.Count,
            new Length(rooms.Sum(r => r.Plan.CutPlan.Sticks.Sum(s => s.Length.Units))),
            new Length(cut.Sticks.Sum(s => s.Length.Units)));
    }
}
