using System.Text.Json;
using LayoutService.Auditor;

namespace LayoutService.Api.Tests.Plans;

/// <summary>Batts over HTTP: the block, its call, and what else it touches.</summary>
public sealed class InsulationTests(Service service) : IClassFixture<Service>
{
    private const string Sound = "{\"purpose\":\"sound\",\"batts\":[{\"id\":\"b89\",\"thickness\":89,\"width\":381,\"length\":1220,\"r\":2.3}]}";

    [Fact]
    public async Task Without_insulation_there_is_no_block_and_the_call_alone_has_no_fills()
    {
        Assert.False((await service.PostAsync("/v1/plans", SmallRoom.Text)).Json.TryGetProperty("insulation", out _));
        var alone = (await service.PostAsync("/v1/insulation", SmallRoom.Text)).Json;
        Assert.Equal("none", alone.GetProperty("purpose").GetString());
        Assert.Equal(0, alone.GetProperty("fills").GetArrayLength());
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("{\"purpose\":\"none\"}")]
    [InlineData("{\"batts\":[]}")]
    public async Task An_empty_wish_is_none(string json) =>
        Assert.False((await service.PostAsync("/v1/plans", SmallRoom.With("insulation", json))).Json.TryGetProperty("insulation", out _));

    [Fact]
    public async Task The_call_alone_answers_with_the_block_of_the_plan()
    {
        var request = SmallRoom.With("insulation", Sound);
        var alone = (await service.PostAsync("/v1/insulation", request)).Text;
        Assert.Equal((await service.PostAsync("/v1/plans", request)).Json.GetProperty("insulation").GetRawText(), alone);
    }

    // joists at 200, 600, 1000, ... of 38 mm: bays of 362 mm, and one of 181 at each end, where a ledger of 38 carries the straps
    [Fact]
    public async Task Every_bay_is_filled_from_wall_to_wall()
    {
        var block = (await service.PostAsync("/v1/insulation", SmallRoom.With("insulation", Sound))).Json;
        var fills = block.GetProperty("fills").EnumerateArray().ToList();

        Assert.Equal(10, fills.Count);
        Assert.All(fills, f => Assert.Equal(3000, f.GetProperty("length").GetDecimal()));
        Assert.Equal(181 - 38 + 13, fills[0].GetProperty("width").GetDecimal());
        Assert.Equal(375, fills[1].GetProperty("width").GetDecimal());
        Assert.Equal(235, fills[1].GetProperty("depthAvailable").GetDecimal());
        Assert.All(block.GetProperty("uncovered").EnumerateArray(), u => Assert.Equal("blocking", u.GetProperty("reasons")[0].GetProperty("code").GetString()));

        // 9 joists and 2 ledgers of 38 mm over 3600: 0.116111; 1 / (0.116111 / (8.5 × 0.235) + 0.883889 / 2.3)
        Assert.Equal(0.116111m, block.GetProperty("framingFraction").GetDecimal());
        Assert.Equal(2.26m, block.GetProperty("areaR").GetDecimal());
    }

    [Fact]
    public async Task Without_batts_the_catalogues_are_taken_and_said()
    {
        var plan = (await service.PostAsync("/v1/plans", SmallRoom.With("insulation", "{\"purpose\":\"thermal\"}"))).Json;
        var assumed = plan.GetProperty("assumed").EnumerateArray().ToDictionary(a => a.GetProperty("pointer").GetString()!, a => a.GetProperty("value").GetString()!);

        Assert.Contains("batt-r30-15.25", assumed["#/insulation/batts"], StringComparison.Ordinal);
        Assert.Equal("235 mm", assumed["#/joistFields/0/depth"]);
        Assert.All(plan.GetProperty("insulation").GetProperty("fills").EnumerateArray(), f => Assert.Equal("batt-r30-15.25", f.GetProperty("batt").GetString()));
    }

    [Fact]
    public async Task Heat_has_its_cautions_and_sound_does_not()
    {
        async Task<List<string>> Cautions(string purpose) =>
            [.. (await service.PostAsync("/v1/plans", SmallRoom.With("insulation", $"{{\"purpose\":\"{purpose}\"}}"))).Json
                .GetProperty("cautions").EnumerateArray().Select(c => c.GetProperty("code").GetString()!)];
        Assert.Empty(new[] { "vapour_and_air_barrier", "thermal_minimum", "full_width_and_length", "batt_fibres" }.Except(await Cautions("thermal")));
        Assert.DoesNotContain("vapour_and_air_barrier", await Cautions("sound"));
    }

