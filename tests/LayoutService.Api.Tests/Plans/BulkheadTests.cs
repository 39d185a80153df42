using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>Bulkheads over HTTP: solids, frames, boards, and what is refused.</summary>
public sealed class BulkheadTests(Service service) : IClassFixture<Service>
{
    private const string Suite = "l-suite-with-bulkhead";

    [Fact]
    public async Task Sheets_bulkheads_and_openings_cover_the_room_exactly()
    {
        var answer = (await service.PostAsync("/v1/plans", Repository.ExampleRequest(Suite))).Json;
        var sheets = answer.GetProperty("sheets").GetProperty("pieces").EnumerateArray().Sum(p => Area(p.GetProperty("outline")));
        var boxes = answer.GetProperty("bulkheads").EnumerateArray().Sum(b => Area(b.GetProperty("footprint")));

        // 24 × 12 ft and 14 × 8 ft, less a post of 4 × 4 in
        Assert.Equal((288 * 144) + (168 * 96) - 16, sheets + boxes, 3);
    }

    [Fact]
    public async Task Undersides_tile_the_footprint_and_faces_are_as_high_as_the_drop()
    {
        foreach (var box in await Boxes(Repository.ExampleRequest(Suite)))
        {
            var boards = box.GetProperty("boards").EnumerateArray().ToList();
            var under = boards.Where(b => b.GetProperty("face").GetString() == "underside").Sum(b => Area(b.GetProperty("outline")));
            Assert.Equal(Area(box.GetProperty("footprint")), under, 3);

            // one layer of board: what laps the ceiling's edge above is what the underside covers below
            var drop = box.GetProperty("drop").GetDecimal();
            Assert.Contains(boards, b => b.GetProperty("face").GetString() == "face" && b.GetProperty("width").GetDecimal() == drop);
        }
    }

    [Fact]
    public async Task Members_lie_inside_the_solid_and_are_cut_from_sticks_in_the_cut_plan()
    {
        var answer = (await service.PostAsync("/v1/plans", Repository.ExampleRequest(Suite))).Json;
        var cuts = answer.GetProperty("cutPlan").GetProperty("stock").EnumerateArray()
            .SelectMany(s => s.GetProperty("cuts").EnumerateArray())
            .ToDictionary(c => c.GetProperty("pieceId").GetString()!, c => c.GetProperty("length").GetDecimal());
        foreach (var box in answer.GetProperty("bulkheads").EnumerateArray())
        {
            foreach (var member in box.GetProperty("members").EnumerateArray())
            {
                Assert.Equal(member.GetProperty("cutLength").GetDecimal(), cuts[member.GetProperty("id").GetString()!]);
                if (member.GetProperty("role").GetString() != "blocking")
                {
                    Assert.True(member.GetProperty("top").GetDecimal() >= box.GetProperty("top").GetDecimal());
                    Assert.True(member.GetProperty("bottom").GetDecimal() <= box.GetProperty("frameBottom").GetDecimal());
                }
            }
        }
    }

    [Fact]
    public async Task A_boxed_duct_is_covered_by_clearance_tie_and_board()
    {
        var box = (await Boxes(Repository.ExampleRequest(Suite)))[1];

        // 8 in of duct, 1 in clear, 1-1/2 in tie, 1/2 in board: 11 in below the joists; the ceiling is 1-1/4 in below them
        Assert.Equal(11m, box.GetProperty("underside").GetDecimal());
        Assert.Equal(9.75m, box.GetProperty("drop").GetDecimal());

        // 14 in of duct and on each side 1 in clear, 1-1/2 in ladder, 1/2 in board
        Assert.Equal(20.0 * 240, Area(box.GetProperty("footprint")), 3);
    }

    [Fact]
    public async Task The_part_call_answers_with_the_block_of_the_plan()
    {
        var whole = (await service.PostAsync("/v1/plans", Repository.ExampleRequest(Suite))).Json.GetProperty("bulkheads");
        var part = (await service.PostAsync("/v1/bulkheads", Repository.ExampleRequest(Suite))).Json.GetProperty("bulkheads");
        Assert.Equal(whole.GetRawText(), part.GetRawText());
    }

