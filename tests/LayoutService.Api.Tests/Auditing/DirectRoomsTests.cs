using System.Text.Json;
using LayoutService.Auditor.Rooms;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>Seeded rooms with their board screwed to the joists, recomputed by the auditor. AUDIT_ROOMS sets how many (a quarter of it; 200 when it is not set).</summary>
public sealed class DirectRoomsTests(Service service) : IClassFixture<Service>
{
    private static readonly RoomGenerator Rooms = new();

    private static int Count => AuditedAnswers.Count(200);

    [Fact]
    public async Task Every_room_is_boarded_straight_to_its_joists_and_the_auditor_finds_nothing() =>
        await AssertCleanAsync(seed => DirectRooms.Of(Rooms.Next(seed)), 0.9);

    [Fact]
    public async Task Rooms_over_a_beam_with_joists_lapped_or_butted_are_boarded_straight_to_them() =>
        await AssertCleanAsync(seed => DirectRooms.Of(LappedFields.Over(Rooms.Next(seed), seed)), 0.4);

    [Fact]
    public async Task Rooms_under_uneven_joists_are_boarded_straight_to_them() =>
        await AssertCleanAsync(seed => DirectRooms.Of(UnevenJoists.Under(Rooms.Next(seed), seed)), 0.4);

    [Fact]
    public async Task Rooms_whose_joists_run_two_ways_are_boarded_straight_to_them() =>
        await AssertCleanAsync(seed => DirectRooms.Of(TwoWayRooms.Of(Rooms.Next(seed), seed)), 0.9);

    [Fact]
    public async Task Rooms_with_partitions_are_boarded_straight_to_their_joists() =>
        await AssertCleanAsync(seed => DirectRooms.Of(PartitionedRooms.Of(Rooms.Next(seed), seed)), 0.15);

    [Fact]
    public async Task Rooms_with_bulkheads_fixtures_services_and_batts_are_boarded_straight_to_their_joists() =>
        await AssertCleanAsync(seed => DirectRooms.Of(BoxedRooms.Mixed(Rooms.Next(seed), seed)), 0.8);

    // a chimney or post between two joists may leave no way to lay whole pieces round it: then the answer says so
    private async Task AssertCleanAsync(Func<int, string?> room, double least)
    {
        var refused = 0;
        var planned = await AuditedAnswers.AssertCleanAsync(service, Enumerable.Range(1, Count), room, reply =>
            JsonDocument.Parse(reply).RootElement.GetProperty("findings")[0].GetProperty("code").GetString() == "sheets_do_not_reach_joists"
            && Interlocked.Increment(ref refused) > 0);
        Assert.True(planned >= Count * least, $"{planned} planned, {refused} refused");
    }
}
