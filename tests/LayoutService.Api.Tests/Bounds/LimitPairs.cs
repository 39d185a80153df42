using System.Globalization;
using LayoutService.Api.Tests.Errors;

namespace LayoutService.Api.Tests.Bounds;

/// <summary>A request with so many of something, and the code that it is refused with when they are too many.</summary>
/// <param name="Path">Where it is posted.</param>
/// <param name="Body">The request with that many.</param>
/// <param name="Code">Code of the refusal; a status where it has none.</param>
/// <param name="Beside">
/// Codes of other faults that both requests have: where a plan at the limit would take the engine long, a word that stands twice in a set
/// keeps it out; where the limit lies above what can be sound, what is wrong is told.
/// </param>
internal sealed record LimitPair(string Path, Func<int, string> Body, string Code, params string[] Beside);

/// <summary>For each limit of GET /v1/limits a request at its end, which is taken, and one past it, which is not.</summary>
internal static class LimitPairs
{
    private const string Check = "/v1/plans/check";
    private const string Twice = "word_repeated";

    public static readonly IReadOnlyDictionary<string, LimitPair> All = new Dictionary<string, LimitPair>
    {
        ["bodyBytes"] = new(Check, n => SmallRoom.Text.PadRight(n), "413"),
        ["bulkLineBytes"] = new("/v1/plans/bulk?include=summary", n => SmallRoom.Text.PadRight(n), "413"),
        ["depth"] = new(Check, n => new string('[', n) + new string(']', n), "json_too_deep", "wrong_type"),
        ["corners"] = new(Check, n => SmallRoom.With("room.outline", LimitTests.Teeth(n)), "count_out_of_range"),
        ["openings"] = new(Check, n => SmallRoom.With("room.openings", LimitTests.List("room.openings", n)), "count_out_of_range"),
        ["openingCorners"] = new(Check, n => SmallRoom.With("room.openings", $$"""[{"outline":[[200,300],[3400,300],{{Many(n - 2, i => $"[{3300 - (i * 60)},{600 + (i % 2 * 100)}]")}}]}]"""), "count_out_of_range"),
        ["heights"] = new(Check, n => SmallRoom.With("room.heights", LimitTests.List("room.heights", n)), "count_out_of_range"),
        ["services"] = new(Check, n => SmallRoom.With("services", $"[{Many(n, i => $$"""{"kind":"pipe","path":[[{{10 + (i * 17)}},0],[{{10 + (i * 17)}},3000]],"width":5,"top":-100,"bottom":-50}""")}]"), "count_out_of_range"),
        ["bulkheads"] = new(Check, n => Wide(20_000, "bulkheads", $"[{Many(n, i => $$"""{"outline":{{Box(500 + (i * 900), 1000, 400, 400)}},"drop":300}""")}]"), "count_out_of_range"),
        ["pathCorners"] = new(Check, n => SmallRoom.With("services", $$"""[{"kind":"pipe","path":[{{Many(n, i => $"[{100 + (i * 60)},{500 + (i % 2 * 300)}]")}}],"width":20,"top":-100,"bottom":-50}]"""), "count_out_of_range"),
        ["undersides"] = new(Check, n => SmallRoom.With("joistFields.0.undersides", LimitTests.List("joistFields.0.undersides", n)), "count_out_of_range"),
        ["partitions"] = new(Check, n => SmallRoom.With("partitions", $"[{Many(n, i => $$"""{"line":[[{{100 + (i * 65)}},1000],[{{100 + (i * 65)}},1500]],"thickness":25,"top":"board"}""")}]"), "count_out_of_range"),
        ["joists"] = new(Check, n => Positions(n), "count_out_of_range"),
        ["joistFields"] = new(Check, n => SmallRoom.With("joistFields", $"[{Many(n, i => $$"""{"run":"y","region":{{Box(i * 170, 0, 170, 3000)}},"positions":[{{(i * 170) + 85}}]}""")}]"), "count_out_of_range"),
        ["stock"] = new(Check, n => SmallRoom.With("strapping.stock", LimitTests.List("strapping.stock", n)), "count_out_of_range"),
        ["cutLengths"] = new("/v1/cut-plans", n => Sticks(Many(n, _ => """{"length":1000}""")), "count_out_of_range"),
        ["cutPieces"] = new("/v1/cut-plans", n => Sticks($$"""{"length":1000,"count":{{n - 1}}},{"length":1000}"""), "too_many_pieces"),
        ["cutPanels"] = new("/v1/cut-plans", n => Panels(Many(n, _ => """{"width":300,"length":1200}""")), "count_out_of_range"),
        ["cutPanelPieces"] = new("/v1/cut-plans", n => Panels($$"""{"width":300,"length":1200,"count":{{n - 1}}},{"width":300,"length":1200}"""), "too_many_pieces"),
        ["fixtures"] = new(Check, n => SmallRoom.With("fixtures", $"[{Many(n, i => $$"""{"kind":"sprinkler","at":[{{100 + (i % 20 * 170)}},{{100 + (i / 20 * 250)}}],"cutout":{"diameter":30} }""")}]"), "count_out_of_range"),
        ["pricedItems"] = new(Check, n => SmallRoom.With("prices", $$"""{"currency":"CAD","items":{{LimitTests.List("prices.items", n)}} }"""), "count_out_of_range"),
        ["taxes"] = new(Check, n => SmallRoom.With("prices", $$"""{"currency":"CAD","tax":[{{Many(n, i => $$"""{"name":"t{{i}}","rate":0.01}""")}}]}"""), "count_out_of_range"),
        ["rooms"] = new("/v1/jobs?include=summary", n => $$"""{"rooms":[{{Many(n, _ => SmallRoom.Text)}}]}""", "count_out_of_range"),
        ["variants"] = new("/v1/comparisons", n => $$"""{"base":{{SmallRoom.Text}},"variants":[{{Many(n, i => $$"""{"name":"v{{i}}","change":{"strapping":{"kerf":{{1 + (i * 0.1m)}} } } }""")}}]}""", "count_out_of_range"),
        ["rules"] = new(Check, n => SmallRoom.With("rules", $"[{Many(n, i => $$"""{"id":"none-{{i}}","value":1}""")}]"), "count_out_of_range", "rule_unknown"),
        ["items"] = new(Check, n => SmallRoom.With("access.passages", $"[{Many(n, _ => """{"width":2000,"height":2000}""")}]"), "count_out_of_range"),
        ["idLength"] = new(Check, n => SmallRoom.With("joistFields.0.id", $"\"{new string('a', n)}\""), "text_length"),
        ["textLength"] = new(Check, n => SmallRoom.With("document.buyer", $"\"{new string('a', n)}\""), "text_length"),
        ["lengthTextLength"] = new(Check, n => SmallRoom.With("joistFields.0.face", $"\"{"38 mm".PadLeft(n)}\""), "length_text_too_long"),
        ["lengthNumber"] = new(Check, n => SmallRoom.With("room.outline", Box(n - 3600, -n, 3600, 3000)), "out_of_range"),
        ["sideMetres"] = new(Check, n => Unsound(SmallRoom.With("room.outline", Box(0, 0, 3000, n * 1000))), "room_too_long", Twice),
        ["areaSquareMetres"] = new(Check, n => Unsound(SmallRoom.With("room.outline", Box(0, 0, 100_000, n * 10))), "room_too_large", Twice),
    };

    /// <summary>Limits that nothing is refused by, or that count what no request shows: the tests that try them at the end and past it.</summary>
    public static readonly IReadOnlyDictionary<string, string> Elsewhere = new Dictionary<string, string>
    {
        ["bulkReadAheadBytes"] = "BulkWireTests.A_client_that_sends_everything_before_it_reads_does_not_hang",
        ["work"] = "WorkMeterTests.Work_that_ends_just_at_the_limit_is_answered_and_one_operation_less_is_refused",
        ["errors"] = "PointerTests.At_most_a_hundred_faults_are_told",
    };

    private static string Many(int count, Func<int, string> item) => string.Join(',', Enumerable.Range(0, count).Select(item));

    private static string Box(int x, int y, int width, int height) =>
        string.Create(CultureInfo.InvariantCulture, $"[[{x},{y}],[{x + width},{y}],[{x + width},{y + height}],[{x},{y + height}]]");

    private static string Wide(int width, string member, string json) => SmallRoom.With(SmallRoom.With("room.outline", Box(0, 0, width, 3000)), member, json);

    private static string Unsound(string request) => SmallRoom.With(request, "strapping", """{"jointsAllowed":["scab","scab"]}""");

    private static string Positions(int count) => SmallRoom.With(
        SmallRoom.With("room.outline", Box(0, 0, 150_000, 3000)), "joistFields.0", $$"""{"run":"y","face":12,"positions":{{LimitTests.List("joistFields.0.positions", count)}} }""");

    private static string Sticks(string wanted) => $$"""{"units":"metric","sticks":{"wanted":[{{wanted}}],"stock":[{"length":3006}] } }""";

    private static string Panels(string wanted) => $$"""{"units":"metric","sheets":{"wanted":[{{wanted}}],"stock":[{"width":1200,"length":2400}] } }""";
}
