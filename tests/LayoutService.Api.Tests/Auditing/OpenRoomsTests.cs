using LayoutService.Auditor.Rooms;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>Seeded rooms without a wall at an edge or two, recomputed by the auditor. AUDIT_ROOMS sets how many (a quarter of it; 120 when it is not set).</summary>
public sealed class OpenRoomsTests(Service service) : IClassFixture<Service>
{
    private static readonly RoomGenerator Rooms = new();

    private static int Count => AuditedAnswers.Count(120);

    [Fact]
    public async Task Rooms_without_a_wall_at_an_edge_are_planned_or_held_by_nothing_and_the_auditor_finds_nothing() =>
        await AssertAsync(Count, seed => OpenRooms.Of(Rooms.Next(seed), seed));

    [Fact]
    public async Task Rooms_with_bulkheads_at_an_edge_without_a_wall_are_planned_and_the_auditor_finds_nothing() =>
        await AssertAsync(Count / 2, seed => OpenRooms.Of(BoxedRooms.Mixed(Rooms.Next(seed), seed), seed));

    [Fact]
    public async Task Board_on_the_joists_ends_at_an_edge_without_a_wall_and_the_auditor_finds_nothing() =>
        await AssertAsync(Count / 4, seed => DirectRooms.Of(OpenRooms.Of(Rooms.Next(seed), seed)));

    [Fact]
    public async Task Rooms_whose_joists_run_two_ways_end_at_an_edge_without_a_wall_and_the_auditor_finds_nothing() =>
        await AssertAsync(Count / 4, seed => OpenRooms.Of(TwoWayRooms.Of(Rooms.Next(seed), seed), seed));

    [Theory]
    [InlineData("mirror in x")]
    [InlineData("mirror in y")]
    [InlineData("quarter turn")]
    [InlineData("shift")]
    public async Task A_room_without_a_wall_at_an_edge_gets_the_same_plan_moved_with_it(string change)
    {
        var rooms = new RoomGenerator(new RoomWishes { ObliqueJoists = false });
        await MovedRooms.AssertSameAsync(service, change, 15, seed => OpenRooms.Of(rooms.Next(seed), seed), mayBeRefused: true);
    }

    private async Task AssertAsync(int count, Func<int, string?> room)
    {
        var planned = await AuditedAnswers.AssertCleanAsync(
            service, Enumerable.Range(1, count), room,
            refused => refused.Contains("nothing_to_fasten_to", StringComparison.Ordinal) || refused.Contains("sheets_do_not_reach", StringComparison.Ordinal));
        Assert.True(planned >= (count / 4) - 1, $"{planned} of {count} rooms were planned");
    }
}
