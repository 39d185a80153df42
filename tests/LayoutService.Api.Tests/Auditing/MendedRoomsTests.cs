using System.Text.Json;
using LayoutService.Auditor.Rooms;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>Seeded rooms in which the auditor once found a fault, or that had no plan: each is planned again, whatever AUDIT_ROOMS says.</summary>
public sealed class MendedRoomsTests(Service service) : IClassFixture<Service>
{
    private static readonly RoomGenerator Rooms = new();

    /// <summary>A register that touched the end of a lapped joist (1514, 1842); an alarm 10 mm off the corner of one, told as in conflict with it (2339).</summary>
    [Fact]
    public async Task Fixtures_keep_off_the_ends_of_lapped_joists_and_no_further() =>
        await AssertCleanAsync([1514, 1842, 2339], seed => LappedFields.Over(Rooms.Next(seed), seed));

    /// <summary>
    /// A jogged wall parted by a bulkhead (971); two rows on each other beside a post (1147); a short strap cut back further than it must, and a jog of a hair in a bulkhead (1496); an end named for the wrong edge
    /// (1831, 2094); a strip of 28 mm between two sides of one bulkhead (2430); a sheet a hair longer than itself (2229); a strap 7 mm short of a well's edge (1177).
    /// </summary>
    [Theory]
    [InlineData(971)]
    [InlineData(1147)]
    [InlineData(1177)]
    [InlineData(1496)]
    [InlineData(1831)]
    [InlineData(2094)]
    [InlineData(2229)]
    [InlineData(2430)]
    public async Task Rows_and_boards_beside_bulkheads_are_planned_and_the_auditor_finds_nothing(int seed)
    {
        await AssertCleanAsync([seed], s => BoxedRooms.In(Rooms.Next(s), s));
        await AssertCleanAsync([seed], s => BoxedRooms.Mixed(Rooms.Next(s), s));
    }

    /// <summary>
    /// A strip of ceiling that all but shares a side with a bulkhead, which ended in an internal error (4413); a short strap on its joists under a row that a post cuts (2920, 3105, 3806, 4145);
    /// a free row at the very place of a short one (3846); a bulkhead's side a hair off square, and a hair of ceiling between it and the next one (4570); two short straps on one joist, each kept from a part of its edge by the other (3803).
    /// </summary>
    [Theory]
    [InlineData(2920)]
    [InlineData(3105)]
    [InlineData(3803)]
    [InlineData(3806)]
    [InlineData(3846)]
    [InlineData(4145)]
    [InlineData(4413)]
    [InlineData(4570)]
    public async Task Rooms_with_bulkheads_and_all_that_hangs_are_planned_and_the_auditor_finds_nothing(int seed) =>
        await AssertCleanAsync([seed], s => BoxedRooms.Mixed(Rooms.Next(s), s));

    /// <summary>The point of an oblique wall: a bevelled strap that lies there with its face alone (3272, 4728), a corner of ceiling nowhere as wide as the least rip (3446, 4469). Areas that share a line too (4275).</summary>
    [Fact]
    public async Task Points_of_ceiling_beside_oblique_walls_are_read_as_a_person_reads_them() =>
        await AssertCleanAsync([3272, 3446, 4275, 4469, 4728], seed => BoxedRooms.Mixed(Rooms.Next(seed), seed));

    /// <summary>What a bulkhead leaves of a wall beside an oblique one, shorter than a strap is wide (1387, 1488, 2086), or leaning by less than a clear gap (1237, 1733, 1858).</summary>
    [Fact]
    public async Task What_bulkheads_leave_of_walls_is_read_as_a_person_reads_it() =>
        await AssertCleanAsync([1237, 1387, 1488, 1733, 1858, 2086], seed => BoxedRooms.In(Rooms.Next(seed), seed));

    /// <summary>A turn of a duct in what the L of a room leaves out.</summary>
    [Fact]
    public async Task A_hidden_service_always_runs_over_its_room() => await AssertCleanAsync([2143], seed => BoxedRooms.In(Rooms.Next(seed), seed));

    /// <summary>Three long sticks for three parts, each of which would take three.</summary>
    [Fact]
    public async Task Parts_of_a_room_share_the_few_sticks_that_there_are()
    {
        const int seed = 636;
        var request = TwoWayRooms.Of(Rooms.Next(seed), seed);
        await AssertCleanAsync([seed], _ => request);
        var few = JsonDocument.Parse(request).RootElement.GetProperty("strapping").GetProperty("stock").EnumerateArray().Single(s => s.TryGetProperty("quantity", out _));
        var sticks = (await service.PostAsync("/v1/plans", request)).Json.GetProperty("cutPlan").GetProperty("stock").EnumerateArray()
            .Count(s => s.GetProperty("stockId").GetString() == few.GetProperty("id").GetString());
        Assert.InRange(sticks, 1, few.GetProperty("quantity").GetInt32());
    }

    /// <summary>A chimney's own strap reached into the course of a post.</summary>
    [Fact]
    public async Task A_strap_of_another_wall_is_not_taken_for_one_through_an_opening() => await AssertCleanAsync([8097], Rooms.Next);

    /// <summary>Two posts 4 in apart along the joists, each inside its course: 16 in of stagger cannot be had there.</summary>
    [Fact]
    public async Task Where_two_openings_force_butts_together_the_check_of_the_stagger_fails_and_names_the_pieces()
    {
        await AssertCleanAsync([8716], Rooms.Next);
        await AssertCleanAsync([2423], seed => BoxedRooms.Mixed(Rooms.Next(seed), seed));
        var plan = (await service.PostAsync("/v1/plans", Rooms.Next(8716))).Json;
        var check = plan.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("rule").GetString() == "butt-stagger-rows");
        Assert.Equal("fail", check.GetProperty("status").GetString());
        Assert.Equal((4.375m, 16m, "in"), (check.GetProperty("value").GetDecimal(), check.GetProperty("limit").GetDecimal(), check.GetProperty("unit").GetString()));
        Assert.Equal(4, check.GetProperty("where").GetArrayLength());
        Assert.Equal("less_stagger", check.GetProperty("remedy").GetProperty("code").GetString());
    }

    private async Task AssertCleanAsync(int[] seeds, Func<int, string?> room) =>
        Assert.Equal(seeds.Length, await AuditedAnswers.AssertCleanAsync(service, seeds, room));
}
