using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>The units a caller reads and writes; also decides the trade sizes that defaults are taken from.</summary>
public enum UnitSystem
{
    Imperial,
    Metric,
}

/// <summary>How much work the cutting search may do. Both are deterministic: budgets are counted in steps.</summary>
public enum Effort
{
    Quick,
    Thorough,
}

/// <summary>A validated room with the wishes for its ceiling: all that the engine needs to plan it.</summary>
public sealed record Survey
{
    public required UnitSystem Units { get; init; }

    /// <summary>Ruleset id, for example <c>us-irc-2021</c>.</summary>
    public required string Ruleset { get; init; }

    public required Effort Effort { get; init; }

    public required RoomSurvey Room { get; init; }

    public required IReadOnlyList<JoistField> JoistFields { get; init; }

    public required StrappingWish Strapping { get; init; }

    public required SheetWish Sheets { get; init; }

    /// <summary>Ducts, pipes, beams and the like; null when the caller said nothing of them.</summary>
    public IReadOnlyList<Service>? Services { get; init; }

    /// <summary>Bulkheads that are wanted.</summary>
    public IReadOnlyList<BulkheadWish> Bulkheads { get; init; } = [];

    /// <summary>Walls inside the room.</summary>
    public IReadOnlyList<PartitionWish> Partitions { get; init; } = [];

    /// <summary>Batts between the joists; null for none.</summary>
    public InsulationWish? Insulation { get; init; }

    public PriceList? Prices { get; init; }

    /// <summary>How sheets and sticks get in; null when nothing was said, and everything does.</summary>
    public WayIn? WayIn { get; init; }

    /// <summary>Who lifts; null when it was not said, and nothing is too heavy.</summary>
    public Crew? Crew { get; init; }

    /// <summary>Stock that way in and crew keep from the plan. Set by the engine, never by a caller.</summary>
    public IReadOnlyList<StockLeftOut> LeftOut { get; init; } = [];

    /// <summary>A thorough search was asked for and given up, and this is quick effort instead. Set by the engine, never by a caller.</summary>
    public bool SearchGivenUp { get; init; }

    /// <summary>From the underside of the joists down to the back of the ceiling's board: an old ceiling that stays, and the straps.</summary>
    public Length JoistToBoard => Room.Through + Strapping.Depth;

    /// <summary>What a board screw goes through between the board and the wood that it is screwed to.</summary>
    public Length BehindBoard => Strapping.BehindBoard(Room.Through);

    public IReadOnlyList<FixtureWish> Fixtures { get; init; } = [];

    public LightGridWish? LightGrid { get; init; }

    public IReadOnlyList<MountWish> Mounts { get; init; } = [];

    /// <summary>What this part of a room knows of the whole; null for a whole room. Set by the engine, never by a caller.</summary>
    public RunPart? Part { get; init; }

    /// <summary>Rule values set by the caller, by rule id, in the rule's own unit.</summary>
    public IReadOnlyDictionary<string, decimal> RuleOverrides { get; init; } = new Dictionary<string, decimal>();
}

/// <summary>The room as measured. Rings are open here (the last corner is not repeated) and keep the caller's order.</summary>
public sealed record RoomSurvey
{
    public required IReadOnlyList<Point> Outline { get; init; }

    /// <summary>True when the tape was on finished wall faces, false when on framing.</summary>
    public bool OutlineOnFinish { get; init; }

    public IReadOnlyList<Opening> Openings { get; init; } = [];

    /// <summary>What stands at the edges, by their number in the outline; those not said are left out.</summary>
    public IReadOnlyDictionary<int, WallKind> Walls { get; init; } = new Dictionary<int, WallKind>();

    /// <summary>Edges of the outline without a wall, rising.</summary>
    public IEnumerable<int> OpenEdges => Walls.Where(w => w.Value == WallKind.Open).Select(w => w.Key).Order();

    /// <summary>Heights from the floor as it is now up to the underside of the joists.</summary>
    public IReadOnlyList<HeightReading> Heights { get; init; } = [];

    /// <summary>Thickness of floor still to come; null when it was not said.</summary>
    public Length? FloorBuildUp { get; init; }

    /// <summary>A ceiling that is there already; null for bare joists.</summary>
    public ExistingCeiling? Existing { get; init; }

    /// <summary>Thickness of an old ceiling that stays between joists and straps.</summary>
    public Length Through => Existing is { Stays: true } stays ? stays.Thickness : Length.Zero;

    /// <summary>The space above the floor.</summary>
    public Neighbour? Above { get; init; }

    /// <summary>The space below the ceiling: this room.</summary>
    public Neighbour? Below { get; init; }

    /// <summary>What the room is used for, as a height-table word (<c>habitable</c>, <c>bathroom</c>, ...); null when not said.</summary>
    public string? Use { get; init; }

    /// <summary>True when the room is new in a building that stands already: some codes then ask for less height.</summary>
    public bool ExistingBuilding { get; init; }

    /// <summary>True when the room belongs to a secondary suite.</summary>
    public bool SecondarySuite { get; init; }
}

public sealed record HeightReading(Point? At, Length FloorToJoist);

public enum JoistKind
{
    Sawn,
    IJoist,
    OpenWebTruss,
    Steel,
}

/// <summary>
/// Joists as found. Positions are centre lines across the run, measured from the outline's lowest coordinate in that
/// direction, in any order; or a spacing and the first centre.
/// </summary>
public sealed record JoistField
{
    public required string Id { get; init; }

    /// <summary>The part of the room that it covers, an open ring; null when it covers all of it.</summary>
    public IReadOnlyList<Point>? Region { get; init; }

