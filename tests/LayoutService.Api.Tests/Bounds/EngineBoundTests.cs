using System.Diagnostics;
using System.Net.Http.Headers;
using System.Text;
using LayoutService.Api.Tests.Running;

namespace LayoutService.Api.Tests.Bounds;

/// <summary>What a call may take of the engine, on the real server.</summary>
[Collection(OwnProcess.Name)]
public sealed class EngineBoundTests : IAsyncLifetime
{
    private RunningService service = null!;

    public async Task InitializeAsync() => service = await RunningService.StartAsync(settings: [("Service__PlanSeconds", "3")]);

    public async Task DisposeAsync() => await service.DisposeAsync();

    [Fact]
    public async Task A_call_that_takes_longer_than_it_may_is_told_to_come_back_and_leaves_its_place()
    {
        using var client = new HttpClient { BaseAddress = service.Address };
        var clock = Stopwatch.StartNew();
        using var response = await client.PostAsync("/v1/plans", Body(HeavyRoom.Text));
        var reply = await HttpReply.OfAsync(response);
        Assert.Equal(503, reply.Status);
        Assert.Equal("Working this out took longer than one call may; ask for quick effort or for less at once.", reply.Json.GetProperty("detail").GetString());
        Assert.Equal("1", reply.Headers["Retry-After"]);
        Assert.InRange(clock.Elapsed.TotalSeconds, 2.9, 3 * 1.1 + 2); // two seconds for the way there and a machine with other work
        await EmptyAsync(client, TimeSpan.FromSeconds(1));
        using var next = await client.PostAsync("/v1/plans", Body(SmallRoom.Text));
        Assert.Equal(200, (int)next.StatusCode);
    }

    [Fact]
    public async Task Work_on_one_room_stops_within_a_second_of_the_caller_leaving()
    {
        using var client = new HttpClient { BaseAddress = service.Address };
        using (var leaving = new CancellationTokenSource(TimeSpan.FromSeconds(0.7)))
        {
            await Assert.ThrowsAnyAsync<OperationCanceledException>(() => client.PostAsync("/v1/plans", Body(HeavyRoom.Text), leaving.Token));
        }

        await EmptyAsync(client, TimeSpan.FromSeconds(1));
    }

    [Fact]
    public async Task A_room_in_bulk_that_takes_too_long_is_a_line_of_its_own()
    {
        using var client = new HttpClient { BaseAddress = service.Address };
        using var lines = new StringContent(HeavyRoom.Text + "\n" + SmallRoom.Text + "\n", Encoding.UTF8);
        lines.Headers.ContentType = new MediaTypeHeaderValue("application/jsonl");
        using var response = await client.PostAsync("/v1/plans/bulk?include=summary", lines);
        var answered = (await response.Content.ReadAsStringAsync()).Split('\n');
        Assert.Contains("\"status\":503", answered[0], StringComparison.Ordinal);
        Assert.Contains("\"status\":200", answered[1], StringComparison.Ordinal);
        Assert.Contains("\"ok\":1,\"failed\":1,\"complete\":true", answered[2], StringComparison.Ordinal);
    }

    /// <summary>Waits until nobody is in the engine, as its metrics say.</summary>
    private static async Task EmptyAsync(HttpClient client, TimeSpan longest)
    {
        var clock = Stopwatch.StartNew();
        while (!(await client.GetStringAsync("/metrics")).Split('\n').Any(line => line.StartsWith("layout_engine_taken", StringComparison.Ordinal) && line.EndsWith(" 0", StringComparison.Ordinal)))
        {
            Assert.True(clock.Elapsed < longest, $"After {longest.TotalSeconds} s the engine still works.");
            await Task.Delay(50);
        }
    }

    private static StringContent Body(string json) => new(json, Encoding.UTF8, "application/json");
}
