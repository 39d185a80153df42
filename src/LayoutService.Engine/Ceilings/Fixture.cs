using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>What is let into the ceiling; decides which rules of its own it has.</summary>
public enum FixtureKind
{
    /// <summary>A flat disc with a driver box beside it in the bay.</summary>
    SlimLight,

    /// <summary>A light in a deep housing.</summary>
    CanLight,

    /// <summary>Smoke or carbon monoxide alarm.</summary>
    Alarm,

    /// <summary>Where air comes out.</summary>
    Register,

    /// <summary>Where air goes back.</summary>
    Return,

    /// <summary>Exhaust fan.</summary>
    Fan,

    Speaker,

    AccessDoor,

    /// <summary>Electrical box.</summary>
    Box,

    Sprinkler,

    Other,
}

/// <summary>The hole for a fixture: its extent along x and along y, the same both ways when it is round.</summary>
public sealed record Cutout(Length Width, Length Height, bool Round);

/// <summary>A box that is fed through the hole and laid in the bay, by its three sizes in any order.</summary>
public sealed record RemoteBox(Length Width, Length Length, Length Height)
{
    /// <summary>The three sizes, least first.</summary>
    public long[] Sorted => [.. new[] { Width.Units, Length.Units, Height.Units }.Order()];
}

/// <summary>A fixture as it is asked for.</summary>
public sealed record FixtureWish
{
    public required string Id { get; init; }

    public required FixtureKind Kind { get; init; }

    /// <summary>Its centre.</summary>
    public required Point At { get; init; }

    public required Cutout Cutout { get; init; }

    /// <summary>How far it reaches up from the finished face.</summary>
    public required Length BodyDepth { get; init; }

    public RemoteBox? RemoteBox { get; init; }

    /// <summary>How much clear board its clips need round the hole.</summary>
    public required Length ClipReach { get; init; }

    /// <summary>True when batts may touch it.</summary>
    public required bool InsulationContact { get; init; }

    /// <summary>How far it may be moved; zero when it stays.</summary>
    public required Length MaxShift { get; init; }

    /// <summary>Distance that its hole keeps from straps, seams, walls and other holes.</summary>
    public required Length EdgeClearance { get; init; }

    /// <summary>True when the place came out of a light grid, not from the caller.</summary>
    public bool OfGrid { get; init; }

    /// <summary>True when it is an access panel that was added for services, not asked for by the caller.</summary>
    public bool AccessPanel { get; init; }

    public bool IsLight => Kind is FixtureKind.SlimLight or FixtureKind.CanLight;
}

/// <summary>A regular grid of lights to lay out: by count, by rows and columns, or by the light wanted.</summary>
public sealed record LightGridWish
{
    /// <summary>How many lights at least; null when not asked.</summary>
    public int? Count { get; init; }

    /// <summary>Lines of lights along x; with <see cref="Columns"/>.</summary>
    public int? Rows { get; init; }

    /// <summary>Lines of lights along y; with <see cref="Rows"/>.</summary>
    public int? Columns { get; init; }

    /// <summary>Average light wanted on the work plane, lux.</summary>
    public decimal? Lux { get; init; }

    /// <summary>Light of one fixture, lumen; null when not said: then no illuminance is worked out.</summary>
    public decimal? Lumens { get; init; }

    /// <summary>Height of the work plane above the finished floor.</summary>
    public required Length WorkHeight { get; init; }

    /// <summary>Share of the lamps' light that reaches the work plane, 0 to 1.</summary>
    public required decimal Utilisation { get; init; }

    /// <summary>Share of the light that is left between cleanings and lamp changes, 0 to 1.</summary>
    public required decimal Maintenance { get; init; }

    /// <summary>Greatest spacing over mounting height that the light's maker allows; null when not said.</summary>
    public decimal? SpacingToHeight { get; init; }

    /// <summary>The light; its place is not read.</summary>
    public required FixtureWish Fixture { get; init; }
}

/// <summary>Something heavy that hangs from a joist or from blocking, never from a strap.</summary>
public sealed record MountWish(string Id, Point At, decimal MassKilograms);

/// <summary>
/// A hole in a piece: the piece's corner that it is measured from, its centre (both in the caller's coordinates), its size, and
/// how it is marked on the finished face.
/// </summary>
public sealed record BoardCutout(string FixtureId, Point Corner, Point Centre, Cutout Size, Sentence Mark);
