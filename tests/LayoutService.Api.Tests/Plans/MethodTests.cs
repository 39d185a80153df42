using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>Strapped, direct or on channel, by hand.</summary>
public class MethodTests(Service service) : IClassFixture<Service>
{
    // hand, NBC, a room to live in: 2100 at least, measured to within 6. From 2140 less a floor of 10 and board of 12.7:
    // direct 2117.3, 17.3 to spare: pass. Straps of 19: 2098.3, 1.7 short, within the measure: marginal. Channel of 12.7: 2104.6, 4.6 to
    // spare, within the measure: marginal. The joists step by 5, over 3.175: packing takes it out, the others copy it and fail
    [Fact]
    public async Task At_marginal_height_direct_has_the_strap_to_spare_and_copies_the_joists()
    {
        var room = SmallRoom.With(SmallRoom.With("room.heights", """[{"floorToJoist":2140}]"""), "room.floorBuildUp", "10");
        room = SmallRoom.With(room, "joistFields.0.undersides", """[{"at":[200,100],"level":0},{"at":[600,100],"level":5},{"at":[1000,100],"level":0}]""");
        var plan = (await service.PostAsync("/v1/plans?include=methods", room)).Json;
        Assert.Equal(
            [
                "strapped 2098.3 headroom marginal, plane pass, row-spacing pass",
                "direct 2117.3 headroom pass, plane fail, row-spacing pass",
                "channel 2104.6 headroom marginal, plane fail",
            ],
            plan.GetProperty("methods").EnumerateArray().Select(m => $"{m.GetProperty("method").GetString()} {m.GetProperty("finishedHeight")} {Checks(m)}"));
    }

    // hand: the joists' widest bay is 800 where one is missing, over the 400 to 600 that 12.7 board spans: direct fails where straps do not
    [Fact]
    public async Task A_missing_joist_is_too_far_for_board_and_not_for_straps()
    {
        var room = SmallRoom.With("joistFields.0", """{"run":"y","positions":[200,600,1000,1800,2200,2600,3000,3400]}""");
        var methods = (await service.PostAsync("/v1/plans?include=methods", room)).Json.GetProperty("methods").EnumerateArray().ToList();
        Assert.Contains("row-spacing pass", Checks(methods[0]));
        Assert.Contains("row-spacing fail", Checks(methods[1]));
        Assert.False(methods[1].TryGetProperty("finishedHeight", out _));
    }

    [Fact]
    public async Task The_methods_come_only_when_they_are_asked_for() =>
        Assert.False((await service.PostAsync("/v1/plans?include=all", SmallRoom.Text)).Json.TryGetProperty("methods", out _));

    private static string Checks(JsonElement method) => string.Join(", ", method.GetProperty("checks").EnumerateArray()
        .Where(c => c.GetProperty("rule").GetString() != "headroom-over-area")
        .Select(c => $"{c.GetProperty("rule").GetString()} {c.GetProperty("status").GetString()}").Order());
}
