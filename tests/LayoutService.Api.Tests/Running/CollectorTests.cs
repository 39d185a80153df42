using System.Collections.Concurrent;
using System.Net.Http.Headers;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace LayoutService.Api.Tests.Running;

/// <summary>
/// What goes to a collector by OTLP over HTTP (OpenTelemetry protocol 1.x: protobuf by POST to /v1/traces and /v1/metrics). The
/// collector is a listener of the test's own that keeps what it is sent.
/// </summary>
[Collection(OwnProcess.Name)]
public sealed class CollectorTests
{
    private const string Trace = "4bf92f3577b34da6a3ce929d0e0e4736";
    private const string Marker = "marker-of-a-caller-4711";
    private const string Key = "key-of-a-caller-0815";

    [Fact]
    public async Task A_collector_that_is_named_gets_spans_and_measures_and_nothing_of_the_caller()
    {
        var builder = WebApplication.CreateSlimBuilder();
        await using var collector = builder.Build();
        collector.Urls.Add("http://127.0.0.1:0");
        var sent = new ConcurrentQueue<(string Path, string? Type, byte[] Body)>();
        collector.MapPost("/v1/{signal}", async (string signal, HttpRequest request) =>
        {
            using var body = new MemoryStream();
            await request.Body.CopyToAsync(body);
            sent.Enqueue((signal, request.ContentType, body.ToArray()));
            return Results.Bytes([], "application/x-protobuf");
        });
        await collector.StartAsync();

        await using var service = await RunningService.StartAsync(
            0,
            ("OTEL_EXPORTER_OTLP_ENDPOINT", collector.Urls.Single()),
            ("OTEL_EXPORTER_OTLP_PROTOCOL", "http/protobuf"),
            ("OTEL_METRIC_EXPORT_INTERVAL", "300"),
            ("OTEL_BSP_SCHEDULE_DELAY", "200"));
        using var client = new HttpClient { BaseAddress = service.Address };
        client.DefaultRequestHeaders.Add("traceparent", $"00-{Trace}-00f067aa0ba902b7-01");
        client.DefaultRequestHeaders.Add("X-Api-Key", Key);
        using var content = new StringContent(SmallRoom.With("reference", $"\"{Marker}\""), Encoding.UTF8, new MediaTypeHeaderValue("application/json"));
        using var reply = await client.PostAsync("/v1/plans?include=summary", content);
        Assert.Equal(200, (int)reply.StatusCode);

        bool Came(string signal, byte[] bytes) => sent.Any(s => s.Path == signal && s.Body.AsSpan().IndexOf(bytes) >= 0);
        var end = DateTime.UtcNow.AddSeconds(20);
        // the call's own span ends after those within it, and may come in a later batch
        while (DateTime.UtcNow < end && !(Came("traces", Convert.FromHexString(Trace)) && Came("traces", "/v1/plans"u8.ToArray()) && Came("metrics", "layout.engine.duration"u8.ToArray())))
        {
            await Task.Delay(50);
        }

        Assert.True(Came("traces", Convert.FromHexString(Trace)), "No span of the call's trace came.");
        Assert.True(Came("traces", "/v1/plans"u8.ToArray()), "No span names the route.");
        Assert.True(Came("metrics", "layout.engine.duration"u8.ToArray()), "No measure of the engine came.");
        Assert.All(sent, s => Assert.Equal("application/x-protobuf", s.Type));
        Assert.False(Came("traces", Encoding.UTF8.GetBytes(Marker)) || Came("metrics", Encoding.UTF8.GetBytes(Marker)));
        Assert.False(Came("traces", Encoding.UTF8.GetBytes(Key)) || Came("metrics", Encoding.UTF8.GetBytes(Key)));
    }
}
