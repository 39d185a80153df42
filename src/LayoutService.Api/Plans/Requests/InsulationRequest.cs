using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Requests;

/// <summary>Batts between the joists.</summary>
public sealed record InsulationRequest
{
    /// <summary>What they are for. Default `sound` when anything else is said here, else `none`.</summary>
    public InsulationWord? Purpose { get; init; }

    /// <summary>
    /// Batts that can be bought. Default: the batts of the material catalogue that suit the purpose, as
    /// `GET /v1/materials` lists them, 48 in or 1220 mm long.
    /// </summary>
    public IReadOnlyList<BattRequest>? Batts { get; init; }

    /// <summary>Which bays are filled. Default `all`.</summary>
    public BaysWord? Bays { get; init; }

    /// <summary>The part of the room that is filled; it goes with `bays: region`.</summary>
    public IReadOnlyList<WirePoint>? Region { get; init; }
}

/// <summary>What batts are for.</summary>
public enum InsulationWord
{
    Sound,
    Thermal,
    None,
}

/// <summary>Which bays are filled.</summary>
public enum BaysWord
{
    All,
    Region,
}

/// <summary>A batt that can be bought.</summary>
public sealed record BattRequest
{
    /// <summary>The caller's id for it.</summary>
    public string? Id { get; init; }

    /// <summary>Thickness before it is squeezed.</summary>
    public WireLength? Thickness { get; init; }

    /// <summary>Width; a bay that is wider takes strips side by side.</summary>
    public WireLength? Width { get; init; }

    /// <summary>Length.</summary>
    public WireLength? Length { get; init; }

    /// <summary>Thermal resistance before it is squeezed, R in imperial units, RSI in metric. Default an inch, RSI 2.2 for 100 mm.</summary>
    public decimal? R { get; init; }

    /// <summary>True when it can be split to half its thickness. Default false.</summary>
    public bool? Splittable { get; init; }

    /// <summary>Batts in a pack. Default 1.</summary>
    public int? PackSize { get; init; }

    /// <summary>Price of a pack.</summary>
    public decimal? PackPrice { get; init; }
}

/// <summary>How sheets and sticks get in.</summary>
public sealed record AccessRequest
{
    /// <summary>Narrowest places on the way in: everything goes through each of them.</summary>
    public IReadOnlyList<PassageRequest>? Passages { get; init; }

    /// <summary>The tightest turn on the way in.</summary>
    public TurnRequest? Turn { get; init; }

    /// <summary>A window that is used instead by what does not get through the passages and round the turn.</summary>
    public PassageRequest? Window { get; init; }
}

/// <summary>A gap that things are carried through.</summary>
public sealed record PassageRequest
{
    /// <summary>Clear width.</summary>
    public WireLength? Width { get; init; }

    /// <summary>Clear height.</summary>
    public WireLength? Height { get; init; }
}

/// <summary>A square turn between two passages.</summary>
public sealed record TurnRequest
{
    /// <summary>Clear width before the turn.</summary>
    public WireLength? WidthBefore { get; init; }

    /// <summary>Clear width after the turn.</summary>
    public WireLength? WidthAfter { get; init; }

    /// <summary>Clear height at the turn; without it nothing is tilted to get round.</summary>
    public WireLength? Height { get; init; }
}

/// <summary>Who lifts.</summary>
public sealed record CrewRequest
{
    /// <summary>How many people. Default 2.</summary>
    public int? People { get; init; }

    /// <summary>True when there is a board lift. Default true.</summary>
    public bool? Lift { get; init; }

    /// <summary>Most that they lift at once, lb or kg. Default none with a lift; without one the rule `lift-mass-most`, for one person half of it.</summary>
    public decimal? MassLimit { get; init; }
}
