using System.Globalization;
using System.Text.Json;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Wire;

/// <summary>
/// Walks a whole JSON document beside its <see cref="Shape"/> and collects everything that keeps it from being read:
/// wrong types, unknown and repeated members, unknown words, texts that are no length. In the order of the document.
/// </summary>
internal sealed class ShapeCheck
{
    private readonly List<Fault> faults = [];

    public static List<Fault> FaultsOf(JsonElement root, Shape shape)
    {
        var check = new ShapeCheck();
        check.Check(root, shape, JsonPlace.Root);
        return check.faults;
    }

    private void Check(JsonElement value, Shape shape, JsonPlace place)
    {
        if (faults.Count >= Fault.MaxTold)
        {
            return;
        }

        switch (shape.Kind)
        {
            case ShapeKind.Object when Is(value, JsonValueKind.Object, "an object", place):
                CheckMembers(value, shape, place);
                break;
            case ShapeKind.List when Is(value, JsonValueKind.Array, "an array", place):
                var index = 0;
                foreach (var item in value.EnumerateArray())
                {
                    Check(item, shape.Item!, place.Item(index++));
                }

                break;
            case ShapeKind.Flag when value.ValueKind is not (JsonValueKind.True or JsonValueKind.False):
                WrongType(value, "true or false", place);
                break;
            case ShapeKind.Number when Is(value, JsonValueKind.Number, "a number", place):
                ReadNumber(value, place);
                break;
            case ShapeKind.Whole when Is(value, JsonValueKind.Number, "a whole number", place):
                if (ReadNumber(value, place) is { } number && number != decimal.Truncate(number))
                {
                    Add(place, "not_whole", "This must be a whole number.");
                }

                break;
            case ShapeKind.Text when Is(value, JsonValueKind.String, "a string", place):
                ReadText(value, place);
                break;
            case ShapeKind.Word when Is(value, JsonValueKind.String, "a string", place):
                CheckWord(value, shape, place);
                break;
            case ShapeKind.Date when Is(value, JsonValueKind.String, "a string", place):
                CheckDate(value, place);
                break;
            case ShapeKind.Length:
                CheckLength(value, place);
                break;
            case ShapeKind.Point:
                CheckPoint(value, place);
                break;
            case ShapeKind.Part when Is(value, JsonValueKind.Object, "an object", place):
                faults.AddRange(PartCheck.FaultsOf(value, place));
                break;
        }
    }

    private void CheckMembers(JsonElement value, Shape shape, JsonPlace place)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (var member in value.EnumerateObject())
        {
            if (NameOf(member) is not { } name)
            {
                Add(place, "text_not_unicode", "A member name here holds half a surrogate pair, which is no character.");
                continue;
            }

            var at = place.Member(name);
            if (!seen.Add(name))
            {
                Add(at, "duplicate_member", $"The member \"{Short(name)}\" stands here more than once.", ("member", Short(name)));
            }
            else if (!shape.Members.TryGetValue(name, out var inner))
            {
                Add(at, "unknown_member", $"There is no member \"{Short(name)}\" here.", ("member", Short(name)));
            }
            else if (member.Value.ValueKind != JsonValueKind.Null)
            {
                Check(member.Value, inner, at);
            }
        }
    }

    private void CheckWord(JsonElement value, Shape shape, JsonPlace place)
    {
        if (ReadText(value, place) is { } word && !shape.Words.Contains(word, StringComparer.Ordinal))
        {
            var words = string.Join(", ", shape.Words);
            Add(place, "unknown_word", $"\"{Short(word)}\" is not known here; the words are {words}.", ("value", Short(word)), ("words", words));
        }
    }

    private void CheckDate(JsonElement value, JsonPlace place)
    {
        if (ReadText(value, place) is { } text
            && !DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
        {
            Add(place, "date_malformed", $"\"{Short(text)}\" is no date; write year-month-day, for example 2025-03-31.", ("value", Short(text)));
        }
    }

    private void CheckLength(JsonElement value, JsonPlace place)
    {
        if (value.ValueKind == JsonValueKind.Number)
        {
            ReadNumber(value, place);
        }
        else if (Is(value, JsonValueKind.String, "a length: a number or a string", place)
            && ReadText(value, place) is { } text
            && !TradeNotation.TryRead(text, out _, out var fault))
        {
            Add(place, fault.Code, fault.Detail, ("value", Short(text)));
        }
    }

    private void CheckPoint(JsonElement value, JsonPlace place)
    {
        if (!Is(value, JsonValueKind.Array, "a point: an array of two lengths", place))
        {
            return;
        }

        var count = value.GetArrayLength();
        if (count != 2)
        {
            Add(place, "point_not_two", $"A point is an array of exactly two lengths; this has {count}.", ("count", count.ToString(CultureInfo.InvariantCulture)));
            return;
        }

        CheckLength(value[0], place.Item(0));
        CheckLength(value[1], place.Item(1));
    }

    private decimal? ReadNumber(JsonElement value, JsonPlace place)
    {
        if (value.TryGetDecimal(out var number))
        {
            return number;
        }

        Add(place, "number_too_large", "This number is larger than any that can be read.");
        return null;
    }

    private string? ReadText(JsonElement value, JsonPlace place)
    {
        try
        {
            return value.GetString();
        }
        catch (InvalidOperationException)
        {
            Add(place, "text_not_unicode", "This text holds half a surrogate pair, which is no character.");
            return null;
        }
    }

    private static string? NameOf(JsonProperty member)
    {
        try
        {
            return member.Name;
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    private bool Is(JsonElement value, JsonValueKind kind, string wanted, JsonPlace place)
    {
        if (value.ValueKind == kind)
        {
            return true;
        }

        WrongType(value, wanted, place);
        return false;
    }

    private void WrongType(JsonElement value, string wanted, JsonPlace place)
    {
        var found = value.ValueKind switch
        {
            JsonValueKind.Object => "an object",
            JsonValueKind.Array => "an array",
            JsonValueKind.String => "a string",
            JsonValueKind.Number => "a number",
            JsonValueKind.Null => "null",
            _ => "true or false",
        };
        Add(place, "wrong_type", $"This must be {wanted}, not {found}.", ("wanted", wanted), ("found", found));
    }

    private void Add(JsonPlace place, string code, string detail, params (string Name, string Value)[] values)
    {
        if (faults.Count < Fault.MaxTold)
        {
            faults.Add(Fault.At(place.ToString(), code, detail, values));
        }
    }

    /// <summary>A caller's text as it may be repeated in a sentence: short, and without control characters.</summary>
    private static string Short(string text)
    {
        var kept = text.Length <= 40 ? text : text[..(char.IsHighSurrogate(text[39]) ? 39 : 40)] + "…";
        return string.Concat(kept.Select(c => char.IsControl(c) ? '\uFFFD' : c));
    }
}
