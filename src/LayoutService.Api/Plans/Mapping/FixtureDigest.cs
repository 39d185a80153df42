using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>What of fixtures, light grid and mounts decides a plan.</summary>
internal static class FixtureDigest
{
    public static void Add(Survey survey, Action<string, object?> add)
    {
        add("fixtures", survey.Fixtures.Count);
        foreach (var fixture in survey.Fixtures)
        {
            Add(fixture, add);
        }

        add("grid", survey.LightGrid is null ? 0 : 1);
        if (survey.LightGrid is { } grid)
        {
            add("count", grid.Count);
            add("rows", grid.Rows);
            add("columns", grid.Columns);
            add("lux", Plain(grid.Lux));
            add("lumens", Plain(grid.Lumens));
            add("workHeight", grid.WorkHeight);
            add("utilisation", Plain(grid.Utilisation));
            add("maintenance", Plain(grid.Maintenance));
            add("spacingToHeight", Plain(grid.SpacingToHeight));
            Add(grid.Fixture, add);
        }

        foreach (var mount in survey.Mounts)
        {
            add("mount", mount.Id);
            add("at", mount.At);
            add("mass", Plain(mount.MassKilograms));
        }
    }

    private static void Add(FixtureWish fixture, Action<string, object?> add)
    {
        add("fixture", fixture.Id);
        add("kind", fixture.Kind);
        add("at", fixture.At);
        add("width", fixture.Cutout.Width);
        add("height", fixture.Cutout.Height);
        add("round", fixture.Cutout.Round);
        add("bodyDepth", fixture.BodyDepth);
        add("box", fixture.RemoteBox is { } box ? string.Join(',', box.Sorted) : null);
        add("clipReach", fixture.ClipReach);
        add("insulationContact", fixture.InsulationContact);
        add("maxShift", fixture.MaxShift);
        add("edgeClearance", fixture.EdgeClearance);
    }

    private static decimal? Plain(decimal? value) => value is { } known ? Figures.Plain(known, 12) : null;
}
