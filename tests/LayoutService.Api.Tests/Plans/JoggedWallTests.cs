namespace LayoutService.Api.Tests.Plans;

/// <summary>A wall with a jog smaller than a strap, parted by a bulkhead that reaches from side to side.</summary>
public sealed class JoggedWallTests(Service service) : IClassFixture<Service>
{
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
