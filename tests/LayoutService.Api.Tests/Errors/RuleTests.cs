namespace LayoutService.Api.Tests.Errors;

/// <summary>Each rule of a request, with its whole sentence.</summary>
public class RuleTests(Service service) : IClassFixture<Service>
{
    [Theory]
    [InlineData("room.outline", "[[0,0],[3600,3000],[3600,0],[0,3000]]", "#/room/outline/2 outline_crosses_itself: The edge from this corner meets the edge from corner 0; an outline does not cross or touch itself.")]
    [InlineData("room.outline", "[[0,0],[3600,0],[3600,0],[0,3000]]", "#/room/outline/2 outline_corner_repeated: This corner is the same place as the one before it.")]
    [InlineData("room.outline", "[[0,0],[3600,0],[1800,0],[0,3000]]", "#/room/outline/1 outline_spike: The outline turns straight back on itself at this corner.")]
    [InlineData("room.outline", "[[0,0],[3600,0],[0,0]]", "#/room/outline count_out_of_range: This outline must have from 3 to 200 corners, a repeated first one not counted; it has 2.")]
    [InlineData("room.outline", "[[0,0],[3600,0]]", "#/room/outline count_out_of_range: This list must hold from 3 to 201 items; it holds 2.")]
    [InlineData("room.outline", "[[0,0],[300000,0],[300000,3000],[0,3000]]", "#/room/outline room_too_long: The room may be at most 200 m long; check the units.")]
    [InlineData("room.outline", "[[0,0],[150000,0],[150000,150000],[0,150000]]", "#/room/outline room_too_large: The room may be at most 10000 m² large; check the units.")]
    [InlineData("room.outline.1", "[1000001,0]", "#/room/outline/1 out_of_range: A coordinate must be from -1000000 to 1000000.")]
    [InlineData("room.openings", "[{\"outline\":[[3000,1000],[4000,1000],[4000,2000],[3000,2000]]}]", "#/room/openings/0/outline opening_outside_room: This opening does not lie wholly inside the room.")]
    [InlineData("room.openings", "[{\"outline\":[[1000,1000],[2000,1000],[2000,2000],[1000,2000]]},{\"outline\":[[1500,1500],[2500,1500],[2500,2500],[1500,2500]]}]", "#/room/openings/1/outline openings_overlap: This opening overlaps the opening at #/room/openings/0; join the two.")]
    [InlineData("room.openings", "[{\"id\":\"a\",\"outline\":[[100,100],[200,100],[200,200]]},{\"id\":\"a\",\"outline\":[[500,500],[600,500],[600,600]]}]", "#/room/openings/1/id id_repeated: Another item of this list has the id \"a\" already.")]
    [InlineData("room.heights", "[{\"at\":[9000,0],\"floorToJoist\":2400}]", "#/room/heights/0/at height_outside_room: This height was taken outside of the room.")]
    [InlineData("room.heights", "[{\"at\":[900,0]}]", "#/room/heights/0/floorToJoist required: This member is needed.")]
    [InlineData("room.walls", "[{\"edge\":4,\"kind\":\"stud\"}]", "#/room/walls/0/edge edge_unknown: The outline has edges 0 to 3; there is no edge 4.")]
    [InlineData("room.walls", "[{\"edge\":1,\"kind\":\"stud\"},{\"edge\":1,\"kind\":\"stud\"}]", "#/room/walls/1/edge edge_repeated: Edge 1 has a wall already.")]
    [InlineData("joistFields.0.positions", "[1,2]", "#/joistFields/0/positions one_or_the_other: Give positions, or spacing and first, not both.")]
    [InlineData("joistFields.0.runDegrees", "90", "#/joistFields/0/runDegrees one_or_the_other: Give run or runDegrees, not both.")]
    [InlineData("joistFields.0.spacing", "null", "#/joistFields/0/spacing required: The joists have a first centre line, but no spacing.")]
    [InlineData("joistFields.0.first", "null", "#/joistFields/0/first required: The joists have a spacing, but no first centre line.")]
    [InlineData("joistFields.0.first", "3700", "#/joistFields/0/first joist_outside_room: This joist lies outside of the room, which is from 0 to 3600 mm across the joists; it is at 3700 mm.")]
    [InlineData("joistFields.0.first", "-100", "#/joistFields/0/first joist_outside_room: This joist lies outside of the room, which is from 0 to 3600 mm across the joists; it is at -100 mm.")]
    [InlineData("joistFields.0.face", "1000", "#/joistFields/0/face out_of_range: This must be from 12 to 300 mm; it is 1000 mm.")]
    [InlineData("joistFields", "[]", "#/joistFields count_out_of_range: This list must hold from 1 to 20 items; it holds 0.")]
    [InlineData("room.existing", "{\"material\":\"plaster\"}", "#/room/existing/thickness required: This member is needed.")]
    [InlineData("room.existing", "{\"thickness\":51}", "#/room/existing/thickness out_of_range: This must be from 3 to 50 mm; it is 51 mm.")]
    [InlineData("partitions", "[{\"line\":[[1000,100],[1000,4000]],\"thickness\":90}]", "#/partitions/0/line/1 partition_outside_room: This corner of the partition lies outside of the room.")]
    [InlineData("partitions", "[{\"line\":[[1000,100],[1000,900]],\"thickness\":90,\"rated\":true,\"top\":\"board\"}]", "#/partitions/0/top rated_wall_to_joists: A rated wall goes to the joists; its top is not fastened to the board.")]
    [InlineData("partitions", "[{\"line\":[[1000,100],[1000,100]],\"thickness\":90}]", "#/partitions/0/line/1 path_corner_repeated: This corner is the same place as the one before it.")]
    [InlineData("partitions", "[{\"line\":[[1000,100],[1000,900]]}]", "#/partitions/0/thickness required: This member is needed.")]
    [InlineData("joistFields.0.undersides", "[{\"at\":[300,900],\"level\":2}]", "#/joistFields/0/undersides/0/at underside_off_joist: This underside was read at 300 mm across the joists; the nearest joist of the field is at 200 mm.")]
    [InlineData("joistFields.0.undersides", "[{\"at\":[1150,900],\"level\":2}]", "#/joistFields/0/undersides/0/at underside_off_joist: This underside was read at 1150 mm across the joists; the nearest joist of the field is at 1000 mm.")]
    [InlineData("joistFields.0.undersides", "[{\"at\":[200,3900],\"level\":2}]", "#/joistFields/0/undersides/0/at underside_outside_field: This underside was read outside of the room or of its joist field.")]
    [InlineData("joistFields.0.undersides", "[{\"at\":[200,900]}]", "#/joistFields/0/undersides/0/level required: This member is needed.")]
    [InlineData("strapping.size", "{\"name\":\"1x3\",\"face\":64}", "#/strapping/size/name one_or_the_other: Give name, or thickness and face, not both.")]
    [InlineData("strapping.size", "{\"thickness\":19}", "#/strapping/size/face required: A strap with a thickness needs a face.")]
    [InlineData("strapping.size", "{\"face\":64}", "#/strapping/size/thickness required: A strap with a face needs a thickness.")]
    [InlineData("strapping.maxSpacing", "77", "#/strapping/maxSpacing rows_too_close: Rows of straps 64 mm wide need a clear gap of more than 13 mm; this spacing leaves less.")]
    [InlineData("strapping.jointsAllowed", "[\"scab\",\"scab\"]", "#/strapping/jointsAllowed/1 word_repeated: This word stands in the set already.")]
    [InlineData("strapping.stock", "[{\"length\":500}]", "#/strapping/stock/0/length stock_shorter_than_piece: No piece can be cut from this length: the shortest piece is 600 mm and the trim 3 mm.")]
    [InlineData("strapping.stock", "[{\"length\":603},{\"length\":602}]", "#/strapping/stock/1/length stock_shorter_than_piece: No piece can be cut from this length: the shortest piece is 600 mm and the trim 3 mm.")]
    [InlineData("strapping.stock", "[{\"id\":\"\",\"length\":2400}]", "#/strapping/stock/0/id text_length: This text must have from 1 to 64 characters; it has 0.")]
    [InlineData("strapping.stock", "[{\"id\":\"a b\",\"length\":2400}]", "#/strapping/stock/0/id text_pattern: An id starts with a letter or digit, and holds letters, digits, dots, dashes, colons and underscores only.")]
    [InlineData("strapping.longestHandled", "300", "#/strapping/longestHandled stock_shorter_than_piece: The longest piece that can be handled is shorter than the shortest piece, 600 mm.")]
    [InlineData("strapping.kerf", "-1", "#/strapping/kerf out_of_range: This must be from 0 to 12 mm; it is -1 mm.")]
    [InlineData("strapping.kerf", "\"1 in\"", "#/strapping/kerf out_of_range: This must be from 0 to 12 mm; it is 25.4 mm.")]
    [InlineData("strapping.stock", "[{\"length\":2400,\"packPrice\":3}]", "#/prices/currency currency_missing: A price is given, but no currency.")]
    [InlineData("sheets.stock", "[{\"width\":1300,\"length\":1200}]", "#/sheets/stock/0/width sheet_wider_than_long: A sheet is not wider than it is long; its length runs along the tapered edges.")]
    [InlineData("sheets.stock", "[{\"length\":2400}]", "#/sheets/stock/0/width required: This member is needed.")]
    [InlineData("prices", "{\"currency\":\"usd\"}", "#/prices/currency text_pattern: A currency is the three capital letters of ISO 4217, for example CAD or USD.")]
    [InlineData("prices", "{\"currency\":\"USD\",\"items\":[{\"code\":\"gold\",\"packPrice\":1}]}", "#/prices/items/0/code code_unknown: No takeoff line has the code \"gold\"; the codes are strap, strap-culls, nailer, nailer-culls, bulkhead-frame, bulkhead-frame-culls, sheet, batt, shim, strap-screw, scab-screw, masonry-fastener, nailer-fastener, bulkhead-screw, board-screw, scab-adhesive, joint-tape, joint-compound, corner-bead, control-joint, fireblocking, access-panel, fixture-box, fan-box, access-door.")]
    [InlineData("rules", "[{\"id\":\"gravity\",\"value\":9.81}]", "#/rules/0/id rule_unknown: The ruleset ca-nbc-2020 has no rule \"gravity\"; GET /v1/rules lists them.")]
    [InlineData("rules", "[{\"id\":\"strap-face\",\"value\":64},{\"id\":\"strap-face\",\"value\":38}]", "#/rules/1/id rule_repeated: The rule \"strap-face\" is set already.")]
    [InlineData("rules", "[{\"id\":\"kerf\",\"value\":13}]", "#/rules/0/value out_of_range: The rule \"kerf\" may be set from 0 to 12 mm.")]
    [InlineData("rules", "[{\"id\":\"rip-least\",\"value\":100}]", "#/rules/0/id rule_fixed: The rule \"rip-least\" cannot be set. The search for rows and sheets is built on this distance and proved with it; it cannot be set.")]
    [InlineData("rules", "[{\"id\":\"cable-plate\",\"value\":2}]", "#/rules/0/id rule_fixed: The rule \"cable-plate\" cannot be set. No part of a plan reads this rule; setting it would change nothing.")]
    [InlineData("joistFields.0.clearSpan", "16000", "#/joistFields/0/clearSpan out_of_range: This must be from 300 to 15000 mm; it is 16000 mm.")]
    [InlineData("rules", "[{\"id\":\"strap-face\",\"value\":1000001}]", "#/rules/0/value out_of_range: This must be from 0 to 1000000; it is 1000001.")]
    [InlineData("language", "\"??\"", "#/language text_pattern: This is no language tag; write for example en or en-CA.")]
    public async Task A_rule_that_is_broken_is_told_with_its_place(string path, string json, string fault)
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With(path, json));
        Assert.Equal(422, reply.Status);
        Assert.Equal("/problems/invalid-request", reply.Json.GetProperty("type").GetString());
        Assert.Equal([fault], reply.Faults);
    }

    [Fact]
    public async Task Several_joist_fields_each_need_a_region_over_the_room()
    {
        const string second = "{\"run\":\"y\",\"spacing\":400,\"first\":238}";
        var bare = await service.PostAsync("/v1/plans", SmallRoom.With("joistFields.1", second));
        Assert.Equal(
            [.. Enumerable.Range(0, 2).Select(i => $"#/joistFields/{i}/region required: Where there are several joist fields, each says what part of the room it covers.")],
            bare.Faults);
        var near = SmallRoom.With("joistFields.0.region", "[[0,0],[3600,0],[3600,1500],[0,1500]]");
        var away = await service.PostAsync("/v1/plans", SmallRoom.With(near, "joistFields.1", "{\"run\":\"y\",\"spacing\":400,\"first\":238,\"region\":[[0,9000],[3600,9000],[3600,9500]]}"));
        Assert.Equal(["#/joistFields/1/region region_outside_room: This region does not lie over the room."], away.Faults);
    }

    // hand: joists at 200 + 400 i up to y = 1550, and 238 + 400 i from y = 1450; over the beam, 1450 to 1550, each pair touches
    // (200 + 19 = 219 = 238 - 19) and is one support; a row there lies on both, a row before or after on one of them
    [Fact]
    public async Task Joists_lapped_over_a_beam_carry_each_row_on_the_joists_that_run_there()
    {
        var room = SmallRoom.With("joistFields.0.region", "[[0,0],[3600,0],[3600,1550],[0,1550]]");
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With(room, "joistFields.1",
            "{\"run\":\"y\",\"spacing\":400,\"first\":238,\"region\":[[0,1450],[3600,1450],[3600,3000],[0,3000]]}"));
        Assert.Equal(200, reply.Status);
        var members = reply.Json.GetProperty("joists").GetProperty("members").EnumerateArray().ToList();
        Assert.Equal(18, members.Count);
        var ats = members.ToDictionary(m => m.GetProperty("id").GetString()!, m => m.GetProperty("at").GetDecimal());
        Assert.All(members, m => Assert.Equal(m.GetProperty("at").GetDecimal() % 400 == 200 ? "[0,1550]" : "[1450,3000]", $"[{m.GetProperty("from")[1]},{m.GetProperty("to")[1]}]"));
        var rows = reply.Json.GetProperty("strapping").GetProperty("rows").EnumerateArray().ToDictionary(r => r.GetProperty("id").GetString()!, r => r.GetProperty("at").GetDecimal());
        var crossings = reply.Json.GetProperty("strapping").GetProperty("crossings").EnumerateArray().ToList();
        Assert.Contains(rows.Values, at => at < 1450);
        Assert.Contains(rows.Values, at => at > 1550);
        foreach (var crossing in crossings.Where(c => ats.ContainsKey(c.GetProperty("supportId").GetString()!)))
        {
            var (row, joist) = (rows[crossing.GetProperty("rowId").GetString()!], ats[crossing.GetProperty("supportId").GetString()!]);
            Assert.True(row < 1450 ? joist % 400 == 200 : row < 1550 || joist % 400 == 238, $"a row at {row} on a joist at {joist}");
        }
    }

    [Theory]
    [InlineData("fixtures", "[]")]
    [InlineData("services", "[]")]
    [InlineData("bulkheads", "[]")]
    [InlineData("insulation", "{\"purpose\":\"none\"}")]
    [InlineData("insulation", "{\"purpose\":\"none\",\"batts\":[]}")]
    [InlineData("access", "{}")]
    [InlineData("prices", "{\"items\":[],\"tax\":[]}")]
    [InlineData("document", "{}")]
    [InlineData("sheets.layers", "1")]
    [InlineData("sheets.layers", "1.0")]
    [InlineData("strapping.method", "\"strapped\"")]
    [InlineData("language", "\"en-CA\"")]
    [InlineData("room.walls", "[{\"edge\":3,\"kind\":\"concrete\"},{\"edge\":0,\"kind\":\"stud\"}]")]
    public async Task A_member_without_content_is_taken(string path, string json) =>
        Assert.Equal(200, (await service.PostAsync("/v1/plans", SmallRoom.With(path, json))).Status);

    // a rule between members looks at what is sound, whatever is wrong elsewhere
    [Theory]
    [InlineData("sheets.stock", "[{\"width\":1300,\"length\":1200}]", "#/sheets/stock/0/width sheet_wider_than_long: A sheet is not wider than it is long; its length runs along the tapered edges.")]
    [InlineData("insulation", "{\"bays\":\"region\",\"region\":[[9000,0],[9900,0],[9900,900]]}", "#/insulation/region region_outside_room: This region does not lie over the room.")]
    [InlineData("insulation", "{\"bays\":\"region\",\"region\":[[9000,0],[9900,900],[9900,0],[9000,900]]}", "#/insulation/region/2 outline_crosses_itself: The edge from this corner meets the edge from corner 0; an outline does not cross or touch itself.")]
    [InlineData("strapping.stock", "[{\"length\":602}]", "#/strapping/stock/0/length stock_shorter_than_piece: No piece can be cut from this length: the shortest piece is 600 mm and the trim 3 mm.")]
    public async Task A_fault_elsewhere_hides_no_other(string path, string json, string fault)
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With(SmallRoom.With(path, json), "strapping.kerf", "-1"));
        Assert.Equal(422, reply.Status);
        Assert.Equal(new[] { "#/strapping/kerf out_of_range: This must be from 0 to 12 mm; it is -1 mm.", fault }.Order(StringComparer.Ordinal), reply.Faults.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_fault_of_item_ten_hides_none_of_item_one()
    {
        var stock = string.Join(',', Enumerable.Range(0, 11).Select(i => i == 1 ? """{"width":1300,"length":1200}""" : i == 10 ? """{"length":2400}""" : $$"""{"width":1200,"length":{{2400 + (10 * i)}}}"""));
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("sheets.stock", $"[{stock}]"));
        Assert.Equal(
            ["#/sheets/stock/1/width sheet_wider_than_long", "#/sheets/stock/10/width required"],
            reply.Faults.Select(f => f[..f.IndexOf(':', StringComparison.Ordinal)]));
    }

    [Theory]
    [InlineData("", "[]", "#/joistFields/1/undersides undersides_missing: Another joist field has readings of its undersides; every field needs some then.")]
    [InlineData("[]", "", "#/joistFields/0/undersides undersides_missing: Another joist field has readings of its undersides; every field needs some then.")]
    [InlineData("[]", "[]", null)]
    public async Task Undersides_are_read_in_every_field_or_in_none(string first, string second, string? fault)
    {
        var room = SmallRoom.With("joistFields", $$"""
            [{"region":[[0,0],[1800,0],[1800,3000],[0,3000]],"run":"y","spacing":400,"first":200,"undersides":{{(first.Length == 0 ? "[{\"at\":[200,900],\"level\":2}]" : first)}}},
             {"region":[[1800,0],[3600,0],[3600,3000],[1800,3000]],"run":"y","spacing":400,"first":2000,"undersides":{{(second.Length == 0 ? "[{\"at\":[2400,900],\"level\":2}]" : second)}}}]
            """);
        var reply = await service.PostAsync("/v1/plans/check", room);
        Assert.Equal(fault is null ? [] : [fault], reply.Status == 422 ? reply.Faults : []);
    }

    [Fact]
    public async Task The_figures_of_a_fault_stand_beside_its_sentence()
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("strapping.kerf", "-1"));
        var values = reply.Json.GetProperty("errors")[0].GetProperty("params").EnumerateObject().Select(p => $"{p.Name}={p.Value.GetString()}");
        Assert.Equal(["least=0", "most=12", "unit=mm", "value=-1"], values.Order(StringComparer.Ordinal));
        Assert.Equal("#", Api.Plans.Validation.FaultList.PointerOf(""));
    }

    [Theory]
    [InlineData("units")]
    [InlineData("room")]
    [InlineData("room.outline")]
    [InlineData("joistFields")]
    public async Task A_needed_member_that_is_missing_is_named(string path)
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.Without(path));
        Assert.Equal(422, reply.Status);
        Assert.Equal([$"#/{path.Replace('.', '/')} required: This member is needed."], reply.Faults);
    }

    [Theory]
    [InlineData("180")]
    [InlineData("-1")]
    public async Task Joists_run_at_an_angle_from_nought_to_below_a_straight_one(string degrees)
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With(SmallRoom.With("joistFields.0.runDegrees", degrees), "joistFields.0.run", "null"));
        Assert.Equal(422, reply.Status);
        Assert.Equal([$"#/joistFields/0/runDegrees out_of_range: This must be from 0 to below 180; it is {degrees}."], reply.Faults);
    }

    [Fact]
    public async Task Joists_that_lie_over_each_other_are_told_and_doubled_ones_are_taken()
    {
        const string room = """
            {"units":"metric","room":{"outline":[[0,0],[3600,0],[3600,3000],[0,3000]]},
             "joistFields":[{"run":"y","positions":[3400,200,600,1000,1038,1400,1800,2200,2600,3000]}]}
            """;
        Assert.Equal(200, (await service.PostAsync("/v1/plans", room)).Status);
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With(room, "joistFields.0.positions.9", "1050"));
        Assert.Equal(
            ["#/joistFields/0/positions/9 joists_overlap: This joist lies more than half over the joist at #/joistFields/0/positions/4; its face is 38 mm."],
            reply.Faults);
    }
}
