using System.Text.Json;
using LayoutService.Auditor;

namespace LayoutService.Api.Tests.Plans;

/// <summary>A room measured between walls that are lined already.</summary>
public class FinishedOutlineTests(Service service) : IClassFixture<Service>
{
    // hand: the lining stays and nothing is added or taken off, so rows, sheets, cuts and order are those of a room of the same size between bare walls
    [Theory]
    [InlineData("strapping")]
    [InlineData("sheets")]
    [InlineData("cutPlan")]
    [InlineData("takeoff")]
    public async Task Straps_and_board_are_planned_between_the_faces_as_measured(string part)
    {
        var (bare, lined) = (await Plan("framing"), await Plan("finished"));
        Assert.Equal(bare.GetProperty(part).GetRawText(), lined.GetProperty(part).GetRawText());
    }

    [Fact]
    public async Task Only_the_caution_says_what_the_lining_changes()
    {
        var (bare, lined) = (Cautions(await Plan("framing")), Cautions(await Plan("finished")));
        Assert.DoesNotContain("walls_lined", bare);
        Assert.Equal(["walls_lined"], lined.Except(bare));
        Assert.Empty(bare.Except(lined));
    }

    // two fields: the caution of both parts is said once
    [Theory]
    [InlineData("""[{"run":"y","spacing":400,"first":200}]""")]
    [InlineData("""[{"id":"a","run":"y","spacing":400,"first":200,"region":[[0,0],[1800,0],[1800,3000],[0,3000]]},{"id":"b","run":"x","spacing":400,"first":200,"region":[[1800,0],[3600,0],[3600,3000],[1800,3000]]}]""")]
    public async Task The_auditor_finds_it_said_once_and_misses_it_where_it_is_not_due(string fields)
    {
        var (bare, lined) = (SmallRoom.With("joistFields", fields), SmallRoom.With(SmallRoom.With("joistFields", fields), "room.outlineFace", "\"finished\""));
        var plan = (await service.PostAsync("/v1/plans", lined)).Json;
        Assert.Empty(PlanAuditor.Audit(JsonDocument.Parse(lined).RootElement, plan));
        Assert.Contains(PlanAuditor.Audit(JsonDocument.Parse(bare).RootElement, plan), f => f.Rule == "walls.lined");
    }

    private async Task<JsonElement> Plan(string face) =>
        (await service.PostAsync("/v1/plans", SmallRoom.With("room.outlineFace", $"\"{face}\""))).Json;

    private static List<string> Cautions(JsonElement plan) =>
        [.. plan.GetProperty("cautions").EnumerateArray().Select(c => c.GetProperty("code").GetString()!)];
}
