using System.Text.Json;
using System.Text.Json.Nodes;

namespace LayoutService.Api.Tests.Plans;

/// <summary>Where a bulkhead's wood and board are jointed, what they are fastened with, and what they cost; figures by hand.</summary>
public sealed class BoxedFrameTests(Service service) : IClassFixture<Service>
{
    private const string Room = """
        "units":"imperial","room":{"outline":[[0,0],[192,0],[192,144],[0,144]]},"joistFields":[{"run":"x","spacing":16,"first":8,"depth":9.25}]
        """;

    [Fact]
    public async Task At_an_inside_corner_the_boards_of_both_arms_end_over_the_middle_of_a_rail()
    {
        var box = (await Plan($$"""{ {{Room}},"bulkheads":[{"id":"B","edges":[0,3],"width":24,"drop":9}] }""")).GetProperty("bulkheads")[0];

        // both arms are 24 in wide, so the boards part at x = 24, from the wall to the corner; the rail there begins at the ladder of the other arm, 2 in behind its face
        Assert.Equal(2, Of(box, "boards").Count(b => b.GetProperty("face").GetString() == "underside" && Xs(b).Contains(24m)));
        var rail = Assert.Single(Of(box, "members"), m => Role(m) == "rail" && At(m, "from", 0) == 24 && At(m, "to", 0) == 24);
        Assert.Equal([1.5m, 22m], new[] { At(rail, "from", 1), At(rail, "to", 1) }.Order());
    }

