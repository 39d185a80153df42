using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>A corner cut off at 45 degrees, by hand.</summary>
public class ObliqueCornerTests(Service service) : IClassFixture<Service>
{
    // hand: the wall runs from (3600, 2000) to (2600, 3000), x + y = 5600. Rows of 64 stand at 32 + 367 i: those at 2234, 2601 and 2968 meet it, at
    // x = 3366, 2999 and 2632. Their ends are cut 45 degrees off square; the long point is half a face x tan 45 = 32 past the centre line, on
    // the edge nearer to the measuring corner. The last piece of each: drawn + 32 - 6 at the wall, and 6 more off one that begins at a wall
    [Fact]
    public async Task Rows_that_meet_it_are_bevelled_to_the_wall()
    {
        var rows = (await PlanAsync()).GetProperty("strapping").GetProperty("rows").EnumerateArray().ToList();
        Assert.All(rows[..6], row => Assert.All(row.GetProperty("pieces").EnumerateArray(), p => Assert.False(p.TryGetProperty("bevel", out _))));
        Assert.Equal(
            ["[3366,2234] 45 32 near", "[2999,2601] 45 32 near", "[2632,2968] 45 32 near"],
            rows[6..].Select(row => row.GetProperty("pieces").EnumerateArray().Last()).Select(p =>
            {
                var bevel = p.GetProperty("bevel").GetProperty("end");
                var ends = 6 + (p.GetProperty("startJoint").GetString() == "wall" ? 6 : 0);
                Assert.Equal(p.GetProperty("length").GetDecimal() + 32 - ends, p.GetProperty("cutLength").GetDecimal());
                return $"{p.GetProperty("to")} {bevel.GetProperty("degrees")} {bevel.GetProperty("longPoint")} {bevel.GetProperty("longEdge").GetString()}";
            }));
    }

    // hand: between the rows' edges the board would hang along the wall: 367 - 64 = 303 of height is 303 x 1.41421 = 428.5 of wall. From
    // y = 2234 + 32 = 2266 (x = 3334) to 2601 - 32 = 2569 (x = 3031), and from 2633 (2967) to 2936 (2664)
    [Fact]
    public async Task Nailers_carry_the_board_along_it_between_rows()
    {
        var nailers = (await PlanAsync()).GetProperty("strapping").GetProperty("nailers").EnumerateArray().Where(n => n.GetProperty("role").GetString() == "wall-nailer");
        Assert.Equal(
            ["[3334,2266] [3031,2569] 428.5", "[2967,2633] [2664,2936] 428.5"],
            nailers.Select(n => $"{n.GetProperty("from")} {n.GetProperty("to")} {decimal.Round(n.GetProperty("length").GetDecimal(), 1)}"));
    }

    private async Task<JsonElement> PlanAsync() =>
        (await service.PostAsync("/v1/plans", SmallRoom.With("room.outline", "[[0,0],[3600,0],[3600,2000],[2600,3000],[0,3000]]"))).Json;
}
