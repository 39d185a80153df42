using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>Board in several layers, by hand.</summary>
public class LayerTests(Service service) : IClassFixture<Service>
{
    // hand: board of 12.7. The first layer's screw is 12.7 and 15 of wood, 27.7: 1-1/8 in, 28.6. The second goes through 25.4: 40.4: 1-5/8 in, 41.3. It
    // reaches 15.9 into the strap of 19 and stops 3.1 short of its back. 2140 less 10 of floor, 19 and 25.4: 2085.6
    [Fact]
    public async Task The_second_layer_has_longer_screws_and_takes_its_thickness_off_the_height()
    {
        var plan = await PlanAsync(SmallRoom.With(SmallRoom.With(Two, "room.heights", """[{"floorToJoist":2140}]"""), "room.floorBuildUp", "10"));
        var pieces = plan.GetProperty("sheets").GetProperty("pieces").EnumerateArray().ToList();
        var screws = plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray().Where(l => l.GetProperty("code").GetString() == "board-screw")
            .Select(l => (l.GetProperty("id").GetString(), l.GetProperty("counted").GetInt32())).ToList();
        Assert.Equal([("1-1/8in", Screws(1)), ("1-5/8in", Screws(2))], screws);
        Assert.Equal(2085.6m, plan.GetProperty("summary").GetProperty("finishedHeight").GetDecimal());
        Assert.Equal(3.125m, Check(plan, "screw-tip").GetProperty("value").GetDecimal());
        Assert.Equal(15.875m, Check(plan, "board-screw-penetration").GetProperty("value").GetDecimal());

        int Screws(int layer) => pieces.Where(p => p.GetProperty("layer").GetInt32() == layer).Sum(p => p.GetProperty("screws").GetInt32());
    }

    // hand: 10.8 m² a layer; sheets of 1200 lie in courses of 1200 from the wall in one layer, and shifted by half a sheet in the other: 600 between
    // the seams. No butt of one stands within 250 of one of the other beside it
    [Fact]
    public async Task Seams_lie_off_those_of_the_layer_below_and_each_layer_covers_the_room()
    {
        var plan = await PlanAsync(Two);
        foreach (var layer in new[] { 1, 2 })
        {
            Assert.Equal(10.8m, plan.GetProperty("sheets").GetProperty("pieces").EnumerateArray().Where(p => p.GetProperty("layer").GetInt32() == layer).Sum(p => p.GetProperty("area").GetDecimal()));
        }

        var courses = plan.GetProperty("sheets").GetProperty("courses").EnumerateArray().ToLookup(c => c.GetProperty("layer").GetInt32(), c => c.GetProperty("to").GetDecimal());
        Assert.Equal([1200, 2400, 3600], courses[1]);
        Assert.Equal([600, 1800, 3000, 3600], courses[2]);
        var offset = Check(plan, "layer-seam-offset");
        Assert.Equal(("pass", 250m), (offset.GetProperty("status").GetString(), offset.GetProperty("limit").GetDecimal()));
        Assert.True(offset.GetProperty("value").GetDecimal() >= 250);

        // only the layer that shows is taped
        var shown = plan.GetProperty("sheets").GetProperty("pieces").EnumerateArray().Where(p => p.GetProperty("layer").GetInt32() == 2).Select(p => p.GetProperty("id").GetString()).ToHashSet();
        var butts = plan.GetProperty("sheets").GetProperty("joints").EnumerateArray().Where(j => j.GetProperty("kind").GetString() == "butt" && shown.Contains(j.GetProperty("pieceA").GetString()))
            .Sum(j => j.GetProperty("length").GetDecimal());
        Assert.Equal(butts, plan.GetProperty("sheets").GetProperty("buttJointLength").GetDecimal());
    }

    [Fact]
    public async Task Each_layer_is_screwed_before_the_next_is_hung()
    {
        var steps = (await PlanAsync(Two)).GetProperty("steps").EnumerateArray().Select(s => s.GetProperty("text").GetString()!).ToList();
        var first = steps.FindIndex(s => s.StartsWith("Layer 1: drive", StringComparison.Ordinal));
        var second = steps.FindIndex(s => s.StartsWith("Course C4", StringComparison.Ordinal));
        Assert.True(first > 0 && second > first, $"{first}, {second}");
    }

    private static string Two => SmallRoom.With("sheets", """{"layers":2,"stock":[{"id":"s","width":1200,"length":2400}]}""");

    private static JsonElement Check(JsonElement plan, string rule) => plan.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("rule").GetString() == rule);

    private async Task<JsonElement> PlanAsync(string room)
    {
        var reply = await service.PostAsync("/v1/plans?include=all", room);
        Assert.True(reply.Status == 200, reply.Text);
        return reply.Json;
    }
}
