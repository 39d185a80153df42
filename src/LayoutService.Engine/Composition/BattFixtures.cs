using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Composition;

/// <summary>
/// What fixtures keep from batts: a body that reaches up between the joists takes its own room; a light that batts may not
/// touch keeps them its distance away on every side, and nothing lies over it.
/// </summary>
internal static class BattFixtures
{
    public static IEnumerable<BattObstacle> Of(FramedRoom room, IReadOnlyList<PlacedFixture> placed, RuleBook book)
    {
        var survey = room.Survey;
        var gap = (survey.Strapping.Depth + (survey.Sheets.Thickness * survey.Sheets.Layers)).Units;
        foreach (var (wish, hole) in placed.Select(p => (p.Wish, p.Hole)))
        {
            var ring = new Uv[]
            {
                new(hole.Along.Lo, hole.Across.Lo), new(hole.Along.Hi, hole.Across.Lo), new(hole.Along.Hi, hole.Across.Hi), new(hole.Along.Lo, hole.Across.Hi),
            };
            if (wish.IsLight && !wish.InsulationContact)
            {
                var clear = book.Limit("light-insulation-clearance", survey.Units == UnitSystem.Imperial).Value.Length.Units;
                yield return new BattObstacle(wish.Id, ObstacleKind.Fixture, ring, clear, long.MinValue / 4, long.MaxValue / 4);
            }
            else if (wish.BodyDepth.Units > gap)
            {
                yield return new BattObstacle(wish.Id, ObstacleKind.Fixture, ring, 0, gap - wish.BodyDepth.Units, 0);
            }
        }
    }
}
