using System.Text.Json;

namespace LayoutService.Api.Tests.Contract;

/// <summary>
/// What in a contract would break a client of an earlier one. A client sends what the old contract took, and reads what it
/// promised: so requests may only be taken more widely, and answers may only promise more.
/// </summary>
internal sealed class BreakingChanges
{
    private static readonly string[] UpperBounds = ["maximum", "maxLength", "maxItems"];
    private static readonly string[] LowerBounds = ["minimum", "minLength", "minItems"];
    private readonly JsonElement was;
    private readonly JsonElement now;
    private readonly List<string> found = [];
    private readonly HashSet<(string, bool)> seen = [];

    private BreakingChanges(JsonElement was, JsonElement now) => (this.was, this.now) = (was, now);

    public static IReadOnlyList<string> Between(JsonElement was, JsonElement now)
    {
        var changes = new BreakingChanges(was, now);
        foreach (var path in was.GetProperty("paths").EnumerateObject())
        {
            foreach (var operation in path.Value.EnumerateObject())
            {
                var place = $"{operation.Name.ToUpperInvariant()} {path.Name}";
                if (Member(Member(now.GetProperty("paths"), path.Name), operation.Name) is { } kept)
                {
                    changes.Operation(place, operation.Value, kept);
                }
                else
                {
                    changes.found.Add($"{place}: gone");
                }
            }
        }

        return changes.found;
    }

    private void Operation(string place, JsonElement old, JsonElement kept)
    {
        var (oldQuery, keptQuery) = (Parameters(old), Parameters(kept));
        found.AddRange(oldQuery.Keys.Except(keptQuery.Keys).Select(name => $"{place}: parameter {name} gone"));
        found.AddRange(keptQuery.Where(p => !oldQuery.ContainsKey(p.Key) && Member(p.Value, "required") is { ValueKind: JsonValueKind.True }).Select(p => $"{place}: parameter {p.Key} is needed now"));
        foreach (var (name, parameter) in oldQuery.Where(p => keptQuery.ContainsKey(p.Key)))
        {
            Schema($"{place}?{name}", parameter.GetProperty("schema"), keptQuery[name].GetProperty("schema"), true);
        }

        Contents(place, Member(old, "requestBody"), Member(kept, "requestBody"), true);
        foreach (var answer in old.GetProperty("responses").EnumerateObject().Where(r => r.Name[0] == '2'))
        {
            Contents($"{place} {answer.Name}", answer.Value, Member(kept.GetProperty("responses"), answer.Name), false);
        }
    }

    private void Contents(string place, JsonElement? old, JsonElement? kept, bool sent)
    {
        foreach (var form in (Member(old, "content") ?? default) is { ValueKind: JsonValueKind.Object } forms ? forms.EnumerateObject().ToList() : [])
        {
            if (Member(Member(kept, "content"), form.Name) is { } same)
            {
                Schema($"{place} {form.Name}", form.Value.GetProperty("schema"), same.GetProperty("schema"), sent);
            }
            else
            {
                found.Add($"{place}: {form.Name} gone");
            }
        }
    }

    private void Schema(string place, JsonElement old, JsonElement kept, bool sent)
    {
        if (Name(old) is { } name && !seen.Add((name, sent)))
        {
            return;
        }

        (old, kept) = (Whole(old, was), Whole(kept, now));
        Types(place, old, kept, sent);
        Words(place, old, kept, sent);
        Bounds(place, old, kept, sent);
        Members(place, old, kept, sent);
        if (Member(old, "items") is { } item && Member(kept, "items") is { } keptItem)
        {
            Schema(place + "[]", item, keptItem, sent);
        }
    }

    private void Types(string place, JsonElement old, JsonElement kept, bool sent)
    {
        var (before, after) = (TypesOf(old), TypesOf(kept));
        var lost = sent ? before.Except(after) : after.Except(before);
        found.AddRange(lost.Where(_ => before.Count > 0 && after.Count > 0).Select(type => $"{place}: type {type} {(sent ? "is not taken any more" : "is new")}"));
    }

    // an answer's words may grow: clients are told to expect it
    private void Words(string place, JsonElement old, JsonElement kept, bool sent)
    {
        if (sent && Member(kept, "enum") is { } words)
        {
            var taken = words.EnumerateArray().Select(w => w.GetRawText()).ToHashSet();
            found.AddRange(Member(old, "enum") is { } before
                ? before.EnumerateArray().Select(w => w.GetRawText()).Where(w => !taken.Contains(w)).Select(w => $"{place}: the word {w} is not taken any more")
                : [$"{place}: only some words are taken now"]);
        }
    }

    private void Bounds(string place, JsonElement old, JsonElement kept, bool sent)
    {
        if (!sent)
        {
            return;
        }

        found.AddRange(UpperBounds.Where(b => Figure(kept, b) is { } most && most < (Figure(old, b) ?? decimal.MaxValue)).Select(b => $"{place}: {b} is lower"));
        found.AddRange(LowerBounds.Where(b => Figure(kept, b) is { } least && least > (Figure(old, b) ?? decimal.MinValue)).Select(b => $"{place}: {b} is higher"));
        if (Member(kept, "pattern") is { } pattern && Member(old, "pattern")?.GetString() != pattern.GetString())
        {
            found.Add($"{place}: another pattern");
        }
    }

    private void Members(string place, JsonElement old, JsonElement kept, bool sent)
    {
        foreach (var member in Member(old, "properties") is { } members ? members.EnumerateObject().ToList() : [])
        {
            if (Member(Member(kept, "properties"), member.Name) is { } same)
            {
                Schema($"{place}/{member.Name}", member.Value, same, sent);
            }
            else
            {
                found.Add($"{place}/{member.Name}: gone");
            }
        }

        var (before, after) = (Needed(old), Needed(kept));
        found.AddRange(sent
            ? after.Except(before).Select(name => $"{place}/{name}: is needed now")
            : before.Except(after).Select(name => $"{place}/{name}: is not always there any more"));
    }

    private static Dictionary<string, JsonElement> Parameters(JsonElement operation) => Member(operation, "parameters") is { } list
        ? list.EnumerateArray().ToDictionary(p => p.GetProperty("name").GetString()!)
        : [];

    private static List<string> TypesOf(JsonElement schema) => Member(schema, "type") switch
    {
        { ValueKind: JsonValueKind.String } one => [one.GetString()!],
        { ValueKind: JsonValueKind.Array } some => [.. some.EnumerateArray().Select(t => t.GetString()!)],
        _ => [],
    };

    private static List<string> Needed(JsonElement schema) => Member(schema, "required") is { } names ? [.. names.EnumerateArray().Select(n => n.GetString()!)] : [];

    private static decimal? Figure(JsonElement schema, string name) => Member(schema, name)?.GetDecimal();

    private static string? Name(JsonElement schema) => Member(schema, "$ref")?.GetString();

    private static JsonElement Whole(JsonElement schema, JsonElement contract) => Name(schema) is { } name
        ? contract.GetProperty("components").GetProperty("schemas").GetProperty(name[(name.LastIndexOf('/') + 1)..])
        : schema;

    private static JsonElement? Member(JsonElement? of, string name) =>
        of is { ValueKind: JsonValueKind.Object } members && members.TryGetProperty(name, out var member) ? member : null;
}
