using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>Hands the planned fixtures to the checks as facts.</summary>
public static class FixtureFactsWriter
{
    public static CheckFacts With(CheckFacts facts, Survey survey, FixturePlan plan) => plan.Fixtures.Count == 0 && plan.Mounts.Count == 0
        ? facts
        : facts with
        {
            Fixtures = [.. plan.Fixtures.Select(f => Fact(f, survey))],
            OldCeilingOpened = [.. plan.Fixtures.Where(f => f.OpensOldCeiling).Select(f => f.Id), .. facts.OldCeilingOpened],
            Mounts = [.. plan.Mounts.Select(m => m.Wish.Id)],
            Grid = plan.Grid is { } grid
                ? new GridFacts(grid.Lux, survey.LightGrid?.Lux, grid.SpacingToHeight, grid.SpacingToHeightLimit, grid.MountingHeight is not null, grid.Fixtures)
                : null,
        };

    private static FixtureFact Fact(PlannedFixture fixture, Survey survey)
    {
        var wish = fixture.Wish;
        return new FixtureFact
        {
            Id = wish.Id,
            Light = wish.IsLight,
            Wired = wish.IsLight || wish.Kind is FixtureKind.Alarm or FixtureKind.Fan or FixtureKind.Box or FixtureKind.Speaker,
            Fan = wish.Kind == FixtureKind.Fan,
            Sprinkler = wish.Kind == FixtureKind.Sprinkler,
            InsulationContact = wish.InsulationContact,
            Deep = FixtureRules.Of(survey, Length.Zero).Deep(wish),
            Clear = Length.Max(wish.EdgeClearance, wish.ClipReach),
            ToStrap = fixture.Clearances.Strap,
            ToSeam = fixture.Clearances.Seam,
            ToJoist = fixture.Clearances.Joist,
            InConflict = fixture.Status == FixtureStatus.Conflict,
        };
    }
}
