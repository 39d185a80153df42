using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Auditor;
using LayoutService.Auditor.Damages;
using LayoutService.Auditor.Rooms;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>
/// Seeded random rooms planned by the running service and recomputed by the auditor, which shares no code with it. The
/// environment variable AUDIT_ROOMS sets how many (2,000 when it is not set).
/// </summary>
public sealed class AuditedRoomsTests(Service service) : IClassFixture<Service>
{
    private static readonly RoomGenerator Rooms = new();

    private static int Count => AuditedAnswers.Count(2_000, part: 1);

    [Fact]
    public async Task Every_random_room_is_planned_and_the_auditor_finds_nothing()
    {
        await AuditedAnswers.AssertCleanAsync(service, Enumerable.Range(1, Count), Rooms.Next);
    }

    [Fact]
    public async Task Rooms_over_a_beam_with_joists_lapped_or_butted_are_planned_and_the_auditor_finds_nothing()
    {
        var planned = await AuditedAnswers.AssertCleanAsync(service, Enumerable.Range(1, Count / 4), seed => LappedFields.Over(Rooms.Next(seed), seed));
        Assert.True(planned > Count / 8, $"only {planned} rooms had joists along x or y");
    }

    [Fact]
    public async Task Rooms_under_uneven_joists_are_packed_to_a_plane_and_the_auditor_finds_nothing()
    {
        var planned = await AuditedAnswers.AssertCleanAsync(service, Enumerable.Range(1, Count / 4), seed => UnevenJoists.Under(Rooms.Next(seed), seed));
        Assert.True(planned > Count / 8, $"only {planned} rooms had readings");
    }

    [Fact]
    public async Task Rooms_with_partitions_are_planned_and_the_auditor_finds_nothing()
    {
        var planned = await AuditedAnswers.AssertCleanAsync(service, Enumerable.Range(1, Count / 4), seed => PartitionedRooms.Of(Rooms.Next(seed), seed));
        Assert.True(planned > Count / 16, $"only {planned} rooms had a place for one");
    }

    [Fact]
    public async Task Every_seeded_room_with_a_partition_under_its_straps_is_planned_and_the_auditor_finds_nothing()
    {
        var planned = await AuditedAnswers.AssertCleanAsync(service, Enumerable.Range(1, Count / 4), seed => PartitionedRooms.Of(Rooms.Next(seed), seed, "straps"));
        Assert.True(planned > Count / 20, $"{planned} of {Count / 4} rooms have a partition");
    }

    [Theory]
    [InlineData("joists")]
    [InlineData("straps")]
    public async Task Rooms_with_a_partition_askew_to_the_joists_are_planned_and_the_auditor_finds_nothing(string top)
    {
        var planned = await AuditedAnswers.AssertCleanAsync(service, Enumerable.Range(1, Count / 4), seed => PartitionedRooms.Of(Rooms.Next(seed), seed, top, askew: true),
            refused => refused.Contains("rows_do_not_fit", StringComparison.Ordinal));
        planned += await AuditedAnswers.AssertCleanAsync(
            service, Enumerable.Range(1, top == "joists" ? Count / 8 : 0), seed => DirectRooms.Of(PartitionedRooms.Of(Rooms.Next(seed), seed, top, askew: true)),
            refused => refused.Contains("sheets_do_not_reach", StringComparison.Ordinal));
        Assert.True(planned > Count / 40, $"{planned} of {Count / 4} rooms had a place for one");
    }

    [Fact]
    public async Task Rooms_whose_joists_run_two_ways_are_planned_part_by_part_and_the_auditor_finds_nothing()
    {
        var planned = await AuditedAnswers.AssertCleanAsync(service, Enumerable.Range(1, Count / 4), seed => TwoWayRooms.Of(Rooms.Next(seed), seed));
        Assert.Equal(Count / 4, planned);
    }

    public static TheoryData<string> Changes => MovedRooms.Changes;

