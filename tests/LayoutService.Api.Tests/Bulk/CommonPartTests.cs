using System.Text;
using System.Text.Json;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Tests.Bulk;

/// <summary>A common part is laid under every room, as RFC 7396 says.</summary>
public class CommonPartTests(Service service) : IClassFixture<Service>
{
    private const string Common = """{"common":{"reference":"common","units":"metric","ruleset":"ca-nbc-2020","strapping":{"maxSpacing":300,"kerf":2},"joistFields":[{"run":"y","spacing":400,"first":200}]}}""";
    private const string Outline = "\"room\":{\"outline\":[[0,0],[3600,0],[3600,3000],[0,3000]]}";

    [Fact]
    public async Task A_room_over_the_common_part_is_planned_as_the_two_merged()
    {
        var lines = await BulkLines.AskAsync(service, $"\n{Common}\n{{{Outline}}}\n{{\"reference\":\"own\",{Outline},\"strapping\":{{\"kerf\":null,\"maxSpacing\":400}}}}", "");
        Assert.Equal(["plan 0 3 common 200", "plan 1 4 own 200", "summary 2 4 - 200"], lines.Select(BulkLines.Brief));
        var first = await service.PostAsync("/v1/plans", """{"reference":"common","units":"metric","ruleset":"ca-nbc-2020","strapping":{"maxSpacing":300,"kerf":2},"joistFields":[{"run":"y","spacing":400,"first":200}],""" + Outline + "}");
        var second = await service.PostAsync("/v1/plans", """{"reference":"own","units":"metric","ruleset":"ca-nbc-2020","strapping":{"maxSpacing":400},"joistFields":[{"run":"y","spacing":400,"first":200}],""" + Outline + "}");
        Assert.Equal(first.Text, lines[0].GetProperty("plan").GetRawText());
        Assert.Equal(second.Text, lines[1].GetProperty("plan").GetRawText());
    }

    [Fact]
    public async Task A_member_that_stands_twice_in_a_room_is_still_refused()
    {
        var lines = await BulkLines.AskAsync(service, $"{Common}\n{{{Outline},\"units\":\"metric\",\"units\":\"metric\"}}\n{{{Outline},\"x\":1,\"x\":2}}");
        Assert.Equal("duplicate_member", CodeOf(lines[0]));
        Assert.Equal("unknown_member", CodeOf(lines[1]));
    }

    [Fact]
    public async Task A_room_that_is_not_JSON_is_told_so_under_a_common_part_too()
    {
        var lines = await BulkLines.AskAsync(service, $"{Common}\n{{bad\n[1]\n{{\"reference\":\"\\ud800\"}}");
        Assert.Equal(["json_malformed", "wrong_type", "text_not_unicode"], lines.Take(3).Select(CodeOf));
    }

    [Theory]
    [InlineData("""{"common":3}""", "#/common", "wrong_type")]
    [InlineData("""{"common":null}""", "#/common", "wrong_type")]
    [InlineData("""{"common":{},"units":"metric"}""", "#/units", "unknown_member")]
    [InlineData("""{"common":{},"common":{}}""", "#/common", "duplicate_member")]
    [InlineData("""{"common":{"reference":"\ud800"}}""", "#/common", "text_not_unicode")]
    public async Task A_common_part_that_cannot_be_used_refuses_the_call(string first, string pointer, string code)
    {
        var reply = await service.PostAsync("/v1/plans/bulk", Encoding.UTF8.GetBytes(first + "\n" + BulkLines.Room(1)), BulkLines.MediaType);
        Assert.Equal(400, reply.Status);
        Assert.Equal("application/problem+json", reply.MediaType);
        Assert.StartsWith($"{pointer} {code}: ", Assert.Single(reply.Faults));
    }

    [Fact]
    public async Task A_common_part_on_a_later_line_is_a_room_like_any_other()
    {
        var lines = await BulkLines.AskAsync(service, $"{BulkLines.Room(1)}\n{Common}");
        Assert.Equal("unknown_member", CodeOf(lines[1]));
    }

    // the cases of RFC 7396, appendix A: target, patch, result
    [Theory]
    [InlineData("""{"a":"b"}""", """{"a":"c"}""", """{"a":"c"}""")]
    [InlineData("""{"a":"b"}""", """{"b":"c"}""", """{"a":"b","b":"c"}""")]
    [InlineData("""{"a":"b"}""", """{"a":null}""", """{}""")]
    [InlineData("""{"a":"b","b":"c"}""", """{"a":null}""", """{"b":"c"}""")]
    [InlineData("""{"a":["b"]}""", """{"a":"c"}""", """{"a":"c"}""")]
    [InlineData("""{"a":"c"}""", """{"a":["b"]}""", """{"a":["b"]}""")]
    [InlineData("""{"a":{"b":"c"}}""", """{"a":{"b":"d","c":null}}""", """{"a":{"b":"d"}}""")]
    [InlineData("""{"a":[{"b":"c"}]}""", """{"a":[1]}""", """{"a":[1]}""")]
    [InlineData("""["a","b"]""", """["c","d"]""", """["c","d"]""")]
    [InlineData("""{"a":"b"}""", """["c"]""", """["c"]""")]
    [InlineData("""{"a":"foo"}""", "null", "null")]
    [InlineData("""{"a":"foo"}""", "\"bar\"", "\"bar\"")]
    [InlineData("""{"e":null}""", """{"a":1}""", """{"e":null,"a":1}""")]
    [InlineData("""[1,2]""", """{"a":"b","c":null}""", """{"a":"b"}""")]
    [InlineData("""{}""", """{"a":{"bb":{"ccc":null}}}""", """{"a":{"bb":{}}}""")]
    public void A_patch_is_laid_over_a_target_as_the_RFC_shows(string target, string patch, string result)
    {
        var merged = MergePatch.Of(JsonDocument.Parse(target).RootElement, JsonDocument.Parse(patch).RootElement);
        Assert.Equal(result, Encoding.UTF8.GetString(merged.Span));
    }

    private static string CodeOf(JsonElement line) => line.GetProperty("problem").GetProperty("errors")[0].GetProperty("code").GetString()!;
}
