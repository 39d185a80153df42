using LayoutService.Auditor.Rooms;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>Seeded rooms in which the auditor once found a fault: each is planned again, whatever AUDIT_ROOMS says.</summary>
public sealed class MendedRoomsTests(Service service) : IClassFixture<Service>
{
    private static readonly RoomGenerator Rooms = new();

    /// <summary>A register that touched the end of a lapped joist (1514, 1842); an alarm 10 mm off the corner of one, told as in conflict with it (2339).</summary>
    [Fact]
    public async Task Fixtures_keep_off_the_ends_of_lapped_joists_and_no_further() =>
        await AssertCleanAsync([1514, 1842, 2339], seed => LappedFields.Over(Rooms.Next(seed), seed));

    private async Task AssertCleanAsync(int[] seeds, Func<int, string?> room) =>
        Assert.Equal(seeds.Length, await AuditedAnswers.AssertCleanAsync(service, seeds, room));
}