    [Theory]
    [MemberData(nameof(Changes))]
    public async Task A_room_moved_or_listed_otherwise_gets_the_same_plan_moved_with_it(string change)
    {
        var rooms = new RoomGenerator(new RoomWishes { ObliqueJoists = false });
        await AssertMovedAsync(change, 60, rooms.Next);
    }

    [Theory]
    [InlineData("mirror in x")]
    [InlineData("mirror in y")]
    [InlineData("quarter turn")]
    public async Task A_room_under_uneven_joists_gets_the_same_plan_moved_with_it(string change)
    {
        var rooms = new RoomGenerator(new RoomWishes { ObliqueJoists = false });
        await AssertMovedAsync(change, 30, seed => UnevenJoists.Under(rooms.Next(seed), seed));
    }

    [Theory]
    [InlineData("mirror in x")]
    [InlineData("mirror in y")]
    [InlineData("quarter turn")]
    public async Task A_room_with_a_partition_gets_the_same_plan_moved_with_it(string change)
    {
        var rooms = new RoomGenerator(new RoomWishes { ObliqueJoists = false });
        await AssertMovedAsync(change, 30, seed => PartitionedRooms.Of(rooms.Next(seed), seed));
        await AssertMovedAsync(change, 12, seed => PartitionedRooms.Of(rooms.Next(seed), seed, "straps"));
        await AssertMovedAsync(change, 12, seed => PartitionedRooms.Of(rooms.Next(seed), seed, "joists", askew: true));
    }

    [Theory]
    [InlineData("mirror in x")]
    [InlineData("mirror in y")]
    [InlineData("quarter turn")]
    [InlineData("shift")]
    [InlineData("renumber")]
    [InlineData("reverse")]
    public async Task A_room_whose_joists_run_two_ways_gets_the_same_plan_moved_with_it(string change)
    {
        var rooms = new RoomGenerator(new RoomWishes { ObliqueJoists = false });
        await AssertMovedAsync(change, 30, seed => TwoWayRooms.Of(rooms.Next(seed), seed));
    }

    [Theory]
    [InlineData("mirror in x")]
    [InlineData("mirror in y")]
    [InlineData("quarter turn")]
    [InlineData("shift")]
    [InlineData("reverse")]
    public async Task A_room_boarded_straight_to_its_joists_gets_the_same_plan_moved_with_it(string change)
    {
        var rooms = new RoomGenerator(new RoomWishes { ObliqueJoists = false });
        await AssertMovedAsync(change, 40, seed => DirectRooms.Of(rooms.Next(seed)), mayBeRefused: true);
    }

    private Task AssertMovedAsync(string change, int seeds, Func<int, string?> room, bool mayBeRefused = false) =>
        MovedRooms.AssertSameAsync(service, change, seeds, room, mayBeRefused);

    public static TheoryData<string> Damages => [.. Mutations.All.Select(m => m.Name)];

    [Theory]
    [MemberData(nameof(Damages))]
    public async Task The_auditor_notices(string damage)
    {
        var mutation = Mutations.All.Single(m => m.Name == damage);
        // some damages do no harm in some rooms (a default stock changed for its like, say): most must be noticed
        var (tried, noticed) = (0, 0);
        for (var seed = 1; seed <= 200 && tried < 8; seed++)
        {
            var request = Rooms.Next(seed);
            var reply = await service.PostAsync("/v1/plans", request);
            var answer = JsonNode.Parse(reply.Body)!;
            if (reply.Status != 200 || !mutation.Apply(answer))
            {
                continue;
            }

            var faults = PlanAuditor.Audit(JsonDocument.Parse(request).RootElement, JsonDocument.Parse(answer.ToJsonString()).RootElement);
            tried++;
            noticed += faults.Any(f => f.Rule == mutation.Rule) ? 1 : 0;
        }

        Assert.True(tried > 0, "no room had anything of that kind to damage");
        Assert.True(noticed * 2 > tried, $"noticed in {noticed} of {tried} rooms");
    }
}
