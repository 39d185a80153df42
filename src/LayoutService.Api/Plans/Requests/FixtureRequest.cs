using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Requests;

/// <summary>
/// Something let into the ceiling. Its hole is kept off straps, seams, walls and other holes, and its body off joists and
/// services that it would meet.
/// </summary>
public sealed record FixtureRequest
{
    /// <summary>The caller's id for it. Default: `fixture-1` and so on, by its number in the list.</summary>
    public string? Id { get; init; }

    /// <summary>What it is.</summary>
    public FixtureWord? Kind { get; init; }

    /// <summary>Its centre. Left out in `lightGrid.fixture`, where the grid finds the places.</summary>
    public WirePoint? At { get; init; }

    /// <summary>The hole for it.</summary>
    public CutoutRequest? Cutout { get; init; }

    /// <summary>How far it reaches up from the finished face. The default depends on the kind and is listed under `assumed`.</summary>
    public WireLength? BodyDepth { get; init; }

    /// <summary>A box that is fed through the hole and laid in the bay, such as the driver of a slim light.</summary>
    public BoxRequest? RemoteBox { get; init; }

    /// <summary>How much clear board its clips need round the hole. Default 0, for slim lights and speakers 3/4 in or 19 mm.</summary>
    public WireLength? ClipReach { get; init; }

    /// <summary>True when batts and wood may touch it. Default false.</summary>
    public bool? InsulationContact { get; init; }

    /// <summary>How far it may be moved, straight from where it is asked for. Default 0: it stays.</summary>
    public WireLength? MaxShift { get; init; }

    /// <summary>Distance that the edge of its hole keeps from straps, seams, walls and other holes. Default 1/2 in or 13 mm.</summary>
    public WireLength? EdgeClearance { get; init; }
}

/// <summary>What a fixture is.</summary>
public enum FixtureWord
{
    SlimLight,
    CanLight,
    Alarm,
    Register,
    Return,
    Fan,
    Speaker,
    AccessDoor,
    Box,
    Sprinkler,
    Other,
}

/// <summary>A round hole by its `diameter`, or a rectangular one by `width` and `height`.</summary>
public sealed record CutoutRequest
{
    /// <summary>Of a round hole.</summary>
    public WireLength? Diameter { get; init; }

    /// <summary>Along x.</summary>
    public WireLength? Width { get; init; }

    /// <summary>Along y.</summary>
    public WireLength? Height { get; init; }
}

/// <summary>A box by its three sizes.</summary>
public sealed record BoxRequest
{
    /// <summary>Width.</summary>
    public WireLength? Width { get; init; }

    /// <summary>Length.</summary>
    public WireLength? Length { get; init; }

    /// <summary>Height.</summary>
    public WireLength? Height { get; init; }
}

/// <summary>
/// A regular grid of lights to lay out: by `count`, by `rows` and `columns`, or by the `lux` wanted and the `lumens` of one
/// light (lumen method: lights = lux × area / (lumens × utilisation × maintenance), rounded up). Half a space is left at walls.
/// Each arm of an L or T room has its own grid.
/// </summary>
public sealed record LightGridRequest
{
    /// <summary>How many lights, at least: a number that makes no regular grid is rounded up to one that does.</summary>
    public int? Count { get; init; }

    /// <summary>Lines of lights that run along x; with `columns`. For a room of one rectangle, or each arm of it.</summary>
    public int? Rows { get; init; }

    /// <summary>Lines of lights that run along y; with `rows`.</summary>
    public int? Columns { get; init; }

    /// <summary>Average light wanted on the work plane, lux. Needs `lumens`.</summary>
    public decimal? Lux { get; init; }

    /// <summary>Light of one fixture, lumen. With it the light reached is told however the grid was asked for.</summary>
    public decimal? Lumens { get; init; }

    /// <summary>Height of the work plane above the finished floor. Default 30 in or 760 mm.</summary>
    public WireLength? WorkHeight { get; init; }

    /// <summary>Utilisation factor: the share of the lamps' light that reaches the work plane. Default 0.6.</summary>
    public decimal? Utilisation { get; init; }

    /// <summary>Maintenance factor: the share of the light left between cleanings. Default 0.8.</summary>
    public decimal? Maintenance { get; init; }

    /// <summary>The greatest spacing over mounting height that the light's maker allows. Without it the ratio is told, not judged.</summary>
    public decimal? SpacingToHeight { get; init; }

    /// <summary>The light: kind, hole, body. Its `id` starts the ids (default `light`: `light-1` and so on); it has no `at`. Default `maxShift`: 6 in or 150 mm.</summary>
    public FixtureRequest? Fixture { get; init; }
}

/// <summary>Something heavy that hangs from a joist or from blocking between joists, never from a strap.</summary>
public sealed record MountRequest
{
    /// <summary>The caller's id for it. Default: `mount-1` and so on, by its number in the list.</summary>
    public string? Id { get; init; }

    /// <summary>Where it hangs.</summary>
    public WirePoint? At { get; init; }

    /// <summary>Its mass, lb or kg.</summary>
    public decimal? Mass { get; init; }
}
