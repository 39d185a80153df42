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
    public async Task Batts_find_no_room_above_an_old_ceiling_that_stays_and_scabs_none_above_the_straps()
    {
        var room = SmallRoom.With(SmallRoom.With(Over("""{"thickness":12.7}"""), "insulation", """{"purpose":"sound"}"""), "strapping", """{"jointsAllowed":["scab"]}""");
        var reply = await service.PostAsync("/v1/plans", room);
        Assert.Equal(
            ["#/strapping/jointsAllowed no_room_for_scab", "#/insulation bays_closed"],
            reply.Faults.Select(f => f[..f.IndexOf(':', StringComparison.Ordinal)]).OrderDescending(StringComparer.Ordinal));
        var both = (await service.PostAsync("/v1/plans", SmallRoom.With(Over("""{"thickness":12.7}"""), "strapping", """{"jointsAllowed":["scab","on-joist"]}"""))).Json;
        Assert.Contains(both.GetProperty("assumed").EnumerateArray(), a => a.GetProperty("value").GetString() == "without scab");
    }

    // hand: the gap holds 12.7 board + 19 strap = 31.7 mm of body. A disc of 25 mm stays below the old board; one of 32 mm goes through it. Only what is
    // deeper than 31.7 + 12.7 = 44.4 mm keeps off joists: at 44 mm under the joist at 1400 it lies as asked, at 45 mm it conflicts
    [Theory]
    [InlineData(25, null, "as-asked")]
    [InlineData(32, true, "as-asked")]
    [InlineData(44, true, "as-asked")]
    [InlineData(45, true, "conflict")]
    public async Task A_body_that_the_new_gap_does_not_hold_opens_the_old_ceiling(int depth, bool? opens, string status)
    {
        var light = $$"""[{"id":"L1","kind":"alarm","at":[1400,1600],"cutout":{"diameter":80},"bodyDepth":{{depth}}}]""";
        var plan = (await service.PostAsync("/v1/plans", SmallRoom.With(Over("""{"material":"gypsum","thickness":12.7}"""), "fixtures", light))).Json;
        var fixture = Assert.Single(plan.GetProperty("fixtures").EnumerateArray());
        Assert.Equal(opens, fixture.TryGetProperty("opensOldCeiling", out var said) ? said.GetBoolean() : null);
        Assert.Equal(status, fixture.GetProperty("status").GetString());
        var opened = plan.GetProperty("cautions").EnumerateArray().Where(c => c.GetProperty("code").GetString() == "old_ceiling_opened")
            .SelectMany(c => c.GetProperty("where").EnumerateArray().Select(w => w.GetString()));
        Assert.Equal(opens == true, opened.Contains("L1"));
        Assert.Equal(opens == true, Codes(plan, "steps").Contains("open-old-ceiling-at-fixtures"));
    }

    // hand: from the joists down, 12.7 old board + 19 strap + 12.7 board = 44.4. A duct to 250 mm and 25 clear: ties (38) and board (12.7) under it end at
    // 325.7, a drop of 281.3, in steps of 5: 285. The frame stands from 12.7 (the old board) to 44.4 + 285 - 12.7 = 316.7, and the box ends at 329.4
    [Fact]
    public async Task A_bulkhead_hangs_from_the_old_ceiling_and_clears_a_duct_measured_from_the_joists()
    {
        var room = SmallRoom.With(Over("""{"material":"gypsum","thickness":12.7}"""), "services", """[{"id":"d","kind":"duct","path":[[300,0],[300,3000]],"width":300,"top":13,"bottom":250}]""");
        var plan = (await service.PostAsync("/v1/plans", SmallRoom.With(room, "bulkheads", """[{"id":"b","hides":["d"]}]"""))).Json;
        var box = Assert.Single(plan.GetProperty("bulkheads").EnumerateArray());
        Assert.Equal(
            [285m, 12.7m, 316.7m, 329.4m],
            new[] { "drop", "top", "frameBottom", "underside" }.Select(name => box.GetProperty(name).GetDecimal()));
        Assert.All(plan.GetProperty("checks").EnumerateArray().Where(c => c.GetProperty("rule").GetString() == "service-covered"), c => Assert.Equal("pass", c.GetProperty("status").GetString()));
    }

    // hand: a duct to 31 mm below the joists ends in the gap (12.7 + 19 = 31.7 mm): nothing shows; to 40 mm it shows by 8.3
    [Theory]
    [InlineData(31, null)]
    [InlineData(40, 8.3)]
    public async Task What_hangs_below_the_joists_may_use_the_old_ceilings_thickness_as_well(int bottom, double? shows)
    {
        var duct = $$"""[{"id":"d","kind":"duct","path":[[500,0],[500,3000]],"width":200,"top":0,"bottom":{{bottom}}}]""";
        var plan = (await service.PostAsync("/v1/plans", SmallRoom.With(Over("""{"thickness":12.7}"""), "services", duct))).Json;
        var covered = plan.GetProperty("checks").EnumerateArray().Where(c => c.GetProperty("rule").GetString() == "service-covered").ToList();
        Assert.Equal(shows, covered.Count == 0 ? null : (double)covered[0].GetProperty("value").GetDecimal());
    }

    // hand: board straight on the old board: 12.7 + 12.7 + 15 mm into the joist = 40.4: 1-5/8 in (41.3); 1-1/8 in (28.6) would do on bare joists. A load
    // between two joists hangs from a block, for which the old ceiling is opened
    [Fact]
    public async Task Board_screws_and_blocks_go_through_the_old_ceiling()
    {
        var direct = SmallRoom.With(SmallRoom.With(Over("""{"thickness":12.7}"""), "strapping", """{"method":"direct"}"""), "ruleset", "\"ca-nbc-2020\"");
        var plan = (await service.PostAsync("/v1/plans", SmallRoom.With(direct, "mounts", """[{"id":"m","at":[1600,1500],"mass":10}]"""))).Json;
        Assert.Contains(plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray(), l => l.GetProperty("code").GetString() == "board-screw" && l.GetProperty("id").GetString() == "1-5/8in");
        var into = plan.GetProperty("checks").EnumerateArray().Where(c => c.GetProperty("rule").GetString() == "board-screw-penetration").ToList();
        Assert.All(into, c => Assert.Equal("pass", c.GetProperty("status").GetString()));
        Assert.Contains("old_ceiling_opened", Codes(plan, "cautions"));
        Assert.Contains("open-old-ceiling-for-wood", Codes(plan, "steps"));
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
