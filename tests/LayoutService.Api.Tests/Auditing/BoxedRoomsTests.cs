using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Auditor;
using LayoutService.Auditor.Damages;
using LayoutService.Auditor.Rooms;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>Seeded rooms with bulkheads, recomputed by the auditor. AUDIT_ROOMS sets how many (a quarter of it; 140 when it is not set).</summary>
public sealed class BoxedRoomsTests(Service service) : IClassFixture<Service>
{
    private static readonly RoomGenerator Rooms = new();

    private static int Count => AuditedAnswers.Count(140);

    [Fact]
    public async Task Every_room_with_bulkheads_is_planned_and_the_auditor_finds_nothing()
    {
        await AuditedAnswers.AssertCleanAsync(service, Enumerable.Range(1, Count), seed => BoxedRooms.In(Rooms.Next(seed), seed));
    }

    [Fact]
    public async Task Every_room_with_bulkheads_fixtures_services_and_batts_is_planned_and_the_auditor_finds_nothing()
    {
        await AuditedAnswers.AssertCleanAsync(service, Enumerable.Range(1, Count), seed => BoxedRooms.Mixed(Rooms.Next(seed), seed));
    }

    public static TheoryData<string> Changes => MovedRooms.Changes;

    [Theory]
    [MemberData(nameof(Changes))]
    public async Task A_room_with_bulkheads_moved_or_listed_otherwise_gets_the_same_plan_moved_with_it(string change)
    {
        var rooms = new RoomGenerator(new RoomWishes { ObliqueJoists = false });
        await MovedRooms.AssertSameAsync(service, change, 20, seed => BoxedRooms.Mixed(rooms.Next(seed), seed));
    }

    public static TheoryData<string> Damages => [.. BulkheadDamages.All.Select(m => m.Name)];

    [Theory]
    [MemberData(nameof(Damages))]
    public async Task The_auditor_notices(string damage)
    {
        var mutation = BulkheadDamages.All.Single(m => m.Name == damage);
        var (tried, noticed) = (0, 0);
        for (var seed = 1; seed <= 10 && tried < 4; seed++)
        {
            var request = BoxedRooms.In(Rooms.Next(seed), seed);
            var reply = await service.PostAsync("/v1/plans", request);
            var answer = JsonNode.Parse(reply.Body)!;
            if (reply.Status != 200 || answer["bulkheads"] is not JsonArray { Count: > 0 } || !mutation.Apply(answer))
            {
                continue;
            }

            tried++;
            noticed += PlanAuditor.Audit(JsonDocument.Parse(request).RootElement, JsonDocument.Parse(answer.ToJsonString()).RootElement).Any(f => f.Rule == mutation.Rule) ? 1 : 0;
        }

        Assert.True(tried > 0, "no room had anything of that kind to damage");
        Assert.True(noticed * 2 > tried, $"noticed in {noticed} of {tried} rooms");
    }
}
