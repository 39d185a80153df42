namespace LayoutService.Api.Tests.Errors;

/// <summary>Pointers lead to the place in the body that was sent, as RFC 6901 says for a URI fragment.</summary>
public class PointerTests(Service service) : IClassFixture<Service>
{
    [Theory]
    [InlineData("a/b", "#/room/a~1b")]
    [InlineData("a~b", "#/room/a~0b")]
    [InlineData("a.b", "#/room/a.b")]
    [InlineData("a b", "#/room/a%20b")]
    [InlineData("a\\\"b", "#/room/a%22b")]
    [InlineData("höhe", "#/room/h%C3%B6he")]
    [InlineData("", "#/room/")]
    public async Task An_odd_name_is_escaped(string name, string pointer)
    {
        var reply = await service.PostAsync("/v1/plans", $$$"""{"units":"metric","room":{"{{{name}}}":1}}""");
        Assert.Equal(pointer, reply.Json.GetProperty("errors")[0].GetProperty("pointer").GetString());
    }

    [Theory]
    [InlineData("""{"units":"metric","room":{"outline":[[0,0],[3600,0],[3600,3000],[0,3000]]},"joistFields":[{"run":"y","spacing":400,"first":200}],"bulkheads":[{"hides":["LONG"]}]}""", 422)]
    [InlineData("""{"units":"LONG"}""", 400)]
    [InlineData("""{"LONG":1}""", 400)]
    [InlineData("""{"units":"me\u0001tric"}""", 400)]
    public async Task What_is_said_back_of_a_long_or_odd_value_keeps_to_the_contract(string body, int status)
    {
        var reply = await service.PostAsync("/v1/plans", body.Replace("LONG", new string('w', 9000), StringComparison.Ordinal));
        Assert.Equal(status, reply.Status);
        Assert.All(reply.Json.GetProperty("errors").EnumerateArray(), fault =>
        {
            var (pointer, detail) = (fault.GetProperty("pointer").GetString()!, fault.GetProperty("detail").GetString()!);
            Assert.InRange(pointer.Length, 1, 4000);
            Assert.InRange(detail.Length, 1, 4000);
            Assert.DoesNotContain(detail, char.IsControl);
            Assert.EndsWith(".", detail, StringComparison.Ordinal);
        });
    }

    [Fact]
    public async Task All_faults_come_at_once_in_the_order_of_the_document()
    {
        var reply = await service.PostAsync("/v1/plans", """
            {"joistFields":[{"run":"up","positions":["3 q",true]}],"units":"furlong","room":{"outline":[[0,0],[1],"x"],"size":3}}
            """);
        Assert.Equal(400, reply.Status);
        Assert.Equal("The body has 7 faults.", reply.Json.GetProperty("detail").GetString());
        Assert.Equal(
            [
                "#/joistFields/0/run unknown_word: \"up\" is not known here; the words are x, y.",
                "#/joistFields/0/positions/0 length_unit_unknown: \"q\" is no unit of length; use ft, in, mm, cm or m.",
                "#/joistFields/0/positions/1 wrong_type: This must be a length: a number or a string, not true or false.",
                "#/units unknown_word: \"furlong\" is not known here; the words are imperial, metric.",
                "#/room/outline/1 point_not_two: A point is an array of exactly two lengths; this has 1.",
                "#/room/outline/2 wrong_type: This must be a point: an array of two lengths, not a string.",
                "#/room/size unknown_member: There is no member \"size\" here.",
            ],
            reply.Faults);
    }

    [Fact]
    public async Task Rules_broken_in_several_places_are_all_told_in_the_order_of_the_document()
    {
        var reply = await service.PostAsync("/v1/plans", """
            {"units":"imperial","strapping":{"kerf":2,"maxSpacing":"60 in"},"room":{"outline":[[0,0],[144,0],[144,120],[0,120]]},
             "joistFields":[{"spacing":16,"first":8}],"partitions":[{"id":"a"}]}
            """);
        Assert.Equal(422, reply.Status);
        Assert.Equal("/problems/invalid-request", reply.Json.GetProperty("type").GetString());
        Assert.Equal(
            [
                "#/strapping/kerf out_of_range: This must be from 0 to 0.5 in; it is 2 in.",
                "#/strapping/maxSpacing out_of_range: This must be from 2 to 48 in; it is 60 in.",
                "#/joistFields/0/run required: Either run or runDegrees is needed.",
                "#/partitions/0/line required: This member is needed.",
                "#/partitions/0/thickness required: This member is needed.",
            ],
            reply.Faults);
    }

    [Fact]
    public async Task At_most_a_hundred_faults_are_told()
    {
        var members = string.Join(",", Enumerable.Range(0, 150).Select(i => $"\"m{i}\":1"));
        var reply = await service.PostAsync("/v1/plans", $"{{{members}}}");
        Assert.Equal(100, reply.Codes.Count);
        var corners = string.Join(",", Enumerable.Range(0, 150).Select(_ => "[1e9,1e9]"));
        var rules = await service.PostAsync("/v1/plans", SmallRoom.With("room.outline", $"[{corners}]"));
        Assert.Equal(422, rules.Status);
        Assert.Equal(100, rules.Codes.Count);
    }

    [Theory]
    [InlineData("{\n \"units\": \"metric\",\n \"room\": { \"outline\": [[0,0],[1,,2]] } }", "#/room/outline/1/0", "The body is not JSON here (line 3, byte 33).")]
    [InlineData("{\"units\": \"metric\",}", "#/units", "A comma stands before the closing bracket (line 1, byte 20).")]
    [InlineData("{\"units\": // in\n\"metric\"}", "#/units", "JSON has no comments (line 1, byte 11).")]
    [InlineData("{\"room\":{\"outline\":[[0,0],[", "#/room/outline/1", "The body ends before the JSON does (line 1, byte 28).")]
    public async Task A_syntax_fault_says_where_it_is(string body, string pointer, string detail)
    {
        var reply = await service.PostAsync("/v1/plans", body);
        var error = reply.Json.GetProperty("errors")[0];
        Assert.Equal(400, reply.Status);
        Assert.Equal(detail, error.GetProperty("detail").GetString());
        Assert.Equal(pointer, error.GetProperty("pointer").GetString());
        Assert.Equal(detail, reply.Json.GetProperty("detail").GetString());
    }
}
