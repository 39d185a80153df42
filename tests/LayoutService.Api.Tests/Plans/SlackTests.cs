namespace LayoutService.Api.Tests.Plans;

/// <summary>How far rows may still move on the day, by hand.</summary>
public class SlackTests(Service service) : IClassFixture<Service>
{
    // hand: 9 rows 367 apart, 400 allowed and 64 + 13 = 77 needed. A row in the field may move 400 - 367 = 33 either way. The wall rows
    // stand tight: nothing towards the wall, and away from it 13 (a wall row's reach), less than what the next row allows, 367 - 77
    [Fact]
    public async Task Rows_in_the_field_are_held_by_the_spacing_and_wall_rows_by_the_wall()
    {
        Assert.Equal(
            ["R1 0 wall 13 wall", .. Enumerable.Range(2, 7).Select(i => $"R{i} 33 spacing 33 spacing"), "R9 13 wall 0 wall"],
            await SlackAsync(SmallRoom.Text));
    }

    // hand: a room 6000 deep: 5936 at 450 at most is 14 spaces of 424, so 26 to spare; a row with butts on its middle has 64 / 2 - 19 = 13
    [Fact]
    public async Task A_row_that_backs_butts_moves_no_further_than_they_stay_on_wood()
    {
        var room = SmallRoom.With(SmallRoom.With("room.outline", "[[0,0],[3600,0],[3600,6000],[0,6000]]"), "sheets.stock", """[{"id":"s","width":1200,"length":3000}]""");
        room = SmallRoom.With(room, "strapping.maxSpacing", "450");
        var plan = (await service.PostAsync("/v1/plans", room)).Json;
        var backing = plan.GetProperty("strapping").GetProperty("rows").EnumerateArray()
            .Where(r => r.GetProperty("reasons").EnumerateArray().Any(w => w.TryGetProperty("code", out var code) && code.GetString() == "backs_butt")).Select(r => r.GetProperty("id").GetString()!).ToList();
        Assert.NotEmpty(backing);
        var slack = await SlackAsync(room);
        Assert.All(backing, row => Assert.Contains(slack, s => s == $"{row} 13 butt 13 butt"));
    }

    // hand: at 600 at most rows stand at 32, 600, 1200, 1800, 2400, 2968: R2 has 600 - 568 = 32 to spare from R1, none from R3. A hole of 100
    // whose edge is 13 + 10 off its strap is at 600 + 32 + 23 + 50 = 705: it may come 10 nearer
    [Fact]
    public async Task A_row_keeps_off_a_hole()
    {
        var room = SmallRoom.With("strapping.maxSpacing", "600");
        Assert.Contains("R2 0 spacing 32 spacing", await SlackAsync(SmallRoom.With(room, "fixtures", HoleAt(1500))));
        Assert.Contains("R2 0 spacing 10 fixture", await SlackAsync(SmallRoom.With(room, "fixtures", HoleAt(705))));
    }

    private static string HoleAt(int y) => $$"""[{"id":"L1","kind":"slim-light","at":[1600,{{y}}],"cutout":{"diameter":100},"bodyDepth":10,"maxShift":0}]""";

    private async Task<List<string>> SlackAsync(string room)
    {
        var reply = await service.PostAsync("/v1/plans?include=slack", room);
        Assert.True(reply.Status == 200, reply.Text);
        return [.. reply.Json.GetProperty("slack").EnumerateArray().Select(s =>
            $"{s.GetProperty("rowId").GetString()} {s.GetProperty("towardsLow")} {s.GetProperty("heldLow").GetString()} {s.GetProperty("towardsHigh")} {s.GetProperty("heldHigh").GetString()}")];
    }
}
