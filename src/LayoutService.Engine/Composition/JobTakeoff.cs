using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Composition;

/// <summary>
/// The takeoff of a job. Lumber and sheets are counted from the pooled cut plan; all else is counted together and put into packs
/// once. The order never costs more than its rooms one by one: where packs or culls would make the pooled cut dearer, the
/// rooms' own cut is bought in pooled packs, and where that is dearer too, exactly what the rooms would buy.
/// </summary>
internal sealed class JobTakeoff(IReadOnlyList<JobRoom> rooms)
{
    private static readonly string[] LumberCodes =
        [TakeoffCodes.Strap, TakeoffCodes.StrapCulls, TakeoffCodes.Nailer, TakeoffCodes.NailerCulls, TakeoffCodes.BulkheadFrame, TakeoffCodes.BulkheadFrameCulls];

    private static readonly string[] CutCodes = [.. LumberCodes, TakeoffCodes.Sheet];

    public string? Currency { get; } = rooms.Select(r => r.Survey.Prices?.Currency).FirstOrDefault(c => !string.IsNullOrEmpty(c));

    /// <summary>A line and the weight that each room has in it.</summary>
    public sealed record Shared(TakeoffLine Line, IReadOnlyDictionary<int, decimal> Weights);

    /// <summary>Lines of lumber and the sticks that they buy.</summary>
    public (IReadOnlyList<TakeoffLine> Lines, bool Together) Lumber(IReadOnlyList<LumberPool> pools) => Cheapest(
        LumberCodes,
        pools.All(p => p.MayBeApart),
        together => [.. pools.SelectMany(p => Lumber(Facts(p.Rooms, together ? p.Together : p.Apart, []), Book(p.Rooms[0])))]);

    private static IEnumerable<TakeoffLine> Lumber(TakeoffFacts facts, PriceBook prices) =>
        [.. LumberLines.Count(facts, prices), .. BoxLines.Lumber(facts, prices)];

    /// <summary>Lines of sheets and whether they are of the pooled cut.</summary>
    public (IReadOnlyList<TakeoffLine> Lines, bool Together) Sheets(IReadOnlyList<BoardPool> pools) => Cheapest(
        [TakeoffCodes.Sheet],
        pools.All(p => p.MayBeApart),
        together => [.. pools.SelectMany(p => SheetLines.Count(Facts(p.Rooms, [], together ? p.Together : p.Apart), Book(p.Rooms[0])))]);

    /// <summary>Everything that no cut plan counts, with what each room counted of it.</summary>
    public IReadOnlyList<Shared> Rest(IReadOnlyList<TakeoffLine> cut)
    {
        var taken = cut.Select(line => line.Code).Concat(CutCodes).ToHashSet(StringComparer.Ordinal);
        var lines = rooms.SelectMany((room, r) => room.Plan.Takeoff.Lines.Where(line => !taken.Contains(line.Code)).Select(line => (r, line)));
        return [.. MergedLines.Of(lines, Currency).Select(m => new Shared(m.Line, m.Counted))];
    }

    // the pooled cut; the rooms' cut in pooled packs; what the rooms would buy
    private (IReadOnlyList<TakeoffLine> Lines, bool Together) Cheapest(
        string[] codes, bool mayBeApart, Func<bool, IReadOnlyList<TakeoffLine>> count)
    {
        if (!mayBeApart)
        {
            return (count(true), true);
        }

        var bought = rooms.SelectMany(room => room.Plan.Takeoff.Lines).Where(line => codes.Contains(line.Code)).ToList();
        IReadOnlyList<TakeoffLine> apart = [.. bought.GroupBy(MergedLines.Key).Select(same => MergedLines.Sum([.. same]))];
        var pooled = count(true);
        var packed = count(false);
        var least = Math.Min(Amount(apart), Math.Min(Amount(packed), Amount(pooled)));
        return Amount(pooled) == least ? (pooled, true) : (Amount(packed) == least ? packed : apart, false);
    }

    private static decimal Amount(IReadOnlyList<TakeoffLine> lines) => lines.Sum(line => line.Amount ?? 0m);

    private PriceBook Book(int room) => new(StockOnSite.Of(rooms[room].Survey).Survey.Prices);

    private TakeoffFacts Facts(IReadOnlyList<int> members, IReadOnlyList<Stick> sticks, IReadOnlyList<CutSheet> sheets)
    {
        var first = rooms[members[0]];
        var survey = StockOnSite.Of(first.Survey).Survey;
        return new TakeoffFacts
        {
            Strapping = first.Plan.Strapping with
            {
                Rows = [.. members.SelectMany(r => rooms[r].Plan.Strapping.Rows.Select(row => row with
                {
                    Pieces = [.. row.Pieces.Select(piece => piece with { Id = $"{rooms[r].Name}/{piece.Id}" })],
                }))],
            },
            Bulkheads = new BulkheadPlan(
                [.. members.SelectMany(r => rooms[r].Plan.Bulkheads.Bulkheads.Select(box => box with
                {
                    Members = [.. box.Members.Select(member => member with { Id = $"{rooms[r].Name}/{member.Id}" })],
                }))],
                []),
            Sheets = first.Plan.Sheets,
            CutPlan = first.Plan.CutPlan with { Sticks = sticks, Sheets = sheets },
            StrappingWish = survey.Strapping,
            SheetWish = survey.Sheets,
            Prices = survey.Prices,
            Ruleset = survey.Ruleset,
            Units = survey.Units,
            TapeText = length => CutFindings.Say(length, survey.Units),
            Allowances = Allowances.For(survey.Prices),
        };
    }
}
