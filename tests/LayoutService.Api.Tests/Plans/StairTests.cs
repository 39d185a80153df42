using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>Stairs and wells, by hand.</summary>
public class StairTests(Service service) : IClassFixture<Service>
{
    // hand, NBC 2020 Table 9.5.3.1.: 1950 over stairs in a dwelling. From 1990 less straps of 19 and board of 12.7: 1958.3, 8.3 to spare: pass. From
    // 1985: 1953.3, 3.3 to spare, within the survey's 6: marginal. From 1980: 1948.3, 1.7 short, within it: marginal. From 1970: 1938.3: fail; straight to the joists 1957.3: pass
    [Theory]
    [InlineData("strapped", 1990, 1958.3, "pass")]
    [InlineData("strapped", 1985, 1953.3, "marginal")]
    [InlineData("strapped", 1980, 1948.3, "marginal")]
    [InlineData("strapped", 1970, 1938.3, "fail")]
    [InlineData("direct", 1970, 1957.3, "pass")]
    public async Task Strap_and_board_come_off_the_headroom_at_the_header(string method, int headroom, double finished, string status)
    {
        var check = Of(await PlanAsync(SmallRoom.With(Stair($",\"headroom\":{headroom}"), "strapping", $$"""{"method":"{{method}}"}""")));
        Assert.Equal((status, finished, 1950d), (check.GetProperty("status").GetString(), check.GetProperty("value").GetDouble(), check.GetProperty("limit").GetDouble()));
        Assert.Equal("stairs", check.GetProperty("where")[0].GetString());
    }

    [Fact]
    public async Task Headroom_that_was_not_measured_is_not_checked_and_asked_for()
    {
        var check = Of(await PlanAsync(Stair(string.Empty)));
        Assert.Equal(("not-checked", "#/room/openings/0/headroom"), (check.GetProperty("status").GetString(), check.GetProperty("missing")[0].GetString()));
    }

    // hand: a well of 900 by 1000: 2 × (900 + 1000) = 3800 of edge. Its sides along the joists, 1000 each, lie behind straps of 64 where rows end and
    // nailers between: together 1000
    [Fact]
    public async Task Bead_and_nailers_go_round_it()
    {
        var plan = await PlanAsync(Stair(string.Empty));
        Assert.Equal(3800, plan.GetProperty("sheets").GetProperty("wellBeads").EnumerateArray().Sum(b => b.GetProperty("length").GetDecimal()));
        Assert.Equal(3.8m, plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray().Single(l => l.GetProperty("code").GetString() == "corner-bead").GetProperty("counted").GetDecimal());
        foreach (var x in new[] { 1300, 2200 })
        {
            var nailers = plan.GetProperty("strapping").GetProperty("nailers").EnumerateArray()
                .Where(n => n.GetProperty("from")[0].GetDecimal() == x && n.GetProperty("to")[0].GetDecimal() == x).Sum(n => n.GetProperty("length").GetDecimal());
            var rows = plan.GetProperty("strapping").GetProperty("rows").EnumerateArray().Count(r => r.GetProperty("at").GetDecimal() is > 1000 and < 2000);
            Assert.True(rows >= 2);
            Assert.Equal(1000, nailers + (64 * rows));
        }

        Assert.Contains(plan.GetProperty("steps").EnumerateArray(), s => s.GetProperty("code").GetString() == "bead-well");
    }

    // hand: sheets 1200 wide from the wall at x 0 would seam at 1200, 100 from the corner at 1300, and from the other wall at 2400 and 1200. 300 off
    // both corners, 1300 and 2200, leaves up to 1000, 1600 to 1900, and 2500 on
    [Fact]
    public async Task No_seam_along_the_joists_lies_within_300_of_its_corners()
    {
        var plan = await PlanAsync(Stair(string.Empty));
        var seams = plan.GetProperty("sheets").GetProperty("courses").EnumerateArray().Select(c => c.GetProperty("to").GetDecimal()).Where(at => at < 3600).ToList();
        Assert.NotEmpty(seams);
        Assert.All(seams, at => Assert.True(at is <= 1000 or (>= 1600 and <= 1900) or >= 2500, $"seam at {at}"));
    }

    [Fact]
    public async Task Only_a_stair_has_headroom()
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("room.openings", """[{"kind":"chimney","outline":[[1300,1000],[2200,1000],[2200,2000],[1300,2000]],"headroom":2000}]"""));
        Assert.Equal(["#/room/openings/0/headroom headroom_of_stair_only: Only a stair has headroom to be measured."], reply.Faults);
    }

    private static string Stair(string more) =>
        SmallRoom.With("room.openings", $$"""[{"id":"stairs","kind":"stair","outline":[[1300,1000],[2200,1000],[2200,2000],[1300,2000]]{{more}}}]""");

    private static JsonElement Of(JsonElement plan) => plan.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("rule").GetString() == "headroom-stair");

    private async Task<JsonElement> PlanAsync(string room)
    {
        var reply = await service.PostAsync("/v1/plans?include=all", room);
        Assert.True(reply.Status == 200, reply.Text);
        return reply.Json;
    }
}
