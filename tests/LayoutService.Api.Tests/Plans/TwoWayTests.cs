using System.Globalization;
using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>Rooms whose joists run two ways, worked out by hand.</summary>
public sealed class TwoWayTests(Service service) : IClassFixture<Service>
{
    // 6000 × 3000: joists along y over the left 3600 (200, 600, ... 3400), along x over the right 2400 (300, 700, ... 2700)
    private const string Divided = """
        {"units":"metric","room":{"outline":[[0,0],[6000,0],[6000,3000],[0,3000]],"heights":[{"floorToJoist":2400}],"floorBuildUp":12},
        "joistFields":[
        {"id":"a","region":[[0,0],[3600,0],[3600,3000],[0,3000]],"run":"y","spacing":400,"first":200},
        {"id":"b","region":[[3600,0],[6000,0],[6000,3000],[3600,3000]],"run":"x","spacing":400,"first":300}]}
        """;

    // 18 ft × 14 ft with joists along y at 8, 24, ... 216; an addition of 10 ft × 8 ft at its right with joists along x at 8, 24, ... 88
    private const string Addition = """
        {"units":"imperial","room":{"outline":[[0,0],[336,0],[336,96],[216,96],[216,168],[0,168]]},
        "joistFields":[
        {"id":"house","region":[[0,0],[216,0],[216,168],[0,168]],"run":"y","spacing":16,"first":8},
        {"id":"addition","region":[[216,0],[336,0],[336,96],[216,96]],"run":"x","spacing":16,"first":8}]}
        """;

    // left: centres from 32 to 2968, 2936 apart, 7.34 spaces of 400: 8 spaces, 9 rows; right: from 3632 to 5968, 2336 apart, 5.84: 6 spaces, 7 rows.
    // a 3000 and a 2400 long course need no butt; seams: left 2 × 3000, right 2 × 2400; walls 2 × (6000 + 3000)
    [Fact]
    public async Task A_rectangle_divided_in_two_has_the_rows_of_both_parts_and_one_control_joint()
    {
        var plan = (await service.PostAsync("/v1/plans", Divided)).Json;
        var rows = plan.GetProperty("strapping").GetProperty("rows").EnumerateArray().ToList();
        Assert.Equal(16, rows.Count);
        Assert.Equal(9, rows.Count(r => IsLevel(r.GetProperty("pieces")[0])));
        Assert.Equal(Enumerable.Range(1, 16).Select(i => $"R{i}"), rows.Select(r => r.GetProperty("id").GetString()));
        Assert.Equal([32m, 2968m, 3632m, 5968m], [Number(rows[0], "at"), Number(rows[8], "at"), Number(rows[9], "at"), Number(rows[15], "at")]);
        Assert.Equal(("tight_to_run_break", "X1"), (rows[9].GetProperty("reasons")[0].GetProperty("code").GetString(), rows[9].GetProperty("reasons")[0].GetProperty("of")[0].GetString()));
        var sheets = plan.GetProperty("sheets");
        Assert.Equal(
            [0m, 10800m, 3000m, 18000m],
            [Number(sheets, "buttJointLength"), Number(sheets, "taperedJointLength"), Number(sheets, "controlJointLength"), Number(sheets, "perimeterLength")]);
        var line = plan.GetProperty("joists").GetProperty("breaks")[0];
        Assert.Equal(("X1", 3000m, "a", "b"), (line.GetProperty("id").GetString(), Number(line, "length"), line.GetProperty("fields")[0].GetString(), line.GetProperty("fields")[1].GetString()));
    }

    // the last joist along y is at 3400, its face at 3419, 181 from the line: more than 150, so a ledger along the line carries the nine ends
    [Fact]
    public async Task Where_the_last_joist_is_too_far_from_the_line_a_ledger_along_it_carries_the_ends()
    {
        var plan = (await service.PostAsync("/v1/plans", Divided)).Json;
        var ledger = plan.GetProperty("strapping").GetProperty("nailers").EnumerateArray()
            .Single(n => n.GetProperty("reasons").EnumerateArray().Any(r => r.GetProperty("kind").GetString() == "run-break"));
        Assert.Equal("ledger", ledger.GetProperty("role").GetString());
        Assert.Equal(3000m, Number(ledger, "length"));
        Assert.Equal(9, ledger.GetProperty("reasons")[0].GetProperty("of").GetArrayLength());
        Assert.Equal("X1", ledger.GetProperty("reasons").EnumerateArray().Last().GetProperty("of")[0].GetString());
    }

