using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Takeoff;

/// <summary>An alarm, a fan and an access door in the small ceiling.</summary>
internal static class SmallFixtures
{
    public static FixturePlan Plan { get; } = new([Of("alarm", FixtureKind.Alarm), Of("fan", FixtureKind.Fan), Of("door", FixtureKind.AccessDoor)], null, []);

    private static PlannedFixture Of(string id, FixtureKind kind) => new()
    {
        Wish = new FixtureWish
        {
            Id = id,
            Kind = kind,
            At = new Point(Length.FromInches(24), Length.FromInches(24)),
            Cutout = new Cutout(Length.FromInches(8), Length.FromInches(8), kind != FixtureKind.AccessDoor),
            BodyDepth = Length.FromInches(2),
            ClipReach = Length.Zero,
            InsulationContact = false,
            MaxShift = Length.Zero,
            EdgeClearance = Length.FromInches(0.5m),
        },
        At = new Point(Length.FromInches(24), Length.FromInches(24)),
        Shift = Length.Zero,
        Clearances = new HoleClearances(null, null, null, null, null),
        Status = FixtureStatus.AsAsked,
        Reasons = [],
    };
}
