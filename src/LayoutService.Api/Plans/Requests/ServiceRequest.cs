using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Requests;

/// <summary>A duct, pipe, beam or the like: a `path` with a `width`, or an `outline`.</summary>
public sealed record ServiceRequest
{
    /// <summary>The caller's id for it. Default `service-1` and so on.</summary>
    public string? Id { get; init; }

    /// <summary>What it is.</summary>
    public ServiceWord? Kind { get; init; }

    /// <summary>Its centre line, seen from above; it may run on past the walls.</summary>
    public IReadOnlyList<WirePoint>? Path { get; init; }

    /// <summary>Its width, square to the path; needed with a path.</summary>
    public WireLength? Width { get; init; }

    /// <summary>Its outline seen from above, instead of a path.</summary>
    public IReadOnlyList<WirePoint>? Outline { get; init; }

    /// <summary>Its top, down from the underside of the joists; negative is up in the bay. Default: the top of the bay.</summary>
    public WireLength? Top { get; init; }

    /// <summary>Its bottom, down from the underside of the joists; not above its top. Only a panned return may leave it out: 0.</summary>
    public WireLength? Bottom { get; init; }

    /// <summary>Distance to be kept from it. Default 0, or 1 in (25 mm) from a hot one.</summary>
    public WireLength? Clearance { get; init; }

    /// <summary>True when it gets hot. Default false.</summary>
    public bool? Hot { get; init; }

    /// <summary>True when someone must be able to reach it later. Default true for a box, valve, gas valve, damper or cleanout.</summary>
    public bool? NeedsReach { get; init; }
}

/// <summary>What a service is.</summary>
public enum ServiceWord
{
    Duct,
    PannedReturn,
    Pipe,
    Drain,
    Beam,
    Cable,
    Box,
    Valve,
    GasValve,
    Damper,
    Cleanout,
    Other,
}

/// <summary>A wall that meets the ceiling inside the room.</summary>
public sealed record PartitionRequest
{
    /// <summary>The caller's id for it.</summary>
    public string? Id { get; init; }

    /// <summary>
    /// Its centre line, two corners or more. An end within 1 in (25 mm) of a wall runs on to it.
    /// </summary>
    public IReadOnlyList<WirePoint>? Line { get; init; }

    /// <summary>Its thickness.</summary>
    public WireLength? Thickness { get; init; }

    /// <summary>
    /// What its top is fastened to. `joists` (the default): framed before the straps, which stop at it like the board; where it runs
    /// between two joists blocks carry its plate. `straps`: framed after the straps, which run on above it,
    /// and before the board, which stops at it; where it runs square to the joists a row lies half over each of its faces, for plate and board. `board`: stood
    /// after the board; straps and board run on above it.
    /// </summary>
    public PartitionTopWord? Top { get; init; }

    /// <summary>True when it is fire-rated: it then goes to the joists. Default false.</summary>
    public bool? Rated { get; init; }
}

/// <summary>What the top of a partition is fastened to.</summary>
public enum PartitionTopWord
{
    Joists,
    Straps,
    Board,
}

/// <summary>A box below the ceiling: along outline edges, hiding services, or by its own outline.</summary>
public sealed record BulkheadRequest
{
    /// <summary>The caller's id for it.</summary>
    public string? Id { get; init; }

    /// <summary>Outline edges that it runs along.</summary>
    public IReadOnlyList<int>? Edges { get; init; }

    /// <summary>Ids of the services that it hides.</summary>
    public IReadOnlyList<string>? Hides { get; init; }

    /// <summary>Its own outline.</summary>
    public IReadOnlyList<WirePoint>? Outline { get; init; }

    /// <summary>Finished width.</summary>
    public WireLength? Width { get; init; }

    /// <summary>From the finished ceiling to its finished underside.</summary>
    public WireLength? Drop { get; init; }

    /// <summary>The wood it is framed with.</summary>
    public FrameRequest? Frame { get; init; }

    /// <summary>True when the ceiling is boarded before it goes up.</summary>
    public bool? BoardedAbove { get; init; }
}

/// <summary>The wood that a bulkhead is framed with.</summary>
public sealed record FrameRequest
{
    /// <summary>Nominal size.</summary>
    public StrapSizeWord? Size { get; init; }

    /// <summary>Lengths that can be bought.</summary>
    public IReadOnlyList<StickStockRequest>? Stock { get; init; }
}
