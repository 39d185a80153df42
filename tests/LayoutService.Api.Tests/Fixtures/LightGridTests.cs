namespace LayoutService.Api.Tests.Fixtures;

public sealed class LightGridTests(Service service) : IClassFixture<Service>
{
    private const string Light = "\"fixture\":{\"kind\":\"slim-light\",\"cutout\":{\"diameter\":110}}";

    [Fact]
    public async Task A_grid_by_light_has_half_a_space_at_the_walls_and_reaches_what_was_asked()
    {
        var plan = await FixtureRoom.PlanAsync(service, FixtureRoom.With($"\"lightGrid\":{{\"lux\":150,\"lumens\":800,\"spacingToHeight\":1.5,{Light}}}"));
        var grid = plan.GetProperty("lightGrid");
        // 150 × 25.2 / (800 × 0.6 × 0.8) = 9.84, so 10; in 6.0 × 4.2 m ten make 5 × 2 of 1.2 × 2.1 m
        Assert.Equal(10, grid.GetProperty("needed").GetInt32());
        Assert.Equal(10, grid.GetProperty("fixtures").GetArrayLength());
        Assert.Equal(152.381m, grid.GetProperty("lux").GetDecimal());
        Assert.Equal((2100m, 1200m), (grid.GetProperty("arms")[0].GetProperty("alongSpacing").GetDecimal(), grid.GetProperty("arms")[0].GetProperty("acrossSpacing").GetDecimal()));
        // 2 450 − 15 − 19 − 12.7 − 760
        Assert.Equal(1643.3m, grid.GetProperty("mountingHeight").GetDecimal());
        // 25.2 / ((6.0 + 4.2) × 1.6433)
        Assert.Equal(1.503m, grid.GetProperty("roomIndex").GetDecimal());
        Assert.Equal(10, grid.GetProperty("cable").GetProperty("order").GetArrayLength());
        var rules = plan.GetProperty("checks").EnumerateArray().ToDictionary(c => c.GetProperty("rule").GetString() + string.Join(',', c.GetProperty("where")), c => c.GetProperty("status").GetString());
        Assert.Contains(rules, r => r.Key.StartsWith("grid-illuminance", StringComparison.Ordinal) && r.Value == "pass");
        Assert.Contains(rules, r => r.Key.StartsWith("grid-spacing-to-height", StringComparison.Ordinal) && r.Value == "pass");
        Assert.Contains("cable_path_is_estimate", FixtureRoom.Codes(plan.GetProperty("cautions")));
    }

    [Fact]
    public async Task Rows_run_along_x_and_columns_along_y_whichever_way_the_joists_run()
    {
        var plan = await FixtureRoom.PlanAsync(service, FixtureRoom.With($"\"lightGrid\":{{\"rows\":2,\"columns\":4,{Light}}}"));
        var places = plan.GetProperty("fixtures").EnumerateArray().Select(f => f.GetProperty("at")).Select(p => (X: p[0].GetDecimal(), Y: p[1].GetDecimal())).ToList();
        Assert.Equal(8, places.Count);
        Assert.All(places, p => Assert.Contains(new[] { 750m, 2250m, 3750m, 5250m }, x => Math.Abs(x - p.X) <= 150));
        Assert.All(places, p => Assert.Contains(new[] { 1050m, 3150m }, y => Math.Abs(y - p.Y) <= 150));
    }

    [Fact]
    public async Task Each_arm_of_an_L_has_a_grid_of_its_own()
    {
        var request = SmallRoom.With(
            FixtureRoom.With($"\"lightGrid\":{{\"count\":9,{Light}}}"), "room.outline", "[[0,0],[6000,0],[6000,2500],[2500,2500],[2500,4200],[0,4200]]");
        var plan = await FixtureRoom.PlanAsync(service, request);
        Assert.Equal(2, plan.GetProperty("lightGrid").GetProperty("arms").GetArrayLength());
        Assert.True(plan.GetProperty("lightGrid").GetProperty("fixtures").GetArrayLength() >= 9);
        Assert.Equal(0, plan.GetProperty("summary").GetProperty("fixturesInConflict").GetInt32());
    }

    [Fact]
    public async Task Deep_lights_of_one_line_move_off_a_joist_together()
    {
        var plan = await FixtureRoom.PlanAsync(service, FixtureRoom.With(
            "\"lightGrid\":{\"rows\":2,\"columns\":3,\"fixture\":{\"kind\":\"can-light\",\"cutout\":{\"diameter\":150}}}"));
        var lines = plan.GetProperty("fixtures").EnumerateArray().Select(f => f.GetProperty("at")[0].GetDecimal()).Distinct().ToList();
        Assert.Equal(3, lines.Count); // regular at 1000, 3000, 5000, each under a joist
        Assert.All(plan.GetProperty("fixtures").EnumerateArray(), f => Assert.Equal("moved", f.GetProperty("status").GetString()));
    }
}
