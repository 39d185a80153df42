using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace LayoutService.Api.Tests.Plans;

/// <summary>What an answer holds, whatever the room.</summary>
public partial class AnswerTests(Service service) : IClassFixture<Service>
{
    public static TheoryData<string> Examples => [.. Repository.Examples];

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task The_same_request_has_the_same_bytes(string name)
    {
        var request = Repository.ExampleRequest(name);
        Assert.Equal((await service.PostAsync("/v1/plans", request)).Text, (await service.PostAsync("/v1/plans", request)).Text);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task Numbers_are_plain_decimals_with_six_places_at_most_and_there_are_no_nulls(string name)
    {
        var answer = (await service.PostAsync("/v1/plans", Repository.ExampleRequest(name))).Json;
        Assert.All(Leaves(answer), leaf =>
        {
            Assert.NotEqual(JsonValueKind.Null, leaf.ValueKind);
            if (leaf.ValueKind == JsonValueKind.Number)
            {
                Assert.Matches(PlainNumber(), leaf.GetRawText());
            }
        });
    }

    [Fact]
    public async Task Null_and_absent_are_the_same_apart_from_the_digest_of_the_bytes()
    {
        var absent = (await service.PostAsync("/v1/plans", SmallRoom.Text)).Json;
        var nulls = (await service.PostAsync("/v1/plans", SmallRoom.With(SmallRoom.With(SmallRoom.With("strapping", "null"), "room.openings", "null"), "joistFields.0.face", "null"))).Json;
        Assert.Equal(absent.GetProperty("digest").GetString(), nulls.GetProperty("digest").GetString());
        Assert.NotEqual(absent.GetProperty("requestDigest").GetString(), nulls.GetProperty("requestDigest").GetString());
        Assert.Equal(Less(absent, "requestDigest"), Less(nulls, "requestDigest"));
    }

    [Fact]
    public async Task The_reference_is_echoed_and_is_no_part_of_a_digest()
    {
        var plain = (await service.PostAsync("/v1/plans", SmallRoom.Text)).Json;
        var named = (await service.PostAsync("/v1/plans", SmallRoom.With("reference", "\"Küche 2 <3\""))).Json;
        Assert.Equal("Küche 2 <3", named.GetProperty("reference").GetString());
        Assert.Equal(plain.GetProperty("requestDigest").GetString(), named.GetProperty("requestDigest").GetString());
        Assert.Equal(plain.GetProperty("digest").GetString(), named.GetProperty("digest").GetString());
    }

    [Fact]
    public async Task A_digest_does_not_depend_on_white_space_order_of_members_or_how_a_number_is_written()
    {
        const string other = """
            { "joistFields": [ { "first": 2e2, "run": "y", "spacing": 400.0 } ],
              "room": { "outline": [ [0, 0], [3600, 0], [3.6E3, 3000], [-0, 3000] ] }, "units": "metric" }
            """;
        var one = (await service.PostAsync("/v1/plans", SmallRoom.Text)).Json;
        var two = (await service.PostAsync("/v1/plans", other)).Json;
        Assert.Equal(one.GetProperty("requestDigest").GetString(), two.GetProperty("requestDigest").GetString());
        Assert.Equal(one.GetProperty("digest").GetString(), two.GetProperty("digest").GetString());
    }

    [Fact]
    public async Task The_request_digest_is_that_of_the_canonical_json()
    {
        // SHA-256 of the canonical form (RFC 8785) of the request, worked out outside of the service:
        // printf '{"joistFields":[{"first":200,"run":"y","spacing":400}],"room":{"outline":[[0,0],[3600,0],[3600,3000],[0,3000]]},"units":"metric"}' | sha256sum
        var answer = (await service.PostAsync("/v1/plans", SmallRoom.With("reference", "\"any\""))).Json;
        Assert.Equal("4c75e167bbba1df6befc59c4e0e9f4cb914ceffa2a23bff4ec7c9bfcf8e1b5f9", answer.GetProperty("requestDigest").GetString());
    }

    [Fact]
    public async Task A_length_may_come_as_a_number_or_as_text_in_any_unit()
    {
        var numbers = (await service.PostAsync("/v1/plans", SmallRoom.Text)).Json;
        var texts = (await service.PostAsync("/v1/plans", """
            {"units":"metric","room":{"outline":[["0 mm",0],["3.6 m",0],[3600,"300 cm"],[0,3000]]},"joistFields":[{"run":"y","spacing":"40cm","first":"0.2 m"}]}
            """)).Json;
        Assert.Equal(numbers.GetProperty("digest").GetString(), texts.GetProperty("digest").GetString());
        Assert.Equal(Less(numbers, "requestDigest"), Less(texts, "requestDigest"));
    }

    [Fact]
    public async Task Include_leaves_out_the_other_blocks_and_changes_nothing_else()
    {
        var all = (await service.PostAsync("/v1/plans", SmallRoom.Text)).Json;
        var some = (await service.PostAsync("/v1/plans?include=takeoff,walls", SmallRoom.Text)).Json;
        Assert.Equal(
            ["units", "ruleset", "engineVersion", "rulesVersion", "requestDigest", "digest", "assumed", "summary", "walls", "takeoff"],
            some.EnumerateObject().Select(m => m.Name));
        Assert.All(some.EnumerateObject(), m => Assert.Equal(all.GetProperty(m.Name).GetRawText(), m.Value.GetRawText()));
        Assert.Equal(
            ["units", "ruleset", "engineVersion", "rulesVersion", "requestDigest", "digest", "assumed", "summary"],
            (await service.PostAsync("/v1/plans?include=summary", SmallRoom.Text)).Json.EnumerateObject().Select(m => m.Name));
        Assert.Equal(all.GetRawText(), (await service.PostAsync("/v1/plans?include=all", SmallRoom.Text)).Text);
    }

    [Theory]
    [InlineData("/v1/strapping", "strapping")]
    [InlineData("/v1/sheets", "sheets")]
    public async Task A_part_alone_is_the_block_of_the_plan(string path, string block)
    {
        var whole = (await service.PostAsync("/v1/plans", Repository.ExampleRequest("plain-rectangle"))).Json;
        var part = await service.PostAsync(path, Repository.ExampleRequest("plain-rectangle"));
        Assert.Equal(whole.GetProperty(block).GetRawText(), part.Text);
    }

    [Fact]
    public async Task The_check_call_answers_with_the_digests_of_the_plan()
    {
        var plan = (await service.PostAsync("/v1/plans", SmallRoom.Text)).Json;
        var check = (await service.PostAsync("/v1/plans/check", SmallRoom.Text)).Json;
        Assert.Equal(["requestDigest", "digest"], check.EnumerateObject().Select(m => m.Name));
        Assert.Equal(plan.GetProperty("digest").GetString(), check.GetProperty("digest").GetString());
    }

    [Fact]
    public async Task Every_default_is_listed_in_the_units_of_the_request()
    {
        var metric = Assumed((await service.PostAsync("/v1/plans", SmallRoom.Text)).Json);
        Assert.Equal("ca-nbc-2020", metric["#/ruleset"]);
        Assert.Equal("38 mm", metric["#/joistFields/0/face"]);
        Assert.Equal("1x3", metric["#/strapping/size"]);
        Assert.Equal("400 mm", metric["#/strapping/maxSpacing"]);
        Assert.Equal("2400, 3000, 3600, 4200, 4800 mm", metric["#/strapping/stock"]);
        Assert.Equal("12.7 mm", metric["#/sheets/thickness"]);
        Assert.Equal("6 mm", metric["#/strapping/endClearance"]);

        var imperial = Assumed((await service.PostAsync("/v1/plans", """
            {"units":"imperial","room":{"outline":[[0,0],[144,0],[144,120],[0,120]]},"joistFields":[{"run":"y","spacing":16,"first":8}]}
            """)).Json);
        Assert.Equal("us-irc-2021", imperial["#/ruleset"]);
        Assert.Equal("1-1/2\"", imperial["#/joistFields/0/face"]);
        Assert.Equal("16\"", imperial["#/strapping/maxSpacing"]);
        Assert.Equal("8, 10, 12, 14, 16 ft", imperial["#/strapping/stock"]);
        Assert.Equal("1/2\"", imperial["#/sheets/thickness"]);
        Assert.Equal("24\" (2' 0\")", imperial["#/strapping/minPiece"]);
    }

    [Fact]
    public async Task Nothing_is_assumed_that_was_said()
    {
        var assumed = Assumed((await service.PostAsync("/v1/plans", SmallRoom.With("strapping.kerf", "4"))).Json);
        Assert.DoesNotContain("#/strapping/kerf", assumed.Keys);
    }

    [Fact]
    public async Task The_l_with_a_chimney_leaves_it_free_and_has_a_price()
    {
        var answer = (await service.PostAsync("/v1/plans", Repository.ExampleRequest("l-room-with-chimney"))).Json;
        Assert.Equal("USD", answer.GetProperty("summary").GetProperty("currency").GetString());
        var total = answer.GetProperty("takeoff").GetProperty("totals").GetProperty("amount").GetDecimal();
        var lines = answer.GetProperty("takeoff").GetProperty("lines").EnumerateArray()
            .Where(l => l.TryGetProperty("amount", out _)).Sum(l => l.GetProperty("amount").GetDecimal());
        Assert.Equal(lines, total);
        var area = answer.GetProperty("sheets").GetProperty("pieces").EnumerateArray().Sum(p => p.GetProperty("area").GetDecimal());

        // The outline by hand, in inches: 294.5 × 131 below the jog and 169.375 × 102.75 above it; the flue is
        // 20 × 20, and the board runs up to it. 144 in² are 1 ft².
        var expected = ((294.5m * 131) + (169.375m * 102.75m) - (20 * 20)) / 144;
        Assert.InRange(area, expected - 0.01m, expected + 0.01m);
    }

    private static Dictionary<string, string> Assumed(JsonElement answer) => answer.GetProperty("assumed").EnumerateArray()
        .ToDictionary(a => a.GetProperty("pointer").GetString()!, a => a.GetProperty("value").GetString()!);

    private static string Less(JsonElement answer, string member)
    {
        var node = JsonNode.Parse(answer.GetRawText())!.AsObject();
        node.Remove(member);
        return node.ToJsonString();
    }

    private static IEnumerable<JsonElement> Leaves(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => value.EnumerateObject().SelectMany(m => Leaves(m.Value)),
        JsonValueKind.Array => value.EnumerateArray().SelectMany(Leaves),
        _ => [value],
    };

    [GeneratedRegex(@"^(0|-?(0\.\d{0,5}[1-9]|[1-9]\d*(\.\d{0,5}[1-9])?))$")]
    private static partial Regex PlainNumber();
}
