using System.Text.Json;

namespace LayoutService.Api.Tests.Contract;

/// <summary>What every schema of the contract has.</summary>
public class SchemaTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task Every_object_of_a_request_is_closed_and_every_object_of_an_answer_open()
    {
        var wrong = (await SchemasAsync())
            .Where(s => s.Value.TryGetProperty("properties", out _))
            .Where(s => s.Name.EndsWith("Request", StringComparison.Ordinal) != s.Value.TryGetProperty("additionalProperties", out _))
            .Select(s => s.Name);
        Assert.Empty(wrong);
    }

    [Fact]
    public async Task Every_text_list_and_number_has_its_bounds()
    {
        var unbounded = new List<string>();
        foreach (var schema in await SchemasAsync())
        {
            FindUnbounded(schema.Value, schema.Name, unbounded);
        }

        Assert.Empty(unbounded);
    }

    [Fact]
    public async Task Every_member_says_what_it_is()
    {
        var silent = (await SchemasAsync())
            .Where(s => s.Value.TryGetProperty("properties", out _))
            .SelectMany(s => s.Value.GetProperty("properties").EnumerateObject().Select(p => (Name: $"{s.Name}.{p.Name}", p.Value)))
            .Where(p => !p.Value.TryGetProperty("description", out _))
            .Select(p => p.Name);
        Assert.Empty(silent);
    }

    [Fact]
    public async Task Every_operation_has_an_id_a_summary_and_its_problems()
    {
        var paths = (await service.GetAsync("/openapi/v1.json")).Json.GetProperty("paths");
        var ids = paths.EnumerateObject().SelectMany(p => p.Value.EnumerateObject()).Select(o => o.Value.GetProperty("operationId").GetString()).ToList();
        Assert.Equal(ids.Distinct(), ids);
        foreach (var operation in paths.EnumerateObject().SelectMany(p => p.Value.EnumerateObject()).Select(o => o.Value))
        {
            Assert.NotEmpty(operation.GetProperty("operationId").GetString()!);
            Assert.NotEmpty(operation.GetProperty("summary").GetString()!);
            foreach (var response in operation.GetProperty("responses").EnumerateObject())
            {
                var lines = operation.GetProperty("operationId").GetString() == "createPlansInBulk";
                var form = response.Name != "200" ? "application/problem+json" : lines ? "application/jsonl" : "application/json";
                Assert.True(response.Value.GetProperty("content").TryGetProperty(form, out _), $"{operation.GetProperty("operationId")} {response.Name}");
            }
        }
    }

    [Theory]
    [InlineData("PlanRequest", "reference", "maxLength", 100)]
    [InlineData("RoomRequest", "outline", "maxItems", 201)]
    [InlineData("JoistFieldRequest", "positions", "maxItems", 1000)]
    [InlineData("StickStockRequest", "packSize", "minimum", 1)]
    public async Task A_rule_that_is_enforced_is_shown(string schema, string member, string bound, int value)
    {
        var shown = (await SchemasAsync()).Single(s => s.Name == schema).Value.GetProperty("properties").GetProperty(member);
        Assert.Equal(value, shown.GetProperty(bound).GetInt32());
    }

    [Fact]
    public async Task The_bounds_of_a_length_are_said_in_both_units()
    {
        var kerf = (await SchemasAsync()).Single(s => s.Name == "StrappingRequest").Value.GetProperty("properties").GetProperty("kerf");
        Assert.Equal("Wood lost by one saw cut. Default 1/8 in, 3 mm. From 0 to 0.5 in, or 0 to 12 mm.", kerf.GetProperty("description").GetString());
        Assert.Equal("#/components/schemas/Length", kerf.GetProperty("$ref").GetString());
    }

    private async Task<List<JsonProperty>> SchemasAsync() =>
        [.. (await service.GetAsync("/openapi/v1.json")).Json.GetProperty("components").GetProperty("schemas").EnumerateObject()];

    private static void FindUnbounded(JsonElement schema, string name, List<string> unbounded)
    {
        if (schema.TryGetProperty("$ref", out _) || schema.TryGetProperty("enum", out _))
        {
            return;
        }

        var type = schema.GetProperty("type").ToString();
        var needed = type switch
        {
            "array" => ["maxItems"],
            "number" or "integer" => ["minimum", "maximum", "format"],
            "string" => ["maxLength"],
            _ => Array.Empty<string>(),
        };
        unbounded.AddRange(needed.Where(n => !schema.TryGetProperty(n, out _)).Select(n => $"{name}: {n}"));
        if (type == "string" && !schema.TryGetProperty("pattern", out _) && !schema.TryGetProperty("format", out _))
        {
            unbounded.Add($"{name}: pattern or format");
        }

        if (schema.TryGetProperty("items", out var items))
        {
            FindUnbounded(items, name + "[]", unbounded);
        }

        if (schema.TryGetProperty("properties", out var members))
        {
            foreach (var member in members.EnumerateObject())
            {
                FindUnbounded(member.Value, $"{name}.{member.Name}", unbounded);
            }
        }
    }
}
