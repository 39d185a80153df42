using System.IO.Compression;
using System.Text;

namespace LayoutService.Api.Tests.Plans;

/// <summary>Answers that may be kept go out in the coding that the caller takes (RFC 9110, 12.5.3), each with a tag of its own (8.8.3.3).</summary>
public sealed class PackedAnswerTests(Service service) : IClassFixture<Service>
{
    private static readonly HttpMethod Query = new("QUERY");

    [Theory]
    [InlineData("gzip", "gzip")]
    [InlineData("gzip, deflate, br", "br")]
    [InlineData("br;q=0.5, gzip", "gzip")]
    [InlineData("*", "br")]
    [InlineData("br;q=0, *;q=0.1", "gzip")]
    [InlineData("identity", null)]
    [InlineData("gzip;q=0.5, identity", null)]
    [InlineData("deflate", null)]
    [InlineData("gzip;q=0", null)]
    [InlineData("", null)]
    public async Task A_document_comes_in_the_coding_that_is_liked_most(string taken, string? coding)
    {
        var plain = await service.GetAsync("/v1/rules");
        using var reply = await AskAsync(HttpMethod.Get, "/v1/rules", taken, null);
        Assert.Equal(coding, reply.Content.Headers.ContentEncoding.SingleOrDefault());
        Assert.Contains("Accept-Encoding", reply.Headers.Vary);
        Assert.Equal(plain.Text, await TextAsync(reply));
        Assert.Equal(coding is null, reply.Headers.ETag!.Tag == plain.Headers["ETag"]);
    }

    [Theory]
    [InlineData("br")]
    [InlineData("gzip")]
    public async Task A_packed_plan_has_the_bytes_of_the_plain_one_and_is_not_sent_twice(string coding)
    {
        var plain = await service.SendAsync(Query, "/v1/plans", null, SmallRoom.Text);
        using var reply = await AskAsync(Query, "/v1/plans", coding, SmallRoom.Text);
        Assert.Equal(plain.Text, await TextAsync(reply));
        Assert.True(reply.Content.Headers.ContentLength < plain.Body.Length / 3);
        using var again = await AskAsync(Query, "/v1/plans", coding, SmallRoom.Text, reply.Headers.ETag!.ToString());
        Assert.Equal(304, (int)again.StatusCode);
        using var other = await AskAsync(Query, "/v1/plans", coding, SmallRoom.Text, plain.Headers["ETag"]);
        Assert.Equal(200, (int)other.StatusCode);
    }

    [Fact]
    public async Task A_short_answer_and_a_refusal_are_sent_as_they_are()
    {
        using var refused = await AskAsync(Query, "/v1/plans", "gzip", "{}");
        Assert.Equal(422, (int)refused.StatusCode);
        Assert.Empty(refused.Content.Headers.ContentEncoding);
        using var head = await AskAsync(HttpMethod.Head, "/v1/rules", "gzip", null);
        Assert.Equal(["gzip"], head.Content.Headers.ContentEncoding);
    }

    private async Task<HttpResponseMessage> AskAsync(HttpMethod method, string path, string taken, string? json, string? known = null)
    {
        using var client = service.CreateClient();
        using var request = new HttpRequestMessage(method, path);
        request.Headers.TryAddWithoutValidation("Accept-Encoding", taken);
        if (known is not null)
        {
            request.Headers.TryAddWithoutValidation("If-None-Match", known);
        }

        if (json is not null)
        {
            request.Content = new StringContent(json, Encoding.UTF8, "application/json");
        }

        return await client.SendAsync(request);
    }

    private static async Task<string> TextAsync(HttpResponseMessage reply)
    {
        var body = await reply.Content.ReadAsStreamAsync();
        await using Stream plain = reply.Content.Headers.ContentEncoding.SingleOrDefault() switch
        {
            "br" => new BrotliStream(body, CompressionMode.Decompress),
            "gzip" => new GZipStream(body, CompressionMode.Decompress),
            _ => body,
        };
        using var reader = new StreamReader(plain, Encoding.UTF8);
        return await reader.ReadToEndAsync();
    }
}
