using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>Board screwed straight to the joists, by hand.</summary>
public class DirectTests(Service service) : IClassFixture<Service>
{
    private const string Short = """[{"id":"s","width":1200,"length":2400}]""";

    // hand: 3000 × 3600 is 10.8 m², of sheets of 2.88 m² 3.75: four at least. Joists at 200, 600, … 3400: every butt is on one of them, and
    // butts of neighbouring courses (of 1200, 1200 and 600) are two spaces, 800, apart or more
    [Fact]
    public async Task Butts_lie_on_the_joists_own_middles_two_spaces_apart()
    {
        var plan = await PlanAsync(SmallRoom.With(Direct, "sheets", $$"""{"stock":{{Short}}}"""));
        var butts = plan.GetProperty("sheets").GetProperty("pieces").EnumerateArray()
            .GroupBy(p => p.GetProperty("course").GetString(), p => p.GetProperty("ends").EnumerateArray())
            .Select(c => c.SelectMany(e => e).Select(e => (At: e.GetProperty("at").GetDecimal(), Joist: e.GetProperty("backing")[0].GetString())).Distinct().ToList())
            .ToList();
        Assert.Equal(3, butts.Count);
        Assert.All(butts.SelectMany(b => b), b => Assert.Equal((b.At - 200) / 400, int.Parse(b.Joist![1..], System.Globalization.CultureInfo.InvariantCulture) - 1));
        Assert.All(butts.Zip(butts.Skip(1)), pair => Assert.True(pair.First.Min(a => pair.Second.Min(b => Math.Abs(a.At - b.At))) >= 800));
        Assert.Equal(4, plan.GetProperty("summary").GetProperty("sheetsToBuy").GetInt32());
        Assert.Empty(plan.GetProperty("strapping").GetProperty("rows").EnumerateArray());
        Assert.Equal("direct", plan.GetProperty("strapping").GetProperty("method").GetString());
    }

    // hand: the first joist's face is 200 - 19 = 181 from the wall, over 150: a ledger along each side wall, 3000 less 6 at each end. The walls
    // square to the joists ask for nothing. A piece from the wall to 1800 crosses the ledger and the joists at 200 to 1800: 6 lines; 1200
    // less 10 at each edge takes 1180 / 300, 4 spaces, 5 screws on each: 30. One of 600 to 3000 has 7 joists: 35, one from the wall to 600 the
    // ledger and 2: 15. The strip of 600 has 580 / 300, 2 spaces, 3 screws: 18
    [Fact]
    public async Task A_wall_without_a_joist_near_gets_a_ledger_and_the_board_is_screwed_to_it()
    {
        var plan = await PlanAsync(SmallRoom.With(Direct, "sheets", $$"""{"stock":{{Short}}}"""));
        Assert.Equal(
            ["ledger 3000 2988 W2", "ledger 3000 2988 W4"],
            plan.GetProperty("strapping").GetProperty("nailers").EnumerateArray()
                .Select(n => $"{n.GetProperty("role").GetString()} {n.GetProperty("length")} {n.GetProperty("cutLength")} {n.GetProperty("reasons")[1].GetProperty("of")[0].GetString()}").Order());
        var screws = plan.GetProperty("sheets").GetProperty("pieces").EnumerateArray()
            .Select(p => $"{p.GetProperty("length")} × {p.GetProperty("width")}: {p.GetProperty("screws")}").Distinct().Order();
        Assert.Equal(["1800 × 1200: 30", "1800 × 600: 18", "2400 × 1200: 35", "600 × 1200: 15"], screws);

        // the same with joists at 169 and 3431, faces 150 from the walls: no ledger
        var near = await PlanAsync(SmallRoom.With(Direct, "joistFields.0", """{"run":"y","positions":[169,600,1000,1400,1800,2200,2600,3000,3431]}"""));
        Assert.Empty(near.GetProperty("strapping").GetProperty("nailers").EnumerateArray());
    }

