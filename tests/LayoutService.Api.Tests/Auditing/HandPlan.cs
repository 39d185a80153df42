using System.Globalization;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>
/// A room of 3660 × 2440 mm planned by hand: joists along x, one pair doubled; seven straps, the fourth in two pieces on
/// the doubled joist; two courses of two boards, butts at 2440 and 1220 mm on straps 5 and 3, 600 mm apart asked.
/// </summary>
internal static class HandPlan
{
    public const string Request = """
        {"units":"metric","room":{"outline":[[0,0],[3660,0],[3660,2440],[0,2440]],"heights":[{"floorToJoist":2400}],"floorBuildUp":12},
         "joistFields":[{"run":"x","face":38,"positions":[100,500,900,1300,1338,1740,2140,2380]}],
         "strapping":{"size":{"thickness":19,"face":64},"maxSpacing":610,"stock":[{"id":"s1","length":2440,"packPrice":3}]},
         "sheets":{"minStagger":600,"stock":[{"id":"b1","width":1220,"length":2440,"packPrice":15}]},
         "prices":{"currency":"CAD"}}
        """;

    private static readonly int[] Straps = [32, 626, 1220, 1830, 2440, 3034, 3628];
    private static readonly int[] Joists = [100, 500, 900, 1300, 1338, 1740, 2140, 2380];
    private static readonly (double At, string Id)[] Supports =
        [(100, "j1"), (500, "j2"), (900, "j3"), (1319, "j4"), (1740, "j6"), (2140, "j7"), (2380, "j8")];

    public static string Answer { get; } = $$"""
        {"units":"metric","summary":{"rows":7,"strapPieces":8,"lengthsToBuy":7,"sheetsToBuy":3,"buttJointLength":2440,"finishedHeight":2356.3,"mass":90,"cost":66.00,"checksFailed":0},
         "checks":[{"rule":"butt-stagger-rows","status":"pass","comparison":"at-least","value":1220,"limit":600,"unit":"mm","where":[]}],
         "walls":[{"id":"w1","edge":0},{"id":"w2","edge":1},{"id":"w3","edge":2},{"id":"w4","edge":3}],
         "joists":{"members":[{{Each(Joists, (at, i) => $$"""{"id":"j{{i + 1}}","at":{{at}}}""")}}],
                   "bays":[{"id":"bay1","from":119,"to":481},{"id":"bay2","from":1357,"to":1721}]},
         "strapping":{"rows":[{{Each(Straps, Row)}}],"nailers":[],"scabs":[],
                      "crossings":[{{Each(Straps, (at, row) => Each(Supports, (s, _) => Crossing(at, row, s)))}}]},
         "sheets":{"courses":[{"id":"c1"},{"id":"c2"}],
                   "pieces":[{{Board("b-1", "c1", 0, 2440, 0, 1220, 2440, "r5")}},{{Board("b-2", "c1", 2440, 3660, 0, 1220, 2440, "r5")}},
                             {{Board("b-3", "c2", 0, 1220, 1220, 2440, 1220, "r3")}},{{Board("b-4", "c2", 1220, 3660, 1220, 2440, 1220, "r3")}}],
                   "joints":[{"length":2440},{"length":3660}],
                   "buttJointLength":2440,"taperedJointLength":3660,"cutEdgeJointLength":0,"perimeterLength":12200},
         "cutPlan":{"stock":[{{Each(Straps, Stick)}}],
                    "sheetStock":[{{Sheet("p1", 2437, "b-1")}},{{Sheet("p2", 2437, "b-4")}},{{Sheet("p3", 1217, "b-2", "b-3")}}],
                    "kerf":3,
                    "results":[{"use":"strapping","objective":"cost","cost":21,"lowerBound":21,"gap":0,"provedOptimal":true},
                               {"use":"sheets","objective":"cost","cost":45,"lowerBound":45,"gap":0,"provedOptimal":true}]},
         "takeoff":{"lines":[
            {"code":"strap","id":"s1","unitCode":"C62","counted":7,"waste":0,"quantity":7,"packs":[{"id":"s1","packSize":1,"count":7,"packPrice":3}],"amount":21.00,"mass":20},
            {"code":"sheet","id":"b1","unitCode":"C62","counted":3,"waste":0,"quantity":3,"packs":[{"id":"b1","packSize":1,"count":3,"packPrice":15}],"amount":45.00,"mass":70},
            {"code":"strap-screw","unitCode":"C62","counted":100,"waste":0,"quantity":100,"packs":[]}],
           "totals":{"currency":"CAD","amount":66.00,"mass":90,"unpriced":["strap-screw"]}
         },
         "steps":[{{Step("cut-lumber")}},
                  {{Each(Straps, (_, row) => Step("mark-row", ("row", $"r{row + 1}")))}},
                  {{Each(Straps, (_, row) => Step("fasten-row", [("row", $"r{row + 1}"), ("piece", $"r{row + 1}-1"), .. row == 3 ? [("piece", "r4-2")] : Array.Empty<(string, string)>()]))}},
                  {{Step("check-plane")}},{{Step("inspect-before-closing")}},
                  {{Step("hang-course", ("board-piece", "b-1"), ("board-piece", "b-2"))}},{{Step("hang-course", ("board-piece", "b-3"), ("board-piece", "b-4"))}},
                  {{Step("tape-and-finish")}}]}
        """;

