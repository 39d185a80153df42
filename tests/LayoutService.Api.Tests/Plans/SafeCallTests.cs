namespace LayoutService.Api.Tests.Plans;

/// <summary>Calls that may be kept: GET and QUERY have a strong tag; QUERY answers what POST answers.</summary>
public class SafeCallTests(Service service) : IClassFixture<Service>
{
    private static readonly HttpMethod Query = new("QUERY");

    [Theory]
    [InlineData("application/json")]
    [InlineData("text/csv")]
    [InlineData("image/svg+xml")]
    public async Task QUERY_gives_the_bytes_of_POST_and_may_be_kept(string form)
    {
        var posted = await service.SendAsync(HttpMethod.Post, "/v1/plans", form, SmallRoom.Text);
        var asked = await service.SendAsync(Query, "/v1/plans", form, SmallRoom.Text);
        Assert.Equal(200, asked.Status);
        Assert.Equal(form, asked.MediaType);
        Assert.Equal(posted.Body, asked.Body);
        Assert.Equal("max-age=3600", asked.Headers["Cache-Control"]);
        Assert.Equal("Accept, Accept-Encoding", asked.Headers["Vary"]);
        Assert.Matches("^\"[0-9a-f]{64}\"$", asked.Headers["ETag"]);
        Assert.False(posted.Headers.ContainsKey("ETag"));
    }

    [Fact]
    public async Task A_query_whose_answer_the_caller_has_is_not_sent_again()
    {
        var first = await service.SendAsync(Query, "/v1/plans", null, SmallRoom.Text);
        Assert.Equal((304, 0), await AgainAsync(Query, "/v1/plans", SmallRoom.Text, first.Headers["ETag"]));
        Assert.Equal((304, 0), await AgainAsync(Query, "/v1/plans", SmallRoom.Text, "W/" + first.Headers["ETag"]));
        Assert.Equal((200, first.Body.Length), await AgainAsync(Query, "/v1/plans", SmallRoom.Text, "\"other\""));
        var wider = SmallRoom.With("room.outline.1.0", "3700");
        Assert.Equal(200, (await AgainAsync(Query, "/v1/plans", SmallRoom.With("reference", "\"x\""), first.Headers["ETag"])).Status);
        Assert.Equal(200, (await AgainAsync(Query, "/v1/plans", wider, first.Headers["ETag"])).Status);
    }

    [Theory]
    [InlineData("{}", 422)]
    [InlineData("{", 400)]
    public async Task A_query_that_is_refused_is_refused_like_a_post_and_not_kept(string body, int status)
    {
        var refused = await service.SendAsync(Query, "/v1/plans", null, body);
        Assert.Equal(status, refused.Status);
        Assert.Equal("application/problem+json", refused.MediaType);
        Assert.Equal("no-store", refused.Headers["Cache-Control"]);
        Assert.False(refused.Headers.ContainsKey("ETag"));
    }

    [Theory]
    [InlineData("/v1/limits")]
    [InlineData("/v1/rules")]
    [InlineData("/v1/rulesets")]
    [InlineData("/v1/materials")]
    public async Task A_document_has_a_tag_and_HEAD_mirrors_GET(string path)
    {
        var whole = await service.GetAsync(path);
        Assert.Equal(200, whole.Status);
        Assert.Equal((304, 0), await AgainAsync(HttpMethod.Get, path, null, whole.Headers["ETag"]));
        var head = await service.SendAsync(HttpMethod.Head, path);
        Assert.Empty(head.Body);
        Assert.Equal(whole.Headers["ETag"], head.Headers["ETag"]);
        Assert.Equal(whole.Headers["Content-Length"], head.Headers["Content-Length"]);
    }

    private async Task<(int Status, int Bytes)> AgainAsync(HttpMethod method, string path, string? body, string tag)
    {
        using var client = service.CreateClient();
        using var request = new HttpRequestMessage(method, path);
        request.Headers.TryAddWithoutValidation("If-None-Match", tag);
        if (body is not null)
        {
            request.Content = new StringContent(body, System.Text.Encoding.UTF8, "application/json");
        }

        using var response = await client.SendAsync(request);
        return ((int)response.StatusCode, (await response.Content.ReadAsByteArrayAsync()).Length);
    }
}
