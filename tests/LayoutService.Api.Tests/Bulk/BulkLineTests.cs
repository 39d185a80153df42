using System.Text;
using System.Text.Json;

namespace LayoutService.Api.Tests.Bulk;

/// <summary>What becomes of lines, by themselves and beside each other.</summary>
public class BulkLineTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task Each_line_is_answered_in_order_and_a_bad_one_never_stops_the_rest()
    {
        var sent = string.Join('\n', BulkLines.Room(1), "{bad", """{"reference":"no room","units":"metric"}""", "[]", BulkLines.Room(2)) + "\n";
        var lines = await BulkLines.AskAsync(service, sent);
        Assert.Equal(
            ["plan 0 1 room 1 200", "problem 1 2 - 400", "problem 2 3 no room 422", "problem 3 4 - 400", "plan 4 5 room 2 200", "summary 5 5 - 200"],
            lines.Select(BulkLines.Brief));
        Assert.Equal("""{"count":5,"ok":2,"failed":3,"complete":true,"nextIndex":5}""", BulkLines.Summary(lines));
    }

    [Fact]
    public async Task Blank_lines_a_byte_order_mark_carriage_returns_and_a_missing_last_end_are_taken()
    {
        var lines = await BulkLines.AskAsync(service, $"\uFEFF\r\n \t \n{BulkLines.Room(1)}\r\n\n\n  {BulkLines.Room(2)} ");
        Assert.Equal(["plan 0 3 room 1 200", "plan 1 6 room 2 200", "summary 2 6 - 200"], lines.Select(BulkLines.Brief));
    }

    [Fact]
    public async Task Nothing_sent_is_nothing_answered_and_complete()
    {
        var lines = await BulkLines.AskAsync(service, "");
        Assert.Equal("""{"count":0,"ok":0,"failed":0,"complete":true,"nextIndex":0}""", BulkLines.Summary(lines));
    }

    [Theory]
    [InlineData(0, "plan 0 1 room 1 200")]
    [InlineData(1, "problem 0 1 - 413")]
    [InlineData(3_000_000, "problem 0 1 - 413")]
    public async Task A_line_may_be_as_long_as_a_body_and_a_longer_one_is_refused_alone(int over, string first)
    {
        var limit = (await service.GetAsync("/v1/limits")).Json.GetProperty("bulkLineBytes").GetInt32();
        var lines = await BulkLines.AskAsync(service, $"{BulkLines.Room(1).PadRight(limit + over)}\r\n{BulkLines.Room(2)}");
        Assert.Equal([first, "plan 1 2 room 2 200", "summary 2 2 - 200"], lines.Select(BulkLines.Brief));
    }

    [Fact]
    public async Task A_plan_has_the_bytes_that_it_has_alone()
    {
        foreach (var name in Repository.Examples)
        {
            foreach (var query in new[] { "", "?include=summary,takeoff" })
            {
                var sent = BulkLines.Example(name);
                var alone = await service.PostAsync("/v1/plans" + query, sent);
                var lines = await BulkLines.AskAsync(service, sent, query);
                Assert.Equal(alone.Text, lines[0].GetProperty("plan").GetRawText());
            }
        }
    }

    [Fact]
    public async Task A_problem_is_the_one_that_the_room_has_alone()
    {
        foreach (var sent in new[] { "{bad", "null", """{"units":"metric"}""", """{"units":"metric","units":"metric"}""", SmallRoom.With("room.outline.2", """["a",0]""") })
        {
            var alone = (await service.PostAsync("/v1/plans", sent)).Json;
            var problem = (await BulkLines.AskAsync(service, sent))[0].GetProperty("problem");
            foreach (var member in new[] { "type", "title", "status", "detail", "errors" })
            {
                Assert.Equal(alone.GetProperty(member).GetRawText(), problem.GetProperty(member).GetRawText());
            }

            Assert.Equal("/v1/plans/bulk", problem.GetProperty("instance").GetString());
        }
    }

    [Fact]
    public async Task A_small_room_waits_for_its_place_behind_a_large_one()
    {
        var large = SmallRoom.With("room.outline", "[[0,0],[40000,0],[40000,30000],[0,30000]]");
        var lines = await BulkLines.AskAsync(service, large + "\n" + BulkLines.Rooms(40));
        Assert.Equal(Enumerable.Range(0, 42), lines.Select(line => line.GetProperty("index").GetInt32()));
        Assert.Equal("room 39", lines[40].GetProperty("reference").GetString());
    }

    [Theory]
    [InlineData("application/json", null, "", 415)]
    [InlineData("application/jsonl", "application/json", "", 406)]
    [InlineData("application/jsonl", null, "?include=colour", 400)]
    [InlineData("application/jsonl; charset=utf-16", null, "", 415)]
    [InlineData("application/x-ndjson", "application/x-ndjson", "", 200)]
    public async Task A_call_that_is_not_in_JSON_Lines_is_refused_whole(string sends, string? takes, string query, int status)
    {
        using var client = service.CreateClient();
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/plans/bulk" + query);
        request.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(BulkLines.Room(1)));
        request.Content.Headers.TryAddWithoutValidation("Content-Type", sends);
        request.Headers.TryAddWithoutValidation("Accept", takes ?? "*/*");
        using var response = await client.SendAsync(request);
        var reply = await HttpReply.OfAsync(response);
        Assert.Equal(status, reply.Status);
        Assert.Equal(status == 200 ? takes : "application/problem+json", reply.MediaType);
        if (status == 415)
        {
            Assert.Equal("application/jsonl, application/x-ndjson", reply.Headers["Accept"]);
        }
    }

    [Fact]
    public async Task The_contract_describes_a_line_of_the_answer()
    {
        var contract = new Contract.ContractSchema((await service.GetAsync("/openapi/v1.json")).Json);
        var lines = await BulkLines.AskAsync(service, $"{BulkLines.Room(1)}\n{{bad\n", "");
        Assert.All(lines, line => Assert.Empty(contract.FaultsOf(line, "BulkLineAnswer")));
        Assert.NotEmpty(contract.FaultsOf(JsonDocument.Parse("""{"kind":"plan"}""").RootElement, "BulkLineAnswer"));
    }
}
