using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Engine.Fixtures;

namespace LayoutService.Api.Plans.Writing;

/// <summary>Writes fixtures, light grid and mounts.</summary>
internal static class FixtureWriting
{
    public static IReadOnlyList<FixtureAnswer> Fixtures(FixturePlan plan, AnswerInk ink) =>
        [.. plan.Fixtures.Select(f => new FixtureAnswer
        {
            Id = f.Id,
            Kind = Words.Text(f.Wish.Kind),
            At = ink.Place(f.At),
            BulkheadId = f.BulkheadId,
            Shift = ink.Number(f.Shift),
            ShiftText = ink.Mark(f.Shift),
            Clearances = new(
                ink.Number(f.Clearances.Strap), ink.Number(f.Clearances.Joist), ink.Number(f.Clearances.Service),
                ink.Number(f.Clearances.Seam), ink.Number(f.Clearances.Wall)),
            Status = Words.Text(f.Status),
            OpensOldCeiling = f.OpensOldCeiling ? true : null,
            Reasons = AnswerInk.Why(f.Reasons),
        })];

    public static IReadOnlyList<MountAnswer> Mounts(FixturePlan plan, AnswerInk ink) =>
        [.. plan.Mounts.Select(m => new MountAnswer(
            m.Wish.Id, ink.Place(m.Wish.At), ink.Mass(m.Wish.MassKilograms), m.HangsFrom, AnswerInk.Say(m.Said)))];

    public static LightGridAnswer? Grid(LightGridPlan? grid, AnswerInk ink) => grid is null ? null : new()
    {
        Fixtures = grid.Fixtures,
        Asked = grid.Asked,
        Needed = grid.Needed,
        Lux = Plain(grid.Lux),
        Area = Figures.Area((double)grid.AreaSquareMetres, ink.Imperial),
        RoomIndex = Plain(grid.RoomIndex),
        MountingHeight = ink.Number(grid.MountingHeight),
        Spacing = ink.Number(grid.Spacing),
        SpacingText = ink.Mark(grid.Spacing),
        SpacingToHeight = Plain(grid.SpacingToHeight),
        SpacingToHeightLimit = Plain(grid.SpacingToHeightLimit),
        Departure = ink.Number(grid.Departure),
        Arms = [.. grid.Arms.Select(a => new GridArmAnswer(a.AlongCount, a.AcrossCount, ink.Number(a.AlongSpacing), ink.Number(a.AcrossSpacing)))],
        Cable = new(grid.Cable.Order, ink.Number(grid.Cable.OnPlan), ink.Number(grid.Cable.WithSlack), ink.Mark(grid.Cable.WithSlack)),
    };

    private static decimal? Plain(decimal? value) => value is { } known ? Figures.Plain(known, 3) : null;
}