    private static string Step(string code, params (string Kind, string Id)[] touches) =>
        $$"""{"code":"{{code}}","touches":[{{string.Join(',', touches.Select(t => $$"""{"kind":"{{t.Kind}}","id":"{{t.Id}}"}"""))}}]}""";

    private static string Row(int at, int row)
    {
        var pieces = row == 3
            ? $"{Piece("r4-1", at, 0, 1319, "wall", "joist", 1313)},{Piece("r4-2", at, 1319, 2440, "joist", "wall", 1115)}"
            : Piece($"r{row + 1}-1", at, 0, 2440, "wall", "wall", 2428);
        return $$"""
            {"id":"r{{row + 1}}","at":{{at}},"marks":[{"nearEdge":{{at - 32}},"nearEdgeText":"{{at - 32}} mm","side":"far"}],
             "reasons":[{"kind":"spacing","of":[]}],"pieces":[{{pieces}}]}
            """;
    }

    private static string Piece(string id, int at, int from, int to, string start, string end, int cut) => $$"""
        {"id":"{{id}}","from":[{{at}},{{from}}],"to":[{{at}},{{to}}],"length":{{to - from}},"cutLength":{{cut}},"stockId":"s1",
         "startJoint":"{{start}}","endJoint":"{{end}}"}
        """;

    private static string Crossing(int at, int row, (double At, string Id) support)
    {
        var joint = row == 3 && support.Id == "j4";
        return $$"""
            {"rowId":"r{{row + 1}}","supportId":"{{support.Id}}","at":[{{at}},{{support.At.ToString(CultureInfo.InvariantCulture)}}],
             "kind":"{{(joint ? "joint" : "plain")}}","fasteners":{{(joint ? 4 : 2)}}}
            """;
    }

    private static string Board(string id, string course, int left, int right, int low, int high, int butt, string row) => $$"""
        {"id":"{{id}}","course":"{{course}}","layer":1,"outline":[[{{left}},{{low}}],[{{right}},{{low}}],[{{right}},{{high}}],[{{left}},{{high}}]],
         "width":{{high - low}},"length":{{right - left}},"area":{{((high - low) * (right - left) / 1000000m).ToString(CultureInfo.InvariantCulture)}},"stockId":"b1","ends":[{"at":{{butt}},"backing":["{{row}}"]}]}
        """;

    private static string Stick(int at, int row) => row == 3
        ? """{"id":"k4","length":2440,"stockId":"s1","cuts":[{"pieceId":"r4-1","length":1313},{"pieceId":"r4-2","length":1115}],"offcut":3}"""
        : $$"""{"id":"k{{row + 1}}","length":2440,"stockId":"s1","cuts":[{"pieceId":"r{{row + 1}}-1","length":2428}],"offcut":6}""";

    private static string Sheet(string id, int length, params string[] boards) => $$"""
        {"id":"{{id}}","width":1220,"length":2440,"stockId":"b1","offcuts":[],
         "cuts":[{{Each(boards, (b, i) => $$"""{"pieceId":"{{b}}","x":{{i * length}},"y":0,"width":1217,"length":{{length}},"turned":false}""")}}]}
        """;

    private static string Each<T>(IReadOnlyList<T> items, Func<T, int, string> write) => string.Join(",", items.Select(write));
}
