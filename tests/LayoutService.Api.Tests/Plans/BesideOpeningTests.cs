using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>
/// Rows that end in a bay at a chimney, a post or a stair, and rows trimmed round a hole in a wide bay: no wood through the opening, no
/// wood twice, and the board never spans further than rows may stand. Places worked out by hand.
/// </summary>
public sealed class BesideOpeningTests(Service service) : IClassFixture<Service>
{
    private const string Joists = """ "joistFields":[{"run":"x","kind":"sawn","depth":235,"face":38,"positions":[100,600,1200,1800,2400,3000,3500]}] """;

    [Fact]
    public async Task A_chimney_between_two_joists_has_two_blocks_beside_it_and_one_along_each_side_that_straps_end_at()
    {
        var reply = await service.PostAsync("/v1/plans", $$"""
            {"units":"metric","room":{"outline":[[0,0],[4800,0],[4800,3600],[0,3600]],
             "openings":[{"id":"flue","kind":"chimney","outline":[[1900,1400],[2300,1400],[2300,1600],[1900,1600]]}]}, {{Joists}} }
            """);
        Assert.Equal(200, reply.Status);
        var blocks = Nailers(reply.Json, "block");

        // 45 mm past the flue on either side, from joist face to joist face: 1200 + 19 and 1800 - 19; along it 45 mm off its faces
        Assert.Equal(
            [(1855m, 1219m, 1855m, 1781m), (1900m, 1355m, 2300m, 1355m), (1900m, 1645m, 2300m, 1645m), (2345m, 1219m, 2345m, 1781m)],
            blocks.Order());
        var said = reply.Json.GetProperty("steps").EnumerateArray().Single(s => s.GetProperty("code").GetString() == "fasten-blocks").GetProperty("text").GetString();
        Assert.Contains("between the two blocks beside the opening", said, StringComparison.Ordinal);
        var caution = reply.Json.GetProperty("cautions").EnumerateArray().Single(c => c.GetProperty("code").GetString() == "chimney_clearance");
        Assert.Equal(["flue"], caution.GetProperty("where").EnumerateArray().Select(w => w.GetString()));
    }

    [Fact]
    public async Task At_a_stair_blocks_go_from_the_joist_to_what_trims_it_and_its_edges_have_bead_and_no_tape()
    {
        var reply = await service.PostAsync("/v1/plans", """
            {"units":"metric","room":{"outline":[[0,0],[6000,0],[6000,4200],[0,4200]],
             "openings":[{"id":"well","kind":"stair","outline":[[2000,1450],[4600,1450],[4600,2350],[2000,2350]]}]},
             "joistFields":[{"run":"x","depth":235,"face":38,"positions":[200,600,1000,1230,1700,2100,2600,3000,3400,3800,4050]}]}
            """);
        Assert.Equal(200, reply.Status);
        var blocks = Nailers(reply.Json, "block");
        Assert.NotEmpty(blocks);

        // joist faces at 1230 + 19 and 2600 - 19; the well's edges at 1450 and 2350
        Assert.All(blocks, b => Assert.Contains((b.FromY, b.ToY), new[] { (1249m, 1450m), (2350m, 2581m) }));
        Assert.Equal(blocks.Count, blocks.Distinct().Count());

        // walls 2 × (6.0 + 4.2) m; the well's 2 × (2.6 + 0.9) m have bead
        var sheets = reply.Json.GetProperty("sheets");
        var joints = sheets.GetProperty("buttJointLength").GetDecimal() + sheets.GetProperty("taperedJointLength").GetDecimal() + sheets.GetProperty("cutEdgeJointLength").GetDecimal();
        Assert.Equal(decimal.Round((joints / 1000) + 20.4m, 2), Counted(reply.Json, "joint-tape"));
        Assert.Equal(7.0m, Counted(reply.Json, "corner-bead"));
    }

    [Fact]
    public async Task A_row_trimmed_round_a_hole_in_a_wide_bay_has_short_straps_beside_the_hole()
    {
        // joists 812 mm apart: headers along them would leave the board 800 by 812 mm
        var reply = await service.PostAsync("/v1/plans?include=strapping,checks,fixtures", """
            {"units":"metric","room":{"outline":[[0,0],[4872,0],[4872,3232],[0,3232]]},
             "joistFields":[{"run":"y","depth":235,"face":38,"spacing":812,"first":406}],
             "fixtures":[{"id":"L1","kind":"slim-light","at":[2436,1616],"cutout":{"diameter":105},"insulationContact":true}]}
            """);
        Assert.Equal(200, reply.Status);
        var rows = reply.Json.GetProperty("strapping").GetProperty("rows").EnumerateArray().ToList();
        var passing = rows
            .Where(r => r.GetProperty("pieces").EnumerateArray().Any(p => p.GetProperty("from")[0].GetDecimal() <= 2436 && 2436 <= p.GetProperty("to")[0].GetDecimal()))
            .Select(r => r.GetProperty("at").GetDecimal()).Order().ToList();
        Assert.All(passing.Zip(passing.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 64, 400));

        Assert.Equal(2, rows.Count(r => r.GetProperty("reasons").EnumerateArray().Any(x => x.GetProperty("code").GetString() == "beside_hole")));

        // the hole keeps 13 mm from wood: 52.5 + 13 from its centre
        Assert.All(passing, at => Assert.False(Math.Abs(at - 1616) < 32 + 52.5m + 13m, $"a strap at {at} lies in the hole"));
        Assert.Equal("pass", reply.Json.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("rule").GetString() == "row-spacing").GetProperty("status").GetString());
    }

    private static decimal Counted(JsonElement plan, string code) => plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray()
        .Single(l => l.GetProperty("code").GetString() == code).GetProperty("counted").GetDecimal();

    private static List<(decimal FromX, decimal FromY, decimal ToX, decimal ToY)> Nailers(JsonElement plan, string role) =>
    [
        .. plan.GetProperty("strapping").GetProperty("nailers").EnumerateArray()
            .Where(n => n.GetProperty("role").GetString() == role)
            .Select(n => (n.GetProperty("from")[0].GetDecimal(), n.GetProperty("from")[1].GetDecimal(), n.GetProperty("to")[0].GetDecimal(), n.GetProperty("to")[1].GetDecimal())),
    ];
}
