using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Composition;

/// <summary>The bulkheads as planned and the sticks that their members are cut from; a cut is of a bulkhead's member, both by index.</summary>
public sealed record CutBulkheads(IReadOnlyList<PlannedBulkhead> Planned, IReadOnlyList<BulkheadStick> Sticks, CutResult? Result)
{
    public static CutBulkheads None { get; } = new([], [], null);

    /// <summary>All boards, bulkhead by bulkhead, in the order in which they are numbered behind the ceiling's parts.</summary>
    public IEnumerable<PlannedBoard> Boards => Planned.SelectMany(p => p.Boards);
}

public sealed record BulkheadStick(StickStock Stock, string Size, IReadOnlyList<(int Bulkhead, int Member, long Length)> Cuts, long Offcut);

/// <summary>Plans the bulkheads and cuts their frames: one job for each frame stock, apart from the straps.</summary>
public static class BulkheadCut
{
    public static (CutBulkheads? Cut, Finding? Obstacle) Of(FramedRoom room, ChosenCeiling chosen)
    {
        if (room.Solids.Count == 0)
        {
            return (CutBulkheads.None, null);
        }

        var planned = BulkheadPlanner.Plan(room, [.. chosen.Lines.Select(l => l.Bearing)], Rules(room, chosen.Layout.Division.SheetWidth));
        var sticks = new List<BulkheadStick>();
        var (cost, bound) = (0L, 0L);
        var priced = room.Solids.All(s => s.Wish.Frame.Stock.All(k => k.PackPrice is not null));
        foreach (var job in planned.Select((p, i) => (p, i)).GroupBy(x => x.p.Solid.Wish.Frame))
        {
            var wanted = job.SelectMany(x => x.p.Members.Select((m, n) => (x.i, n, m.Cut))).ToList();
            var wood = job.Key;
            var longest = wood.Stock.Max(s => s.Length.Units) - room.Survey.Strapping.EndTrim.Units;
            if (wanted.Any(w => w.Cut > longest))
            {
                return (null, Findings.FrameTooLong([.. job.Select(x => x.p.Solid.Id)], room.Say(longest)));
            }

            var plan = StickCutter.Solve(new StickProblem(
                [.. wanted.Select(w => new StickWanted(Math.Max(1, w.Cut), 1))],
                [.. wood.Stock.Select(s => new StickKind(s.Length.Units, Cost(s, priced), s.Quantity))],
                room.Survey.Strapping.Kerf.Units,
                room.Survey.Strapping.EndTrim.Units), OrderBudget.Frame(room.Survey.Effort), OrderBudget.FrameRepack(room.Survey.Effort));
            if (plan.Missing.Count > 0)
            {
                return (null, Findings.OutOfStock("bulkheads"));
            }

            (cost, bound) = (cost + plan.Cost, bound + plan.LowerBound);
            sticks.AddRange(plan.Sticks.Select(s => new BulkheadStick(wood.Stock[s.Kind], wood.Size, [.. s.Pieces.Select(p => wanted[p])], s.Offcut)));
        }

        return (new CutBulkheads(planned, sticks, Result(room, priced, cost, Math.Min(bound, cost))), null);
    }

    private static BulkheadRules Rules(FramedRoom room, long sheetWidth)
    {
        var survey = room.Survey;
        var book = new RuleBook(PublishedTables.Current, survey.Ruleset, survey.RuleOverrides);
        var imperial = survey.Units == UnitSystem.Imperial;
        return new BulkheadRules(
            book.Limit("bulkhead-rung-spacing", imperial).Value.Length.Units,
            book.Limit("bulkhead-block-spacing", imperial).Value.Length.Units,
            sheetWidth,
            survey.Sheets.Stock.Where(s => s.Width.Units == sheetWidth).Max(s => s.Length.Units),
            survey.Strapping.EndTrim.Units);
    }

    private static long Cost(StickStock stock, bool priced) =>
        priced ? (long)decimal.Round(stock.PackPrice!.Value * 10_000m / stock.PackSize) : stock.Length.Units;

    private static CutResult Result(FramedRoom room, bool priced, long cost, long bound)
    {
        var imperial = room.Survey.Units == UnitSystem.Imperial;
        var perUnit = priced ? 10_000m : imperial ? Length.PerInch : Length.PerMillimetre;
        return new CutResult(
            "bulkheads", priced ? "cost" : "length", cost / perUnit, bound / perUnit,
            bound == 0 ? 0 : decimal.Round((decimal)(cost - bound) / bound, 6), cost == bound,
            priced ? room.Survey.Prices?.Currency ?? string.Empty : imperial ? "in" : "mm");
    }
}
