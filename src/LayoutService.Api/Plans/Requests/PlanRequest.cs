namespace LayoutService.Api.Plans.Requests;

/// <summary>
/// One room as measured, with the wishes for its ceiling. Only `units`, `room.outline` and one joist field are needed;
/// everything else has a default that the answer lists under `assumed`.
/// </summary>
public sealed record PlanRequest
{
    /// <summary>The caller's own name for this request; echoed unchanged, no part of any digest.</summary>
    public string? Reference { get; init; }

    /// <summary>Units of every number here and in the answer.</summary>
    public UnitsWord? Units { get; init; }

    /// <summary>Ruleset applied. Default: `us-irc-2021` for imperial units, `ca-nbc-2020` for metric.</summary>
    public RulesetWord? Ruleset { get; init; }

    /// <summary>Rule values that the caller sets instead of the published or usual ones.</summary>
    public IReadOnlyList<RuleRequest>? Rules { get; init; }

    /// <summary>Language of texts (BCP 47). A language that there are no texts in gets English, and `assumed` says so. Codes and numbers do not
    /// depend on it.</summary>
    public string? Language { get; init; }

    /// <summary>How hard to search for a cheap cut plan. Default `quick`.</summary>
    public EffortWord? Effort { get; init; }

    /// <summary>The room.</summary>
    public RoomRequest? Room { get; init; }

    /// <summary>The joists as found. Where fields run different ways their regions meet along lines and cover the room between them; the plan breaks there.</summary>
    public IReadOnlyList<JoistFieldRequest>? JoistFields { get; init; }

    /// <summary>Wishes for the straps.</summary>
    public StrappingRequest? Strapping { get; init; }

    /// <summary>Wishes for the sheets.</summary>
    public SheetsRequest? Sheets { get; init; }

    /// <summary>How sheets and sticks get in; stock that does not is not offered to the plan.</summary>
    public AccessRequest? Access { get; init; }

    /// <summary>Who lifts; sheets and sticks too heavy for them are not offered to the plan.</summary>
    public CrewRequest? Crew { get; init; }

    /// <summary>Lights and other things let into the ceiling.</summary>
    public IReadOnlyList<FixtureRequest>? Fixtures { get; init; }

    /// <summary>A regular grid of lights to lay out.</summary>
    public LightGridRequest? LightGrid { get; init; }

    /// <summary>Heavy things that hang from joists or blocking.</summary>
    public IReadOnlyList<MountRequest>? Mounts { get; init; }

    /// <summary>Ducts, pipes, beams and the like under or between the joists.</summary>
    public IReadOnlyList<ServiceRequest>? Services { get; init; }

    /// <summary>Walls that meet the ceiling inside the room.</summary>
    public IReadOnlyList<PartitionRequest>? Partitions { get; init; }

    /// <summary>Boxes below the ceiling along walls or round services.</summary>
    public IReadOnlyList<BulkheadRequest>? Bulkheads { get; init; }

    /// <summary>Batts between the joists; left out means none.</summary>
    public InsulationRequest? Insulation { get; init; }

    /// <summary>Prices, packs and waste.</summary>
    public PricesRequest? Prices { get; init; }

    /// <summary>Head of a request for quotation or an order; needed for an answer in `application/xml`.</summary>
    public DocumentRequest? Document { get; init; }
}

/// <summary>One rule value set by the caller.</summary>
public sealed record RuleRequest
{
    /// <summary>Id of the rule, as listed by `GET /v1/rules`.</summary>
    public string? Id { get; init; }

    /// <summary>The value, in the rule's own unit.</summary>
    public decimal? Value { get; init; }
}
