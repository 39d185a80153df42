using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Checks;

/// <summary>What the checks need to know of a plan, and no more.</summary>
public sealed record CheckFacts
{
    /// <summary>The units that values and limits are said in.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>The straps; null when the board is fastened to the joists.</summary>
    public required StrapFacts? Straps { get; init; }

    public required BoardFacts Board { get; init; }

    public required HeadroomFacts Headroom { get; init; }

    public required FloorFacts Floor { get; init; }

    /// <summary>A measured length is right to within this; a check closer to its limit is marginal.</summary>
    public required Length SurveyTolerance { get; init; }

    /// <summary>Insulation that lies on the board, kg/m²; null when none does.</summary>
    public decimal? InsulationMassPerArea { get; init; }

    /// <summary>True when the batts are there for heat.</summary>
    public bool ThermalInsulation { get; init; }

    /// <summary>True when the caller listed the cables, pipes and ducts (also when the list says none).</summary>
    public bool ServicesGiven { get; init; }

    /// <summary>Ids of cables that lie in the gap between joists and board.</summary>
    public IReadOnlyList<string> CablesInGap { get; init; } = [];

    /// <summary>Least distance of those cables from a strap's edge, seen from above; zero where one crosses a strap. Null without cables there.</summary>
    public Length? CableToStrap { get; init; }

    /// <summary>Ids of boxes, valves, dampers and cleanouts that the board would cover.</summary>
    public IReadOnlyList<string> Unreached { get; init; } = [];

    /// <summary>Ids of services that carry gas.</summary>
    public IReadOnlyList<string> GasServices { get; init; } = [];

    /// <summary>Ids of services that run hot.</summary>
    public IReadOnlyList<string> HotServices { get; init; } = [];

    /// <summary>Openings that are chimneys.</summary>
    public IReadOnlyList<string> Chimneys { get; init; } = [];

    public IReadOnlyList<string> Bulkheads { get; init; } = [];

    /// <summary>True when the walls were lined before the room was measured.</summary>
    public bool WallsLined { get; init; }

    /// <summary>Ids of the edges without a wall.</summary>
    public IReadOnlyList<string> OpenEdges { get; init; } = [];

    /// <summary>A ceiling that is there already.</summary>
    public ExistingCeiling? Existing { get; init; }

    /// <summary>Ids of fixtures, nailers and bulkhead members that it is opened for.</summary>
    public IReadOnlyList<string> OldCeilingOpened { get; init; } = [];

    /// <summary>What it weighs, kg/m²; null when that is not known.</summary>
    public decimal? ExistingMassPerArea { get; init; }

    /// <summary>What the warm side decides; null when it was not said.</summary>
    public Sentence? WarmSide { get; init; }

    public bool GarageBelow { get; init; }

    /// <summary>Ids of sisters beside joists that are too high to pack.</summary>
    public IReadOnlyList<string> Sisters { get; init; } = [];

    public IReadOnlyList<FixtureFact> Fixtures { get; init; } = [];

    /// <summary>The light grid; null when none was asked for.</summary>
    public GridFacts? Grid { get; init; }

    /// <summary>Ids of what hangs.</summary>
    public IReadOnlyList<string> Mounts { get; init; } = [];

    /// <summary>Services that hang below the straps, and how far each sticks out.</summary>
    public IReadOnlyList<ServiceCover> Covers { get; init; } = [];

    /// <summary>The fire rating wanted of the ceiling (<c>45 min</c>, <c>1 h</c>, <c>1.5 h</c>); null when none.</summary>
    public string? FireRating { get; init; }
}

/// <summary>The straps as they hang. Spacings are on centre, the widest found.</summary>
public sealed record StrapFacts
{
    public required Length Thickness { get; init; }

    public required Length Face { get; init; }

    public required Length RowSpacing { get; init; }

    /// <summary>The rows that show the widest spacing.</summary>
    public required IReadOnlyList<string> Rows { get; init; }

    /// <summary>Widest distance between the supports of a strap; null on continuous backing.</summary>
    public required Length? SupportSpacing { get; init; }

    /// <summary>The joists that show the widest support spacing.</summary>
    public required IReadOnlyList<string> Supports { get; init; }

    public required StrapFastener Fastener { get; init; }

    public required Length FastenerLength { get; init; }

    /// <summary>What it goes through between strap and joist: an old ceiling that stays.</summary>
    public Length Through { get; init; }

    public required int FastenersPerCrossing { get; init; }

    /// <summary>
    /// The shortest neighbouring span over which every piece in the widest bay runs on; null when some piece ends on both
    /// sides of that bay, so that it carries it alone.
    /// </summary>
    public Length? NextSpan { get; init; }
}

public enum StrapFastener
{
    Nail,
    Screw,
}

