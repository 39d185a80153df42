using System.Collections.Concurrent;
using System.Net;
using System.Text;

namespace LayoutService.Api.Tests.Running;

/// <summary>An instance that is told to stop under load, without a balancer in front of it.</summary>
[Collection(OwnProcess.Name)]
public sealed class DrainTests
{
    private const int DrainSeconds = 3;

    [Fact]
    public async Task Until_its_drain_is_over_every_call_is_answered_and_readiness_says_no()
    {
        await using var service = await RunningService.StartAsync(0, ("Service__DrainSeconds", "3"));
        var address = service.Address;
        using var kept = new HttpClient { BaseAddress = address };
        Assert.Equal(HttpStatusCode.OK, (await kept.GetAsync("/health/startup")).StatusCode);
        var outcomes = new ConcurrentBag<string>();
        using var enough = new CancellationTokenSource();
        var load = Enumerable.Range(0, 3).Select(worker => Task.Run(async () =>
        {
            while (!enough.IsCancellationRequested)
            {
                outcomes.Add(await AskAsync(worker == 0 ? null : kept, address));
            }
        })).ToList();
        await Task.Delay(500);
        service.Terminate();
        await Task.Delay(300);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, (await kept.GetAsync("/health/ready")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await kept.GetAsync("/health/live")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await kept.GetAsync("/health/startup")).StatusCode);
        await Task.Delay(TimeSpan.FromSeconds(DrainSeconds - 1.5));
        await enough.CancelAsync();
        await Task.WhenAll(load);
        Assert.Equal(["200"], outcomes.Distinct());
        Assert.True(outcomes.Count > 10, $"only {outcomes.Count} calls were made");
        Assert.Equal(0, await service.EndedAsync(TimeSpan.FromSeconds(DrainSeconds + 25)));
    }

    /// <summary>Over a connection that is kept, or over a new one.</summary>
    private static async Task<string> AskAsync(HttpClient? kept, Uri address)
    {
        var client = kept ?? new HttpClient { BaseAddress = address };
        try
        {
            using var content = new StringContent(SmallRoom.Text, Encoding.UTF8, "application/json");
            using var response = await client.PostAsync("/v1/plans?include=summary", content);
            return ((int)response.StatusCode).ToString(System.Globalization.CultureInfo.InvariantCulture);
        }
        catch (HttpRequestException fault)
        {
            return fault.Message;
        }
        finally
        {
            if (kept is null)
            {
                client.Dispose();
            }
        }
    }
}
