using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Tests.Optimum;

namespace LayoutService.Engine.Tests.Drawing;

/// <summary>The invented rooms with lights, a register, a bulkhead along the first wall and batts; dice of their own.</summary>
internal static class FullRooms
{
    public static Survey Of(SeededSurvey room)
    {
        var survey = room.Survey;
        var dice = new RoomDice(unchecked((ulong)room.Seed * 0xC2B2AE3DUL) + 5);
        var outline = survey.Room.Outline;
        var (left, low) = (outline.Min(p => p.X.Units), outline.Min(p => p.Y.Units));
        var (wide, high) = (outline.Max(p => p.X.Units) - left, outline.Max(p => p.Y.Units) - low);
        var unit = survey.Units == UnitSystem.Imperial ? Length.PerInch : 25 * Length.PerMillimetre;
        Point Place() => new(
            new Length(left + (wide * dice.Whole(15, 85) / 100 / unit * unit)), new Length(low + (high * dice.Whole(15, 85) / 100 / unit * unit)));
        Length Units(long count) => new(count * unit);
        return survey with
        {
            Fixtures =
            [
                .. Enumerable.Range(1, 6).Select(i => new FixtureWish
                {
                    Id = $"L{i}",
                    Kind = i == 6 ? FixtureKind.Register : FixtureKind.SlimLight,
                    At = Place(),
                    Cutout = i == 6 ? new Cutout(Units(12), Units(6), false) : new Cutout(Units(6), Units(6), true),
                    BodyDepth = Units(1),
                    ClipReach = Units(1),
                    InsulationContact = true,
                    MaxShift = Units(i % 2 == 0 ? 10 : 0),
                    EdgeClearance = Units(1),
                }),
            ],
            Bulkheads = room.Seed % 2 == 0
                ? [new BulkheadWish { Id = "along", Edges = [0], Width = Units(20), Drop = Units(9), Frame = new("2x2", Units(2), Units(2), [new StickStock("frame", Units(120))]) }]
                : [],
            Insulation = room.Seed % 3 == 0
                ? new InsulationWish { Purpose = InsulationPurpose.Sound, Batts = [new Batt("r13", Units(4), Units(15), Units(48), 2.29m, true)], JoistDepths = [Units(9)] }
                : null,
        };
    }
}
