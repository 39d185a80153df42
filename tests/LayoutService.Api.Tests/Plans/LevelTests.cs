using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>The straps packed to a plane, by hand.</summary>
public class LevelTests(Service service) : IClassFixture<Service>
{
    private const string Seven = """
        {"units":"metric","room":{"outline":[[0,0],[3600,0],[3600,3000],[0,3000]],"heights":[{"floorToJoist":2400},{"at":[2800,1500],"floorToJoist":2418}],"floorBuildUp":12},
         "joistFields":[{"run":"y","positions":[300,800,1300,1800,2300,2800,3300],"undersides":[{"at":[300,1500],"level":0},{"at":[800,1500],"level":4},
         {"at":[1300,1500],"level":9},{"at":[1800,1500],"level":2},{"at":[2300,1500],"level":12},{"at":[2800,1500],"level":25},{"at":[3300,1500],"level":0}]}]}
        """;

    // hand: the greatest step is 25 - 0 at J6, above 3.2 mm, so all is packed to the lowest, J1 and J7 at 0. Gaps: J2 4, J3 9, J4 2 (above
    // half of 3.2), J5 12; J6 25 is above 19: a sister the whole length of the room beside it. Rows: 3000 - 64 = 2936 is 8 spaces of 367,
    // 9 rows: 9 of each of 4 thicknesses, 36 pieces. Screws: 19 + 31.75 = 50.75, 2 in (50.8) where nothing is packed: J1, J6, J7 and the
    // two ledgers, 5 x 9 x 2 = 90; 2 to 12 mm more reach 62.75, 2-1/2 in (63.5): 4 x 9 x 2 = 72
    [Fact]
    public async Task Seven_levels_have_their_shims_screws_and_sister()
    {
        var plan = (await service.PostAsync("/v1/plans", Seven)).Json;
        var strapping = plan.GetProperty("strapping");
        var plane = strapping.GetProperty("plane");
        Assert.Equal("0 J1 25 0", $"{plane.GetProperty("level")} {plane.GetProperty("supportId")} {plane.GetProperty("stepFound")} {plane.GetProperty("stepLeft")}");
        var shims = strapping.GetProperty("shims").EnumerateArray().ToList();
        Assert.Equal(36, shims.Count);
        Assert.All(shims, s => Assert.Equal(1, s.GetProperty("count").GetInt32()));
        Assert.Equal(
            ["J2 4 mm x 9", "J3 9 mm x 9", "J4 2 mm x 9", "J5 12 mm x 9"],
            shims.GroupBy(s => $"{s.GetProperty("supportId")} {s.GetProperty("thicknessText")}").Select(g => $"{g.Key} x {g.Count()}").Order());
        var sister = Assert.Single(strapping.GetProperty("nailers").EnumerateArray(), n => n.GetProperty("role").GetString() == "sister");
        Assert.Equal("3000 [2762,0] [2762,3000]", $"{sister.GetProperty("length")} {sister.GetProperty("from")} {sister.GetProperty("to")}");
        Assert.Equal(
            ["shim 2mm 9", "shim 4mm 9", "shim 9mm 9", "shim 12mm 9", "strap-screw 2in 90", "strap-screw 2-1/2in 72"],
            Lines(plan, "shim").Concat(Lines(plan, "strap-screw")));
        Assert.Contains(plan.GetProperty("cautions").EnumerateArray(), c => c.GetProperty("code").GetString() == "sisters_only_level");
        var check = Assert.Single(plan.GetProperty("checks").EnumerateArray(), c => c.GetProperty("rule").GetString() == "plane");
        Assert.Equal("pass 0", $"{check.GetProperty("status").GetString()} {check.GetProperty("value")}");
    }

    // hand: 2418 at J6 is 25 above the plane: 2393 there, less than the 2400 that has no place; 2393 - 12 - 19 - 12.7 = 2349.3
    [Fact]
    public async Task The_finished_height_is_taken_from_the_lowest_joist()
    {
        var plan = (await service.PostAsync("/v1/plans", Seven)).Json;
        Assert.Equal(2349.3m, plan.GetProperty("summary").GetProperty("finishedHeight").GetDecimal());
    }

    // hand: 3 and 0 are 3 apart, not above 3.2: the straps follow the joists; a caller who wants 2 packs them
    [Fact]
    public async Task Joists_within_the_tolerance_are_not_packed_unless_the_caller_wants_less()
    {
        var nearly = SmallRoom.With("joistFields.0.undersides", """[{"at":[200,100],"level":3},{"at":[600,100],"level":0}]""");
        Assert.Empty((await service.PostAsync("/v1/plans", nearly)).Json.GetProperty("strapping").GetProperty("shims").EnumerateArray());
        var strict = SmallRoom.With(nearly, "rules", """[{"id":"packing-from","value":0.0625}]""");
        var shims = (await service.PostAsync("/v1/plans", strict)).Json.GetProperty("strapping").GetProperty("shims").EnumerateArray().ToList();
        Assert.All(shims, s => Assert.Equal("J1 3", $"{s.GetProperty("supportId")} {s.GetProperty("thickness")}"));
        Assert.NotEmpty(shims);
    }

    // hand: one joist 60 above the others is beyond packing (19) and beyond a sister of 2x4 (89 - 51 = 38): the step of 60 stays
    [Fact]
    public async Task A_joist_too_high_for_a_sister_fails_the_plane_and_says_so()
    {
        var room = SmallRoom.With("joistFields.0.undersides", """[{"at":[200,100],"level":0},{"at":[600,100],"level":60},{"at":[1000,100],"level":0}]""");
        var plan = (await service.PostAsync("/v1/plans", room)).Json;
        var check = Assert.Single(plan.GetProperty("checks").EnumerateArray(), c => c.GetProperty("rule").GetString() == "plane");
        Assert.Equal("fail 60 joists_too_far_apart", $"{check.GetProperty("status").GetString()} {check.GetProperty("value")} {check.GetProperty("remedy").GetProperty("code").GetString()}");
        Assert.DoesNotContain(plan.GetProperty("strapping").GetProperty("nailers").EnumerateArray(), n => n.GetProperty("role").GetString() == "sister");
    }

    [Fact]
    public async Task Where_one_field_was_read_every_field_must_be()
    {
        var near = SmallRoom.With(SmallRoom.With("joistFields.0.region", "[[0,0],[3600,0],[3600,1550],[0,1550]]"), "joistFields.0.undersides", """[{"at":[200,100],"level":0}]""");
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With(near, "joistFields.1",
            "{\"run\":\"y\",\"spacing\":400,\"first\":238,\"region\":[[0,1450],[3600,1450],[3600,3000],[0,3000]]}"));
        Assert.Equal(["#/joistFields/1/undersides undersides_missing: Another joist field has readings of its undersides; every field needs some then."], reply.Faults);
    }

    private static IEnumerable<string> Lines(JsonElement plan, string code) => plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray()
        .Where(l => l.GetProperty("code").GetString() == code)
        .Select(l => $"{code} {l.GetProperty("id").GetString()} {l.GetProperty("counted")}");
}
