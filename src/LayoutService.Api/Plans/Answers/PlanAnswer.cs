using LayoutService.Api.Plans.Requests;

namespace LayoutService.Api.Plans.Answers;

/// <summary>
/// The whole plan for one room, in the order of the job. Lengths are numbers in the request's units with at most six
/// decimals; a text in tape words stands beside each that a person reads off a tape. Blocks left out by `include`
/// are absent.
/// </summary>
public sealed record PlanAnswer
{
    /// <summary>The caller's own name for the request.</summary>
    public string? Reference { get; init; }

    /// <summary>Units of every number here: `imperial` is inches, `metric` millimetres.</summary>
    public required UnitsWord Units { get; init; }

    /// <summary>The ruleset applied.</summary>
    public required string Ruleset { get; init; }

    /// <summary>Version of the planning method.</summary>
    public required string EngineVersion { get; init; }

    /// <summary>Version of the published figures applied.</summary>
    public required string RulesVersion { get; init; }

    /// <summary>SHA-256, in hexadecimal, of the request's canonical JSON (RFC 8785) less `reference`.</summary>
    public required string RequestDigest { get; init; }

    /// <summary>SHA-256, in hexadecimal, of the request with its defaults and both versions: same digest, same plan.</summary>
    public required string Digest { get; init; }

    /// <summary>Every default that shaped the plan.</summary>
    public required IReadOnlyList<AssumedAnswer> Assumed { get; init; }

    /// <summary>The figures a person decides by.</summary>
    public required SummaryAnswer Summary { get; init; }

    /// <summary>What was checked against a rule.</summary>
    public IReadOnlyList<CheckAnswer>? Checks { get; init; }

    /// <summary>What to look out for.</summary>
    public IReadOnlyList<CautionAnswer>? Cautions { get; init; }

    /// <summary>What the floor tables print for these joists, with and without this ceiling.</summary>
    public FloorAnswer? Floor { get; init; }

    /// <summary>The walls, one for each edge of the outline.</summary>
    public IReadOnlyList<WallAnswer>? Walls { get; init; }

    /// <summary>Walls inside the room, in the order of the request; absent when there are none. Comes with the block `walls`.</summary>
    public IReadOnlyList<PartitionAnswer>? Partitions { get; init; }

    /// <summary>The joists and the bays between them.</summary>
    public JoistsAnswer? Joists { get; init; }

    /// <summary>The straps.</summary>
    public StrappingAnswer? Strapping { get; init; }

    /// <summary>The sheets.</summary>
    public SheetsAnswer? Sheets { get; init; }

    /// <summary>The fixtures, in the order of the request; access panels that services need and the lights of a grid follow.</summary>
    public IReadOnlyList<FixtureAnswer>? Fixtures { get; init; }

    /// <summary>How the light grid came out; absent when none was asked for. Comes with the block `fixtures`.</summary>
    public LightGridAnswer? LightGrid { get; init; }

    /// <summary>What hangs, and from what. Comes with the block `fixtures`.</summary>
    public IReadOnlyList<MountAnswer>? Mounts { get; init; }

    /// <summary>The bulkheads.</summary>
    public IReadOnlyList<BulkheadAnswer>? Bulkheads { get; init; }

    /// <summary>Doors to services that must be reached later, in bulkheads and in the ceiling, one for each service; `id` is the fixture that it is.</summary>
    public IReadOnlyList<AccessPanelAnswer>? AccessPanels { get; init; }

    /// <summary>The batts; absent when none were asked for.</summary>
    public InsulationAnswer? Insulation { get; init; }

    /// <summary>Which piece is cut from what.</summary>
    public CutPlanAnswer? CutPlan { get; init; }

    /// <summary>What to order.</summary>
    public TakeoffAnswer? Takeoff { get; init; }

    /// <summary>The order of work.</summary>
    public IReadOnlyList<StepAnswer>? Steps { get; init; }

    /// <summary>What another choice would have cost or saved.</summary>
    public IReadOnlyList<AlternativeAnswer>? Alternatives { get; init; }

    /// <summary>Strapped, direct or on channel, side by side. Only with `include=methods`; `all` has it not.</summary>
    public IReadOnlyList<MethodAnswer>? Methods { get; init; }

    /// <summary>How far each row may still move on the day. Only with `include=slack`; `all` has it not.</summary>
    public IReadOnlyList<SlackAnswer>? Slack { get; init; }

    /// <summary>The drawing to scale: the text of an SVG picture with every layer. Only with `include=drawing`; `all` has it not.</summary>
    public string? Drawing { get; init; }
}

/// <summary>A default that shaped the plan.</summary>
/// <param name="Pointer">The member that was left out.</param>
/// <param name="Value">What was taken, in trade words.</param>
/// <param name="Text">The same as a sentence.</param>
public sealed record AssumedAnswer(string Pointer, string Value, string Text);

/// <summary>The figures a person decides by.</summary>
public sealed record SummaryAnswer
{
    /// <summary>Rows of strapping.</summary>
    public required int Rows { get; init; }

    /// <summary>Pieces of strap.</summary>
    public required int StrapPieces { get; init; }

    /// <summary>Lengths of strap to buy.</summary>
    public required int LengthsToBuy { get; init; }

    /// <summary>Sheets to buy.</summary>
    public required int SheetsToBuy { get; init; }

    /// <summary>Length of butt joints.</summary>
    public required decimal ButtJointLength { get; init; }

    /// <summary>Length of butt joints, as text.</summary>
    public required string ButtJointLengthText { get; init; }

    /// <summary>From the finished floor to the finished ceiling; absent when a height or the floor build-up is missing.</summary>
    public decimal? FinishedHeight { get; init; }

    /// <summary>The same as text.</summary>
    public string? FinishedHeightText { get; init; }

    /// <summary>From the finished floor to the lowest finished underside.</summary>
    public decimal? LowestUnderside { get; init; }

    /// <summary>The same as text.</summary>
    public string? LowestUndersideText { get; init; }

    /// <summary>Fixtures that were moved within their allowance.</summary>
    public required int FixturesMoved { get; init; }

    /// <summary>Fixtures with something in their way.</summary>
    public required int FixturesInConflict { get; init; }

    /// <summary>Mass of everything that hangs, lb or kg.</summary>
    public required decimal Mass { get; init; }

    /// <summary>Mass of the heaviest sheet to be lifted, lb or kg.</summary>
    public required decimal HeaviestLift { get; init; }

    /// <summary>Cost of what has a price; absent without prices.</summary>
    public decimal? Cost { get; init; }

    /// <summary>ISO 4217 code of the cost.</summary>
    public string? Currency { get; init; }

    /// <summary>How many checks failed.</summary>
    public required int ChecksFailed { get; init; }
}

/// <summary>One thing said: a stable code, the English text and the values in it.</summary>
/// <param name="Code">Stable code.</param>
/// <param name="Text">The sentence.</param>
/// <param name="Params">The values in it by name.</param>
public sealed record SentenceAnswer(string Code, string Text, IReadOnlyDictionary<string, string> Params);

/// <summary>Why something is where it is.</summary>
/// <param name="Kind">Kind of reason.</param>
/// <param name="Of">Ids of the things that ask for it.</param>
/// <param name="Code">Stable code, where there is a sentence.</param>
/// <param name="Text">The sentence.</param>
public sealed record ReasonAnswer(string Kind, IReadOnlyList<string> Of, string? Code, string? Text);
