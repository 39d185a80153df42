using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>One partition, framed before the straps or stood after the board, by hand.</summary>
public class PartitionTests(Service service) : IClassFixture<Service>
{
    private static string Along(string top) =>
        SmallRoom.With("partitions", $$"""[{"id":"P1","line":[[1600,0],[1600,3000]],"thickness":90,"top":"{{top}}"}]""");

    // hand: the plate's faces are at 1600 - 45 = 1555 and 1645, between the joists at 1400 and 1800. Rows: 2936 / 8 = 367, 9 rows, each cut
    // in two at the plate. Their ends pass the joists' faces by 1555 - 1419 = 136, under 150: no wood for them. The plate's own blocks: 150 from
    // both ends, 2700 between is 5 spaces of 540 (600 at most): 6 blocks in the clear bay, 1781 - 1419 = 362. Board: 3600 x 3000 less 90 x 3000
    [Fact]
    public async Task A_partition_before_the_straps_stops_them_and_has_blocking()
    {
        var plan = (await service.PostAsync("/v1/plans", Along("joists"))).Json;
        Assert.Equal(9, plan.GetProperty("summary").GetProperty("rows").GetInt32());
        Assert.All(plan.GetProperty("strapping").GetProperty("rows").EnumerateArray(), row =>
        {
            var ends = row.GetProperty("pieces").EnumerateArray().SelectMany(p => new[] { p.GetProperty("from")[0].GetDecimal(), p.GetProperty("to")[0].GetDecimal() }).ToList();
            Assert.Contains(1555m, ends);
            Assert.Contains(1645m, ends);
            Assert.DoesNotContain(ends, x => x > 1555 && x < 1645);
        });
        var partition = Assert.Single(plan.GetProperty("partitions").EnumerateArray());
        Assert.Equal(9, partition.GetProperty("rows").GetArrayLength());
        var blocks = plan.GetProperty("strapping").GetProperty("nailers").EnumerateArray().Where(n => n.GetProperty("role").GetString() == "block").ToList();
        Assert.Equal(
            ["block [1419,150] [1781,150]", "block [1419,690] [1781,690]", "block [1419,1230] [1781,1230]", "block [1419,1770] [1781,1770]", "block [1419,2310] [1781,2310]", "block [1419,2850] [1781,2850]"],
            blocks.OrderBy(b => b.GetProperty("from")[1].GetDecimal()).Select(b => $"{b.GetProperty("role").GetString()} {Rising(b)}"));
        Assert.All(blocks, b => Assert.Equal("partition P1 carries_partition", Why(b)));
        Assert.Equal(blocks.Select(b => b.GetProperty("id").GetString()), partition.GetProperty("blocking").EnumerateArray().Select(b => b.GetString()));
        Assert.Equal((3600 - 90) * 3000m, plan.GetProperty("sheets").GetProperty("pieces").EnumerateArray().Sum(p => Area(p.GetProperty("outline"))));
        Assert.Contains(plan.GetProperty("steps").EnumerateArray(), s => s.GetProperty("code").GetString() == "frame-partition");
    }

    // hand: nothing is cut: 9 rows in one piece each; the plate crosses all of them and is screwed up through the board
    [Fact]
    public async Task A_partition_after_the_board_changes_neither_straps_nor_board()
    {
        var bare = (await service.PostAsync("/v1/plans", SmallRoom.Text)).Json;
        var plan = (await service.PostAsync("/v1/plans", Along("board"))).Json;
        Assert.Equal(bare.GetProperty("strapping").ToString(), plan.GetProperty("strapping").ToString());
        Assert.Equal(bare.GetProperty("sheets").ToString(), plan.GetProperty("sheets").ToString());
        Assert.Equal(bare.GetProperty("takeoff").ToString(), plan.GetProperty("takeoff").ToString());
        var partition = Assert.Single(plan.GetProperty("partitions").EnumerateArray());
        Assert.Equal("9 0", $"{partition.GetProperty("rows").GetArrayLength()} {partition.GetProperty("blocking").GetArrayLength()}");
        var steps = plan.GetProperty("steps").EnumerateArray().Select(s => s.GetProperty("code").GetString()).ToList();
        Assert.True(steps.LastIndexOf("hang-course") < steps.IndexOf("stand-partition"), string.Join(' ', steps));
    }

