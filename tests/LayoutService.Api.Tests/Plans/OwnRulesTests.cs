using System.Globalization;
using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>Rules set one by one: what is planned by changes the plan, what cannot be set says why.</summary>
public class OwnRulesTests(Service service) : IClassFixture<Service>
{
    [Theory]
    [InlineData("strap-spacing-default", 300, "#/strapping/maxSpacing", "300 mm")]
    [InlineData("strap-face-default", 89, "#/strapping/size/face", "89 mm")]
    [InlineData("strap-thickness-default", 38, "#/strapping/size/thickness", "38 mm")]
    [InlineData("min-piece", 900, "#/strapping/minPiece", "900 mm")]
    [InlineData("kerf", 4, "#/strapping/kerf", "4 mm")]
    [InlineData("end-trim", 10, "#/strapping/endTrim", "10 mm")]
    [InlineData("end-clearance", 10, "#/strapping/endClearance", "10 mm")]
    [InlineData("board-short", 5, "#/sheets/cutAllowance", "5 mm")]
    [InlineData("butt-stagger-rows", 3, "#/sheets/minStagger", "3 row spaces")]
    public async Task A_default_that_is_set_is_planned_by_and_told_as_assumed(string rule, int value, string pointer, string taken)
    {
        var plan = await Plan(rule, value);
        var assumed = plan.GetProperty("assumed").EnumerateArray().Single(item => item.GetProperty("pointer").GetString() == pointer);
        Assert.Equal(taken, assumed.GetProperty("value").GetString());
    }

    [Theory]
    [InlineData("waste-tape", 100)]
    [InlineData("waste-fasteners", 100)]
    [InlineData("waste-compound", 50)]
    [InlineData("compound-coverage", 1)]
    [InlineData("culls-boards", 90)]
    [InlineData("board-screw-mass", 0.01)]
    [InlineData("wood-screw-mass", 0.01)]
    [InlineData("tape-mass", 0.1)]
    [InlineData("strap-screw-grip", 3)]
    public async Task A_figure_that_is_counted_by_changes_the_takeoff(string rule, double value)
    {
        var usual = await service.PostAsync("/v1/plans", SmallRoom.With("language", "\"en\""));
        Assert.NotEqual(Lines(usual.Json), Lines(await Plan(rule, (decimal)value)));
    }

    [Fact]
    public async Task Every_rule_of_the_catalogue_says_whether_it_can_be_set_and_the_door_agrees()
    {
        var rules = (await service.GetAsync("/v1/rules")).Json.GetProperty("rules").EnumerateArray().ToList();
        foreach (var rule in rules.Where(rule => rule.GetProperty("values").EnumerateArray().Any(v => v.GetProperty("rulesets").ToString().Contains("ca-nbc-2020", StringComparison.Ordinal))))
        {
            var id = rule.GetProperty("id").GetString()!;
            var published = rule.GetProperty("values")[0].TryGetProperty("value", out var figure) ? figure.GetProperty("value").GetDecimal() : 1m;
            var value = rule.TryGetProperty("least", out _) ? published : 1m;
            var reply = await service.PostAsync("/v1/plans/check", SmallRoom.With("rules", Rules(id, value)));
            var settable = rule.GetProperty("settable").GetBoolean();
            Assert.True(settable == (reply.Status == 200), $"{id}: {reply.Status}");
            Assert.NotEqual(settable, rule.TryGetProperty("whyFixed", out _));
        }
    }

    [Theory]
    [InlineData("kerf", -1)]
    [InlineData("strap-spacing-default", 0)]
    [InlineData("fasteners-per-block", 21)]
    public async Task A_value_out_of_a_default_s_bounds_is_refused(string rule, int value)
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("rules", Rules(rule, value)));
        Assert.Equal((422, "out_of_range"), (reply.Status, reply.Codes.Single()));
    }

    private static string Rules(string rule, decimal value) =>
        string.Create(CultureInfo.InvariantCulture, $"[{{\"id\":\"{rule}\",\"value\":{value}}}]");

    private static string Lines(JsonElement plan) => plan.GetProperty("takeoff").GetProperty("lines").ToString();

    private async Task<JsonElement> Plan(string rule, decimal value)
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("rules", Rules(rule, value)));
        Assert.True(reply.Status == 200, reply.Text);
        return reply.Json;
    }
}
