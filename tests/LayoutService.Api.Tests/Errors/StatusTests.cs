using System.Net;
using System.Net.Http.Headers;
using System.Text;
using LayoutService.Api.Hosting;
using Microsoft.Extensions.DependencyInjection;

namespace LayoutService.Api.Tests.Errors;

/// <summary>Each status that the contract declares, provoked; each answer is a problem, whatever is accepted.</summary>
public class StatusTests(Service service) : IClassFixture<Service>
{
    [Theory]
    [InlineData(null)]
    [InlineData("*/*")]
    [InlineData("application/json")]
    [InlineData("application/problem+json")]
    [InlineData("text/html")]
    [InlineData("image/png;q=0.1")]
    public async Task A_problem_is_written_whatever_is_accepted(string? accept)
    {
        var reply = await service.SendAsync(HttpMethod.Get, "/v1/nothing", accept);
        Assert.Equal(404, reply.Status);
        IsProblem(reply, "/problems/not-found", "No resource has this address.");
    }

    [Fact]
    public async Task A_problem_repeats_the_path_and_the_id_of_the_call()
    {
        using var client = service.CreateClient();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/v1/rules/none");
        request.Headers.Add("X-Request-Id", "yard-4711");
        using var response = await client.SendAsync(request);
        var reply = await HttpReply.OfAsync(response);
        Assert.Equal("/v1/rules/none", reply.Json.GetProperty("instance").GetString());
        Assert.Equal("yard-4711", reply.Json.GetProperty("requestId").GetString());
        Assert.Equal("yard-4711", reply.Headers["X-Request-Id"]);
    }

    [Fact]
    public async Task An_id_of_a_call_that_is_no_plain_word_is_replaced()
    {
        using var client = service.CreateClient();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/health/live");
        request.Headers.TryAddWithoutValidation("X-Request-Id", "a b<c>");
        using var response = await client.SendAsync(request);
        Assert.Matches("^[0-9a-f]{32}$", response.Headers.GetValues("X-Request-Id").Single());
    }

    [Theory]
    [InlineData("/v1/plans", "GET", "POST, QUERY")]
    [InlineData("/v1/plans", "DELETE", "POST, QUERY")]
    [InlineData("/v1/jobs", "DELETE", "POST")]
    [InlineData("/v1/limits", "POST", "GET")]
    public async Task A_wrong_method_is_told_the_right_ones(string path, string method, string allow)
    {
        var reply = await service.SendAsync(new HttpMethod(method), path);
        Assert.Equal(405, reply.Status);
        Assert.Equal(allow, reply.Headers["Allow"]);
        IsProblem(reply, "/problems/method-not-allowed", $"The method {method} is not allowed here.");
    }

    [Theory]
    [InlineData("text/csv")]
    [InlineData("application/json;q=0")]
    [InlineData("application/*;q=0, text/html")]
    public async Task An_answer_that_is_not_accepted_is_not_given(string accept)
    {
        var reply = await service.SendAsync(HttpMethod.Post, "/v1/plans/check", accept, SmallRoom.Text);
        Assert.Equal(406, reply.Status);
        IsProblem(reply, "/problems/not-acceptable", "The header Accept allows none of the forms of this answer: application/json.");
    }