/// <summary>The board and its fasteners. Supports are the straps, or the joists when there are none.</summary>
public sealed record BoardFacts
{
    /// <summary>A word of the board table: <c>regular</c>, <c>ceiling-board</c>, <c>lightweight</c>, <c>type-x</c>.</summary>
    public required string Type { get; init; }

    public required Length Thickness { get; init; }

    public required int Layers { get; init; }

    /// <summary>Least distance of seams from those of the layer below beside them, and the pieces that show it; null with one layer.</summary>
    public (Length Least, IReadOnlyList<string> Pieces)? LayerOffset { get; init; }

    /// <summary>The stagger that was asked for butts of neighbouring courses, the least that was found, and the pieces that show it; null when none was asked or no two are neighbours.</summary>
    public (Length Asked, Length Least, IReadOnlyList<string> Pieces)? Stagger { get; init; }

    /// <summary>True when the long edges are square to the supports.</summary>
    public bool Perpendicular { get; init; } = true;

    /// <summary>True when a water-based texture finish is wanted.</summary>
    public bool Textured { get; init; }

    /// <summary>Widest distance between neighbouring supports, on centre.</summary>
    public required Length SupportSpacing { get; init; }

    public required IReadOnlyList<string> Supports { get; init; }

    public required Length ScrewLength { get; init; }

    /// <summary>Thickness of an old ceiling that the board screws go through into the joists.</summary>
    public Length BehindBoard { get; init; }

    public required Length ScrewSpacing { get; init; }

    /// <summary>Least distance of a screw from a side or end of the board.</summary>
    public required Length ScrewEdge { get; init; }

    /// <summary>Mass of the heaviest sheet that is lifted, kg; null when it is not known.</summary>
    public decimal? HeaviestSheet { get; init; }

    public IReadOnlyList<string> HeaviestSheets { get; init; } = [];
}

/// <summary>Heights above the finished floor.</summary>
public sealed record HeadroomFacts
{
    /// <summary>Lowest finished ceiling; null when a height or the floor build-up was not given.</summary>
    public required Length? FinishedHeight { get; init; }

    public required bool HeightsGiven { get; init; }

    public required bool FloorBuildUpGiven { get; init; }

    /// <summary>A word of the height tables; null when the use was not said.</summary>
    public string? Use { get; init; }

    public bool ExistingBuilding { get; init; }

    public bool SecondarySuite { get; init; }

    /// <summary>Finished undersides of beams, ducts and bulkheads; null when the height is not known.</summary>
    public IReadOnlyList<Obstruction> Obstructions { get; init; } = [];

    public IReadOnlyList<StairFact> Stairs { get; init; } = [];
}

/// <summary>
/// A service below the straps: how far it comes below them outside of every bulkhead, or below the clear space of one
/// (<see cref="Bare"/> tells which); zero when it is covered.
/// </summary>
public sealed record ServiceCover(string ServiceId, Length SticksOut, IReadOnlyList<string> Bulkheads, bool Bare);

/// <summary>A stair: its finished headroom below the edge of its well, null when it was not measured, and its place in the request.</summary>
public sealed record StairFact(string Id, int Index, Length? Headroom);

public sealed record Obstruction(string Id, Length? Underside);

/// <summary>The floor overhead.</summary>
public sealed record FloorFacts
{
    public required JoistKind Joists { get; init; }

    /// <summary>Species group of the joists, as the span tables name it; null when not said.</summary>
    public string? Species { get; init; }

    /// <summary>Grade of the joists, as the span tables name it; null when not said.</summary>
    public string? Grade { get; init; }

    /// <summary>Clear span of the joists, face to face of what carries them; null when not said.</summary>
    public Length? ClearSpan { get; init; }

    /// <summary>Widest distance between neighbouring joists, on centre; null with fewer than two.</summary>
    public Length? JoistSpacing { get; init; }

    /// <summary>Thickness of the joists, which is the nailing face of sawn ones.</summary>
    public Length? JoistThickness { get; init; }

    /// <summary>True when the floor has bridging; null when not said.</summary>
    public bool? Bridging { get; init; }

    /// <summary>Shallowest joist; null when not given.</summary>
    public Length? JoistDepth { get; init; }

    /// <summary>Area of the space that the ceiling closes, m².</summary>
    public required decimal ConcealedArea { get; init; }

    /// <summary>Longest side of that space.</summary>
    public Length? ConcealedLength { get; init; }

    /// <summary>Greatest height from the floor to the joists; null when no height was given.</summary>
    public Length? WallHeight { get; init; }

    /// <summary>Greatest step between neighbouring fastening faces, packed as planned; null when the undersides were not given.</summary>
    public Length? GreatestStep { get; init; }

    /// <summary>The same as found, before packing.</summary>
    public Length? StepFound { get; init; }

    public IReadOnlyList<string> StepAt { get; init; } = [];
}
