using System.Text.Json;

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

    private async Task<JsonElement> Plan(string face) =>
        (await service.PostAsync("/v1/plans", SmallRoom.With("room.outlineFace", $"\"{face}\""))).Json;

    private static List<string> Cautions(JsonElement plan) =>
        [.. plan.GetProperty("cautions").EnumerateArray().Select(c => c.GetProperty("code").GetString()!)];
}