    // hand: square to the joists at y = 1500, faces 1455 and 1545: rows tight to it at 1455 - 32 = 1423 and 1545 + 32 = 1577; it crosses the
    // joists, so it needs no blocks
    [Fact]
    public async Task A_partition_square_to_the_joists_has_a_row_tight_on_each_side()
    {
        var room = SmallRoom.With("partitions", """[{"id":"P1","line":[[0,1500],[3600,1500]],"thickness":90,"rated":true}]""");
        var plan = (await service.PostAsync("/v1/plans", room)).Json;
        var tight = plan.GetProperty("strapping").GetProperty("rows").EnumerateArray()
            .Where(r => r.GetProperty("reasons").EnumerateArray().Any(w => w.GetProperty("kind").GetString() == "partition")).Select(r => r.GetProperty("at").GetDecimal());
        Assert.Equal([1423m, 1577m], tight);
        Assert.DoesNotContain(plan.GetProperty("strapping").GetProperty("nailers").EnumerateArray(), n => n.GetProperty("role").GetString() == "block");
        Assert.Equal("rated_to_joists", plan.GetProperty("partitions")[0].GetProperty("notes")[0].GetProperty("code").GetString());
    }

    // hand: along the joists at x = 1600 all 9 rows run on over it in one piece each, and its plate is screwed up into them. Board: 3600 x 3000 less 90 x 3000
    [Fact]
    public async Task A_partition_under_the_straps_stops_the_board_alone()
    {
        var bare = (await service.PostAsync("/v1/plans", SmallRoom.Text)).Json;
        var plan = (await service.PostAsync("/v1/plans", Along("straps"))).Json;
        Assert.Equal(bare.GetProperty("strapping").GetProperty("rows").GetArrayLength(), plan.GetProperty("strapping").GetProperty("rows").GetArrayLength());
        Assert.All(plan.GetProperty("strapping").GetProperty("rows").EnumerateArray(), row => Assert.Single(row.GetProperty("pieces").EnumerateArray()));
        Assert.Equal(bare.GetProperty("strapping").GetProperty("nailers").ToString(), plan.GetProperty("strapping").GetProperty("nailers").ToString());
        Assert.Equal((3600 - 90) * 3000m, plan.GetProperty("sheets").GetProperty("pieces").EnumerateArray().Sum(p => Area(p.GetProperty("outline"))));
        var partition = Assert.Single(plan.GetProperty("partitions").EnumerateArray());
        Assert.Equal("straps 9 0", $"{partition.GetProperty("top").GetString()} {partition.GetProperty("rows").GetArrayLength()} {partition.GetProperty("blocking").GetArrayLength()}");
        var steps = plan.GetProperty("steps").EnumerateArray().Select(s => s.GetProperty("code").GetString()).ToList();
        Assert.True(steps.IndexOf("frame-partition-under-straps") is var at && at > steps.LastIndexOf("hang-row") && at < steps.IndexOf("hang-course"), string.Join(' ', steps));
    }

    // hand: square to the joists at y = 1500, 90 thick: a 64 mm strap lies half over each face, at 1455 and 1545: 26 mm clear between the two. A plate of 64 mm
    // (faces 1468 and 1532) leaves the 13 mm gap: 77 mm apart on centre, 1461.5 and 1538.5, each 25.5 mm over the plate and 38.5 beside it
    [Theory]
    [InlineData(90, 1455, 1545)]
    [InlineData(64, 1461.5, 1538.5)]
    public async Task A_partition_under_the_straps_and_square_to_the_joists_has_a_row_half_over_each_face(int thickness, double low, double high)
    {
        var room = SmallRoom.With("partitions", $$"""[{"id":"P1","line":[[0,1500],[3600,1500]],"thickness":{{thickness}},"top":"straps"}]""");
        var plan = (await service.PostAsync("/v1/plans", room)).Json;
        var over = plan.GetProperty("strapping").GetProperty("rows").EnumerateArray()
            .Where(r => r.GetProperty("reasons").EnumerateArray().Any(w => w.GetProperty("code").GetString() == "over_partition")).Select(r => (double)r.GetProperty("at").GetDecimal());
        Assert.Equal([low, high], over);
        Assert.Equal(2, Assert.Single(plan.GetProperty("partitions").EnumerateArray()).GetProperty("rows").GetArrayLength());
        Assert.Equal(0, plan.GetProperty("summary").GetProperty("checksFailed").GetInt32());
    }

