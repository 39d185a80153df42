using System.Security.Cryptography;
using System.Text;
using LayoutService.Api.Hosting;

namespace LayoutService.Api.Tests.Bounds;

/// <summary>Keys and quotas: off unless the operator sets them.</summary>
public sealed class CallerTests
{
    private const string Yard = "yard-key-1";
    private const string Mill = "mill-key-2";

    [Fact]
    public async Task Without_keys_set_everybody_may_call()
    {
        using var open = new Service();
        Assert.Equal(200, await StatusAsync(open, null));
        Assert.Equal(200, await StatusAsync(open, "anything"));
    }

    [Fact]
    public async Task With_keys_set_a_call_needs_one_and_health_does_not()
    {
        using var closed = Closed();
        var refused = await closed.GetAsync("/v1/limits");
        Assert.Equal(401, refused.Status);
        Assert.Equal("/problems/unauthorized", refused.Json.GetProperty("type").GetString());
        Assert.Equal("ApiKey realm=\"layout-service\"", refused.Headers["WWW-Authenticate"]);
        Assert.Equal(401, await StatusAsync(closed, Yard + "x"));
        Assert.Equal(401, await StatusAsync(closed, Yard[..^1]));
        Assert.Equal(401, (await closed.GetAsync("/v1/limits?X-Api-Key=" + Yard)).Status);
        Assert.Equal(200, await StatusAsync(closed, Yard));
        Assert.Equal(200, (await closed.GetAsync("/health/ready")).Status);
        Assert.Equal(200, (await closed.GetAsync("/problems/unauthorized")).Status);
    }

    [Fact]
    public async Task One_key_that_spends_its_quota_does_not_starve_another()
    {
        using var closed = Closed();
        var first = await ReplyAsync(closed, Mill);
        Assert.Equal("\"minute\";q=2;w=60", first.Headers["RateLimit-Policy"]);
        Assert.StartsWith("\"minute\";r=1;t=", first.Headers["RateLimit"]);
        Assert.Equal(200, await StatusAsync(closed, Mill));
        var over = await ReplyAsync(closed, Mill);
        Assert.Equal(429, over.Status);
        Assert.StartsWith("\"minute\";r=0;t=", over.Headers["RateLimit"]);
        Assert.InRange(int.Parse(over.Headers["Retry-After"]), 1, 60);
        Assert.Equal("application/problem+json", over.MediaType);
        Assert.Equal(200, await StatusAsync(closed, Yard));
    }

    [Theory]
    [InlineData("/v1/plans", 2)]
    [InlineData("/v1/plans/bulk", 1)]
    public async Task One_key_that_has_its_share_under_way_does_not_starve_another(string path, int share)
    {
        using var closed = Closed();
        closed.Settings["Service:PlansAtOnce"] = "1";
        closed.Settings["Service:PlansWaiting"] = "3";
        closed.Settings["Service:BulkCalls"] = "2";
        var type = path.EndsWith("bulk", StringComparison.Ordinal) ? "application/jsonl" : "application/json";
        var held = Enumerable.Range(0, share).Select(_ => new HeldBody(SmallRoom.Text, type)).ToList();
        var calls = held.Select(body => SendAsync(closed, Yard, path, body)).ToList();
        await Task.WhenAll(held.Select(body => body.Begun)).WaitAsync(TimeSpan.FromSeconds(30));
        var refused = await SendAsync(closed, Yard, path, new StringContent(SmallRoom.Text, Encoding.UTF8, type));
        Assert.Equal((503, "application/problem+json"), (refused.Status, refused.MediaType));
        Assert.Contains("Retry-After", refused.Headers.Keys);
        Assert.Equal(200, (await SendAsync(closed, Mill, path, new StringContent(SmallRoom.Text, Encoding.UTF8, type))).Status);

        held.ForEach(body => body.End());
        Assert.All(await Task.WhenAll(calls), reply => Assert.Equal(200, reply.Status));
        Assert.Equal(200, (await SendAsync(closed, Yard, path, new StringContent(SmallRoom.Text, Encoding.UTF8, type))).Status);
    }

