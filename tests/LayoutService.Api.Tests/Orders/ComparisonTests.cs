using System.Text.Json.Nodes;

namespace LayoutService.Api.Tests.Orders;

/// <summary>Variants of one room side by side.</summary>
public class ComparisonTests(Service service) : IClassFixture<Service>
{
    private static readonly string Base = SmallJob.Alone(SmallJob.Room(3600, 3000));

    private static string With(params (string Name, string Change)[] variants) =>
        $$"""{"base":{{Base}},"variants":[{{string.Join(',', variants.Select(v => $$"""{"name":"{{v.Name}}","change":{{v.Change}}}"""))}}]}""";

    [Fact]
    public async Task A_variant_is_the_plan_that_a_single_call_makes_of_it()
    {
        var reply = await service.PostAsync("/v1/comparisons?include=all", With(("close rows", """{"strapping":{"maxSpacing":300}}""")));
        Assert.True(reply.Status == 200, reply.Text);
        var changed = JsonNode.Parse(Base)!;
        changed["strapping"]!["maxSpacing"] = 300;
        var alone = await service.PostAsync("/v1/plans", changed.ToJsonString());
        var line = reply.Json.GetProperty("variants")[1];
        var plan = JsonNode.Parse(line.GetProperty("plan").GetRawText())!.AsObject();
        Assert.Equal(alone.Json.GetProperty("digest").GetString(), line.GetProperty("digest").GetString());
        foreach (var block in new[] { "summary", "strapping", "sheets", "cutPlan", "takeoff", "checks", "steps" })
        {
            Assert.Equal(alone.Json.GetProperty(block).GetRawText(), line.GetProperty("plan").GetProperty(block).GetRawText());
        }

        Assert.Equal(plan["summary"]!["cost"]!.GetValue<decimal>(), line.GetProperty("figures").GetProperty("cost").GetDecimal());
        Assert.Equal(plan["summary"]!["rows"]!.GetValue<int>(), line.GetProperty("figures").GetProperty("rows").GetInt32());
    }

    [Fact]
    public async Task The_best_of_each_figure_is_the_least_or_the_most_of_its_column()
    {
        var json = (await service.PostAsync("/v1/comparisons", With(
            ("close rows", """{"strapping":{"maxSpacing":300}}"""), ("short sheets", """{"sheets":{"stock":[{"id":"b24","width":1200,"length":2400,"packPrice":13.37}]}}""")))).Json;
        foreach (var best in json.GetProperty("best").EnumerateArray())
        {
            var figure = best.GetProperty("figure").GetString()!;
            var column = json.GetProperty("variants").EnumerateArray().Select(v => (Name: v.GetProperty("name").GetString()!, Value: v.GetProperty("figures").GetProperty(figure).GetDecimal())).ToList();
            var value = best.GetProperty("better").GetString() == "less" ? column.Min(c => c.Value) : column.Max(c => c.Value);
            Assert.Equal(value, best.GetProperty("value").GetDecimal());
            Assert.Equal(column.Where(c => c.Value == value).Select(c => c.Name), best.GetProperty("names").EnumerateArray().Select(n => n.GetString()!));
        }

        Assert.Contains("cost", json.GetProperty("best").EnumerateArray().Select(b => b.GetProperty("figure").GetString()));
    }

    [Fact]
    public async Task A_variant_without_a_plan_says_why_in_its_line()
    {
        var json = (await service.PostAsync("/v1/comparisons", With(("weak", """{"crew":{"massLimit":1}}""")))).Json;
        Assert.Equal("#/variants/0/change", json.GetProperty("variants")[1].GetProperty("findings")[0].GetProperty("pointer").GetString());
        Assert.False(json.GetProperty("variants")[1].TryGetProperty("figures", out _));
    }

    [Fact]
    public async Task Faults_are_told_where_they_come_from()
    {
        var reply = await service.PostAsync("/v1/comparisons", With(
            ("base", "{}"), ("a", """{"strapping":{"maxSpacing":1}}"""), ("a", """{"units":"imperial"}""")));
        Assert.Equal(["#/variants/0/name", "#/variants/2/name"], reply.Json.GetProperty("errors").EnumerateArray().Select(e => e.GetProperty("pointer").GetString()!));
        reply = await service.PostAsync("/v1/comparisons", With(("a", """{"strapping":{"maxSpacing":1}}""")));
        Assert.Equal(["#/variants/0/change/strapping/maxSpacing"], reply.Json.GetProperty("errors").EnumerateArray().Select(e => e.GetProperty("pointer").GetString()!));
    }
}