    [Fact]
    public async Task A_duct_outside_of_every_bulkhead_is_a_failed_check_that_says_by_how_much()
    {
        var request = SmallRoom.With("services", """[{"id":"d","kind":"duct","path":[[0,1000],[3600,1000]],"width":300,"top":0,"bottom":200}]""");
        var check = (await service.PostAsync("/v1/plans", request)).Json.GetProperty("checks").EnumerateArray()
            .Single(c => c.GetProperty("rule").GetString() == "service-covered");
        Assert.Equal("fail", check.GetProperty("status").GetString());
        Assert.Equal(181m, check.GetProperty("value").GetDecimal());
    }

    [Fact]
    public async Task Below_a_boarded_ceiling_the_sheets_go_through()
    {
        var request = SmallRoom.With("bulkheads", """[{"id":"b","edges":[0],"width":500,"drop":250,"boardedAbove":true}]""");
        var reply = await service.PostAsync("/v1/plans", request);
        Assert.Equal(200, reply.Status);
        Assert.Equal(3600.0 * 3000, reply.Json.GetProperty("sheets").GetProperty("pieces").EnumerateArray().Sum(p => Area(p.GetProperty("outline"))), 1);
    }

    [Theory]
    [InlineData("[0,1,2,3]")]
    [InlineData("[0,2]")]
    [InlineData("[1,2]")]
    [InlineData("[3]")]
    public async Task Any_set_of_edges_leaves_the_rest_to_the_sheets(string edges)
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("bulkheads", $$"""[{"edges":{{edges}},"width":450,"drop":220}]"""));
        Assert.Equal(200, reply.Status);
        var sheets = reply.Json.GetProperty("sheets").GetProperty("pieces").EnumerateArray().Sum(p => Area(p.GetProperty("outline")));
        Assert.Equal((3600.0 * 3000) - Area(reply.Json.GetProperty("bulkheads")[0].GetProperty("footprint")), sheets, 1);
    }

    [Theory]
    [InlineData("""{"edges":[0],"outline":[[0,0],[900,0],[900,300]],"width":300,"drop":200}""", "#/bulkheads/0 bulkhead_place: A bulkhead has one of edges, hides and outline: it runs along walls, is sized from services, or has its own outline.")]
    [InlineData("""{"edges":[4],"width":300,"drop":200}""", "#/bulkheads/0/edges/0 edge_unknown: The outline has edges 0 to 3; there is no edge 4.")]
    [InlineData("""{"edges":[0],"width":3000,"drop":200}""", "#/bulkheads/0/width bulkhead_wider_than_room: The bulkhead is as wide as the room or wider: nothing of the ceiling would be left beside it.")]
    [InlineData("""{"hides":["x"]}""", "#/bulkheads/0/hides/0 service_unknown: There is no service \"x\".")]
    [InlineData("""{"edges":[0],"width":300}""", "#/bulkheads/0/drop required: A bulkhead that hides no service by its id needs a drop.")]
    [InlineData("""{"edges":[0],"drop":200}""", "#/bulkheads/0/width required: A bulkhead along edges needs a width.")]
    [InlineData("""{"outline":[[0,0],[9000,0],[9000,300]],"drop":200}""", "#/bulkheads/0/outline bulkhead_outside_room: This outline does not lie wholly inside the room.")]
    [InlineData("""{"edges":[0],"width":300,"drop":60}""", "#/bulkheads/0/drop drop_too_small: Two rails and a rung of this frame want a drop of 95 mm or more.")]
    public async Task A_bulkhead_that_cannot_be_is_refused(string json, string fault)
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("bulkheads", $"[{json}]"));
        Assert.Equal(422, reply.Status);
        Assert.Equal([fault], reply.Faults);
    }

    private async Task<IReadOnlyList<JsonElement>> Boxes(string request) =>
        [.. (await service.PostAsync("/v1/plans", request)).Json.GetProperty("bulkheads").EnumerateArray()];

    private static double Area(JsonElement ring)
    {
        var corners = ring.EnumerateArray().Select(p => (X: p[0].GetDouble(), Y: p[1].GetDouble())).ToList();
        return Math.Abs(corners.Select((a, i) => (a.X * corners[(i + 1) % corners.Count].Y) - (corners[(i + 1) % corners.Count].X * a.Y)).Sum()) / 2;
    }
}
