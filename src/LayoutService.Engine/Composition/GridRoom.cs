using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>Lays the light grid of a survey and adds its lights to the fixtures, so that they are placed like any other.</summary>
public static class GridRoom
{
    /// <summary>The framed room with the grid's lights among its fixtures, and the grid as it was laid; null without one.</summary>
    public static (FramedRoom Room, LaidGrid? Grid) Of(Survey survey)
    {
        var room = AccessPanels.In(FramedRoom.Of(survey));
        if (survey.LightGrid is not { } wish)
        {
            return (room, null);
        }

        var grid = LightGridPlanner.Of(room, wish, SquareMetres(room));
        var lights = grid.Places
            .OrderBy(p => room.Frame.AcrossIn(p.V)).ThenBy(p => room.Frame.AlongIn(p.U))
            .Select((p, i) => wish.Fixture with { Id = $"{wish.Fixture.Id}-{i + 1}", At = room.Frame.Out(p) });
        return (FramedRoom.Of(room.Survey with { Fixtures = [.. room.Survey.Fixtures, .. lights] }), grid);
    }

    /// <summary>Floor of the room less its openings, m².</summary>
    public static decimal SquareMetres(FramedRoom room) => (decimal)(room.Board.Area / Math.Pow(1000.0 * Length.PerMillimetre, 2));

    /// <summary>How the grid came out, once its lights are placed.</summary>
    public static LightGridPlan? Write(FramedRoom room, LaidGrid? laid, IReadOnlyList<PlacedFixture> placed, IReadOnlyList<PlannedFixture> planned, Length? finishedHeight)
    {
        if (laid is null || room.Survey.LightGrid is not { } wish)
        {
            return null;
        }

        var lights = Enumerable.Range(0, placed.Count).Where(i => placed[i].Wish.OfGrid).ToList();
        var area = SquareMetres(room);
        var height = finishedHeight is { } finished && finished > wish.WorkHeight ? finished - wish.WorkHeight : (Length?)null;
        var spacing = new Length(laid.Arms.Select(a => Math.Max(a.Along > 1 ? a.AlongSpacing : 0, a.Across > 1 ? a.AcrossSpacing : 0)).DefaultIfEmpty(0).Max());
        var (order, onPlan) = CablePaths.Of([.. lights.Select(i => placed[i].Hole.At)]);
        return new LightGridPlan
        {
            Fixtures = [.. lights.Select(i => placed[i].Wish.Id)],
            Asked = laid.Asked,
            Needed = laid.Needed,
            Lux = wish.Lumens is { } lumens ? LumenMethod.LuxOf(lights.Count, area, lumens, wish.Utilisation, wish.Maintenance) : null,
            AreaSquareMetres = area,
            RoomIndex = height is { } h ? LumenMethod.RoomIndex(area, Perimeter(room), h.Millimetres / 1000m) : null,
            MountingHeight = height,
            Spacing = spacing,
            SpacingToHeight = height is { } mounting ? (decimal)spacing.Units / mounting.Units : null,
            SpacingToHeightLimit = wish.SpacingToHeight,
            Departure = new Length(lights.Select(i => planned[i].Shift.Units).DefaultIfEmpty(0).Max()),
            Arms = [.. laid.Arms.Select(a => new GridArm(a.Along, a.Across, new Length(a.AlongSpacing), new Length(a.AcrossSpacing)))],
            Cable = new CablePath([.. order.Select(i => placed[lights[i]].Wish.Id)], new Length(onPlan), new Length(CablePaths.WithSlack(onPlan, lights.Count))),
        };
    }

    private static decimal Perimeter(FramedRoom room) => (decimal)(Enumerable.Range(0, room.Outline.Count)
        .Sum(i => Rings.DistanceBetween(room.Outline[i], room.Outline[(i + 1) % room.Outline.Count])) / (1000.0 * Length.PerMillimetre));
}
