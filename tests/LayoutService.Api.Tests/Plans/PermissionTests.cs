using System.Text.Json;

namespace LayoutService.Api.Tests.Plans;

/// <summary>What is allowed or wished for, and answered with something else that is said: side laps, and other languages.</summary>
public class PermissionTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task With_side_laps_alone_each_row_is_one_piece()
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("strapping", """{"jointsAllowed":["side-lap"]}"""));
        Assert.Equal(200, reply.Status);
        var rows = reply.Json.GetProperty("strapping").GetProperty("rows").EnumerateArray().ToList();
        Assert.NotEmpty(rows);
        Assert.All(rows, row => Assert.Equal(1, row.GetProperty("pieces").GetArrayLength()));
        Assert.Equal("none", Assumed(reply.Json, "#/strapping/jointsAllowed"));
    }

    [Fact]
    public async Task Rows_that_side_laps_alone_would_have_to_join_are_told_with_what_to_allow_instead()
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("strapping", """{"jointsAllowed":["side-lap"],"stock":[{"length":2400}]}"""));
        Assert.Equal(422, reply.Status);
        Assert.Contains("\"side_lap_leaves_row\"", reply.Text);
        Assert.Contains("2397 mm", reply.Text); // 2400 less a trim of 3
        Assert.Contains("\"other_joints\"", reply.Text);
    }

    [Fact]
    public async Task Beside_other_joints_those_are_made()
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("strapping", """{"jointsAllowed":["side-lap","on-joist"],"stock":[{"length":2400}]}"""));
        Assert.Equal(200, reply.Status);
        Assert.Equal("on-joist", Assumed(reply.Json, "#/strapping/jointsAllowed"));
        var plain = await service.PostAsync("/v1/plans", SmallRoom.With("strapping", """{"jointsAllowed":["on-joist"],"stock":[{"length":2400}]}"""));
        Assert.Equal(plain.Json.GetProperty("strapping").GetRawText(), reply.Json.GetProperty("strapping").GetRawText());
    }

    [Theory]
    [InlineData("fr-CA", "en")]
    [InlineData("ar", "en")]
    [InlineData("en", null)]
    [InlineData("EN-ca", null)]
    public async Task A_language_without_texts_gets_English_and_is_told_so(string asked, string? said)
    {
        var reply = await service.PostAsync("/v1/plans", SmallRoom.With("language", $"\"{asked}\""));
        Assert.Equal(200, reply.Status);
        Assert.Equal(said, Assumed(reply.Json, "#/language"));
        var plain = await service.PostAsync("/v1/plans", SmallRoom.Text);
        Assert.Equal(plain.Json.GetProperty("steps").GetRawText(), reply.Json.GetProperty("steps").GetRawText());
    }

    private static string? Assumed(JsonElement plan, string pointer) => plan.GetProperty("assumed").EnumerateArray()
        .Where(x => x.GetProperty("pointer").GetString() == pointer)
        .Select(x => x.GetProperty("value").GetString())
        .SingleOrDefault();
}
