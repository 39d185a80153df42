using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Requests;

/// <summary>
/// Joists that run one way. Give either `positions`, or `spacing` and `first`; and either `run` or `runDegrees`.
/// Positions are centre lines across the run, from the outline's lowest coordinate in that direction.
/// </summary>
public sealed record JoistFieldRequest
{
    /// <summary>The caller's id for it.</summary>
    public string? Id { get; init; }

    /// <summary>
    /// The part of the room that it covers, corners in order; may be left out when there is one field. Regions may overlap,
    /// as joists do that lap side by side over a beam. A joist runs from the lowest to the highest place of its region.
    /// </summary>
    public IReadOnlyList<WirePoint>? Region { get; init; }

    /// <summary>Direction of the joists.</summary>
    public RunWord? Run { get; init; }

    /// <summary>Direction of the joists in degrees anticlockwise from +x, from 0 to below 180.</summary>
    public decimal? RunDegrees { get; init; }

    /// <summary>What the joists are. Default `sawn`.</summary>
    public JoistWord? Kind { get; init; }

    /// <summary>Nominal size of sawn joists: gives their depth and face where those are left out.</summary>
    public JoistSizeWord? Size { get; init; }

    /// <summary>Species group of sawn joists, as stamped. Nothing is assumed: without it the floor tables are not read.</summary>
    public SpeciesWord? Species { get; init; }

    /// <summary>Grade of sawn joists, as stamped. Nothing is assumed: without it the floor tables are not read.</summary>
    public GradeWord? Grade { get; init; }

    /// <summary>Clear span of the joists, face to face of what carries them. It may reach beyond the room.</summary>
    public WireLength? ClearSpan { get; init; }

    /// <summary>Whether rows of bridging stand between the joists, not over 2100 mm (83 in) apart.</summary>
    public bool? Bridging { get; init; }

    /// <summary>Depth of the joists.</summary>
    public WireLength? Depth { get; init; }

    /// <summary>Width of the nailing face. Default 1-1/2 in, 38 mm.</summary>
    public WireLength? Face { get; init; }

    /// <summary>Distance between joists on centre, when they are regular.</summary>
    public WireLength? Spacing { get; init; }

    /// <summary>Centre line of the first joist, when they are regular.</summary>
    public WireLength? First { get; init; }

    /// <summary>Centre lines as found, in any order.</summary>
    public IReadOnlyList<WireLength>? Positions { get; init; }

    /// <summary>
    /// How level the joists are, each reading under one of them. Between two readings on a joist its underside is taken as straight,
    /// beyond them as level; a joist without a reading lies in line between its nearest neighbours that have one. Left out, the joists
    /// are taken as level. Where one field has readings every field needs some.
    /// </summary>
    public IReadOnlyList<UndersideRequest>? Undersides { get; init; }
}

/// <summary>How high the underside of the joists is at one place.</summary>
public sealed record UndersideRequest
{
    /// <summary>The place: under the joist, up to 1 in (25 mm) off its face.</summary>
    public WirePoint? At { get; init; }

    /// <summary>Height of the underside above (or, negative, below) a level line that is the same for all readings of the room.</summary>
    public WireLength? Level { get; init; }
}
