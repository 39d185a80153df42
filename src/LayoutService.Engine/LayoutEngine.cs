using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Composition;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine;

/// <summary>
/// A room in, a plan out: pure and deterministic. The room is framed and set in a standard pose; rows and board joints are
/// chosen together; the rows are pieced and cut from stock; the board is cut from sheets; then it is all written, counted
/// and checked in the caller's coordinates.
/// </summary>
public static class LayoutEngine
{
    /// <summary>Version of the planning method; a change that can alter any plan changes it.</summary>
    public const string EngineVersion = "1.10.0";

    // of the meter; what is left is some thousand times what a typical room takes at quick effort
    private const decimal ThoroughShare = 0.875m;

    /// <summary>The plan, or why there is none.</summary>
    /// <param name="survey">The room and what is wanted.</param>
    /// <param name="meter">Counts the work and ends it; without one there is no end but the search's own budgets.</param>
    public static PlanOutcome Plan(Survey survey, WorkMeter? meter) =>
        WorkMeter.Run(meter, () => Plan(survey), () => new PlanOutcome.NotPossible([Findings.TooMuchWork()]));

    public static PlanOutcome Plan(Survey survey) => RunParts.In(survey) ? RunJoin.Plan(survey, PlanRun) : PlanRun(survey);

    // a room, or a part of one, in which all joists run one way; a thorough search that takes more than one call may leaves enough for a quick plan
    private static PlanOutcome PlanRun(Survey survey) =>
        survey.Effort == Effort.Quick ? Searched(survey)
        : WorkMeter.Within(ThoroughShare, () => Searched(survey)) is not { } thorough ? Searched(survey with { Effort = Effort.Quick, SearchGivenUp = true })
        : BetterOfTwo.Of(survey.Sheets, thorough, Searched(survey with { Effort = Effort.Quick }));

    private static PlanOutcome Searched(Survey survey)
    {
        var (offered, nothingGetsIn) = StockOnSite.Of(survey);
        if (nothingGetsIn.Count > 0)
        {
            return new PlanOutcome.NotPossible(nothingGetsIn);
        }

        var (room, grid) = GridRoom.Of(offered);
        if (SurveyObstacles.Find(room) is { } unfit)
        {
            return new PlanOutcome.NotPossible([unfit]);
        }

        // where no plan keeps off every hole there may be one that does not: the conflicts are told
        var outcome = Plan(FixtureRounds.Best(room), grid);
        if (outcome is PlanOutcome.NotPossible && room.Survey.Fixtures.Count > 0)
        {
            outcome = Plan(FixtureRounds.Regardless(room), grid);
        }

        return outcome is PlanOutcome.NotPossible none && Plentiful.Of(offered, none.Findings) is { } left ? Searched(left) : outcome;
    }

    private static PlanOutcome Plan((CeilingWithFixtures? Made, Finding? Obstacle) search, LaidGrid? grid)
    {
        if (search.Made is not { } ceiling)
        {
            return new PlanOutcome.NotPossible([search.Obstacle!]);
        }

        var (room, chosen) = (ceiling.Room, ceiling.Chosen);

        var boarded = chosen.BoardRoom ?? room;
        if (BoardLayers.Of(boarded, chosen) is not { } layers)
        {
            return new PlanOutcome.NotPossible([Findings.SheetsDoNotReach()]);
        }

        var (parts, seams) = layers;
        var strapped = chosen.BoardRoom is null;
        var runs = strapped ? new StrapRuns(room, chosen.Rules).Of(chosen.Lines, ButtZones.Of(chosen, parts)) : [];
        if (strapped && SurveyObstacles.Find(room, chosen.Lines, runs) is { } unframed)
        {
            return new PlanOutcome.NotPossible([unframed]);
        }

        var (lumber, noLumber) = strapped ? new LumberCut(room).Of(chosen.Lines, runs, chosen.Rules, room.Say) : DirectLumber.Of(room);
        var (bulkheads, board, noBoard) = BulkheadCut.WithBoard(room, chosen, boarded, parts);
        if (lumber is null || board is null || bulkheads is null)
        {
            return new PlanOutcome.NotPossible([.. new[] { noLumber }.OfType<Finding>(), .. noBoard]);
        }

        return new PlanOutcome.Made(PlanWriter.Write(
            room, chosen, parts, seams, lumber, board, bulkheads, BoxFixtures.With(room, ceiling.Fixtures, bulkheads), grid));
    }
}

/// <summary>Either a plan, or the reasons why no sensible plan exists.</summary>
public abstract record PlanOutcome
{
    private PlanOutcome()
    {
    }

    public sealed record Made(CeilingPlan Plan) : PlanOutcome;

    public sealed record NotPossible(IReadOnlyList<Finding> Findings) : PlanOutcome;
}

/// <summary>The whole answer for one room, in the order of the job.</summary>
public sealed record CeilingPlan
{
    public required PlanSummary Summary { get; init; }

    public required IReadOnlyList<Check> Checks { get; init; }

    public required IReadOnlyList<Caution> Cautions { get; init; }

    /// <summary>What the floor tables say of these joists with and without this ceiling; null where the ruleset has none.</summary>
    public FloorStiffness? Floor { get; init; }

    public required IReadOnlyList<WallLine> Walls { get; init; }

    /// <summary>Walls inside the room, in the order of the survey.</summary>
    public IReadOnlyList<PlannedPartition> Partitions { get; init; } = [];

    public required JoistPlan Joists { get; init; }

    public required StrappingPlan Strapping { get; init; }

    public required SheetPlan Sheets { get; init; }

    public required FixturePlan Fixtures { get; init; }

    public BulkheadPlan Bulkheads { get; init; } = BulkheadPlan.None;

    /// <summary>The batts; null when none were asked for.</summary>
    public InsulationPlan? Insulation { get; init; }

    public required CutPlan CutPlan { get; init; }

    public required TakeoffPlan Takeoff { get; init; }

    /// <summary>Written when they are first asked for: an order of many rooms wants counts alone.</summary>
    public IReadOnlyList<WorkStep> Steps => WrittenSteps.Value;

    /// <summary>Priced when they are first asked for.</summary>
    public IReadOnlyList<Alternative> Alternatives => PricedAlternatives.Value;

    /// <summary>The parts in which all joists run one way, with their surveys; none where the whole room is one.</summary>
    public IReadOnlyList<(Survey Survey, CeilingPlan Plan)> Parts { get; init; } = [];

    /// <summary>Holds the plan against the rules again, with the figures of the whole room that it is a part of.</summary>
    internal Func<PlanSummary, CutPlan, SheetPlan, (IReadOnlyList<Check> Checks, IReadOnlyList<Caution> Cautions, FloorStiffness? Floor)>? CheckWithin { get; init; }

    /// <summary>How far butts lie from their wishes, and how many row joints: what a plan is judged by before its cost.</summary>
    internal (long Butts, int Breaks) Unwished { get; init; }

    internal Lazy<IReadOnlyList<WorkStep>> WrittenSteps { get; init; } = new(() => []);

    internal Lazy<IReadOnlyList<Alternative>> PricedAlternatives { get; init; } = new(() => []);
}