    // hand: one course, 4800 by 1200, sheets of 2400. On 11 joists evenly from 400 to 4400 one is at 2400: 2 sheets. As found none is at 2400, and no two
    // are 2400 apart: two sheets cannot be cut without waste, so three are needed, and the answer says so
    [Fact]
    public async Task The_plan_says_what_irregular_joists_cost()
    {
        var room = SmallRoom.With(SmallRoom.With(Direct, "sheets", $$"""{"stock":{{Short}},"cutAllowance":0}"""), "room.outline", "[[0,0],[4800,0],[4800,1200],[0,1200]]");
        var even = await PlanAsync(SmallRoom.With(room, "joistFields.0", """{"run":"y","spacing":400,"first":400}"""));
        Assert.Equal(2, even.GetProperty("summary").GetProperty("sheetsToBuy").GetInt32());
        Assert.DoesNotContain(even.GetProperty("alternatives").EnumerateArray(), a => a.GetProperty("code").GetString() == "even_joists");
        var found = await PlanAsync(SmallRoom.With(room, "joistFields.0", """{"run":"y","positions":[400,810,1190,1630,2030,2350,2790,3180,3650,4000,4400]}"""));
        var said = found.GetProperty("alternatives").EnumerateArray().Single(a => a.GetProperty("code").GetString() == "even_joists");
        Assert.Equal(("2", "3"), (said.GetProperty("params").GetProperty("sheets").GetString(), said.GetProperty("params").GetProperty("plannedSheets").GetString()));
    }

    // hand: 2140 less a floor of 10 and board of 12.7: 2117.3. Read level, one joist 5 higher: the step is 5, over 3.175, and nothing packs it. The
    // height was taken at 600, under the joist that is 5 higher: the lowest is 5 less
    [Fact]
    public async Task Height_is_from_the_lowest_joist_and_a_step_fails_the_plane()
    {
        var room = SmallRoom.With(SmallRoom.With(Direct, "room.heights", """[{"at":[600,100],"floorToJoist":2140}]"""), "room.floorBuildUp", "10");
        room = SmallRoom.With(room, "joistFields.0.undersides", """[{"at":[200,100],"level":0},{"at":[600,100],"level":5},{"at":[1000,100],"level":0}]""");
        var plan = await PlanAsync(room);
        Assert.Equal(2112.3m, plan.GetProperty("summary").GetProperty("finishedHeight").GetDecimal());
        var plane = plan.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("rule").GetString() == "plane");
        Assert.Equal(("fail", 5m), (plane.GetProperty("status").GetString(), plane.GetProperty("value").GetDecimal()));
        Assert.Equal("board_shows_step", plane.GetProperty("remedy").GetProperty("code").GetString());
    }

    // hand: what was said of straps changes nothing and that is said; the same board is planned without it
    [Fact]
    public async Task What_is_said_of_straps_is_told_to_change_nothing()
    {
        var plain = await PlanAsync(Direct);
        var said = await PlanAsync(SmallRoom.With(Direct, "strapping.size", """{"name":"2x4"}"""));
        Assert.Equal(plain.GetProperty("sheets").GetRawText(), said.GetProperty("sheets").GetRawText());
        Assert.Contains(said.GetProperty("assumed").EnumerateArray(), a => a.GetProperty("pointer").GetString() == "#/strapping");
        Assert.DoesNotContain(plain.GetProperty("assumed").EnumerateArray(), a => a.GetProperty("pointer").GetString()!.StartsWith("#/strapping/size", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("image/svg+xml")]
    [InlineData("application/pdf")]
    [InlineData("text/csv")]
    public async Task It_is_drawn_and_printed_like_any_other(string type)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/plans") { Content = new StringContent(Direct, System.Text.Encoding.UTF8, "application/json") };
        request.Headers.Add("Accept", type);
        using var reply = await service.CreateClient().SendAsync(request);
        Assert.Equal((200, type), ((int)reply.StatusCode, reply.Content.Headers.ContentType!.MediaType));
        Assert.True((await reply.Content.ReadAsByteArrayAsync()).Length > 300);
    }

    private static string Direct => SmallRoom.With("strapping", """{"method":"direct"}""");

    private async Task<JsonElement> PlanAsync(string room)
    {
        var reply = await service.PostAsync("/v1/plans?include=all", room);
        Assert.True(reply.Status == 200, reply.Text);
        return reply.Json;
    }
}
