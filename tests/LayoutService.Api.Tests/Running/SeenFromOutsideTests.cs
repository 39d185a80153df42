using System.Globalization;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;

namespace LayoutService.Api.Tests.Running;

/// <summary>What an operator sees: log lines and metrics, with nothing of the caller's in them.</summary>
[Collection(OwnProcess.Name)]
public sealed class SeenFromOutsideTests : IAsyncLifetime
{
    private const string Marker = "marker-of-a-caller-4711";
    private const string Key = "key-of-a-caller-0815";
    private RunningService service = null!;

    public async Task InitializeAsync() => service = await RunningService.StartAsync();

    public async Task DisposeAsync() => await service.DisposeAsync();

    [Fact]
    public async Task A_log_line_is_json_with_the_id_of_its_trace_and_nothing_of_the_caller()
    {
        using var client = Client();
        await PostAsync(client, SmallRoom.With("reference", $"\"{Marker}\""));
        await PostAsync(client, SmallRoom.With(Marker, "1"));
        await client.GetAsync($"/v1/limits?{Marker}=1");
        await service.LoggedAsync("/v1/limits", TimeSpan.FromSeconds(5));
        Assert.DoesNotContain(service.Log, line => line.Contains(Marker, StringComparison.Ordinal) || line.Contains(Key, StringComparison.Ordinal));
        var calls = service.Log.Select(line => JsonDocument.Parse(line).RootElement).Where(line => line.TryGetProperty("Route", out var route) && route.GetString()!.StartsWith("/v1", StringComparison.Ordinal)).ToList();
        Assert.Equal(3, calls.Count);
        Assert.All(calls, call => Assert.Matches("^[0-9a-f]{32}$", call.GetProperty("@tr").GetString()));
        Assert.Equal([200, 400, 200], calls.Select(call => call.GetProperty("StatusCode").GetInt32()));
    }

    [Fact]
    public async Task A_call_keeps_the_trace_that_it_comes_with()
    {
        using var client = Client();
        client.DefaultRequestHeaders.Add("traceparent", "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01");
        await PostAsync(client, SmallRoom.Text);
        await service.LoggedAsync("4bf92f3577b34da6a3ce929d0e0e4736", TimeSpan.FromSeconds(5));
    }

    [Fact]
    public async Task Metrics_tell_time_work_pieces_gap_and_refusals_by_code()
    {
        using var client = Client();
        for (var i = 0; i < 3; i++)
        {
            await PostAsync(client, SmallRoom.With("reference", $"\"{Marker}\""));
        }

        await PostAsync(client, SmallRoom.With("colour", "1"));
        await PostAsync(client, SmallRoom.With("room.outline", "[[0,0],[3600,0],[3600,40],[0,40]]"));
        var metrics = await client.GetStringAsync("/metrics");
        Assert.Equal(4, Figure(metrics, "layout_engine_duration_seconds_count"));
        Assert.InRange(Figure(metrics, "layout_engine_duration_seconds_sum"), 0.0001, 60);
        Assert.True(Figure(metrics, "layout_engine_work_sum") > 100);
        Assert.Equal(3, Figure(metrics, "layout_plan_pieces_count"));
        Assert.Equal(3, Figure(metrics, "layout_plan_gap_count", "use=\"strapping\""));
        Assert.Equal(1, Figure(metrics, "layout_rejections_total", "code=\"unknown_member\""));
        Assert.Equal(1, Figure(metrics, "layout_rejections_total", "code=\"room_smaller_than_strap\""));
        Assert.Equal(0, Figure(metrics, "layout_engine_taken"));
        Assert.Equal(0, Figure(metrics, "layout_engine_waiting"));
        Assert.True(Figure(metrics, "http_server_request_duration_seconds_count", "http_route=\"/v1/plans\"") >= 3);
        Assert.DoesNotContain(Marker, metrics, StringComparison.Ordinal);
        Assert.DoesNotContain(Key, metrics, StringComparison.Ordinal);
    }

    private HttpClient Client()
    {
        var client = new HttpClient { BaseAddress = service.Address };
        client.DefaultRequestHeaders.Add("X-Api-Key", Key);
        return client;
    }

    private static async Task PostAsync(HttpClient client, string json)
    {
        using var content = new StringContent(json, Encoding.UTF8, new MediaTypeHeaderValue("application/json"));
        using var response = await client.PostAsync("/v1/plans?include=summary", content);
        Assert.True((int)response.StatusCode < 500);
    }

    /// <summary>Value of the first line of a name that has a label.</summary>
    private static double Figure(string metrics, string name, string label = "") => double.Parse(
        metrics.Split('\n').First(line => line.StartsWith(name + "{", StringComparison.Ordinal) && line.Contains(label, StringComparison.Ordinal)).Split(' ')[1],
        CultureInfo.InvariantCulture);
}