    // house: centres from 1-1/4 to 166-3/4, 165-1/2 apart, 10.3 spaces of 16: 11 spaces, 12 rows; addition: 1-1/4 to 118-3/4, 117-1/2, 7.3: 8 spaces, 9 rows.
    // a joist stands at 216, on the line: its ends need nothing. Walls: 336 + 96 + 120 + 72 + 216 + 168. Tape: butts, seams and walls, not the 8 ft of the line
    [Fact]
    public async Task An_addition_that_runs_the_other_way_ends_at_the_line_where_a_joist_carries_it()
    {
        var plan = (await service.PostAsync("/v1/plans", Addition)).Json;
        Assert.Equal(21, plan.GetProperty("summary").GetProperty("rows").GetInt32());
        var nailers = plan.GetProperty("strapping").GetProperty("nailers").EnumerateArray().SelectMany(n => n.GetProperty("reasons").EnumerateArray());
        Assert.DoesNotContain(nailers, r => r.GetProperty("kind").GetString() == "run-break");
        var sheets = plan.GetProperty("sheets");
        Assert.Equal([96m, 1008m], [Number(sheets, "controlJointLength"), Number(sheets, "perimeterLength")]);
        var lines = plan.GetProperty("takeoff").GetProperty("lines").EnumerateArray().DistinctBy(l => $"{l.GetProperty("code")}").ToDictionary(l => $"{l.GetProperty("code")}", l => l, StringComparer.Ordinal);
        Assert.Equal((8m, "FOT"), (Number(lines["control-joint"], "counted"), lines["control-joint"].GetProperty("unitCode").GetString()));
        var taped = Number(sheets, "buttJointLength") + Number(sheets, "taperedJointLength") + Number(sheets, "cutEdgeJointLength") + 1008m;
        Assert.Equal(decimal.Round(taped / 12, 2), Number(lines["joint-tape"], "counted"));
        var caution = plan.GetProperty("cautions").EnumerateArray().Single(c => c.GetProperty("code").GetString() == "control_joint_at_run_break");
        Assert.Contains("From memory", caution.GetProperty("source").GetProperty("note").GetString(), StringComparison.Ordinal);
        Assert.Equal("X1", caution.GetProperty("where")[0].GetString());
        var steps = plan.GetProperty("steps").EnumerateArray().Select(s => s.GetProperty("code").GetString()!).ToList();
        Assert.True(steps.IndexOf("snap-run-breaks") < steps.IndexOf("mark-row"));
        Assert.InRange(steps.IndexOf("fit-control-joints"), steps.IndexOf("screw-board"), steps.IndexOf("tape-and-finish"));
    }

    // one part level at 0, the other 10 above: every crossing of the other is packed by 10, though its own joists are level among themselves
    [Fact]
    public async Task Both_parts_are_packed_to_one_plane()
    {
        var room = SmallRoom.With(Divided, "joistFields.0.undersides", "[{\"at\":[200,1500],\"level\":0},{\"at\":[3400,1500],\"level\":0}]");
        var plan = (await service.PostAsync("/v1/plans", SmallRoom.With(room, "joistFields.1.undersides", "[{\"at\":[4800,300],\"level\":10},{\"at\":[4800,2700],\"level\":10}]"))).Json;
        var strapping = plan.GetProperty("strapping");
        Assert.Equal(0m, Number(strapping.GetProperty("plane"), "level"));
        var joists = plan.GetProperty("joists").GetProperty("members").EnumerateArray().Where(j => j.GetProperty("field").GetString() == "b").Select(j => j.GetProperty("id").GetString()).ToHashSet();
        var shims = strapping.GetProperty("shims").EnumerateArray().ToList();
        Assert.Equal(49, shims.Count);
        Assert.All(shims, s => Assert.True(joists.Contains(s.GetProperty("supportId").GetString()) && Number(s, "thickness") == 10m));
    }

    [Theory]
    [InlineData("bulkheads", "[{\"id\":\"box\",\"edges\":[0],\"width\":300,\"drop\":250}]", "crosses_run_break", "box X1")]
    [InlineData("partitions", "[{\"id\":\"wall\",\"line\":[[2000,1500],[4500,1500]],\"thickness\":90,\"top\":\"joists\"}]", "crosses_run_break", "wall X1")]
    [InlineData("joistFields.1.region", "[[3500,0],[6000,0],[6000,3000],[3500,3000]]", "fields_overlap", "a b")]
    [InlineData("joistFields.1.region", "[[3700,0],[6000,0],[6000,3000],[3700,3000]]", "fields_do_not_cover", "a b")]
    public async Task What_cannot_be_divided_at_the_line_is_named_with_what_to_do(string path, string json, string code, string where)
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With(Divided, path, json));
        Assert.Equal(422, reply.Status);
        var finding = reply.Json.GetProperty("findings")[0];
        Assert.Equal((code, where), (finding.GetProperty("code").GetString(), string.Join(' ', finding.GetProperty("where").EnumerateArray().Select(w => w.GetString()))));
        Assert.NotEmpty(finding.GetProperty("remedies").EnumerateArray());
    }

    [Fact]
    public async Task What_lies_in_one_part_is_planned_there_and_a_light_grid_over_the_whole_room()
    {
        var room = SmallRoom.With(Divided, "bulkheads", "[{\"id\":\"box\",\"edges\":[1],\"width\":300,\"drop\":250}]");
        room = SmallRoom.With(room, "partitions", "[{\"id\":\"wall\",\"line\":[[2000,0],[2000,3000]],\"thickness\":90,\"top\":\"joists\"}]");
        room = SmallRoom.With(room, "lightGrid", "{\"count\":8,\"fixture\":{\"id\":\"g\",\"kind\":\"slim-light\",\"cutout\":{\"diameter\":100},\"bodyDepth\":50,\"maxShift\":150}}");
        var reply = await service.PostAsync("/v1/plans?include=all,slack,methods", room);
        Assert.Equal(200, reply.Status);
        Assert.Equal("box", reply.Json.GetProperty("bulkheads")[0].GetProperty("id").GetString());
        Assert.Equal("wall", reply.Json.GetProperty("partitions")[0].GetProperty("id").GetString());
        Assert.Equal(Enumerable.Range(1, 8).Select(i => $"g-{i}"), reply.Json.GetProperty("fixtures").EnumerateArray().Select(f => f.GetProperty("id").GetString()));
        Assert.Equal(
            reply.Json.GetProperty("strapping").GetProperty("rows").EnumerateArray().Select(r => r.GetProperty("id").GetString()),
            reply.Json.GetProperty("slack").EnumerateArray().Select(s => s.GetProperty("rowId").GetString()));
    }

    private static bool IsLevel(JsonElement piece) => piece.GetProperty("from")[1].GetDecimal() == piece.GetProperty("to")[1].GetDecimal();

    private static decimal Number(JsonElement owner, string name) => decimal.Parse(owner.GetProperty(name).GetRawText(), CultureInfo.InvariantCulture);
}
