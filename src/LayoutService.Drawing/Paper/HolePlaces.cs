using LayoutService.Engine;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;

namespace LayoutService.Drawing.Paper;

/// <summary>Where the centres of lights and all else that is let in are marked: off the room's own left and front, its lowest x and y.</summary>
internal static class HolePlaces
{
    public static PaperTable Of(CeilingPlan plan, Survey survey)
    {
        var say = new TapeInk(survey.Units);
        var (left, front) = (survey.Room.Outline.Min(p => p.X), survey.Room.Outline.Min(p => p.Y));
        return new(
            "Centres of lights and other holes",
            ["Id", "From the left of the plan", "From its lower side", "Hole", "In", "Moved by"],
            [1, 2.4, 2.4, 2.4, 1.6, 1.4],
            [.. plan.Fixtures.Fixtures.Select(fixture => new[]
            {
                fixture.Id, say.Mark(fixture.At.X - left), say.Mark(fixture.At.Y - front), Size(fixture, say), fixture.BulkheadId ?? "ceiling",
                fixture.Shift.Units == 0 ? string.Empty : say.Mark(fixture.Shift),
            })]);
    }

    private static string Size(PlannedFixture fixture, TapeInk say) => fixture.Wish.Cutout is { Round: true } round
        ? $"{say.Mark(round.Width)} round"
        : $"{say.Mark(fixture.Wish.Cutout.Width)} by {say.Mark(fixture.Wish.Cutout.Height)}";
}
