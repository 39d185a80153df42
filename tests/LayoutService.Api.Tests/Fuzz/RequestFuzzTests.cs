using System.Globalization;
using System.Text.Json.Nodes;

namespace LayoutService.Api.Tests.Fuzz;

/// <summary>
/// Requests bent at random, from a fixed seed: each is answered with a plan or with a problem that names a place, never
/// with 500. What was sent is printed when it is not.
/// </summary>
public class RequestFuzzTests(Service service) : IClassFixture<Service>
{
    private static readonly string[] Values =
    [
        "null", "true", "0", "-1", "1", "3", "12", "37.5", "38", "400", "1e3", "2400", "3600.0001", "1000000", "1e9", "1e400", "[]", "{}", "[[0,0]]",
        "\"\"", "\"x\"", "\"1 in\"", "\"8 ft\"", "\"-3 mm\"", "\"0 mm\"", "\"2.4 m\"", "[1,1]", "[\"1 in\",2]", "\"1x2\"", "\"2x4\"", "\"y\"", "\"x\"",
        "\"imperial\"", "\"metric\"", "\"thorough\"", "\"scab\"", "[\"scab\",\"on-joist\"]", "[\"block\"]", "[\"side-lap\"]", "\"direct\"",
    ];

    [Fact]
    public async Task A_request_bent_at_random_never_makes_the_service_fail()
    {
        var count = int.Parse(Environment.GetEnvironmentVariable("LAYOUT_FUZZ") ?? "400", CultureInfo.InvariantCulture);
        var dice = new Random(20250331);
        var examples = Repository.Examples.Select(Repository.ExampleRequest).ToArray();
        var statuses = new Dictionary<int, int>();
        for (var round = 0; round < count; round++)
        {
            var request = Bend(examples[dice.Next(examples.Length)], dice);
            var reply = await service.PostAsync("/v1/plans?include=summary", request);
            Assert.True(reply.Status is 200 or 400 or 422, $"round {round}: {reply.Status} {reply.Text} for {request}");
            statuses[reply.Status] = statuses.GetValueOrDefault(reply.Status) + 1;
            if (reply.Status != 200)
            {
                Assert.True(
                    reply.Json.TryGetProperty("errors", out var errors) ? errors.GetArrayLength() > 0 : reply.Json.GetProperty("findings").GetArrayLength() > 0,
                    $"round {round}: a problem that says nothing for {request}");
            }
        }

        Assert.Equal([200, 400, 422], statuses.Keys.Order());
    }

    /// <summary>One to three values replaced, dropped or scaled, anywhere in the request.</summary>
    private static string Bend(string request, Random dice)
    {
        var root = JsonNode.Parse(request)!;
        for (var times = dice.Next(1, 4); times > 0; times--)
        {
            var places = Places(root).ToList();
            var (parent, name, index) = places[dice.Next(places.Count)];
            var old = name is null ? parent.AsArray()[index] : parent.AsObject()[name];
            var value = dice.Next(3) == 0 && old is JsonValue number && number.TryGetValue<decimal>(out var was)
                ? JsonValue.Create(was * (decimal)(dice.NextDouble() * 2))
                : JsonNode.Parse(Values[dice.Next(Values.Length)]);
            if (name is not null)
            {
                parent.AsObject()[name] = value;
            }
            else if (dice.Next(4) == 0)
            {
                parent.AsArray().RemoveAt(index);
            }
            else
            {
                parent.AsArray()[index] = value;
            }
        }

        return root.ToJsonString();
    }

    private static IEnumerable<(JsonNode Parent, string? Name, int Index)> Places(JsonNode node) => node switch
    {
        JsonObject members => members.SelectMany(m => Inner(m.Value).Prepend((members, m.Key, 0))),
        JsonArray items => items.SelectMany((item, i) => Inner(item).Prepend((items, null, i))),
        _ => [],
    };

    private static IEnumerable<(JsonNode Parent, string? Name, int Index)> Inner(JsonNode? node) => node is null ? [] : Places(node);
}