    [Theory]
    [InlineData("application/*")]
    [InlineData("text/html;q=0.9, */*;q=0.1")]
    [InlineData("APPLICATION/JSON")]
    public async Task An_answer_that_is_accepted_is_given(string accept) =>
        Assert.Equal(200, (await service.SendAsync(HttpMethod.Post, "/v1/plans", accept, SmallRoom.Text)).Status);

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("application/json; charset=iso-8859-1")]
    public async Task A_body_of_another_type_is_refused_and_the_right_one_named(string mediaType)
    {
        var reply = await service.PostAsync("/v1/plans", Encoding.UTF8.GetBytes(SmallRoom.Text), mediaType);
        Assert.Equal(415, reply.Status);
        Assert.Equal("application/json", reply.Headers["Accept"]);
        Assert.Equal("/problems/unsupported-media-type", reply.Json.GetProperty("type").GetString());
    }

    [Fact]
    public async Task A_body_with_a_content_coding_is_refused()
    {
        using var client = service.CreateClient();
        using var content = new StringContent(SmallRoom.Text, Encoding.UTF8, "application/json");
        content.Headers.ContentEncoding.Add("gzip");
        using var response = await client.PostAsync("/v1/plans", content);
        var reply = await HttpReply.OfAsync(response);
        Assert.Equal(415, reply.Status);
        Assert.Equal("identity", reply.Headers["Accept-Encoding"]);
        IsProblem(reply, "/problems/unsupported-media-type", "The body has a content coding; send it without one.");
    }

    [Fact]
    public async Task A_body_in_utf_8_by_its_name_and_with_a_byte_order_mark_is_read()
    {
        byte[] body = [.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(SmallRoom.Text)];
        Assert.Equal(200, (await service.PostAsync("/v1/plans", body, "application/json; charset=\"UTF-8\"")).Status);
    }

    [Theory]
    [InlineData("?include=walls,wallpaper", "A word of include is not known; the words are all, summary, checks, cautions, floor, walls, joists, strapping, sheets, bulkheads, fixtures, insulation, cutPlan, takeoff, steps, alternatives, drawing, methods, slack.")]
    [InlineData("?view=rows", "An answer in application/json has no views; view goes with another header Accept.")]
    [InlineData("?sort=up", "The only name after the question mark is include.")]
    public async Task A_query_that_cannot_be_read_is_refused(string query, string detail)
    {
        var reply = await service.PostAsync("/v1/plans" + query, SmallRoom.Text);
        Assert.Equal(400, reply.Status);
        IsProblem(reply, "/problems/invalid-query", detail);
    }

    [Fact]
    public async Task A_room_that_cannot_be_planned_gets_findings_and_no_errors()
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("room.outline", "[[0,0],[3600,0],[3600,40],[0,40]]"));
        Assert.Equal(422, reply.Status);
        Assert.Equal("/problems/no-plan", reply.Json.GetProperty("type").GetString());
        Assert.False(reply.Json.TryGetProperty("errors", out _));
        var finding = reply.Json.GetProperty("findings")[0];
        Assert.Equal("room_smaller_than_strap", finding.GetProperty("code").GetString());
        Assert.Equal("The room is nowhere wide enough for a strap 64 mm wide.", finding.GetProperty("text").GetString());
        Assert.NotEmpty(finding.GetProperty("remedies").EnumerateArray());
    }

    [Fact]
    public async Task A_caller_over_the_limit_of_a_minute_is_told_when_to_come_back()
    {
        using var limited = new Service();
        limited.Settings["Service:RequestsPerMinute"] = "2";
        Assert.Equal(200, (await limited.GetAsync("/v1/limits")).Status);
        Assert.Equal(200, (await limited.GetAsync("/v1/limits")).Status);
        var reply = await limited.GetAsync("/v1/limits");
        Assert.Equal(429, reply.Status);
        Assert.InRange(int.Parse(reply.Headers["Retry-After"]), 1, 60);
        Assert.Equal("/problems/too-many-requests", reply.Json.GetProperty("type").GetString());
        Assert.Equal(200, (await limited.GetAsync("/health/live")).Status);
    }

    [Fact]
    public async Task A_service_with_no_place_left_says_when_to_come_back()
    {
        using var narrow = new Service();
        narrow.Settings["Service:PlansAtOnce"] = "1";
        narrow.Settings["Service:PlansWaiting"] = "0";
        var gate = narrow.Services.GetRequiredService<EngineGate>();
        using (await gate.EnterAsync(CancellationToken.None))
        {
            var reply = await narrow.PostAsync("/v1/plans", SmallRoom.Text);
            Assert.Equal(503, reply.Status);
            Assert.Equal("1", reply.Headers["Retry-After"]);
            IsProblem(reply, "/problems/busy", "All places for planning are taken; try again in a second.");
        }

        Assert.Equal(200, (await narrow.PostAsync("/v1/plans", SmallRoom.Text)).Status);
    }

    [Fact]
    public async Task On_a_real_server_a_body_too_large_is_refused_with_its_length_said_or_not()
    {
        using var real = new Service();
        real.UseKestrel(0);
        real.StartServer();
        using var client = real.CreateClient();
        foreach (var chunked in new[] { false, true })
        {
            using var content = new ByteArrayContent(new byte[1_048_577]);
            content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
            using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/plans") { Content = content };
            request.Headers.TransferEncodingChunked = chunked;
            using var response = await client.SendAsync(request);
            var reply = await HttpReply.OfAsync(response);
            Assert.Equal(413, reply.Status);
            IsProblem(reply, "/problems/body-too-large", "The body is larger than 1048576 bytes.");
            Assert.False(response.Headers.Contains("Server"));
        }
    }

    [Fact]
    public async Task Every_kind_of_problem_has_its_page_in_json_and_for_people()
    {
        foreach (var kind in ProblemKind.All)
        {
            var page = await service.GetAsync(kind.Address);
            Assert.Equal(200, page.Status);
            Assert.Equal(kind.Title, page.Json.GetProperty("title").GetString());
            var html = await service.GetAsync(kind.Address, "text/html");
            Assert.Equal("text/html", html.MediaType);
            Assert.Contains($"<h1>{WebUtility.HtmlEncode(kind.Title)}</h1>", html.Text);
        }

        Assert.Equal(404, (await service.GetAsync("/problems/none")).Status);
    }

    private static void IsProblem(HttpReply reply, string type, string detail)
    {
        Assert.Equal("application/problem+json", reply.MediaType);
        Assert.Equal("no-store", reply.Headers["Cache-Control"]);
        Assert.Equal("nosniff", reply.Headers["X-Content-Type-Options"]);
        var problem = reply.Json;
        Assert.Equal(type, problem.GetProperty("type").GetString());
        Assert.Equal(reply.Status, problem.GetProperty("status").GetInt32());
        Assert.NotEmpty(problem.GetProperty("title").GetString()!);
        Assert.Equal(detail, problem.GetProperty("detail").GetString());
        Assert.Equal(reply.Headers["X-Request-Id"], problem.GetProperty("requestId").GetString());
    }
}