    [Fact]
    public async Task The_board_is_checked_for_the_batts_that_lie_on_it()
    {
        var checks = (await service.PostAsync("/v1/plans", SmallRoom.With("insulation", Sound))).Json.GetProperty("checks").EnumerateArray()
            .ToDictionary(c => c.GetProperty("rule").GetString()!);

        // 89 mm at 0.2 N/m² a mm
        Assert.Equal(89 * 0.2m / 9.80665m, checks["insulation-on-board"].GetProperty("value").GetDecimal(), 3);
        Assert.Equal("pass", checks["insulation-on-board"].GetProperty("status").GetString());
        Assert.Equal("pass", checks["board-under-insulation"].GetProperty("status").GetString());
    }

    [Fact]
    public async Task Under_a_long_duct_straps_wait_and_are_fastened_before_the_hold()
    {
        var plan = (await service.PostAsync("/v1/plans", Repository.ExampleRequest("batts-over-ducts"))).Json;
        var waiting = plan.GetProperty("strapping").GetProperty("rows").EnumerateArray().SelectMany(r => r.GetProperty("pieces").EnumerateArray())
            .Where(p => p.TryGetProperty("fastenAfter", out _)).ToList();
        var steps = plan.GetProperty("steps").EnumerateArray().Select(s => s.GetProperty("code").GetString()!).ToList();

        Assert.NotEmpty(waiting);
        Assert.All(waiting, p => Assert.All(p.GetProperty("fastenAfter").EnumerateArray(), f => Assert.Equal("batt_slides_over_depth", f.GetProperty("code").GetString())));
        Assert.True(steps.LastIndexOf("fasten-row") < steps.IndexOf("inspect-rough-in"));
        Assert.True(steps.LastIndexOf("fit-batts") < steps.IndexOf("fasten-after"));
        Assert.True(steps.LastIndexOf("fasten-after") < steps.IndexOf("inspect-before-closing"));
        Assert.DoesNotContain(plan.GetProperty("insulation").GetProperty("fills").EnumerateArray(), f => f.GetProperty("bay").GetString() == "BAY3");
    }

    [Theory]
    [InlineData("{\"purpose\":\"sound\",\"bays\":\"region\",\"region\":[[0,0],[1800,0],[1800,3000],[0,3000]]}")]
    [InlineData("{\"purpose\":\"sound\",\"bays\":\"region\",\"region\":[[-500,-500],[1700,-500],[900,4000]]}")]
    [InlineData("{\"purpose\":\"sound\",\"bays\":\"region\",\"region\":[[-500,500],[0,500],[0,0],[3600,0],[3600,1500],[-500,1500]]}")]
    public async Task A_region_bounds_the_batts(string json)
    {
        var request = SmallRoom.With("insulation", json);
        var plan = await service.PostAsync("/v1/plans", request);

        Assert.Equal(200, plan.Status);
        Assert.NotEmpty(plan.Json.GetProperty("insulation").GetProperty("fills").EnumerateArray());
        Assert.Empty(PlanAuditor.Audit(JsonDocument.Parse(request).RootElement, plan.Json));
    }

    [Fact]
    public async Task I_joists_have_the_depth_between_their_flanges()
    {
        var room = SmallRoom.With(SmallRoom.With("insulation", Sound), "joistFields.0.kind", "\"i-joist\"");
        var block = (await service.PostAsync("/v1/insulation", SmallRoom.With(room, "joistFields.0.depth", "302"))).Json;

        Assert.All(block.GetProperty("fills").EnumerateArray(), f => Assert.Equal(226, f.GetProperty("depthAvailable").GetDecimal()));
    }

    [Fact]
    public async Task A_limit_of_squeeze_set_by_the_caller_is_kept()
    {
        const string thick = "{\"purpose\":\"sound\",\"batts\":[{\"id\":\"b\",\"thickness\":240,\"width\":381,\"length\":1220}]}";
        var request = SmallRoom.With("insulation", thick);
        Assert.NotEmpty((await service.PostAsync("/v1/insulation", request)).Json.GetProperty("fills").EnumerateArray());

        var strict = (await service.PostAsync("/v1/insulation", SmallRoom.With(request, "rules", "[{\"id\":\"batt-squeeze-most\",\"value\":1}]"))).Json;
        Assert.Empty(strict.GetProperty("fills").EnumerateArray());
        Assert.Equal("no_batt_thin_enough", strict.GetProperty("uncovered")[0].GetProperty("reasons")[0].GetProperty("code").GetString());
    }
}
