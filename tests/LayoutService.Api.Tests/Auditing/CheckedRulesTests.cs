using LayoutService.Auditor.Rooms;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>Whatever rule a plan is held against can be looked up, with its sources, in the catalogue.</summary>
public sealed class CheckedRulesTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task Every_rule_of_every_example_and_of_200_rooms_is_in_the_catalogue_with_its_source()
    {
        var rooms = new RoomGenerator();
        var requests = Repository.Examples.Select(Repository.ExampleRequest)
            .Concat(Enumerable.Range(1, 100).Select(seed => rooms.Next(seed)))
            .Concat(Enumerable.Range(101, 100).Select(seed => BoxedRooms.Mixed(rooms.Next(seed), seed)));
        var seen = new Dictionary<string, string>();
        foreach (var request in requests)
        {
            var reply = await service.PostAsync("/v1/plans?include=checks", request);
            Assert.Equal(200, reply.Status);
            foreach (var check in reply.Json.GetProperty("checks").EnumerateArray())
            {
                seen[check.GetProperty("rule").GetString()!] = check.GetProperty("source").GetProperty("document").GetString()!;
            }
        }

        var catalogue = (await service.GetAsync("/v1/rules")).Json.GetProperty("rules").EnumerateArray().ToDictionary(r => r.GetProperty("id").GetString()!);
        Assert.True(seen.Count >= 30, $"only {seen.Count} rules were seen");
        Assert.Empty(seen.Keys.Where(rule => !catalogue.ContainsKey(rule)).Order());
        Assert.All(seen, rule => Assert.NotEmpty(rule.Value));
        Assert.All(seen.Keys, rule => Assert.All(catalogue[rule].GetProperty("values").EnumerateArray(), value =>
            Assert.NotEmpty(value.GetProperty("source").GetProperty("document").GetString()!)));
    }
}
