using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Steps;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Composition;

/// <summary>Joins the plans of the parts of a room to one: walls of the room, every row and piece once, one order, one list of checks and of steps.</summary>
internal sealed class RunWriter
{
    private readonly Survey _survey;
    private readonly RunParts _division;
    private readonly IReadOnlyList<(Survey Survey, CeilingPlan Plan)> _parts;
    private readonly CutPlan _cut;

    private RunWriter(Survey survey, RunParts division, IReadOnlyList<(Survey Survey, CeilingPlan Plan)> parts, CutPlan cut) =>
        (_survey, _division, _parts, _cut) = (survey, division, parts, cut);

    public static CeilingPlan Write(Survey survey, RunParts division, IReadOnlyList<(Survey Survey, CeilingPlan Plan)> parts, CutPlan cut, LaidGrid? grid)
    {
        var stock = new PooledStock(cut);
        return new RunWriter(survey, division, [.. parts.Select(p => (p.Survey, PartScalars.In(p.Survey.Part!, stock.Of(p.Plan))))], cut).Write(grid);
    }

    private CeilingPlan Write(LaidGrid? grid)
    {
        var room = FramedRoom.Of(RunJoin.OneWay(_survey) with { Bulkheads = [], Partitions = [] });
        Func<Length, string> say = l => room.Say(l.Units);
        var strapping = JoinedStraps.Of([.. _parts.Select(p => p.Plan.Strapping)]);
        var sheets = JoinedSheets.Of(_division, [.. _parts.Select(p => p.Plan.Sheets)]);
        var joists = new JoistPlan([.. All(p => p.Joists.Members)], [.. All(p => p.Joists.Bays)]) { Breaks = _division.Breaks };
        var boxes = new BulkheadPlan([.. InOrder(All(p => p.Bulkheads.Bulkheads), b => b.Id, _survey.Bulkheads.Select(b => b.Id))], [.. All(p => p.Bulkheads.AccessPanels)]);
        var partitions = InOrder(All(p => p.Partitions), p => p.Id, _survey.Partitions.Select(p => p.Id)).ToList();
        var insulation = JoinedBatts.Of([.. _parts.Select(p => p.Plan.Insulation).OfType<Insulation.InsulationPlan>()]);
        var finished = Least(_parts.Select(p => p.Plan.Summary.FinishedHeight));
        var fixtures = Fixtures(room, grid, finished);
        var facts = new TakeoffFacts
        {
            Strapping = strapping,
            Sheets = sheets,
            CutPlan = _cut,
            Fixtures = fixtures,
            Bulkheads = boxes,
            StrappingWish = StockOnSite.Of(_survey).Survey.Strapping,
            SheetWish = StockOnSite.Of(_survey).Survey.Sheets,
            Insulation = insulation,
            InsulationWish = _survey.Insulation,
            Prices = _survey.Prices,
            Through = _survey.Room.Through,
            Ruleset = _survey.Ruleset,
            Units = _survey.Units,
            TapeText = say,
            Allowances = RuleAllowances.Of(_survey),
            Masses = RuleAllowances.Masses(_survey),
        };
        var takeoff = TakeoffCounter.Count(facts);
        var summary = Summary(strapping, sheets, takeoff, facts.Masses, finished);
        var judged = JoinedChecks.Of([.. _parts.Select(p => (p.Survey.Part!, p.Plan.CheckWithin!(summary, _cut, sheets)))], joists.Breaks);
        var walls = JoistWriter.Walls(room);

        // floor: the tables speak for one floor; two that run different ways are two
        return new CeilingPlan
        {
            Summary = summary with
            {
                FixturesMoved = fixtures.Fixtures.Count(f => f.Status == FixtureStatus.Moved),
                FixturesInConflict = fixtures.Fixtures.Count(f => f.Status == FixtureStatus.Conflict),
                ChecksFailed = judged.Checks.Count(c => c.Status == Checks.CheckStatus.Fail),
            },
            Checks = judged.Checks,
            Cautions = judged.Cautions,
            Walls = walls,
            Joists = joists,
            Strapping = strapping,
            Sheets = sheets,
            Fixtures = fixtures,
            Insulation = insulation,
            Bulkheads = boxes,
            CutPlan = _cut,
            Takeoff = takeoff,
            Partitions = partitions,
            Parts = _parts,
            WrittenSteps = new(() => WorkSteps.Write(strapping, sheets, _cut, joists, _survey.Units, say, walls, insulation, fixtures, boxes, partitions, _survey.Room.Existing, _survey.Strapping.Direct, room.SayCut, _survey.Crew)),
        };
    }

    private IEnumerable<T> All<T>(Func<CeilingPlan, IEnumerable<T>> of) => _parts.SelectMany(p => of(p.Plan));

    private static IEnumerable<T> InOrder<T>(IEnumerable<T> found, Func<T, string> id, IEnumerable<string> order)
    {
        var place = order.Index().ToDictionary(x => x.Item, x => x.Index, StringComparer.Ordinal);
        return found.OrderBy(f => place[id(f)]);
    }

    private static Length? Least(IEnumerable<Length?> heights) => heights.OfType<Length>().OrderBy(h => h).Select(h => (Length?)h).FirstOrDefault();

    private FixturePlan Fixtures(FramedRoom room, LaidGrid? grid, Length? finished)
    {
        var planned = InOrder(All(p => p.Fixtures.Fixtures), f => f.Id, _survey.Fixtures.Select(f => f.Id)).ToList();
        var mounts = InOrder(All(p => p.Fixtures.Mounts), m => m.Wish.Id, _survey.Mounts.Select(m => m.Id)).ToList();
        var placed = planned.ConvertAll(f => new PlacedFixture(f.Wish, room.Frame.In(f.Wish.At), FixtureHoles.Of(room, f.Wish, room.Frame.In(f.At)), [], []));
        return new FixturePlan(planned, GridRoom.Write(room, grid, placed, planned, finished), mounts);
    }

    private PlanSummary Summary(Strapping.StrappingPlan strapping, SheetPlan sheets, TakeoffPlan takeoff, MassTable masses, Length? finished) => new()
    {
        Rows = strapping.Rows.Count,
        StrapPieces = strapping.Rows.Sum(r => r.Pieces.Count),
        LengthsToBuy = _cut.Sticks.Count,
        SheetsToBuy = _cut.Sheets.Count,
        ButtJointLength = sheets.ButtJointLength,
        FinishedHeight = finished,
        LowestUnderside = Least(_parts.Select(p => p.Plan.Summary.LowestUnderside)),
        MassKilograms = takeoff.Totals.MassKilograms,
        HeaviestLiftKilograms = PlanWriter.HeaviestLift(_survey, _cut, masses),
        Cost = takeoff.Totals.Amount,
        ChecksFailed = 0,
    };
}
