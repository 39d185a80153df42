namespace LayoutService.Api.Tests.Fixtures;

/// <summary>
/// Holes beside the end of a joist that is lapped over a beam: one ends at x 3100, at y 1781 to 1819. A body keeps 6 mm off it,
/// along the joist as across it, and round its corner.
/// </summary>
public sealed class JoistEndTests(Service service) : IClassFixture<Service>
{
    private const string Joists = """
        [{"id":"a","region":[[0,0],[3100,0],[3100,4000],[0,4000]],"run":"x","face":38,"positions":[200,600,1000,1400,1800,2200,2600,3000,3400,3800]},
         {"id":"b","region":[[2900,0],[6000,0],[6000,4000],[2900,4000]],"run":"x","face":38,"positions":[238,638,1038,1438,1838,2238,2638,3038,3438,3838]}]
        """;

    [Theory]
    [InlineData(3254, true)]
    [InlineData(3257, false)]
    public async Task A_register_keeps_off_the_end_of_a_joist_as_far_as_off_its_face(int x, bool tooNear) =>
        Assert.Equal(tooNear, await MeetsJoistAsync($$"""{"id":"f","kind":"register","at":[{{x}},1760],"cutout":{"width":300,"height":100},"bodyDepth":150,"maxShift":0}"""));

    // the corner lies at 3100, 1781: 45 mm off it both ways are 63.6 mm from the centre, 39 mm are 55.2
    [Theory]
    [InlineData(3139, 1742, true)]
    [InlineData(3145, 1736, false)]
    public async Task A_round_alarm_is_measured_round_the_corner_of_a_joist(int x, int y, bool tooNear) =>
        Assert.Equal(tooNear, await MeetsJoistAsync($$"""{"id":"f","kind":"alarm","at":[{{x}},{{y}}],"cutout":{"diameter":100},"bodyDepth":60,"maxShift":0}"""));

    private async Task<bool> MeetsJoistAsync(string fixture)
    {
        var reply = await service.PostAsync("/v1/plans?include=fixtures", $$"""
            {"units":"metric","room":{"outline":[[0,0],[6000,0],[6000,4000],[0,4000]]},"joistFields":{{Joists}},"fixtures":[{{fixture}}]}
            """);
        Assert.Equal(200, reply.Status);
        var placed = reply.Json.GetProperty("fixtures").EnumerateArray().Single();
        return placed.TryGetProperty("reasons", out var reasons) && reasons.EnumerateArray().Any(r => r.GetProperty("code").GetString() == "conflict_joist");
    }
}