    /// <summary>Direction of the joists, degrees anticlockwise from +x, in [0, 180). 0 is along x, 90 along y.</summary>
    public required decimal RunDegrees { get; init; }

    public JoistKind Kind { get; init; } = JoistKind.Sawn;

    public Length? Depth { get; init; }

    /// <summary>Width of the nailing face.</summary>
    public required Length Face { get; init; }

    public IReadOnlyList<Length>? Positions { get; init; }

    public Length? Spacing { get; init; }

    public Length? First { get; init; }

    /// <summary>How level the undersides are, as read; empty when nobody looked.</summary>
    public IReadOnlyList<UndersideReading> Undersides { get; init; } = [];

    /// <summary>Species group as the floor tables name it (<c>S-P-F</c>, ...); null when not said.</summary>
    public string? Species { get; init; }

    /// <summary>Grade as the floor tables name it (<c>No.1 and No.2</c>, ...); null when not said.</summary>
    public string? Grade { get; init; }

    /// <summary>From face to face of what carries the joists; null when not said.</summary>
    public Length? ClearSpan { get; init; }

    /// <summary>True when the floor has bridging, false when it has none; null when not said.</summary>
    public bool? Bridging { get; init; }
}

/// <summary>How the joints of a row may be made.</summary>
[Flags]
public enum JointStyles
{
    OnJoist = 1,
    SideLap = 2,
    Scab = 4,
    Block = 8,
}

public sealed record StrappingWish
{
    /// <summary>True when the board is screwed straight to the joists: no straps.</summary>
    public bool Direct { get; init; }

    /// <summary>How far the straps bring the board below the joists; zero without straps.</summary>
    public Length Depth => Direct ? Length.Zero : Thickness;

    /// <summary>What of an old ceiling board screws go through: all of it where the board is screwed to the joists, nothing under straps.</summary>
    public Length BehindBoard(Length old) => Direct ? old : Length.Zero;

    public string? SizeName { get; init; }

    public required Length Thickness { get; init; }

    public required Length Face { get; init; }

    public required Length MaxSpacing { get; init; }

    public required JointStyles JointsAllowed { get; init; }

    public required Length MinPiece { get; init; }

    public required IReadOnlyList<StickStock> Stock { get; init; }

    public required Length Kerf { get; init; }

    public required Length EndTrim { get; init; }

    public required Length EndClearance { get; init; }

    public Length? LongestHandled { get; init; }
}

/// <summary>A length of strap that can be bought. A pack is one length unless said.</summary>
public sealed record StickStock(
    string Id, Length Length, string? Sku = null, int PackSize = 1, decimal? PackPrice = null, int? Quantity = null);

public sealed record SheetWish
{
    /// <summary>Board type as a trade word, for example <c>regular</c>.</summary>
    public required string Type { get; init; }

    public required Length Thickness { get; init; }

    public int Layers { get; init; } = 1;

    /// <summary>True when a water-based texture is to be sprayed on.</summary>
    public bool Textured { get; init; }

    /// <summary>Fire rating wanted, as the fastener table names it (<c>45 min</c>, <c>1 h</c>, <c>1.5 h</c>); null for none.</summary>
    public string? FireRating { get; init; }

    public required IReadOnlyList<SheetStock> Stock { get; init; }

    /// <summary>How much shorter than the drawn space a piece is cut at each wall, so that it goes in without force.</summary>
    public required Length CutAllowance { get; init; }

    /// <summary>Least distance along the joists between butts of neighbouring courses; null means two row spaces.</summary>
    public Length? MinStagger { get; init; }

    /// <summary>Least row spaces between butts of neighbouring courses, where no distance is given.</summary>
    public int StaggerRows { get; init; } = 2;

    /// <summary>Money that finishing one metre of butt joint is worth; zero means material only.</summary>
    public decimal ButtCostPerMetre { get; init; }

    /// <summary>Money that finishing one metre of tapered joint is worth.</summary>
    public decimal TaperedCostPerMetre { get; init; }
}

public sealed record SheetStock(
    string Id, Length Width, Length Length, string? Sku = null, int PackSize = 1, decimal? PackPrice = null, int? Quantity = null);

/// <summary>The caller's price list. Stock prices given with the stock win over these.</summary>
public sealed record PriceList
{
    /// <summary>ISO 4217 code.</summary>
    public required string Currency { get; init; }

    public IReadOnlyList<PricedItem> Items { get; init; } = [];

    /// <summary>Waste by class as a fraction added to what is counted (counted × (1 + waste)).</summary>
    public IReadOnlyDictionary<string, decimal> Waste { get; init; } = new Dictionary<string, decimal>();

    /// <summary>Spare sticks as a fraction of those cut, of one-inch and of two-inch wood; null takes the usual one, 0 none.</summary>
    public decimal? OneByCulls { get; init; }

    public decimal? TwoByCulls { get; init; }

    /// <summary>Taxes on the sum of the amounts, in the caller's order. None is charged on another.</summary>
    public IReadOnlyList<TaxRate> Taxes { get; init; } = [];

    /// <summary>What work costs; null when labour is not counted.</summary>
    public LabourRates? Labour { get; init; }
}

/// <summary>A tax by the name that the order shows, as a fraction of the amounts that it is charged on.</summary>
public sealed record TaxRate(string Name, decimal Rate, bool OnLabour);

/// <summary>
/// The price of an hour, and the hours that a caller's own crew takes: for one strap piece put up, for one sheet hung and
/// for one foot or metre of joint finished. Nothing is assumed for those left out.
/// </summary>
public sealed record LabourRates(decimal HourPrice, decimal? PerStrapPiece, decimal? PerBoardPiece, decimal? PerJointLength);

public sealed record PricedItem(string Code, string? Id, string? Sku, decimal PackSize, decimal PackPrice);
