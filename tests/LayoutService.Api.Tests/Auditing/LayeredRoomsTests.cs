using LayoutService.Auditor.Rooms;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>Seeded rooms with board in two or three layers, recomputed by the auditor. AUDIT_ROOMS sets how many (a quarter of it; 160 when it is not set).</summary>
public sealed class LayeredRoomsTests(Service service) : IClassFixture<Service>
{
    private static readonly RoomGenerator Rooms = new();

    private static int Count => AuditedAnswers.Count(160);

    [Fact]
    public async Task Every_room_with_layers_is_planned_and_the_auditor_finds_nothing() =>
        await AuditedAnswers.AssertCleanAsync(service, Enumerable.Range(1, Count), seed => LayeredRooms.Of(Rooms.Next(seed), seed));

    [Fact]
    public async Task Rooms_with_layers_on_their_joists_are_planned_and_the_auditor_finds_nothing() =>
        await AuditedAnswers.AssertCleanAsync(
            service, Enumerable.Range(1, Count / 2), seed => DirectRooms.Of(LayeredRooms.Of(Rooms.Next(seed), seed)),
            refused => refused.Contains("sheets_do_not_reach", StringComparison.Ordinal));

    [Fact]
    public async Task Rooms_with_layers_whose_joists_run_two_ways_are_planned_and_the_auditor_finds_nothing() =>
        await AuditedAnswers.AssertCleanAsync(service, Enumerable.Range(1, Count / 4), seed => LayeredRooms.Of(TwoWayRooms.Of(Rooms.Next(seed), seed), seed));
}
