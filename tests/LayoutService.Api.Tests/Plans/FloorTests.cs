namespace LayoutService.Api.Tests.Plans;

/// <summary>The floor tables over HTTP: stamps in, printed spans out; nothing assumed.</summary>
public class FloorTests(Service service) : IClassFixture<Service>
{
    private const string Joists = "[{\"run\":\"y\",\"spacing\":400,\"first\":200,\"size\":\"2x10\",\"species\":\"s-p-f\",\"grade\":\"no-2\",\"clearSpan\":4200,\"bridging\":false}]";

    [Fact]
    public async Task Stamped_joists_get_the_printed_spans_with_and_without_the_ceiling()
    {
        var reply = await service.PostAsync("/v1/plans?include=floor,checks", SmallRoom.With("joistFields", Joists));
        var floor = reply.Json.GetProperty("floor");
        Assert.True(floor.GetProperty("earnsFurredCeiling").GetBoolean());
        Assert.Equal(3960m, floor.GetProperty("without").GetProperty("span").GetDecimal());
        Assert.Equal(4280m, floor.GetProperty("with").GetProperty("span").GetDecimal());
        Assert.Equal(5, floor.GetProperty("spans").GetArrayLength());
        Assert.Contains(floor.GetProperty("notes").EnumerateArray(), note => note.GetProperty("code").GetString() == "floor_for_engineer");
        var check = reply.Json.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("rule").GetString() == "floor-span");
        Assert.Equal(("pass", 4280m), (check.GetProperty("status").GetString(), check.GetProperty("limit").GetDecimal()));
    }

    [Fact]
    public async Task Joists_without_a_stamp_are_not_checked_and_say_what_is_missing()
    {
        var reply = await service.PostAsync("/v1/plans?include=floor", SmallRoom.With("language", "\"en\""));
        Assert.Equal(
            ["#/joistFields/0/species", "#/joistFields/0/grade", "#/joistFields/0/size"],
            reply.Json.GetProperty("floor").GetProperty("missing").EnumerateArray().Select(m => m.GetString()));
    }

    [Fact]
    public async Task A_code_without_floor_tables_has_no_floor_block()
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("ruleset", "\"us-irc-2024\""));
        Assert.False(reply.Json.TryGetProperty("floor", out _));
    }

    [Theory]
    [InlineData("[{\"run\":\"y\",\"spacing\":400,\"first\":200,\"size\":\"2x10\",\"depth\":184}]", "#/joistFields/0/depth", "size_and_depth_differ")]
    [InlineData("[{\"run\":\"y\",\"spacing\":400,\"first\":200,\"kind\":\"i-joist\",\"species\":\"s-p-f\"}]", "#/joistFields/0/species", "sawn_only")]
    [InlineData("[{\"run\":\"y\",\"spacing\":400,\"first\":200,\"kind\":\"steel\",\"size\":\"2x10\"}]", "#/joistFields/0/size", "sawn_only")]
    public async Task A_stamp_that_does_not_fit_the_joist_is_refused(string joists, string pointer, string code)
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("joistFields", joists));
        Assert.Equal(422, reply.Status);
        var error = reply.Json.GetProperty("errors").EnumerateArray().Single();
        Assert.Equal((pointer, code), (error.GetProperty("pointer").GetString(), error.GetProperty("code").GetString()));
    }

    [Fact]
    public async Task A_rated_ceiling_is_failed_because_no_strap_gives_the_wood()
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("sheets", "{\"fireRating\":\"1-h\"}"));
        var check = reply.Json.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("rule").GetString() == "rated-ceiling-penetration");
        Assert.Equal(("fail", 45m, "strap_too_thin_for_rating"), (check.GetProperty("status").GetString(), check.GetProperty("limit").GetDecimal(), check.GetProperty("note").GetProperty("code").GetString()));
    }

    // Ontario Table 9.5.3.1. and Part 11 C102: 2100 mm anywhere in a habitable room; 1950 mm in an existing house or a suite.
    [Theory]
    [InlineData("", 2100)]
    [InlineData(",\"existingBuilding\":true", 1950)]
    [InlineData(",\"secondarySuite\":true", 1950)]
    public async Task Existing_buildings_and_suites_have_their_own_headroom(string more, int limit)
    {
        var body = """{"units":"metric","ruleset":"ca-on-2024","room":{"outline":[[0,0],[3600,0],[3600,3000],[0,3000]],"heights":[{"floorToJoist":2300}],"floorBuildUp":10,"use":"habitable"MORE},"joistFields":[{"run":"y","spacing":400,"first":200}]}""".Replace("MORE", more, StringComparison.Ordinal);
        var reply = await service.PostAsync("/v1/plans", body);
        var check = reply.Json.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("rule").GetString() == "headroom");
        Assert.Equal(limit, check.GetProperty("limit").GetDecimal());
    }
}
