using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Requests;

/// <summary>The room as measured, seen from above.</summary>
public sealed record RoomRequest
{
    /// <summary>Corners in order, either way round; the first may be repeated at the end.</summary>
    public IReadOnlyList<WirePoint>? Outline { get; init; }

    /// <summary>
    /// Where the tape was held. Default `framing`. With `finished` the lining stands and stays: straps and board are planned between the faces
    /// as measured, nothing is added or taken off, and the caution `walls_lined` says what it changes.
    /// </summary>
    public OutlineFaceWord? OutlineFace { get; init; }

    /// <summary>Posts, chimneys and stairs that the ceiling goes round.</summary>
    public IReadOnlyList<OpeningRequest>? Openings { get; init; }

    /// <summary>Heights measured from the floor as it is up to the underside of the joists.</summary>
    public IReadOnlyList<HeightRequest>? Heights { get; init; }

    /// <summary>Thickness of floor still to come. Without it headroom is not checked.</summary>
    public WireLength? FloorBuildUp { get; init; }

    /// <summary>What stands at each edge.</summary>
    public IReadOnlyList<WallRequest>? Walls { get; init; }

    /// <summary>A ceiling that is there already; left out means bare joists.</summary>
    public ExistingRequest? Existing { get; init; }

    /// <summary>The space above the floor.</summary>
    public NeighbourRequest? Above { get; init; }

    /// <summary>The space below the ceiling, this room as the code sees it. Taken as heated unless it says otherwise.</summary>
    public NeighbourRequest? Below { get; init; }

    /// <summary>What the room is used for.</summary>
    public RoomUseWord? Use { get; init; }

    /// <summary>True for a room made in a building that stands already; some codes then ask for less height. Default false.</summary>
    public bool? ExistingBuilding { get; init; }

    /// <summary>True for a room of a secondary suite. Default false.</summary>
    public bool? SecondarySuite { get; init; }
}

/// <summary>A hole in the ceiling.</summary>
public sealed record OpeningRequest
{
    /// <summary>The caller's id for it.</summary>
    public string? Id { get; init; }

    /// <summary>
    /// What it is for. Default `other`. Round a `stair`, or a `well` that is open to the floor above, the board's edge shows: nailers and bead go round
    /// it, and no seam lies on the line of its corner when there is a choice.
    /// </summary>
    public OpeningWord? Kind { get; init; }

    /// <summary>Corners in order.</summary>
    public IReadOnlyList<WirePoint>? Outline { get; init; }

    /// <summary>Distance that straps keep from it; the board runs up to it. Default 0.</summary>
    public WireLength? Clearance { get; init; }

    /// <summary>
    /// Of a stair: plumb from the line of its finished nosings up to the underside of the joists where the well begins. Straps and board come off
    /// it, and what is left is held to the code's height over stairs. Without it that is `not-checked`.
    /// </summary>
    public WireLength? Headroom { get; init; }
}

/// <summary>One height reading.</summary>
public sealed record HeightRequest
{
    /// <summary>
    /// Where it was taken; without it, it stands for the whole room. Where `undersides` are given a height is brought from its place
    /// to the plane of the straps; one without a place counts as taken under the lowest joist.
    /// </summary>
    public WirePoint? At { get; init; }

    /// <summary>From the floor as it is up to the underside of the joists.</summary>
    public WireLength? FloorToJoist { get; init; }
}

/// <summary>What stands at one edge of the outline.</summary>
public sealed record WallRequest
{
    /// <summary>Edge number: edge i runs from corner i to corner i + 1 of the outline as sent.</summary>
    public int? Edge { get; init; }

    /// <summary>
    /// What the wall is. Into `concrete` ledgers and nailers take concrete screws. `later` is framed after the ceiling: straps and board
    /// run to its line, and no ledger can be fastened there. `open`: no wall; straps and board end at the line, whose edge shows and is beaded,
    /// with nailers behind it where it runs with the joists; no ledger can be fastened there either.
    /// </summary>
    public WallWord? Kind { get; init; }
}

/// <summary>A ceiling that is there already.</summary>
public sealed record ExistingRequest
{
    /// <summary>What it is made of.</summary>
    public ExistingWord? Material { get; init; }

    /// <summary>Its thickness; needed when it stays.</summary>
    public WireLength? Thickness { get; init; }

    /// <summary>
    /// True when it stays and is strapped over, screws reaching through it into the joists; false when it comes down first. Default true.
    /// What one that stays is opened for (deep fixtures, driver boxes, blocks between joists) is told; batts and scabs find no room above it.
    /// </summary>
    public bool? Stays { get; init; }

    /// <summary>True of a ceiling that is there and stays.</summary>
    internal static bool IsThere(ExistingRequest? existing) => existing is { Stays: true } or { Stays: null, Thickness: not null } or { Stays: null, Material: not null };
}

/// <summary>What lies on the other side of the floor or of the ceiling.</summary>
public sealed record NeighbourRequest
{
    /// <summary>What that space is used for.</summary>
    public NeighbourWord? Use { get; init; }

    /// <summary>True when it is heated. Decides what is said of vapour and air barriers; nothing is said where it is left out above.</summary>
    public bool? Heated { get; init; }
}
