using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>Published worked problems that a plan can be asked, each with its source.</summary>
public sealed class WorkedProblemTests(Service service) : IClassFixture<Service>
{
    // Builders' Guide (Griffith, Carpentry, 1916, chestofbooks.com, public domain): joists along 32 ft, counted at both ends
    [Theory]
    [InlineData(384, 12, 33)]
    [InlineData(384, 16, 25)]
    public async Task Joists_at_a_spacing_are_counted_at_both_ends(int inches, int spacing, int joists)
    {
        var plan = await PlanAsync($$"""
            {"units":"imperial","room":{"outline":[[0,0],[{{inches}},0],[{{inches}},120],[0,120]]},
             "joistFields":[{"run":"y","spacing":{{spacing}},"first":0}]}
            """);

        Assert.Equal(joists, plan.GetProperty("joists").GetProperty("members").GetArrayLength());
    }

    // Ewen and Nelson, Elementary Technical Mathematics, exercise 1.3-16 (gradesaver; cited, not quoted): a room 12 × 16 ft,
    // board 4 × 8; its ceiling alone is 192 ft² = 6 sheets, which staggered courses still cut without one more
    [Fact]
    public async Task A_ceiling_of_12_by_16_feet_takes_six_sheets_of_4_by_8()
    {
        var plan = await PlanAsync("""
            {"units":"imperial","room":{"outline":[[0,0],[192,0],[192,144],[0,144]]},
             "joistFields":[{"run":"x","spacing":16,"first":8}],
             "sheets":{"stock":[{"id":"4x8","width":48,"length":96}]}}
            """);

        Assert.Equal(6, plan.GetProperty("summary").GetProperty("sheetsToBuy").GetInt32());
    }

    // howtobuildplans.com (cited): 135 ft of wall 8 ft high in 4 × 8 board is 33.75, so 34 sheets; laid here as a ceiling of
    // the same area and width, where staggered butts and backing may not take fewer
    [Fact]
    public async Task A_strip_of_8_by_135_feet_takes_no_fewer_sheets_than_its_area()
    {
        var plan = await PlanAsync("""
            {"units":"imperial","room":{"outline":[[0,0],[1620,0],[1620,96],[0,96]]},
             "joistFields":[{"run":"x","spacing":16,"first":8}],
             "sheets":{"stock":[{"id":"4x8","width":48,"length":96}]}}
            """);

        Assert.InRange(plan.GetProperty("summary").GetProperty("sheetsToBuy").GetInt32(), 34, 36);
    }

    private async Task<JsonElement> PlanAsync(string request)
    {
        var reply = await service.PostAsync("/v1/plans", request);
        Assert.Equal(200, reply.Status);
        return reply.Json;
    }
}
