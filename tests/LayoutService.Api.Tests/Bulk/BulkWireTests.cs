using System.Diagnostics;
using System.Globalization;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Text;
using LayoutService.Api.Tests.Running;

namespace LayoutService.Api.Tests.Bulk;

/// <summary>Calls in bulk over the real server: how they stream, wait, and end.</summary>
[Collection(OwnProcess.Name)]
public sealed class BulkWireTests : IAsyncLifetime
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(120);
    private RunningService service = null!;

    public async Task InitializeAsync() => service = await RunningService.StartAsync(settings: [("Service__BulkDrainSeconds", "1"), ("Service__BulkIdleSeconds", "3")]);

    public async Task DisposeAsync() => await service.DisposeAsync();

    /// <summary>
    /// The answers are far larger than what the system holds between two programs, so a service that would not read on while
    /// nobody takes them would wait for the client for ever, and the client for it.
    /// </summary>
    [Fact]
    public async Task A_client_that_sends_everything_before_it_reads_does_not_hang()
    {
        const int rooms = 500;
        var body = Padded(rooms, 15_000_000);
        using var client = new HttpClient { Timeout = Longest };
        using var content = new ByteArrayContent(body);
        content.Headers.ContentType = new MediaTypeHeaderValue(BulkLines.MediaType);
        using var response = await client.PostAsync(new Uri(service.Address, "/v1/plans/bulk"), content);
        var lines = (await response.Content.ReadAsStringAsync()).Split('\n');
        Assert.Equal(rooms + 2, lines.Length);
        Assert.Contains("\"summary\":{\"count\":500,\"ok\":500,\"failed\":0,\"complete\":true,\"nextIndex\":500}", lines[rooms]);
        Assert.True(lines.Sum(line => line.Length) > 10_000_000, "The answers are too small to fill what lies between.");
    }

    [NeedsFact("python3")]
    public async Task Nor_does_the_standard_client_of_Python()
    {
        const int rooms = 500;
        var file = Path.GetTempFileName();
        await File.WriteAllBytesAsync(file, Padded(rooms, 15_000_000));
        try
        {
            var script = Path.Combine(Repository.Root, "tests", "LayoutService.Api.Tests", "Bulk", "SendAllFirst.py");
            var printed = await Tool.RunAsync("python3", [script, new Uri(service.Address, "/v1/plans/bulk").ToString(), file], Longest);
            var lines = printed.Split('\n');
            Assert.Equal((rooms + 1).ToString(CultureInfo.InvariantCulture), lines[0]);
            Assert.Contains("\"summary\":{\"count\":500,\"ok\":500,\"failed\":0,\"complete\":true,\"nextIndex\":500}", lines[1]);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public async Task A_room_is_answered_before_the_next_is_sent()
    {
        using var call = await OpenCall.ToAsync(service.Address);
        for (var i = 0; i < 3; i++)
        {
            await call.SendAsync(BulkLines.Room(i) + "\n");
            Assert.StartsWith($"{{\"kind\":\"plan\",\"index\":{i},", await call.LineAsync());
        }

        await call.EndAsync();
        Assert.Contains("\"complete\":true,\"nextIndex\":3}", await call.LineAsync());
    }

    [Fact]
    public async Task Work_stops_within_a_second_of_the_client_leaving()
    {
        using (var call = await OpenCall.ToAsync(service.Address))
        {
            var sending = call.SendAsync(BulkLines.Rooms(20_000));
            for (var i = 0; i < 20; i++)
            {
                Assert.StartsWith("{\"kind\":\"plan\"", await call.LineAsync());
            }

            Assert.DoesNotContain(service.Log, line => line.Contains("/v1/plans/bulk", StringComparison.Ordinal));
            _ = sending.ContinueWith(sent => sent.Exception, TaskScheduler.Default);
        }

        await service.LoggedAsync("/v1/plans/bulk", TimeSpan.FromSeconds(1));
    }

    [Fact]
    public async Task A_caller_that_stands_still_is_answered_so_far_and_told_that_it_is_not_complete()
    {
        using var call = await OpenCall.ToAsync(service.Address);
        await call.SendAsync(BulkLines.Room(0) + "\n{\"units\":");
        Assert.StartsWith("{\"kind\":\"plan\",\"index\":0,", await call.LineAsync());
        var clock = Stopwatch.StartNew();
        Assert.Contains("\"summary\":{\"count\":1,\"ok\":1,\"failed\":0,\"complete\":false,\"nextIndex\":1}", await call.LineAsync());
        Assert.InRange(clock.Elapsed.TotalSeconds, 2, 20);
    }

    [Fact]
    public async Task A_service_told_to_stop_ends_a_long_call_with_where_to_go_on()
    {
        using var call = await OpenCall.ToAsync(service.Address);
        var sending = call.SendAsync(BulkLines.Rooms(100_000));
        Assert.StartsWith("{\"kind\":\"plan\",\"index\":0,", await call.LineAsync());
        service.Terminate();
        var planned = 1;
        string line;
        while (!(line = await call.LineAsync()).StartsWith("{\"kind\":\"summary\"", StringComparison.Ordinal))
        {
            Assert.StartsWith($"{{\"kind\":\"plan\",\"index\":{planned++},", line);
        }

        Assert.Contains($"\"summary\":{{\"count\":{planned},\"ok\":{planned},\"failed\":0,\"complete\":false,\"nextIndex\":{planned}}}", line);
        Assert.True(planned < 100_000);
        _ = sending.ContinueWith(sent => sent.Exception, TaskScheduler.Default);
        call.Dispose();
        Assert.Equal(0, await service.EndedAsync(TimeSpan.FromSeconds(30)));
    }

    [Fact]
    public async Task A_body_of_one_room_that_comes_too_slowly_is_refused_with_408()
    {
        using var call = await OpenCall.ToAsync(service.Address, "/v1/plans", "application/json");
        await call.SendAsync("{\"units\":");
        Assert.StartsWith("HTTP/1.1 408", await call.HeadAsync());
    }

    /// <summary>Rooms with blanks before each, up to a size.</summary>
    private static byte[] Padded(int rooms, int bytes)
    {
        var text = new StringBuilder(bytes + 1000);
        for (var i = 0; i < rooms; i++)
        {
            text.Append(BulkLines.Room(i).PadLeft((bytes / rooms) - 1)).Append('\n');
        }

        return Encoding.UTF8.GetBytes(text.ToString());
    }
}
