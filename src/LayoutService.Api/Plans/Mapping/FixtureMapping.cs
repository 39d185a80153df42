using System.Globalization;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>Fixtures, light grid and mounts, with their defaults. The defaults are common practice without a source.</summary>
internal static class FixtureMapping
{
    public static IReadOnlyList<FixtureWish> Of(IReadOnlyList<FixtureRequest>? fixtures, Assumptions assumed) =>
        [.. (fixtures ?? []).Select((f, i) => Of(
            f, string.Create(CultureInfo.InvariantCulture, $"#/fixtures/{i}"), IdOf(f, i), RoomMapping.PointOf(f.At!.Value, assumed.Imperial), (0, 0), assumed))];

    /// <summary>Id of a fixture: the caller's, or its number in the list.</summary>
    public static string IdOf(FixtureRequest fixture, int index) =>
        fixture.Id ?? string.Create(CultureInfo.InvariantCulture, $"fixture-{index + 1}");

    /// <summary>What the ids of a grid's lights start with.</summary>
    public static string GridIdOf(LightGridRequest grid) => grid.Fixture?.Id ?? "light";

    public static LightGridWish? Of(LightGridRequest? grid, Assumptions assumed)
    {
        if (grid is not { Fixture: { } fixture })
        {
            return null;
        }

        return new LightGridWish
        {
            Count = grid.Count,
            Rows = grid.Rows,
            Columns = grid.Columns,
            Lux = grid.Lux,
            Lumens = grid.Lumens,
            WorkHeight = assumed.Length("#/lightGrid/workHeight", "The height of the work plane", grid.WorkHeight, 30, 760),
            Utilisation = Factor(assumed, "#/lightGrid/utilisation", "The utilisation factor", grid.Utilisation, 0.6m),
            Maintenance = Factor(assumed, "#/lightGrid/maintenance", "The maintenance factor", grid.Maintenance, 0.8m),
            SpacingToHeight = grid.SpacingToHeight,
            Fixture = Of(fixture, "#/lightGrid/fixture", GridIdOf(grid), default, (6, 150), assumed) with { OfGrid = true },
        };
    }

    public static IReadOnlyList<MountWish> Of(IReadOnlyList<MountRequest>? mounts, Assumptions assumed) =>
        [.. (mounts ?? []).Select((m, i) => new MountWish(
            IdOf(m, i), RoomMapping.PointOf(m.At!.Value, assumed.Imperial), m.Mass!.Value * (assumed.Imperial ? Figures.KilogramsPerPound : 1m)))];

    /// <summary>Id of a mount: the caller's, or its number in the list.</summary>
    public static string IdOf(MountRequest mount, int index) =>
        mount.Id ?? string.Create(CultureInfo.InvariantCulture, $"mount-{index + 1}");

    /// <summary>The hole asked for; the request has been found sound.</summary>
    public static Cutout CutoutOf(CutoutRequest cutout, bool imperial) => cutout.Diameter is { } across
        ? new Cutout(across.In(imperial), across.In(imperial), true)
        : new Cutout(cutout.Width!.Value.In(imperial), cutout.Height!.Value.In(imperial), false);

    private static FixtureWish Of(
        FixtureRequest fixture, string at, string id, Point place, (decimal Inches, decimal Millimetres) shift, Assumptions assumed)
    {
        var kind = KindOf(fixture.Kind!.Value);
        var (depth, clip) = (BodyOf(kind), kind is FixtureKind.SlimLight or FixtureKind.Speaker ? (0.75m, 19m) : (0m, 0m));
        if (fixture.InsulationContact is null)
        {
            assumed.Note($"{at}/insulationContact", "false", "Whether batts may touch the fixture was not given; it is taken that they may not.");
        }

        return new FixtureWish
        {
            Id = id,
            Kind = kind,
            At = place,
            Cutout = CutoutOf(fixture.Cutout!, assumed.Imperial),
            BodyDepth = assumed.Length($"{at}/bodyDepth", "The depth of the body", fixture.BodyDepth, depth.Inches, depth.Millimetres),
            RemoteBox = fixture.RemoteBox is { } box ? new RemoteBox(In(box.Width), In(box.Length), In(box.Height)) : null,
            ClipReach = assumed.Length($"{at}/clipReach", "The reach of the clips", fixture.ClipReach, clip.Item1, clip.Item2),
            InsulationContact = fixture.InsulationContact ?? false,
            MaxShift = assumed.Length($"{at}/maxShift", "How far it may be moved", fixture.MaxShift, shift.Inches, shift.Millimetres),
            EdgeClearance = assumed.Length($"{at}/edgeClearance", "The clearance of the hole's edge", fixture.EdgeClearance, 0.5m, 13),
        };

        Length In(WireLength? length) => length!.Value.In(assumed.Imperial);
    }

    private static decimal Factor(Assumptions assumed, string pointer, string name, decimal? sent, decimal usual)
    {
        if (sent is null)
        {
            var text = usual.ToString(CultureInfo.InvariantCulture);
            assumed.Note(pointer, text, $"{name} was not given; {text} is taken (common practice, no source).");
        }

        return sent ?? usual;
    }

    private static (decimal Inches, decimal Millimetres) BodyOf(FixtureKind kind) => kind switch
    {
        FixtureKind.SlimLight => (1, 25),
        FixtureKind.CanLight => (7.5m, 190),
        FixtureKind.Alarm or FixtureKind.Box => (2.125m, 54),
        FixtureKind.Register or FixtureKind.Return => (6, 150),
        FixtureKind.Fan => (8, 200),
        FixtureKind.AccessDoor => (0, 0),
        FixtureKind.Sprinkler => (2, 50),
        _ => (4, 100),
    };

    private static FixtureKind KindOf(FixtureWord word) => word switch
    {
        FixtureWord.SlimLight => FixtureKind.SlimLight,
        FixtureWord.CanLight => FixtureKind.CanLight,
        FixtureWord.Alarm => FixtureKind.Alarm,
        FixtureWord.Register => FixtureKind.Register,
        FixtureWord.Return => FixtureKind.Return,
        FixtureWord.Fan => FixtureKind.Fan,
        FixtureWord.Speaker => FixtureKind.Speaker,
        FixtureWord.AccessDoor => FixtureKind.AccessDoor,
        FixtureWord.Box => FixtureKind.Box,
        FixtureWord.Sprinkler => FixtureKind.Sprinkler,
        _ => FixtureKind.Other,
    };
}
