using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>A ceiling that is there already, and what is above and below, by hand.</summary>
public class OldCeilingTests(Service service) : IClassFixture<Service>
{
    private static string Over(string existing) => SmallRoom.With(
        SmallRoom.With(SmallRoom.With("room.existing", existing), "room.heights", """[{"floorToJoist":2400}]"""), "room.floorBuildUp", "12");

    // hand: 2400 - 12 - 12.7 old board - 19 strap - 12.7 board = 2343.6. Screws: 19 + 12.7 + 31.75 into the joist = 63.45: 2-1/2 in (63.5), not 2 in
    [Fact]
    public async Task An_old_ceiling_that_stays_takes_height_and_longer_screws_and_is_not_hung_on()
    {
        var plan = (await service.PostAsync("/v1/plans", Over("""{"material":"gypsum","thickness":12.7,"stays":true}"""))).Json;
        Assert.Equal(2343.6m, plan.GetProperty("summary").GetProperty("finishedHeight").GetDecimal());
        var screws = Assert.Single(plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray(), l => l.GetProperty("code").GetString() == "strap-screw");
        Assert.Equal("2-1/2in", screws.GetProperty("id").GetString());
        var into = plan.GetProperty("checks").EnumerateArray().Where(c => c.GetProperty("rule").GetString() == "strap-fastener-penetration").ToList();
        Assert.All(into, c => Assert.Equal(31.8m, c.GetProperty("value").GetDecimal()));
        Assert.Superset(new HashSet<string> { "existing_ceiling_stays", "existing_ceiling_weight" }, Codes(plan, "cautions"));
        Assert.Contains("mark-joists-on-old-ceiling", Codes(plan, "steps"));
    }

    // hand: nothing is left of it: 2400 - 12 - 19 - 12.7 = 2356.3, and 2 in screws as on bare joists
    [Fact]
    public async Task An_old_ceiling_that_comes_down_changes_only_what_comes_first()
    {
        var plan = (await service.PostAsync("/v1/plans", Over("""{"material":"plaster","stays":false}"""))).Json;
        Assert.Equal(2356.3m, plan.GetProperty("summary").GetProperty("finishedHeight").GetDecimal());
        Assert.Contains("existing_ceiling_comes_down", Codes(plan, "cautions"));
        Assert.Contains("take-down-old-ceiling", Codes(plan, "steps"));
        Assert.Contains(plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray(), l => l.TryGetProperty("id", out var id) && id.GetString() == "2in");
    }

    [Fact]
    public async Task What_is_let_into_the_bays_is_refused_with_an_old_ceiling_that_stays()
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With(Over("""{"thickness":12.7}"""), "insulation", """{"purpose":"sound"}"""));
        Assert.Equal(
            ["#/room/existing not_planned_yet: An old ceiling that stays is not planned together with insulation so far; take it down (stays: false), or leave those out."],
            reply.Faults);
    }

    [Theory]
    [InlineData("""{"heated":true}""", "null", "both_sides_warm")]
    [InlineData("""{"use":"attic","heated":false}""", "null", "warm_side_below")]
    [InlineData("""{"heated":true}""", """{"use":"crawl-space","heated":false}""", "warm_side_above")]
    [InlineData("""{"heated":false}""", """{"heated":false}""", "both_sides_cold")]
    public async Task Which_side_is_warm_decides_what_is_said_of_barriers(string above, string below, string code)
    {
        var room = SmallRoom.With(SmallRoom.With(SmallRoom.With("room.above", above), "room.below", below), "insulation", """{"purpose":"thermal"}""");
        var plan = (await service.PostAsync("/v1/plans", room)).Json;
        Assert.Equal(code, plan.GetProperty("insulation").GetProperty("barriers").GetProperty("code").GetString());
        Assert.Contains(code, Codes(plan, "cautions"));
        Assert.DoesNotContain("vapour_and_air_barrier", Codes(plan, "cautions"));
    }

    [Fact]
    public async Task A_garage_below_is_parted_from_the_rooms_above()
    {
        var plan = (await service.PostAsync("/v1/plans", SmallRoom.With("room.below", """{"use":"garage"}"""))).Json;
        Assert.Contains("garage_below", Codes(plan, "cautions"));
        Assert.False(plan.TryGetProperty("insulation", out _));
    }

    private static HashSet<string> Codes(JsonElement plan, string list) => [.. plan.GetProperty(list).EnumerateArray().Select(c => c.GetProperty("code").GetString()!)];
}
