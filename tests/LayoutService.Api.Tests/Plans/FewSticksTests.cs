using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>Sticks of which there are few, in a room whose joists run two ways.</summary>
public sealed class FewSticksTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task Parts_share_the_few_long_sticks_and_the_rest_is_cut_from_short_ones()
    {
        var reply = await service.PostAsync("/v1/plans", Room("""[{"id":"short","length":3050,"packPrice":3},{"id":"long","length":3660,"packPrice":1,"quantity":3}]"""));
        Assert.Equal(200, reply.Status);
        Assert.InRange(Sticks(reply.Json, "long"), 1, 3);
        Assert.True(Sticks(reply.Json, "short") > 20, "the rest is cut from short sticks");
    }

    [Fact]
    public async Task Where_there_are_too_few_for_all_parts_and_nothing_else_the_answer_says_so()
    {
        var reply = await service.PostAsync("/v1/plans", Room("""[{"id":"long","length":4880,"packPrice":4,"quantity":15}]"""));
        Assert.Equal(422, reply.Status);
        Assert.Equal(["out_of_stock"], reply.Json.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("code").GetString()));
    }

    private static int Sticks(JsonElement plan, string id) =>
        plan.GetProperty("cutPlan").GetProperty("stock").EnumerateArray().Count(s => s.GetProperty("stockId").GetString() == id);

    private static string Room(string stock) => $$"""
        {"units":"metric","room":{"outline":[[0,0],[12000,0],[12000,3600],[0,3600]] },
         "joistFields":[{"id":"a","region":[[0,0],[4000,0],[4000,3600],[0,3600]],"run":"x","spacing":400,"first":100},
                        {"id":"b","region":[[4000,0],[8000,0],[8000,3600],[4000,3600]],"run":"y","spacing":400,"first":4300},
                        {"id":"c","region":[[8000,0],[12000,0],[12000,3600],[8000,3600]],"run":"x","spacing":400,"first":100}],
         "strapping":{"maxSpacing":400,"stock":{{stock}} },"prices":{"currency":"CAD"} }
        """;
}
