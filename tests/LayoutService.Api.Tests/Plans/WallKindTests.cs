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

    // hand: joists at 100 + 400 i, the first face 81 from x = 0, where there is no wall (edge 3, 3000 long). Rows: 2936 / 8 = 367 on centre, 9 rows 64 wide,
    // so 8 nailers of 367 - 64 = 303 fill in between their ends: 9 x 64 + 8 x 303 = 3000. Bead 3 m. Tape: what it is with four walls less those 3 m
    [Fact]
    public async Task An_edge_without_a_wall_has_nailers_and_bead_and_no_tape()
    {
        var joists = SmallRoom.With(SmallRoom.With("joistFields", """[{"run":"y","positions":[100,500,900,1300,1700,2100,2500,2900,3300,3550]}]"""), "room.walls", "[]");
        var walled = (await service.PostAsync("/v1/plans", joists)).Json;
        var plan = (await service.PostAsync("/v1/plans", SmallRoom.With(joists, "room.walls", """[{"edge":3,"kind":"open"}]"""))).Json;
        Assert.Empty(walled.GetProperty("strapping").GetProperty("nailers").EnumerateArray());
        var nailers = plan.GetProperty("strapping").GetProperty("nailers").EnumerateArray().ToList();
        Assert.Equal(Enumerable.Repeat("carries_open_edge 303", 8), nailers.Select(n => $"{n.GetProperty("reasons")[0].GetProperty("code").GetString()} {n.GetProperty("length")}"));
        var bead = Assert.Single(plan.GetProperty("sheets").GetProperty("edgeBeads").EnumerateArray());
        Assert.Equal("W4 3000", $"{bead.GetProperty("wallId").GetString()} {bead.GetProperty("length")}");
        Assert.Equal(3m, Counted(plan, "corner-bead"));
        Assert.Equal(Counted(walled, "joint-tape") - 3m, Counted(plan, "joint-tape"));
        Assert.Contains(plan.GetProperty("cautions").EnumerateArray(), c => c.GetProperty("code").GetString() == "open_edge");
        Assert.Equal(
            ["snap-open-edges", "bead-open-edges"],
            plan.GetProperty("steps").EnumerateArray().Select(s => s.GetProperty("code").GetString()).Where(c => c!.Contains("open-edges", StringComparison.Ordinal)));
    }

    // hand: across the joists, at y = 0 (edge 0), the row that lies along the edge carries it, its face on the line: centre at 32, no nailers
    [Fact]
    public async Task An_edge_without_a_wall_square_to_the_joists_has_its_row()
    {
        var plan = (await service.PostAsync("/v1/plans", SmallRoom.With("room.walls", """[{"edge":0,"kind":"open"}]"""))).Json;
        var row = plan.GetProperty("strapping").GetProperty("rows").EnumerateArray().First();
        Assert.Equal("32 along_open_edge", $"{row.GetProperty("at")} {row.GetProperty("reasons")[0].GetProperty("code").GetString()}");
        Assert.All(plan.GetProperty("strapping").GetProperty("nailers").EnumerateArray(), n => Assert.Equal("ledger", n.GetProperty("role").GetString()));
    }

    // hand: a bulkhead along edge 0, without a wall, has a ladder and a board on both of its long sides; with a wall it has a ledger on that one
    [Theory]
    [InlineData("open", 2, 0)]
    [InlineData("stud", 1, 1)]
    public async Task A_bulkhead_along_an_edge_without_a_wall_has_two_faces(string kind, int faces, int ledgers)
    {
        var room = SmallRoom.With(SmallRoom.With("room.walls", $$"""[{"edge":0,"kind":"{{kind}}"}]"""), "bulkheads", """[{"id":"b","edges":[0],"width":400,"drop":250}]""");
        var box = Assert.Single((await service.PostAsync("/v1/plans", room)).Json.GetProperty("bulkheads").EnumerateArray());
        Assert.Equal(faces * 3600m, box.GetProperty("beadLength").GetDecimal());
        Assert.Equal(ledgers, box.GetProperty("members").EnumerateArray().Where(m => m.GetProperty("role").GetString() == "ledger" && m.GetProperty("from")[1].GetDecimal() < 100 && m.GetProperty("to")[1].GetDecimal() < 100).Count());
    }

    // hand: joists at 200 + 400 i end 181 from x = 0: over 150, and no wall to fasten a ledger to
    [Fact]
    public async Task An_edge_without_a_wall_or_a_joist_near_it_has_no_plan()
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("room.walls", """[{"edge":3,"kind":"open"}]"""));
        var finding = Assert.Single(reply.Json.GetProperty("findings").EnumerateArray());
        Assert.Equal("nothing_to_fasten_to [\"W4\"]", $"{finding.GetProperty("code").GetString()} {finding.GetProperty("where")}");
    }

    private static decimal Counted(JsonElement plan, string code) => plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray()
        .Single(l => l.GetProperty("code").GetString() == code).GetProperty("counted").GetDecimal();

    private static IEnumerable<string> Fasteners(JsonElement plan) => plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray()
        .Select(l => $"{l.GetProperty("code").GetString()} {l.GetProperty("counted")}").Where(l => l.Contains("nailer-fastener") || l.Contains("masonry"));
}
