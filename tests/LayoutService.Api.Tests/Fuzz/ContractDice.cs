using System.Text.Json;
using System.Text.Json.Nodes;

namespace LayoutService.Api.Tests.Fuzz;

/// <summary>Makes up values that a schema of the contract takes, and bends them so that it does not; the same dice make the same.</summary>
internal sealed class ContractDice(JsonElement contract, int seed)
{
    private const int Deepest = 6;
    private static readonly string[] Lengths = ["150 1/2 in", "12' 6 1/2\"", "3.81 m", "38 mm", "1/8 in"];
    private readonly Random dice = new(seed);

    public int Next(int below) => dice.Next(below);

    public JsonNode? Valid(string schema) => Valid(Schema(schema), 0);

    /// <summary>As little as a schema takes.</summary>
    public JsonNode? Least(JsonElement schema) => Valid(schema, Deepest);

    /// <summary>A value of a schema with one more at a place of it; what leads there and is not there is made as it goes.</summary>
    public JsonNode With(string schema, string start, IReadOnlyList<string> place, JsonNode value)
    {
        var (at, root) = (Schema(schema), JsonNode.Parse(start)!);
        var node = root;
        for (var k = 0; k < place.Count; k++)
        {
            var last = k == place.Count - 1;
            at = Resolved(at.TryGetProperty("items", out var items) ? items : at.GetProperty("properties").GetProperty(place[k]));
            if (node is JsonArray list)
            {
                if (list.Count == 0)
                {
                    list.Add(null);
                }

                list[0] = last ? value.DeepClone() : list[0]?.DeepClone() ?? Least(at);
                node = list[0]!;
            }
            else
            {
                var members = node.AsObject();
                members[place[k]] = last ? value.DeepClone() : members[place[k]] ?? Least(at);
                node = members[place[k]]!;
            }
        }

        return root;
    }

    /// <summary>The schema that a reference leads to; a part of a plan is any part of a request.</summary>
    public JsonElement Resolved(JsonElement schema)
    {
        while (schema.TryGetProperty("$ref", out var reference))
        {
            var name = reference.GetString()!.Split('/')[^1];
            schema = Schema(name == "PlanPart" ? "PlanRequest" : name);
        }

        return schema;
    }

    /// <summary>The value with one thing wrong with it, most often by its schema; what remains valid all the same is for the caller to notice.</summary>
    public JsonNode? Bent(JsonNode? value)
    {
        var places = Places(value).ToList();
        var (parent, name, index) = places[dice.Next(places.Count)];
        var old = name is null ? parent.AsArray()[index] : parent.AsObject()[name];
        if (dice.Next(4) == 0 && name is not null)
        {
            if (dice.Next(2) == 0)
            {
                parent.AsObject().Remove(name);
            }
            else
            {
                parent.AsObject()[name + "x"] = 1;
            }

            return value;
        }

        JsonNode? put = dice.Next(8) switch
        {
            0 => null,
            1 => true,
            2 => new JsonObject(),
            3 => new JsonArray(),
            4 => "\u0007",
            5 => new string('w', 5000),
            6 => JsonNode.Parse("1e25"),
            _ => old is JsonValue number && number.TryGetValue<decimal>(out var was) ? JsonValue.Create((was * -1000) - 0.5m) : -0.5m,
        };
        if (name is null)
        {
            parent.AsArray()[index] = put;
        }
        else
        {
            parent.AsObject()[name] = put;
        }

        return value;
    }

    private JsonElement Schema(string name) => contract.GetProperty("components").GetProperty("schemas").GetProperty(name);

    private JsonNode? Valid(JsonElement schema, int depth)
    {
        if (schema.TryGetProperty("$ref", out var reference))
        {
            var name = reference.GetString()!.Split('/')[^1];
            return name switch
            {
                "Length" => dice.Next(4) == 0 ? Lengths[dice.Next(Lengths.Length)] : JsonValue.Create(Near(dice.Next(3) == 0 ? 1 : 4000)),
                "PlanPart" => Valid(Schema("PlanRequest"), depth + 1),
                _ => Valid(Schema(name), depth),
            };
        }

        if (schema.TryGetProperty("enum", out var words))
        {
            return JsonNode.Parse(words[dice.Next(words.GetArrayLength())].GetRawText());
        }

        return schema.GetProperty("type").GetString() switch
        {
            "object" => Members(schema, depth),
            "array" => Items(schema, depth),
            "string" => Text(schema),
            "integer" => JsonValue.Create((long)Figure(schema)),
            "number" => JsonValue.Create(Figure(schema)),
            "boolean" => dice.Next(2) == 0,
            var other => throw new InvalidOperationException($"A type that the dice do not know: {other}"),
        };
    }

    private JsonObject Members(JsonElement schema, int depth)
    {
        var made = new JsonObject();
        var needed = schema.TryGetProperty("required", out var names) ? names.EnumerateArray().Select(n => n.GetString()!).ToHashSet() : [];
        foreach (var member in schema.TryGetProperty("properties", out var members) ? members.EnumerateObject().ToList() : [])
        {
            if (needed.Contains(member.Name) || (depth < Deepest && dice.Next(depth == 0 ? 3 : 2) == 0))
            {
                made[member.Name] = Valid(member.Value, depth + 1);
            }
        }

        return made;
    }

    private JsonArray Items(JsonElement schema, int depth)
    {
        var least = schema.TryGetProperty("minItems", out var min) ? min.GetInt32() : 0;
        var most = Math.Min(schema.GetProperty("maxItems").GetInt32(), least + 2);
        return [.. Enumerable.Range(0, dice.Next(least, most + 1)).Select(_ => Valid(schema.GetProperty("items"), depth + 1))];
    }

    private string Text(JsonElement schema)
    {
        if (schema.TryGetProperty("format", out _))
        {
            return $"20{dice.Next(10, 40)}-{dice.Next(1, 13):00}-{dice.Next(1, 29):00}";
        }

        var pattern = schema.TryGetProperty("pattern", out var p) ? p.GetString()! : "";
        if (pattern.StartsWith("^[A-Z]{3}", StringComparison.Ordinal))
        {
            return dice.Next(2) == 0 ? "CAD" : "USD";
        }

        if (pattern.Contains("{2,8}", StringComparison.Ordinal))
        {
            return dice.Next(2) == 0 ? "en" : "fr-CA";
        }

        var longest = Math.Min(schema.GetProperty("maxLength").GetInt32(), 70);
        var length = dice.Next(5) == 0 ? longest : dice.Next(1, 9);
        var letters = pattern.StartsWith("^[A-Za-z0-9]", StringComparison.Ordinal) ? "abcXYZ019" : "ab<&\"'é=+;,\u2028 ";
        return new string([.. Enumerable.Range(0, Math.Min(length, longest)).Select(_ => letters[dice.Next(letters.Length)])]);
    }

    private decimal Figure(JsonElement schema)
    {
        var (least, most) = (schema.GetProperty("minimum").GetDecimal(), schema.GetProperty("maximum").GetDecimal());
        return dice.Next(5) switch
        {
            0 => least,
            1 => most,
            _ => Math.Clamp(Near(100), least, most),
        };
    }

    private decimal Near(int scale) => decimal.Round((decimal)(dice.NextDouble() * scale), dice.Next(4));

    private static IEnumerable<(JsonNode Parent, string? Name, int Index)> Places(JsonNode? node) => node switch
    {
        JsonObject members => members.SelectMany(m => Places(m.Value).Prepend((members, m.Key, 0))),
        JsonArray items => items.SelectMany((item, i) => Places(item).Prepend((items, null, i))),
        _ => [],
    };
}
