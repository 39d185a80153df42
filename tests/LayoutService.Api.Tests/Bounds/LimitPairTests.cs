using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using LayoutService.Api.Tests.Running;

namespace LayoutService.Api.Tests.Bounds;

/// <summary>Each limit that the service tells, tried at its end and one past it, on the real server in a process of its own.</summary>
[Collection(OwnProcess.Name)]
public sealed class LimitPairTests(LimitPairTests.Server server) : IClassFixture<LimitPairTests.Server>
{
    public static TheoryData<string> Limits => [.. LimitPairs.All.Keys];

    [Fact]
    public async Task Every_limit_that_is_told_is_tried()
    {
        var told = (await GetAsync("/v1/limits")).Json.EnumerateObject().Select(limit => limit.Name);
        Assert.Equal(told.Order(StringComparer.Ordinal), LimitPairs.All.Keys.Concat(LimitPairs.Elsewhere.Keys).Order(StringComparer.Ordinal));
        var sources = Directory.GetFiles(Path.Combine(Repository.Root, "tests"), "*Tests.cs", SearchOption.AllDirectories).ToLookup(file => Path.GetFileNameWithoutExtension(file)!);
        Assert.All(LimitPairs.Elsewhere.Values.Select(test => test.Split('.')), test =>
            Assert.Matches($@"\b{test[1]}\(", File.ReadAllText(Assert.Single(sources[test[0]]))));
    }

    [Theory]
    [MemberData(nameof(Limits))]
    public async Task A_request_at_the_limit_is_taken_and_one_past_it_is_refused(string limit)
    {
        var pair = LimitPairs.All[limit];
        var most = (await GetAsync("/v1/limits")).Json.GetProperty(limit).GetInt32();
        Assert.Equal(pair.Beside.Order(), Codes(await PostAsync(pair, most)));
        var past = Codes(await PostAsync(pair, most + 1));
        Assert.Contains(pair.Code, past);
        Assert.DoesNotContain(past, code => code != pair.Code && !pair.Beside.Contains(code));
    }

    /// <summary>What was refused: codes of faults, else the status. A room that has no sensible plan was taken, and a line of bulk stands for itself.</summary>
    private static IEnumerable<string> Codes(HttpReply reply)
    {
        if (reply.MediaType == "application/jsonl")
        {
            var first = JsonDocument.Parse(reply.Text.Split('\n')[0]).RootElement;
            return first.GetProperty("status").GetInt32() is not 200 and var status ? [$"{status}"] : [];
        }

        if (reply.Status == 200 || reply.Json.TryGetProperty("findings", out _))
        {
            return [];
        }

        return reply.Json.TryGetProperty("errors", out _) ? reply.Codes.Distinct().Order() : [$"{reply.Status}"];
    }

    private async Task<HttpReply> PostAsync(LimitPair pair, int count)
    {
        using var content = new ByteArrayContent(Encoding.UTF8.GetBytes(pair.Body(count)));
        content.Headers.ContentType = new MediaTypeHeaderValue(pair.Path.StartsWith("/v1/plans/bulk", StringComparison.Ordinal) ? "application/jsonl" : "application/json");
        using var response = await server.Client.PostAsync(pair.Path, content);
        return await HttpReply.OfAsync(response);
    }

    private async Task<HttpReply> GetAsync(string path)
    {
        using var response = await server.Client.GetAsync(path);
        return await HttpReply.OfAsync(response);
    }

    public sealed class Server : IAsyncLifetime
    {
        private RunningService? service;

        public HttpClient Client { get; } = new();

        public async Task InitializeAsync()
        {
            service = await RunningService.StartAsync();
            Client.BaseAddress = service.Address;
        }

        public async Task DisposeAsync()
        {
            Client.Dispose();
            if (service is not null)
            {
                await service.DisposeAsync();
            }
        }
    }
}
