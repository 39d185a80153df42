using System.IO.Compression;
using System.Net.Http.Headers;
using System.Text;
using LayoutService.Api.Hosting;
using LayoutService.Api.Tests.Running;

namespace LayoutService.Api.Tests.Bounds;

/// <summary>Bodies that want more than they send, on the real server, in a process of its own whose memory is looked at.</summary>
[Collection(OwnProcess.Name)]
public sealed class WireBoundTests : IAsyncLifetime
{
    private RunningService service = null!;

    public async Task InitializeAsync() => service = await RunningService.StartAsync();

    public async Task DisposeAsync() => await service.DisposeAsync();

    public static TheoryData<string, string, bool, int> Bodies => new()
    {
        { "gzip bomb", "gzip", false, 415 },
        { "corrupt gzip", "gzip", false, 415 },
        { "corrupt gzip", "br", false, 415 },
        { "room", "snappy", false, 415 },
        { "room", "gzip, gzip", false, 415 },
        { "room", "identity", false, 200 },
        { "too long", "", true, 413 },
        { "too long", "", false, 413 },
        { "far too long", "", true, 413 },
        { "at the limit", "", true, 200 },
        { "deep", "", false, 400 },
        { "wide", "", false, 400 },
    };

    [Theory]
    [MemberData(nameof(Bodies))]
    public async Task A_body_is_answered_as_documented_and_takes_no_memory_to_speak_of(string body, string coding, bool chunked, int status)
    {
        using var client = new HttpClient { BaseAddress = service.Address };
        using var content = new ByteArrayContent(Bytes(body));
        content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        if (coding.Length > 0)
        {
            content.Headers.TryAddWithoutValidation("Content-Encoding", coding);
        }

        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/plans?include=summary") { Content = content };
        request.Headers.TransferEncodingChunked = chunked;
        using var response = await client.SendAsync(request);
        var reply = await HttpReply.OfAsync(response);
        Assert.Equal(status, reply.Status);
        Assert.Equal(status == 200 ? "application/json" : "application/problem+json", reply.MediaType);
        Assert.InRange(PeakMegabytes(), 1, 600);
    }

    [Fact]
    public async Task A_body_that_breaks_off_is_no_fault_of_the_service()
    {
        using (var call = await Bulk.OpenCall.ToAsync(service.Address, "/v1/plans", "application/json"))
        {
            await call.SendAsync("{\"units\":");
        }

        using var client = new HttpClient { BaseAddress = service.Address };
        Assert.Equal(200, (int)(await client.GetAsync("/health/ready")).StatusCode);
        Assert.DoesNotContain(service.Log, line => line.Contains("\"@l\":\"Error\"", StringComparison.Ordinal));
    }

    private long PeakMegabytes()
    {
        var line = File.ReadLines($"/proc/{service.Id}/status").First(l => l.StartsWith("VmHWM:", StringComparison.Ordinal));
        return long.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[^2], System.Globalization.CultureInfo.InvariantCulture) / 1024;
    }

    private static byte[] Bytes(string body) => body switch
    {
        "gzip bomb" => Zipped(new byte[200_000_000]),
        "corrupt gzip" => [0x1F, 0x8B, 0x08, 0, 1, 2, 3, 4, 5, 6, 7],
        "too long" => Room(ServiceLimits.MaxBodyBytes + 1),
        "far too long" => Room(12 * ServiceLimits.MaxBodyBytes),
        "at the limit" => Room(ServiceLimits.MaxBodyBytes),
        "deep" => Encoding.UTF8.GetBytes(new string('[', 1_000_000)),
        "wide" => Encoding.UTF8.GetBytes("[" + string.Join(",", Enumerable.Repeat("{}", 300_000)) + "]"),
        _ => Encoding.UTF8.GetBytes(SmallRoom.Text),
    };

    private static byte[] Room(int bytes) => Encoding.UTF8.GetBytes(SmallRoom.Text.PadRight(bytes));

    private static byte[] Zipped(byte[] plain)
    {
        using var zipped = new MemoryStream();
        using (var gzip = new GZipStream(zipped, CompressionLevel.Optimal))
        {
            gzip.Write(plain);
        }

        return zipped.ToArray();
    }
}
