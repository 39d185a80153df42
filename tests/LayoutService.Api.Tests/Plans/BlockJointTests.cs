namespace LayoutService.Api.Tests.Plans;

/// <summary>Joints on blocks between joists, by hand.</summary>
public class BlockJointTests(Service service) : IClassFixture<Service>
{
    // hand: rows of 3600 from 2400 stock, joints on blocks alone: one in each of 9 rows, in the middle of a bay, which is a multiple of 400
    // (joists at 200 + 400 i); the clear bay is 400 - 38 = 362. Fasteners: 9 joists (1 crossing of 2 each) and 2 ledgers, (9 + 2) x 2 = 22
    // a row, and 4 at the joint: 9 x 26 = 234
    [Fact]
    public async Task Rows_longer_than_the_stock_are_joined_on_blocks_where_nothing_else_is_allowed()
    {
        var room = SmallRoom.With(SmallRoom.With("strapping.jointsAllowed", """["block"]"""), "strapping.stock", """[{"id":"s","length":2400}]""");
        var plan = (await service.PostAsync("/v1/plans", room)).Json;
        var strapping = plan.GetProperty("strapping");
        var blocks = strapping.GetProperty("nailers").EnumerateArray().Where(n => n.GetProperty("role").GetString() == "block").ToList();
        Assert.Equal(9, blocks.Count);
        Assert.All(blocks, b => Assert.Equal("362 carries_joint", $"{b.GetProperty("length")} {b.GetProperty("reasons")[0].GetProperty("code").GetString()}"));
        Assert.All(strapping.GetProperty("rows").EnumerateArray(), row =>
        {
            var pieces = row.GetProperty("pieces").EnumerateArray().ToList();
            Assert.Equal(["wall block", "block wall"], pieces.Select(p => $"{p.GetProperty("startJoint").GetString()} {p.GetProperty("endJoint").GetString()}"));
            Assert.Equal(0, pieces[0].GetProperty("to")[0].GetDecimal() % 400);
        });
        var screws = Assert.Single(plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray(), l => l.GetProperty("code").GetString() == "strap-screw");
        Assert.Equal(234, screws.GetProperty("counted").GetDecimal());
    }

    // hand: the same rows break on joists where they may: no block is nailed in for them
    [Fact]
    public async Task A_block_is_the_last_way_to_make_a_joint()
    {
        var room = SmallRoom.With(SmallRoom.With("strapping.jointsAllowed", """["block","on-joist"]"""), "strapping.stock", """[{"id":"s","length":2400}]""");
        var plan = (await service.PostAsync("/v1/plans", room)).Json;
        Assert.DoesNotContain(plan.GetProperty("strapping").GetProperty("nailers").EnumerateArray(), n => n.GetProperty("role").GetString() == "block");
    }
}
