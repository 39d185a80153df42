using System.Text.Json;

namespace LayoutService.Api.Tests.Fixtures;

public sealed class FixtureTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task A_slim_light_may_lie_under_a_joist_and_a_deep_one_is_told_to_be_in_conflict()
    {
        var plan = await FixtureRoom.PlanAsync(service, FixtureRoom.With("""
            "fixtures":[{"id":"slim","kind":"slim-light","at":[1000,1000],"cutout":{"diameter":155},"remoteBox":{"width":40,"length":120,"height":60}},
                        {"id":"can","kind":"can-light","at":[3000,1000],"cutout":{"diameter":155}}]
            """));
        Assert.Equal("as-asked", FixtureRoom.Status(plan, "slim"));
        Assert.Equal("conflict", FixtureRoom.Status(plan, "can"));
        Assert.Equal(["conflict_joist"], FixtureRoom.Codes(FixtureRoom.Fixture(plan, "can").GetProperty("reasons")));
        Assert.Equal(1, plan.GetProperty("summary").GetProperty("fixturesInConflict").GetInt32());
        var check = plan.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("rule").GetString() == "fixture-conflicts");
        Assert.Equal(("fail", "can"), (check.GetProperty("status").GetString(), check.GetProperty("where")[0].GetString()));
    }

    [Fact]
    public async Task A_deep_light_with_an_allowance_moves_to_the_nearest_place_off_the_joist()
    {
        var plan = await FixtureRoom.PlanAsync(service, FixtureRoom.With("""
            "fixtures":[{"id":"can","kind":"can-light","at":[3010,1000],"cutout":{"diameter":150},"maxShift":150}]
            """));
        var can = FixtureRoom.Fixture(plan, "can");
        // joist face at 3019, half a hole 75, 13 mm off wood: 3107
        Assert.Equal(("moved", 3107m, 97m), (can.GetProperty("status").GetString(), can.GetProperty("at")[0].GetDecimal(), can.GetProperty("shift").GetDecimal()));
        Assert.Equal(["moved_off_joist"], FixtureRoom.Codes(can.GetProperty("reasons")));
        Assert.Equal(13m, can.GetProperty("clearances").GetProperty("joist").GetDecimal());
    }

    [Fact]
    public async Task A_row_that_must_meet_a_large_hole_is_trimmed_round_it_with_headers_from_the_cut_plan()
    {
        var plan = await FixtureRoom.PlanAsync(service, FixtureRoom.With("""
            "fixtures":[{"id":"door","kind":"access-door","at":[3000,2100],"cutout":{"width":400,"height":400}}]
            """));
        var strapping = plan.GetProperty("strapping");
        var ends = strapping.GetProperty("rows").EnumerateArray().SelectMany(r => r.GetProperty("pieces").EnumerateArray())
            .Sum(p => (p.GetProperty("startJoint").GetString() == "fixture" ? 1 : 0) + (p.GetProperty("endJoint").GetString() == "fixture" ? 1 : 0));
        var headers = strapping.GetProperty("nailers").EnumerateArray().Where(n => n.GetProperty("role").GetString() == "header").Select(n => n.GetProperty("id").GetString()).ToList();
        Assert.Equal(2, ends);
        Assert.NotEmpty(headers);
        var cut = plan.GetProperty("cutPlan").GetProperty("stock").EnumerateArray().SelectMany(s => s.GetProperty("cuts").EnumerateArray()).Select(c => c.GetProperty("pieceId").GetString());
        Assert.Subset(cut.ToHashSet(), headers.ToHashSet());
        Assert.Equal("as-asked", FixtureRoom.Status(plan, "door"));
        Assert.Contains("row_trimmed", FixtureRoom.Codes(FixtureRoom.Fixture(plan, "door").GetProperty("reasons")));
        Assert.Contains(plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray(), l => l.GetProperty("code").GetString() == "access-door");
    }

    [Fact]
    public async Task A_hole_that_trims_a_row_is_told_how_little_to_move_and_moved_so_it_trims_none()
    {
        static string Doors(int at, int shift) => FixtureRoom.With($$"""
            "fixtures":[{"id":"door","kind":"access-door","at":[1000,{{at}}],"cutout":{"width":250,"height":250},"maxShift":{{shift}}}]
            """);
        var told = 0;
        for (var at = 300; at < 2300 && told == 0; at += 65)
        {
            var plan = await FixtureRoom.PlanAsync(service, Doors(at, 0));
            var moved = plan.GetProperty("alternatives").EnumerateArray().Where(a => a.GetProperty("code").GetString() == "fixture_moved").ToList();
            var trimmed = FixtureRoom.Codes(FixtureRoom.Fixture(plan, "door").GetProperty("reasons")).Contains("row_trimmed");
            if (moved.Count > 0)
            {
                told++;
                Assert.True(trimmed);
                Assert.Contains("door", moved[0].GetProperty("of").EnumerateArray().Select(o => o.GetString()));
                var free = await FixtureRoom.PlanAsync(service, Doors(at, 600));
                Assert.DoesNotContain("row_trimmed", FixtureRoom.Codes(FixtureRoom.Fixture(free, "door").GetProperty("reasons")));
            }
        }

        Assert.Equal(1, told);
    }

    [Fact]
    public async Task Rows_and_seams_keep_off_a_small_hole_without_a_row_more()
    {
        var bare = await FixtureRoom.PlanAsync(service, FixtureRoom.With("\"fixtures\":[]"));
        var holed = await FixtureRoom.PlanAsync(service, FixtureRoom.With("""
            "fixtures":[{"id":"a","kind":"slim-light","at":[1210,820],"cutout":{"diameter":110}},{"id":"b","kind":"slim-light","at":[4790,2400],"cutout":{"diameter":110}}]
            """));
        Assert.Equal(bare.GetProperty("summary").GetProperty("rows").GetInt32(), holed.GetProperty("summary").GetProperty("rows").GetInt32());
        Assert.Equal(0, holed.GetProperty("summary").GetProperty("fixturesInConflict").GetInt32());
    }

    [Fact]
    public async Task A_hole_is_marked_on_the_finished_face_of_its_piece()
    {
        var plan = await FixtureRoom.PlanAsync(service, FixtureRoom.With("""
            "fixtures":[{"id":"a","kind":"slim-light","at":[300,700],"cutout":{"diameter":110}}]
            """));
        var piece = plan.GetProperty("sheets").GetProperty("pieces").EnumerateArray().Single(p => p.GetProperty("cutouts").GetArrayLength() > 0);
        var cutout = piece.GetProperty("cutouts")[0];
        // joists along y: with the end at 0 on the left, the edge at x = 0 lies near the person, seen from below
        Assert.Equal("[0,0]", cutout.GetProperty("corner").GetRawText());
        Assert.Equal(
            "Face up, the end that hangs at 0 mm along on the left: centre 700 mm from the left end, 300 mm from the bottom edge; round, 110 mm across.",
            cutout.GetProperty("markText").GetString());
    }

    [Fact]
    public async Task A_mount_hangs_from_its_joist_or_from_a_block_between_joists()
    {
        var plan = await FixtureRoom.PlanAsync(service, FixtureRoom.With("""
            "mounts":[{"id":"lamp","at":[1400,2000],"mass":9},{"id":"fan","at":[1600,2000],"mass":12}]
            """));
        var mounts = plan.GetProperty("mounts").EnumerateArray().ToDictionary(m => m.GetProperty("id").GetString()!, m => m.GetProperty("hangsFrom")[0].GetString());
        Assert.Equal("J4", mounts["lamp"]);
        var block = plan.GetProperty("strapping").GetProperty("nailers").EnumerateArray().Single(n => n.GetProperty("id").GetString() == mounts["fan"]);
        Assert.Equal(("block", 362m), (block.GetProperty("role").GetString(), block.GetProperty("length").GetDecimal()));
        Assert.Contains("hanging_loads", FixtureRoom.Codes(plan.GetProperty("cautions")));
    }

    [Fact]
    public async Task The_fixtures_alone_are_the_block_of_the_plan()
    {
        var request = FixtureRoom.With("\"fixtures\":[{\"kind\":\"alarm\",\"at\":[2000,2000],\"cutout\":{\"diameter\":100}}]");
        var plan = await FixtureRoom.PlanAsync(service, request);
        var alone = await service.PostAsync("/v1/fixtures", request);
        Assert.Equal(200, alone.Status);
        Assert.Equal(plan.GetProperty("fixtures").GetRawText(), alone.Json.GetRawText());
        Assert.Equal("fixture-1", alone.Json[0].GetProperty("id").GetString());
    }

    [Fact]
    public async Task A_light_keeps_off_a_duct_that_its_body_would_meet_and_not_off_one_above_it()
    {
        const string duct = "\"services\":[{\"id\":\"duct\",\"kind\":\"duct\",\"path\":[[1800,0],[1800,4200]],\"width\":250,\"top\":-200,\"bottom\":-10}],";
        var deep = await FixtureRoom.PlanAsync(service, FixtureRoom.With(duct + "\"fixtures\":[{\"id\":\"a\",\"kind\":\"can-light\",\"at\":[1950,1000],\"cutout\":{\"diameter\":100}}]"));
        var slim = await FixtureRoom.PlanAsync(service, FixtureRoom.With(duct + "\"fixtures\":[{\"id\":\"a\",\"kind\":\"slim-light\",\"at\":[1950,1000],\"cutout\":{\"diameter\":100}}]"));
        Assert.Equal("conflict", FixtureRoom.Status(deep, "a"));
        Assert.Equal("as-asked", FixtureRoom.Status(slim, "a"));
    }
}
