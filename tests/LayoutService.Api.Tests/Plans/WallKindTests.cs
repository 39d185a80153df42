using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>What each wall is, by hand.</summary>
public class WallKindTests(Service service) : IClassFixture<Service>
{
    // hand: the first joist's face is at 200 - 19 = 181 from the wall at x = 0, over 150: one ledger along that wall for all 9 rows, and the
    // same at x = 3600 (3600 - 3419 = 181). Each is 3000: ceil(3000 / 400) = 8 spaces, 9 places of 2: 18 fasteners. Edge 3 is x = 0
    [Fact]
    public async Task A_side_wall_without_a_joist_has_a_ledger_and_concrete_takes_its_own_screws()
    {
        var plan = (await service.PostAsync("/v1/plans", SmallRoom.With("room.walls", """[{"edge":3,"kind":"concrete"},{"edge":1,"kind":"stud"}]"""))).Json;
        var ledgers = plan.GetProperty("strapping").GetProperty("nailers").EnumerateArray().ToList();
        Assert.Equal(["ledger 3000 9", "ledger 3000 9"], ledgers.Select(n => $"{n.GetProperty("role").GetString()} {n.GetProperty("length")} {n.GetProperty("reasons")[0].GetProperty("of").GetArrayLength()}"));
        Assert.Equal(["masonry-fastener 18", "nailer-fastener 18"], Fasteners(plan));
        Assert.Equal(["", "stud", "", "concrete"], plan.GetProperty("walls").EnumerateArray().Select(w => w.TryGetProperty("kind", out var kind) ? kind.GetString() : ""));
        var unsaid = (await service.PostAsync("/v1/plans", SmallRoom.Text)).Json;
        Assert.Equal(["nailer-fastener 36"], Fasteners(unsaid));
        Assert.Equal(unsaid.GetProperty("strapping").ToString(), plan.GetProperty("strapping").ToString());
    }

    // hand: joists at 100 + 400 i: the first face is 81 from the wall at x = 0, so straps may end there without a ledger; at x = 3600 the last
    // joist is at 3300: 3600 - 3319 = 281, and a wall framed later there has nothing to hold a ledger
    [Theory]
    [InlineData(3, 200)]
    [InlineData(1, 422)]
    public async Task A_wall_framed_later_can_hold_no_ledger(int edge, int status)
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With(SmallRoom.With("joistFields.0.first", "100"), "room.walls", $$"""[{"edge":{{edge}},"kind":"later"}]"""));
        Assert.Equal(status, reply.Status);
        if (status == 200)
        {
            Assert.Contains(reply.Json.GetProperty("steps").EnumerateArray(), s => s.GetProperty("code").GetString() == "snap-later-walls");
        }
        else
        {
            var finding = Assert.Single(reply.Json.GetProperty("findings").EnumerateArray());
            Assert.Equal("nothing_to_fasten_to [\"W2\"]", $"{finding.GetProperty("code").GetString()} {finding.GetProperty("where")}");
        }
    }

    private static IEnumerable<string> Fasteners(JsonElement plan) => plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray()
        .Select(l => $"{l.GetProperty("code").GetString()} {l.GetProperty("counted")}").Where(l => l.Contains("nailer-fastener") || l.Contains("masonry"));
}
