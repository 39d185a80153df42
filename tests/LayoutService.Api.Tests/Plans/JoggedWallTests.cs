namespace LayoutService.Api.Tests.Plans;

/// <summary>Walls with a jog smaller than a strap, on one of two arms that end on one line or parted by a bulkhead that reaches from side to side.</summary>
public sealed class JoggedWallTests(Service service) : IClassFixture<Service>
{
    [Theory]
    [InlineData(14)]
    [InlineData(25)]
    [InlineData(51)]
    [InlineData(76)]
    public async Task Of_two_arms_that_end_on_one_line_the_one_with_a_chimney_breast_has_its_row_before_the_breast(int breast)
    {
        // a U: the lower arm ends at 5567 with a breast that stands so far into the room, the upper one at 5567
        var reply = await service.PostAsync("/v1/plans?include=strapping", $$"""
            {"units":"metric","room":{"outline":[[0,0],[5567,0],[5567,897],[{{5567 - breast}},897],[{{5567 - breast}},1397],[5567,1397],[5567,1728],[2202,1728],[2202,3793],[5567,3793],[5567,5720],[0,5720]]},
             "joistFields":[{"run":"x","depth":235,"face":38,"spacing":400,"first":200}]}
            """);
        Assert.Equal(200, reply.Status);
        var rows = reply.Json.GetProperty("strapping").GetProperty("rows").EnumerateArray().ToList();
        var lower = rows.Single(r => r.GetProperty("at").GetDecimal() == 5567 - breast - 32);
        var upper = rows.Single(r => r.GetProperty("at").GetDecimal() == 5567 - 32);
        Assert.All(lower.GetProperty("pieces").EnumerateArray(), p => Assert.InRange(p.GetProperty("to")[1].GetDecimal(), 0, 1728));
        Assert.All(upper.GetProperty("pieces").EnumerateArray(), p => Assert.InRange(p.GetProperty("from")[1].GetDecimal(), 3793, 5720));
    }

    [Fact]
    public async Task Either_side_of_the_bulkhead_has_a_row_tight_to_its_own_wall()
    {
        var reply = await service.PostAsync("/v1/plans?include=strapping", """
            {"units":"metric","room":{"outline":[[0,0],[4000,0],[4000,1500],[4040,1500],[4040,5000],[0,5000]]},
             "joistFields":[{"run":"x","spacing":400,"first":200}],
             "bulkheads":[{"outline":[[0,2500],[4040,2500],[4040,2960],[0,2960]],"drop":250}]}
            """);
        Assert.Equal(200, reply.Status);

        // half of a 64 mm face off 4000, where the wall stands into the room, and off 4040 past the bulkhead
        var rows = reply.Json.GetProperty("strapping").GetProperty("rows").EnumerateArray().ToDictionary(r => r.GetProperty("at").GetDecimal());
        Assert.All(rows[3968].GetProperty("pieces").EnumerateArray(), p => Assert.InRange(p.GetProperty("to")[1].GetDecimal(), 0, 2500));
        Assert.All(rows[4008].GetProperty("pieces").EnumerateArray(), p => Assert.InRange(p.GetProperty("from")[1].GetDecimal(), 2960, 5000));
    }
}
