using System.Text.Json;
using System.Text.Json.Nodes;

namespace LayoutService.Api.Tests.Contract;

/// <summary>A client of the released contract (openapi/released) goes on working, or the major in the path has changed.</summary>
public class BreakingChangeTests(Service service) : IClassFixture<Service>
{
    private static string Released => File.ReadAllText(Repository.OpenApi("released/layout-service.v1.json"));

    [Fact]
    public async Task Nothing_that_the_released_contract_has_is_broken()
    {
        var served = (await service.GetAsync("/openapi/v1.json")).Json;
        Assert.Empty(BreakingChanges.Between(JsonElement.Parse(Released), served));
    }

    [Fact]
    public void A_contract_breaks_nothing_of_itself() =>
        Assert.Empty(BreakingChanges.Between(JsonElement.Parse(Released), JsonElement.Parse(Released)));

    [Theory]
    [InlineData("paths//v1/plans", null, "POST /v1/plans: gone")]
    [InlineData("paths//v1/plans/post/responses/200/content/text~csv", null, "POST /v1/plans 200: text/csv gone")]
    [InlineData("components/schemas/StrappingRequest/properties/kerf", null, "/strapping/kerf: gone")]
    [InlineData("components/schemas/PlanRequest/required", """["units","room","joistFields","reference"]""", "/reference: is needed now")]
    [InlineData("components/schemas/PlanRequest/properties/reference/maxLength", "99", "/reference: maxLength is lower")]
    [InlineData("components/schemas/RoomRequest/properties/outline/minItems", "5", "/room/outline: minItems is higher")]
    [InlineData("components/schemas/UnitsWord/enum", """["metric"]""", "/units: the word \"imperial\" is not taken any more")]
    [InlineData("components/schemas/Length/type", "\"number\"", "type string is not taken any more")]
    [InlineData("components/schemas/PlanAnswer/required", "[]", "/summary: is not always there any more")]
    [InlineData("components/schemas/SummaryAnswer/properties/rows/type", "\"string\"", "/rows: type string is new")]
    public void A_break_is_found(string place, string? put, string told)
    {
        var root = JsonNode.Parse(Released)!;
        var steps = Steps(place);
        var parent = steps[..^1].Aggregate(root, (node, step) => node[step] ?? throw new ArgumentException($"no {step} in {place}"));
        Assert.True(parent.AsObject().ContainsKey(steps[^1]), $"{place} is not in the contract");
        if (put is null)
        {
            parent.AsObject().Remove(steps[^1]);
        }
        else
        {
            parent[steps[^1]] = JsonNode.Parse(put);
        }

        var found = BreakingChanges.Between(JsonElement.Parse(Released), JsonElement.Parse(root.ToJsonString()));
        Assert.Contains(found, change => change.Contains(told, StringComparison.Ordinal));
    }

    /// <summary>Steps of a place; two slashes begin a path of the contract, which ends before its method.</summary>
    private static string[] Steps(string place)
    {
        var sides = place.Split("//");
        if (sides.Length == 1)
        {
            return place.Split('/');
        }

        var end = sides[1].IndexOf("/post", StringComparison.Ordinal);
        var path = "/" + (end < 0 ? sides[1] : sides[1][..end]);
        return end < 0 ? [sides[0], path] : [sides[0], path, .. sides[1][(end + 1)..].Split('/').Select(step => step.Replace('~', '/'))];
    }
}
