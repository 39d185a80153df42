using System.Text.Json;
using System.Text.Json.Nodes;
using LayoutService.Api.Tests.Fuzz;

namespace LayoutService.Api.Tests.Contract;

/// <summary>
/// One past each bound that the contract shows, at every place of every request that takes JSON: too great and too small a number, too long a text, too
/// many items. Each is refused, and the fault names its place.
/// </summary>
public class PastBoundTests(Service service) : IClassFixture<Service>
{
    /// <summary>Lists with more than so many items are filled by tests of their own.</summary>
    private const int MostItems = 600;

    private const int Deepest = 9;

    // what all rooms share is read where a room does not say it itself: the small room's outline and joists
    [Theory]
    [InlineData("/v1/plans", SmallRoom.Text, "")]
    [InlineData("/v1/insulation", SmallRoom.Text, "")]
    [InlineData("/v1/jobs", "{\"rooms\":[" + SmallRoom.Text + "]}", "common/room/outline common/joistFields")]
    [InlineData("/v1/comparisons", "{\"base\":" + SmallRoom.Text + ",\"variants\":[{\"name\":\"a\",\"change\":{}}]}", "")]
    [InlineData("/v1/cut-plans", "{\"units\":\"metric\",\"sticks\":{\"wanted\":[{\"length\":100}],\"stock\":[{\"length\":200}]},\"sheets\":{\"wanted\":[{\"width\":10,\"length\":10}],\"stock\":[{\"width\":100,\"length\":200}]}}", "")]
    public async Task What_is_past_a_bound_is_refused_at_its_place(string path, string start, string unread)
    {
        var contract = (await service.GetAsync("/openapi/v1.json")).Json;
        var dice = new ContractDice(contract, 1);
        var schema = new ContractChecks(contract).Operations.Single(o => o.Path == path).Schema;
        var edges = Edges(dice, contract.GetProperty("components").GetProperty("schemas").GetProperty(schema), []).ToList();
        Assert.True(edges.Count > 8, $"only {edges.Count} bounds were found");
        var wrong = new List<string>();
        foreach (var (place, bad) in edges)
        {
            if (unread.Split(' ', StringSplitOptions.RemoveEmptyEntries).Any(u => string.Join('/', place).StartsWith(u, StringComparison.Ordinal)))
            {
                continue;
            }

            var body = dice.With(schema, start, place, bad);
            var reply = await service.PostAsync(path, body.ToJsonString());
            var pointer = "#/" + string.Join('/', place);
            if (reply.Status is not (400 or 422) || !reply.Faults.Any(f => f.StartsWith(pointer + " ", StringComparison.Ordinal)))
            {
                wrong.Add($"{pointer}: {reply.Status} {string.Join(" | ", reply.Status is 400 or 422 ? reply.Faults.Take(3) : [])}");
            }
        }

        Assert.True(wrong.Count == 0, $"{wrong.Count} of {edges.Count}:\n{string.Join('\n', wrong.Take(40))}");
    }

    private static IEnumerable<(string[] Place, JsonNode Bad)> Edges(ContractDice dice, JsonElement shown, string[] place)
    {
        var schema = dice.Resolved(shown);
        if (place.Length > Deepest || !schema.TryGetProperty("type", out var type) || type.ValueKind != JsonValueKind.String)
        {
            yield break;
        }

        if (schema.TryGetProperty("maximum", out var most))
        {
            yield return (place, JsonNode.Parse((most.GetDecimal() + 1).ToString(System.Globalization.CultureInfo.InvariantCulture))!);
        }

        if (schema.TryGetProperty("minimum", out var least))
        {
            yield return (place, JsonNode.Parse((least.GetDecimal() - 1).ToString(System.Globalization.CultureInfo.InvariantCulture))!);
        }

        if (schema.TryGetProperty("maxLength", out var longest) && longest.GetInt32() < 10_000)
        {
            yield return (place, JsonValue.Create(new string('w', longest.GetInt32() + 1)));
        }

        if (schema.TryGetProperty("maxItems", out var items))
        {
            var item = schema.GetProperty("items");
            if (items.GetInt32() <= MostItems)
            {
                yield return (place, new JsonArray([.. Enumerable.Range(0, items.GetInt32() + 1).Select(_ => dice.Least(item))]));
            }

            foreach (var edge in Edges(dice, item, [.. place, "0"]))
            {
                yield return edge;
            }
        }

        if (schema.TryGetProperty("properties", out var members))
        {
            foreach (var edge in members.EnumerateObject().SelectMany(m => Edges(dice, m.Value, [.. place, m.Name])))
            {
                yield return edge;
            }
        }
    }
}
