using LayoutService.Auditor.Rooms;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>Seeded rooms under an old ceiling that stays, with fixtures and bulkheads, recomputed by the auditor. AUDIT_ROOMS sets how many (a quarter of it; 120 when it is not set).</summary>
public sealed class OldCeilingRoomsTests(Service service) : IClassFixture<Service>
{
    private static readonly RoomGenerator Rooms = new();

    private static int Count => AuditedAnswers.Count(120);

    [Fact]
    public async Task Every_room_under_an_old_ceiling_is_planned_and_the_auditor_finds_nothing() =>
        await AuditedAnswers.AssertCleanAsync(service, Enumerable.Range(1, Count), seed => OldCeilingRooms.Of(Rooms.Next(seed), seed));

    [Fact]
    public async Task Rooms_whose_joists_run_two_ways_under_an_old_ceiling_are_planned_and_the_auditor_finds_nothing() =>
        await AuditedAnswers.AssertCleanAsync(service, Enumerable.Range(1, Count / 4), seed => TwoWayRooms.Of(Rooms.Next(seed), seed) is { } room ? OldCeilingRooms.Of(room, seed) : null);

    [Fact]
    public async Task Rooms_with_bulkheads_under_an_old_ceiling_are_planned_and_the_auditor_finds_nothing() =>
        await AuditedAnswers.AssertCleanAsync(
            service, Enumerable.Range(1, Count / 2), seed => OldCeilingRooms.Of(BoxedRooms.Mixed(Rooms.Next(seed), seed), seed));
}
