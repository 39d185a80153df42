using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Where an old ceiling that stays is opened for a fixture. A body or a driver box that the new gap does not hold goes up
/// through it; a door opens it where what must be reached lies above it. Common practice, no source.
/// </summary>
internal static class OldCeilingCuts
{
    public static bool By(FramedRoom room, PlacedFixture fixture)
    {
        var (survey, wish) = (room.Survey, fixture.Wish);
        var box = fixture.Host < 0 ? null : room.Solids[fixture.Host];
        if (survey.Room.Through == Length.Zero || box is { Wish.BoardedAbove: true })
        {
            return false;
        }

        var board = box?.Board ?? (survey.Sheets.Thickness * survey.Sheets.Layers).Units;
        var hollow = box is null ? survey.Strapping.Depth.Units : box.FrameBottom - box.Top;
        return wish.BodyDepth.Units > board + hollow
            || (wish.RemoteBox is { } driver && driver.Sorted[0] > hollow)
            || AccessPanels.Behind(survey, wish).Any(service => service.Bottom <= survey.Room.Through);
    }
}
