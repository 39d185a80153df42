using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Requests;

/// <summary>Something let into the ceiling.</summary>
public sealed record FixtureRequest
{
    /// <summary>The caller's id for it.</summary>
    public string? Id { get; init; }

    /// <summary>What it is.</summary>
    public FixtureWord? Kind { get; init; }

    /// <summary>Its centre.</summary>
    public WirePoint? At { get; init; }

    /// <summary>The hole for it.</summary>
    public CutoutRequest? Cutout { get; init; }

    /// <summary>How far it reaches up from the finished face.</summary>
    public WireLength? BodyDepth { get; init; }

    /// <summary>A box that is fed through the hole and laid in the bay.</summary>
    public BoxRequest? RemoteBox { get; init; }

    /// <summary>How much clear board its clips need round the hole.</summary>
    public WireLength? ClipReach { get; init; }

    /// <summary>True when batts may touch it.</summary>
    public bool? InsulationContact { get; init; }

    /// <summary>How far it may be moved.</summary>
    public WireLength? MaxShift { get; init; }

    /// <summary>Distance that its hole keeps from seams and straps.</summary>
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
    Other,
}

/// <summary>A round or square hole: `diameter`, or `width` and `height`.</summary>
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

/// <summary>A regular grid of lights.</summary>
public sealed record LightGridRequest
{
    /// <summary>Light wanted on the floor, lux.</summary>
    public decimal? Lux { get; init; }

    /// <summary>Light of one fixture, lumen.</summary>
    public decimal? Lumens { get; init; }

    /// <summary>The fixture.</summary>
    public FixtureRequest? Fixture { get; init; }
}

/// <summary>Something heavy that hangs.</summary>
public sealed record MountRequest
{
    /// <summary>The caller's id for it.</summary>
    public string? Id { get; init; }

    /// <summary>Where it hangs.</summary>
    public WirePoint? At { get; init; }

    /// <summary>Its mass, lb or kg.</summary>
    public decimal? Mass { get; init; }
}
