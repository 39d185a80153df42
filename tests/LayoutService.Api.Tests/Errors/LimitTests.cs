using System.Globalization;
using System.Text;

namespace LayoutService.Api.Tests.Errors;

/// <summary>Each limit taken at its end, and refused one past it; the ends are those that <c>GET /v1/limits</c> tells.</summary>
public class LimitTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task A_body_at_the_limit_is_read_and_one_byte_more_is_not()
    {
        var limit = await LimitAsync("bodyBytes");
        var atLimit = SmallRoom.Text + new string(' ', limit - SmallRoom.Text.Length);
        Assert.Equal(limit, Encoding.UTF8.GetByteCount(atLimit));
        Assert.Equal(200, (await service.PostAsync("/v1/plans", atLimit)).Status);

        var past = await service.PostAsync("/v1/plans", atLimit + " ");
        Assert.Equal(413, past.Status);
        Assert.Equal($"The body is larger than {limit} bytes.", past.Json.GetProperty("detail").GetString());
    }

    [Fact]
    public async Task An_outline_may_have_two_hundred_corners_and_the_first_repeated()
    {
        var limit = await LimitAsync("corners");
        Assert.Empty(await CodesAsync("room.outline", Teeth(limit)));
        Assert.Empty(await CodesAsync("room.outline", Teeth(limit, closed: true)));
        Assert.Equal(["count_out_of_range"], await CodesAsync("room.outline", Teeth(limit + 2)));
        Assert.Equal(["count_out_of_range"], await CodesAsync("room.outline", Teeth(limit + 2, closed: true)));
    }

    [Theory]
    [InlineData("openings", "room.openings")]
    [InlineData("heights", "room.heights")]
    [InlineData("joists", "joistFields.0.positions")]
    [InlineData("undersides", "joistFields.0.undersides")]
    [InlineData("stock", "strapping.stock")]
    [InlineData("stock", "sheets.stock")]
    [InlineData("pricedItems", "prices.items")]
    public async Task A_list_at_the_limit_is_taken_and_one_item_more_is_not(string limitName, string path)
    {
        var limit = await LimitAsync(limitName);
        Assert.Empty(await CodesAsync(path, List(path, limit)));
        Assert.Equal(["count_out_of_range"], await CodesAsync(path, List(path, limit + 1)));
    }

    [Theory]
    [InlineData("reference", 100)]
    [InlineData("joistFields.0.id", 64)]
    public async Task A_text_at_the_limit_is_taken_and_one_character_more_is_not(string path, int limit)
    {
        Assert.Empty(await CodesAsync(path, $"\"{new string('a', limit)}\""));
        Assert.Equal(["text_length"], await CodesAsync(path, $"\"{new string('a', limit + 1)}\""));
    }

    [Fact]
    public async Task A_body_sixteen_levels_deep_is_read_and_one_more_is_not()
    {
        var depth = await LimitAsync("depth");
        var at = await service.PostAsync("/v1/plans", new string('[', depth) + new string(']', depth));
        var past = await service.PostAsync("/v1/plans", new string('[', depth + 1) + new string(']', depth + 1));
        Assert.Equal(["wrong_type"], at.Codes);
        Assert.Equal(["json_too_deep"], past.Codes);
    }

    [Theory]
    [InlineData("strapping.kerf", "12", "12.001")]
    [InlineData("strapping.endClearance", "25", "25.001")]
    [InlineData("strapping.endTrim", "150", "150.001")]
    [InlineData("strapping.maxSpacing", "1200", "1200.001")]
    [InlineData("strapping.minPiece", "25", "24.999")]
    [InlineData("joistFields.0.face", "300", "300.001")]
    [InlineData("joistFields.0.depth", "1200", "1200.001")]
    [InlineData("sheets.thickness", "50", "50.001")]
    [InlineData("sheets.cutAllowance", "25", "25.001")]
    [InlineData("room.floorBuildUp", "600", "600.001")]
    public async Task A_length_at_the_end_of_its_bounds_is_taken_and_a_little_more_is_not(string path, string at, string past)
    {
        Assert.Empty(await CodesAsync(path, at));
        Assert.Equal(["out_of_range"], await CodesAsync(path, past));
    }

    [Fact]
    public async Task A_room_may_be_two_hundred_metres_long()
    {
        var limit = 1000 * await LimitAsync("sideMetres");
        Assert.DoesNotContain("room_too_long", await CodesAsync("room.outline", $"[[0,0],[3000,0],[3000,{limit}],[0,{limit}]]"));
        Assert.Equal(["room_too_long"], await CodesAsync("room.outline", $"[[0,0],[3000,0],[3000,{limit + 1}],[0,{limit + 1}]]"));
    }

    [Fact]
    public async Task A_text_of_forty_characters_can_be_a_length()
    {
        var limit = await LimitAsync("lengthTextLength");
        var text = "38 mm".PadLeft(limit);
        Assert.Empty(await CodesAsync("joistFields.0.face", $"\"{text}\""));
        var past = await service.PostAsync("/v1/plans/check", SmallRoom.With("joistFields.0.face", $"\" {text}\""));
        Assert.Equal([$"#/joistFields/0/face length_text_too_long: A length is at most 40 characters; this text has 41."], past.Faults);
    }

    /// <summary>Codes of the faults by the check call, apart from a plan that cannot be.</summary>
    private async Task<IReadOnlyList<string>> CodesAsync(string path, string json)
    {
        var request = path.StartsWith("prices", StringComparison.Ordinal)
            ? SmallRoom.With(SmallRoom.With(path, json), "prices.currency", "\"CAD\"")
            : SmallRoom.With(path, json);
        if (path.EndsWith("positions", StringComparison.Ordinal))
        {
            request = SmallRoom.With(SmallRoom.With(request, "joistFields.0.spacing", "null"), "joistFields.0.first", "null");
            request = SmallRoom.With(SmallRoom.With(request, "joistFields.0.face", "12"), "room.outline", "[[0,0],[150000,0],[150000,3000],[0,3000]]");
        }

        var reply = await service.PostAsync("/v1/plans/check", request);
        return reply.Status == 200 || reply.Json.TryGetProperty("findings", out _) ? [] : reply.Codes;
    }

    private async Task<int> LimitAsync(string name) => (await service.GetAsync("/v1/limits")).Json.GetProperty(name).GetInt32();

    /// <summary>A comb of a room with the number of corners asked for.</summary>
    internal static string Teeth(int corners, bool closed = false)
    {
        var top = Enumerable.Range(0, corners - 2).Select(i => $"[{20_000 - (i * 100)},{3000 + (i % 2 * 400)}]");
        var ring = string.Join(",", top.Prepend("[20000,0]").Prepend("[0,0]"));
        return closed ? $"[{ring},[0,0]]" : $"[{ring}]";
    }

    internal static string List(string path, int count) => "[" + string.Join(",", Enumerable.Range(0, count).Select(i => Item(path, i))) + "]";

    private static string Item(string path, int i) => path switch
    {
        "room.openings" => Square(100 + (i % 10 * 300), 100 + (i / 10 * 300)),
        "room.heights" => "{\"floorToJoist\":2400}",
        "joistFields.0.undersides" => $"{{\"at\":[200,{1 + (i % 2990)}],\"level\":{i % 3}}}",
        "joistFields.0.positions" => (10 + (i * 100)).ToString(CultureInfo.InvariantCulture),
        "strapping.stock" => $"{{\"length\":{2400 + i}}}",
        "sheets.stock" => $"{{\"width\":1200,\"length\":{2400 + i}}}",
        _ => "{\"code\":\"joint-tape\",\"packPrice\":1}",
    };

    private static string Square(int x, int y) =>
        $"{{\"outline\":[[{x},{y}],[{x + 100},{y}],[{x + 100},{y + 100}],[{x},{y + 100}]]}}";
}