    // hand: from (1100, 0) to (2300, 3000), 90 thick: it crosses the joists at x = 1400, 1800 and 2200, at y = 750, 1750 and 2750, 1000 apart in y, 1077 along it
    // (1000 x sqrt(1 + 0.4 x 0.4)). 600 / 1.077 = 557 of y at most between two: one block midway, at y = 1250 and 2250. The first is 150 / 1.077 = 139 from its end, and
    // 750 - 139 = 611 asks for one more at 445; the last crossing is 250 from the other end, nearer than 2 x 139.
    // Board: less its area, a strip 90 wide measured square, 90 x 1.077 = 96.93 in x, over 3000
    [Fact]
    public async Task A_partition_askew_to_the_joists_has_blocks_between_those_that_it_crosses()
    {
        var room = SmallRoom.With("partitions", """[{"id":"P1","line":[[1100,0],[2300,3000]],"thickness":90}]""");
        var plan = (await service.PostAsync("/v1/plans", room)).Json;
        var blocks = plan.GetProperty("strapping").GetProperty("nailers").EnumerateArray().Where(n => n.GetProperty("reasons")[0].GetProperty("code").GetString() == "carries_partition");
        Assert.Equal(["139", "445", "1250", "2250"], blocks.Select(b => b.GetProperty("from")[1].ToString()).OrderBy(y => y.Length).ThenBy(y => y, StringComparer.Ordinal));
        var due = (3600 * 3000m) - (3000m * 90m * (decimal)Math.Sqrt(1.16));
        Assert.InRange(plan.GetProperty("sheets").GetProperty("pieces").EnumerateArray().Sum(p => Area(p.GetProperty("outline"))), due - 500, due + 500);
        Assert.All(plan.GetProperty("strapping").GetProperty("rows").EnumerateArray(), row => Assert.True(row.GetProperty("pieces").GetArrayLength() >= 2));
    }

    [Theory]
    [InlineData(",\"rated\":true", "strapped", "#/partitions/0/top rated_wall_to_joists")]
    [InlineData("", "direct", "#/partitions/0/top no_straps_over_plate")]
    public async Task A_plate_that_straps_may_not_carry_is_refused(string more, string method, string fault)
    {
        var room = SmallRoom.With("partitions", $$"""[{"id":"P1","line":[[0,1500],[3600,1500]],"thickness":90,"top":"straps"{{more}}}]""");
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With(room, "strapping", $$"""{"method":"{{method}}"}"""));
        Assert.StartsWith(fault, Assert.Single(reply.Faults), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Partitions_are_drawn()
    {
        var drawing = (await service.PostAsync("/v1/plans?include=drawing", Along("joists"))).Json.GetProperty("drawing").GetString()!;
        Assert.Contains("partition P1", drawing, StringComparison.Ordinal);
        Assert.Contains("#dddddd", drawing, StringComparison.Ordinal);
    }

    private static string Rising(JsonElement nailer) =>
        string.Join(' ', new[] { nailer.GetProperty("from"), nailer.GetProperty("to") }.OrderBy(p => p[0].GetDecimal()).Select(p => p.ToString()));

    private static string Why(JsonElement nailer)
    {
        var reason = nailer.GetProperty("reasons")[0];
        return $"{reason.GetProperty("kind").GetString()} {reason.GetProperty("of")[0].GetString()} {reason.GetProperty("code").GetString()}";
    }

    private static decimal Area(JsonElement ring)
    {
        var corners = ring.EnumerateArray().Select(p => (X: p[0].GetDecimal(), Y: p[1].GetDecimal())).ToList();
        return Math.Abs(corners.Select((c, i) => (c.X * corners[(i + 1) % corners.Count].Y) - (corners[(i + 1) % corners.Count].X * c.Y)).Sum()) / 2;
    }
}