    [Fact]
    public void A_setting_that_is_no_hash_stops_the_service()
    {
        Assert.Throws<InvalidOperationException>(() => new CallerKeys([new CallerKey { Name = "yard", Sha256 = "abcd" }]));
        Assert.Throws<InvalidOperationException>(() => new CallerKeys([new CallerKey { Sha256 = Hash(Yard) }]));
    }

    [Fact]
    public void A_window_gives_its_calls_and_then_none_until_the_next()
    {
        var clock = new Clock();
        var quota = new CallerQuota(clock);
        Assert.Equal(new QuotaUse(true, 2, 1, 60), quota.Use("a", 2));
        clock.Now += TimeSpan.FromSeconds(59.5);
        Assert.Equal(new QuotaUse(true, 2, 0, 1), quota.Use("a", 2));
        Assert.Equal(new QuotaUse(false, 2, 0, 1), quota.Use("a", 2));
        Assert.True(quota.Use("b", 2).Allowed);
        clock.Now += TimeSpan.FromSeconds(0.5);
        Assert.Equal(new QuotaUse(true, 2, 1, 60), quota.Use("a", 2));
    }

    private static Service Closed()
    {
        var closed = new Service();
        closed.Settings["Service:Keys:0:Name"] = "yard";
        closed.Settings["Service:Keys:0:Sha256"] = Hash(Yard);
        closed.Settings["Service:Keys:1:Name"] = "mill";
        closed.Settings["Service:Keys:1:Sha256"] = Hash(Mill);
        closed.Settings["Service:Keys:1:RequestsPerMinute"] = "2";
        return closed;
    }

    private static string Hash(string key) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(key)));

    private static async Task<int> StatusAsync(Service service, string? key) => (await ReplyAsync(service, key)).Status;

    private static async Task<HttpReply> ReplyAsync(Service service, string? key)
    {
        using var client = service.CreateClient();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/v1/limits");
        if (key is not null)
        {
            request.Headers.Add("X-Api-Key", key);
        }

        using var response = await client.SendAsync(request);
        return await HttpReply.OfAsync(response);
    }

    private static async Task<HttpReply> SendAsync(Service service, string key, string path, HttpContent body)
    {
        // a client that follows redirects reads the whole body before it sends any
        using var client = service.CreateClient(new() { AllowAutoRedirect = false, HandleCookies = false });
        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = body };
        request.Headers.Add("X-Api-Key", key);
        using var response = await client.SendAsync(request);
        return await HttpReply.OfAsync(response);
    }

    /// <summary>A body of which the last byte is held back. The rest is more than lies on the way, so once it is sent the call is being read.</summary>
    private sealed class HeldBody : HttpContent
    {
        // bytes that a pipe takes before it waits for its reader
        private const int OnTheWay = 65_536;

        private readonly TaskCompletionSource begun = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private readonly TaskCompletionSource end = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private readonly byte[] bytes;

        public HeldBody(string text, string type)
        {
            bytes = Encoding.UTF8.GetBytes(text.PadRight(OnTheWay * 4));
            Headers.ContentType = new(type);
        }

        public Task Begun => begun.Task;

        public void End() => end.SetResult();

        protected override async Task SerializeToStreamAsync(Stream stream, System.Net.TransportContext? context)
        {
            await stream.WriteAsync(bytes.AsMemory(0, bytes.Length - 1));
            await stream.FlushAsync();
            begun.SetResult();
            await end.Task;
            await stream.WriteAsync(bytes.AsMemory(bytes.Length - 1));
        }

        protected override bool TryComputeLength(out long length)
        {
            length = 0;
            return false;
        }
    }

    private sealed class Clock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2025, 3, 1, 8, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