    [Fact]
    public async Task A_ladder_is_open_where_a_duct_runs_on_into_a_deeper_bulkhead()
    {
        var plan = await Plan($$"""
            { {{Room}},"services":[{"id":"duct","kind":"duct","path":[[96,0],[96,144]],"width":12,"top":0,"bottom":8}],
              "bulkheads":[{"id":"box","hides":["duct"]},{"id":"per","edges":[0],"width":24,"drop":14}] }
            """);
        var members = Of(plan.GetProperty("bulkheads").EnumerateArray().Single(b => b.GetProperty("id").GetString() == "per"), "members");

        // the duct lies from 90 to 102 in along the face and 8 in deep; under it there is a header and the bottom rail
        var through = members.Where(m => Role(m) is "rail" or "rung" && At(m, "from", 1) == At(m, "to", 1)
            && Math.Max(At(m, "from", 0), At(m, "to", 0)) > 90.01m && Math.Min(At(m, "from", 0), At(m, "to", 0)) < 101.99m).ToList();
        Assert.All(through, m => Assert.True(m.GetProperty("top").GetDecimal() >= 8, m.ToString()));
        Assert.Contains(through, m => m.GetProperty("top").GetDecimal() == 8 && m.GetProperty("length").GetDecimal() == 12);
        foreach (var post in new[] { 89.25m, 102.75m })
        {
            Assert.Contains(members, m => Role(m) == "rung" && At(m, "from", 0) == post && m.GetProperty("top").GetDecimal() == 1.5m);
        }

        // who frames it reads which member that is
        var header = members.Single(m => m.GetProperty("top").GetDecimal() == 8 && m.GetProperty("length").GetDecimal() == 12).GetProperty("id").GetString();
        var framing = plan.GetProperty("steps").EnumerateArray().Where(s => s.GetProperty("code").GetString() == "frame-bulkhead").Select(s => s.GetProperty("text").GetString()!).ToList();
        Assert.Single(framing, text => text.EndsWith($"A ladder stays open where a service runs through it, over the header {header}.", StringComparison.Ordinal));
        Assert.Single(framing, text => !text.Contains("header", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Rails_longer_than_the_stock_are_jointed_at_rungs_and_not_both_at_one()
    {
        var box = (await Plan($$"""{ {{Room}},"bulkheads":[{"id":"B","edges":[0],"width":18,"drop":10,"frame":{"size":"2x2","stock":[{"id":"f","length":96}] } }] }""")).GetProperty("bulkheads")[0];
        var rungs = Of(box, "members").Where(m => Role(m) == "rung").Select(m => At(m, "from", 0)).ToHashSet();

        // 192 in of face takes three lengths, so each rail has two joints
        var joints = Of(box, "members").Where(m => Role(m) == "rail").GroupBy(m => m.GetProperty("top").GetDecimal())
            .Select(rail => rail.SelectMany(m => new[] { At(m, "from", 0), At(m, "to", 0) }).Where(x => x is > 0 and < 192).ToHashSet()).ToList();
        Assert.Equal(2, joints.Count);
        Assert.All(joints, rail => Assert.True(rail.Count == 2 && rail.IsSubsetOf(rungs), string.Join(' ', rail)));
        Assert.Empty(joints[0].Intersect(joints[1]));
    }

    [Fact]
    public async Task Rails_of_a_narrow_box_in_one_bay_share_its_blocks()
    {
        var box = (await Plan("""
            {"units":"imperial","room":{"outline":[[0,0],[192,0],[192,144],[0,144]]},"joistFields":[{"run":"y","spacing":24,"first":12,"depth":9.25}],
             "services":[{"id":"duct","kind":"duct","path":[[96,0],[96,144]],"width":8,"top":0,"bottom":8}],"bulkheads":[{"id":"box","hides":["duct"]}]}
            """)).GetProperty("bulkheads")[0];
        var blocks = Of(box, "members").Where(m => Role(m) == "blocking").Select(m => m.GetProperty("id").GetString()).ToList();

        // 144 in at 32 in at most: five spaces, six blocks
        Assert.Equal(6, blocks.Count);
        var held = Of(box, "backing").Where(b => b.GetProperty("kind").GetString() == "blocking").ToList();
        Assert.True(held.Count >= 2);
        Assert.All(held, b => Assert.Equal(blocks, b.GetProperty("of").EnumerateArray().Select(o => o.GetString())));
    }

    [Fact]
    public async Task Ledgers_on_concrete_take_anchors_every_400_mm_and_the_boards_of_bulkheads_are_work()
    {
        var plan = await Plan("""
            {"units":"imperial","room":{"outline":[[0,0],[192,0],[192,144],[0,144]],
              "walls":[{"edge":0,"kind":"concrete"},{"edge":1,"kind":"concrete"},{"edge":2,"kind":"concrete"},{"edge":3,"kind":"concrete"}]},
             "joistFields":[{"run":"x","spacing":16,"first":8,"depth":9.25}],"bulkheads":[{"id":"B","edges":[0,1],"width":18,"drop":10}],
             "prices":{"currency":"USD","labour":{"hourPrice":50,"perStrapPiece":0.1,"perBoardPiece":1,"perJointLength":0.05}}}
            """);

        // two at each end and every 400 mm (15.75 in): the ceiling's ledger of 174 in 26; of 14.5 in 4; 16 in 6; 95.25 in twice 16; 142.5 in 22
        Assert.Equal(26 + 4 + 6 + 32 + 22, Counted(plan, "masonry-fastener"));
        Assert.Equal(plan.GetProperty("sheets").GetProperty("pieces").GetArrayLength() + plan.GetProperty("bulkheads")[0].GetProperty("boards").GetArrayLength(), Counted(plan, "labour-boards"));
    }

    [Theory]
    [InlineData("frame", "f16", 192, 26)]
    [InlineData("sheets", "g16", 192, 40)]
    public async Task A_longer_and_dearer_stock_length_makes_no_bulkhead_dearer(string of, string id, int length, int price)
    {
        var request = JsonNode.Parse("""
            {"units":"imperial","room":{"outline":[[0,0],[180,0],[180,144],[0,144]]},"joistFields":[{"run":"x","spacing":16,"first":8,"depth":9.25}],
             "prices":{"currency":"USD"},
             "sheets":{"stock":[{"id":"g8","width":48,"length":96,"packPrice":14},{"id":"g10","width":48,"length":120,"packPrice":18},{"id":"g12","width":48,"length":144,"packPrice":22}]},
             "bulkheads":[{"id":"B","edges":[0,2],"width":18,"drop":10,"frame":{"size":"2x2","stock":[{"id":"f8","length":96,"packPrice":3}]}}]}
            """)!;
        var use = of == "frame" ? "bulkheads" : "sheets";
        var before = Cost(await Plan(request.ToJsonString()), use);
        var longer = new JsonObject { ["id"] = id, ["length"] = length, ["packPrice"] = price };
        if (of == "sheets")
        {
            longer["width"] = 48;
        }

        (of == "frame" ? request["bulkheads"]![0]!["frame"]!["stock"]! : request["sheets"]!["stock"]!).AsArray().Add(longer);
        Assert.True(Cost(await Plan(request.ToJsonString()), use) <= before, $"{before} without {id}");
    }

    [Theory]
    [InlineData(Unpriced)]
    [InlineData(Priced)]
    public async Task A_thorough_plan_is_no_worse_than_the_quick_one(string room)
    {
        var request = JsonNode.Parse(room)!;
        request["effort"] = "quick";
        var quick = (await Plan(request.ToJsonString())).GetProperty("summary");
        request["effort"] = "thorough";
        var thorough = (await Plan(request.ToJsonString())).GetProperty("summary");
        var figures = quick.TryGetProperty("cost", out _) ? new[] { "cost" } : ["rows", "sheetsToBuy", "buttJointLength"];
        Assert.True(
            figures.Any(f => thorough.GetProperty(f).GetDecimal() < quick.GetProperty(f).GetDecimal()) || figures.All(f => thorough.GetProperty(f).GetDecimal() <= quick.GetProperty(f).GetDecimal()),
            $"{thorough} after {quick}");
    }

    [Fact]
    public async Task An_order_buys_the_sticks_of_a_frame_once()
    {
        var reply = await service.PostAsync("/v1/jobs?include=all", $$"""{"reference":"x","rooms":[{ {{Room}},"bulkheads":[{"id":"B","edges":[0],"width":18,"drop":10}] }] }""");
        Assert.Equal(200, reply.Status);
        var sticks = reply.Json.GetProperty("cutPlan").GetProperty("stock").EnumerateArray().CountBy(s => s.GetProperty("stockId").GetString()!).ToDictionary();
        var lines = reply.Json.GetProperty("takeoff").GetProperty("lines").EnumerateArray()
            .Where(l => l.GetProperty("code").GetString() is "strap" or "nailer" or "bulkhead-frame").ToList();
        Assert.Contains(lines, l => l.GetProperty("code").GetString() == "bulkhead-frame");
        Assert.Equal(sticks.OrderBy(s => s.Key).Select(s => (s.Key, (decimal)s.Value)), lines.GroupBy(l => l.GetProperty("id").GetString()!).OrderBy(g => g.Key).Select(g => (g.Key, g.Sum(l => l.GetProperty("counted").GetDecimal()))));
    }

    private async Task<JsonElement> Plan(string request)
    {
        var reply = await service.PostAsync("/v1/plans", request);
        Assert.Equal(200, reply.Status);
        return reply.Json;
    }

    private static List<JsonElement> Of(JsonElement box, string list) => [.. box.GetProperty(list).EnumerateArray()];

    private static string? Role(JsonElement member) => member.GetProperty("role").GetString();

    private static decimal At(JsonElement member, string end, int axis) => member.GetProperty(end)[axis].GetDecimal();

    private static HashSet<decimal> Xs(JsonElement board) => [.. board.GetProperty("outline").EnumerateArray().Select(p => p[0].GetDecimal())];

    private static decimal Counted(JsonElement plan, string code) =>
        plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray().Where(l => l.GetProperty("code").GetString() == code).Sum(l => l.GetProperty("counted").GetDecimal());

    private static decimal Cost(JsonElement plan, string use) =>
        plan.GetProperty("cutPlan").GetProperty("results").EnumerateArray().Single(r => r.GetProperty("use").GetString() == use).GetProperty("cost").GetDecimal();

    private const string Unpriced = """
        {"units": "metric", "room": {"outline": [[0, 0], [8849, 0], [8849, 4355], [0, 4355]], "heights": [{"floorToJoist": 2500}], "floorBuildUp": 20, "use": "habitable"},
         "joistFields": [{"id": "f", "run": "x", "kind": "sawn", "depth": 184, "face": 38, "spacing": 487, "first": 284}], "bulkheads": [{"id": "per", "edges": [0, 1], "width": 450, "drop": 250, "boardedAbove": false, "frame": {"size": "2x2", "stock": [{"id": "f", "length": 3600}]}}], "ruleset": "ca-nbc-2020",
         "strapping": {"size": {"thickness": 19, "face": 64}, "maxSpacing": 400, "minPiece": 600, "kerf": 3, "endTrim": 3, "endClearance": 6, "stock": [{"id": "s2400", "length": 2400}, {"id": "s3000", "length": 3000}, {"id": "s3600", "length": 3600}, {"id": "s4200", "length": 4200}, {"id": "s4800", "length": 4800}]},
         "sheets": {"thickness": 12.7, "cutAllowance": 3, "minStagger": 800, "stock": [{"id": "g2400", "width": 1200, "length": 2400}, {"id": "g3000", "width": 1200, "length": 3000}, {"id": "g3600", "width": 1200, "length": 3600}]}, "effort": "thorough"}
        """;

    private const string Priced = """
        {"units": "metric", "room": {"outline": [[0, 0], [4439, 0], [4439, 3769], [3981, 4227], [0, 4227]], "heights": [{"floorToJoist": 2500}], "floorBuildUp": 20, "use": "habitable"},
         "joistFields": [{"id": "f", "run": "y", "kind": "sawn", "depth": 184, "face": 38, "positions": [350, 755, 1180, 1570, 1947, 2329, 2735, 3104, 3503, 3891, 4296]}], "bulkheads": [{"id": "box", "hides": ["duct"]}, {"id": "per", "edges": [1, 3, 4], "width": 300, "drop": 200, "boardedAbove": false}], "services": [{"id": "duct", "kind": "duct", "path": [[2736, 0], [2736, 4227]], "width": 200, "top": 0, "bottom": 150}],
         "strapping": {"stock": [{"id": "s2400", "length": 2400, "packPrice": 4.1}, {"id": "s3000", "length": 3000, "packPrice": 5.88}, {"id": "s3600", "length": 3600, "packPrice": 6.55}, {"id": "s4200", "length": 4200, "packPrice": 7.84}, {"id": "s4800", "length": 4800, "packPrice": 8.09}]},
         "sheets": {"stock": [{"id": "g2400", "width": 1200, "length": 2400, "packPrice": 13.05}, {"id": "g3000", "width": 1200, "length": 3000, "packPrice": 16.96}, {"id": "g3600", "width": 1200, "length": 3600, "packPrice": 21.93}], "jointCost": {"butt": 5, "tapered": 1}}, "prices": {"currency": "CAD", "items": [{"code": "strap-screw", "packSize": 500, "packPrice": 30}, {"code": "board-screw", "packSize": 1000, "packPrice": 25}, {"code": "joint-tape", "packSize": 75, "packPrice": 6}, {"code": "joint-compound", "packSize": 50, "packPrice": 22}, {"code": "bulkhead-frame", "packPrice": 4}, {"code": "nailer", "packPrice": 5}], "tax": [{"name": "T", "rate": 0.13}], "culls": {"boards": 0, "dimension": 0}}, "effort": "thorough"}
        """;
}
