using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json;
using LayoutService.Auditor;
using LayoutService.Auditor.Rooms;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>Seeded rooms with bulkheads, recomputed by the auditor. AUDIT_ROOMS sets how many (a quarter of it; 100 when it is not set).</summary>
public sealed class BoxedRoomsTests(Service service) : IClassFixture<Service>
{
    private static readonly RoomGenerator Rooms = new();

    private static int Count => int.TryParse(Environment.GetEnvironmentVariable("AUDIT_ROOMS"), NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n / 4 : 100;

    [Fact]
    public async Task Every_room_with_bulkheads_is_planned_and_the_auditor_finds_nothing()
    {
        var found = new ConcurrentQueue<string>();
        await Parallel.ForEachAsync(Enumerable.Range(1, Count), async (seed, _) =>
        {
            var request = BoxedRooms.In(Rooms.Next(seed), seed);
            var reply = await service.PostAsync("/v1/plans", request);
            if (reply.Status != 200)
            {
                found.Enqueue($"seed {seed}: {reply.Status} {reply.Text}");
                return;
            }

            foreach (var fault in PlanAuditor.Audit(JsonDocument.Parse(request).RootElement, reply.Json))
            {
                found.Enqueue($"seed {seed}: {fault}");
            }
        });

        Assert.True(found.IsEmpty, $"{found.Count} faults, the first: {string.Join("\n", found.Order().Take(60))}");
    }
}
