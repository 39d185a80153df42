using System.Globalization;
using System.Text.Json;
using System.Text.Unicode;

namespace LayoutService.Api.Wire;

/// <summary>Finds the one place where a text stops being JSON, and says in words what is wrong there.</summary>
internal static class SyntaxCheck
{
    /// <summary>Deepest nesting that is read; the deepest request needs 6.</summary>
    public const int MaxDepth = 16;

    /// <summary>The fault, or null when the text is JSON no deeper than <see cref="MaxDepth"/>.</summary>
    public static Fault? FaultOf(ReadOnlySpan<byte> json)
    {
        if (!Utf8.IsValid(json))
        {
            return Fault.At("#", "not_utf8", "The body is not UTF-8.");
        }

        if (json.IndexOfAnyExcept(" \t\r\n"u8) < 0)
        {
            return Fault.At("#", "body_empty", "The body is empty; a JSON object is needed.");
        }

        var open = new Stack<OpenValue>();
        var current = JsonPlace.Root;
        var reader = new Utf8JsonReader(json, new JsonReaderOptions { MaxDepth = 1000 });
        try
        {
            while (reader.Read())
            {
                if (reader.CurrentDepth >= MaxDepth)
                {
                    return TooDeep(current);
                }

                Follow(ref reader, open, ref current);
            }

            return null;
        }
        catch (JsonException wrong)
        {
            var at = (int)Math.Min(json.Length, PositionOf(json, wrong));
            return Describe(json, at, wrong, current);
        }
    }

    private static Fault TooDeep(JsonPlace place) => Fault.At(
        place.ToString(), "json_too_deep", $"The body is nested deeper than {MaxDepth} levels.", ("limit", MaxDepth.ToString(CultureInfo.InvariantCulture)));

    /// <summary>Keeps the place of the token just read: in a list the item, in an object the member.</summary>
    private static void Follow(ref Utf8JsonReader reader, Stack<OpenValue> open, ref JsonPlace current)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.PropertyName:
                current = open.Peek().Place.Member(NameOf(ref reader));
                return;
            case JsonTokenType.EndArray or JsonTokenType.EndObject:
                current = open.Pop().Place;
                return;
        }

        if (open.TryPeek(out var around) && around.IsList)
        {
            current = around.Place.Item(around.Next++);
        }

        if (reader.TokenType is JsonTokenType.StartArray or JsonTokenType.StartObject)
        {
            open.Push(new OpenValue { Place = current, IsList = reader.TokenType == JsonTokenType.StartArray });
        }
    }

    private static string NameOf(ref Utf8JsonReader reader)
    {
        try
        {
            return reader.GetString()!;
        }
        catch (InvalidOperationException)
        {
            return "\uFFFD";
        }
    }

    private static long PositionOf(ReadOnlySpan<byte> json, JsonException wrong)
    {
        var line = wrong.LineNumber ?? 0;
        var start = 0;
        for (; line > 0; line--)
        {
            start += json[start..].IndexOf((byte)'\n') + 1;
        }

        return start + (wrong.BytePositionInLine ?? 0);
    }

    private static Fault Describe(ReadOnlySpan<byte> json, int at, JsonException wrong, JsonPlace place)
    {
        var line = ((wrong.LineNumber ?? 0) + 1).ToString(CultureInfo.InvariantCulture);
        var column = ((wrong.BytePositionInLine ?? 0) + 1).ToString(CultureInfo.InvariantCulture);
        var (code, what) = Kind(json, at);
        return Fault.At(place.ToString(), code, $"{what} (line {line}, byte {column}).", ("line", line), ("byte", column));
    }

    private static (string Code, string What) Kind(ReadOnlySpan<byte> json, int at)
    {
        var rest = json[at..];
        var before = json[..at].TrimEnd(" \t\r\n"u8);
        if (rest.Length == 0)
        {
            return ("json_cut_short", "The body ends before the JSON does");
        }

        if (rest[0] == (byte)'/')
        {
            return ("json_comment", "JSON has no comments");
        }

        if (rest[0] is (byte)']' or (byte)'}' && before.Length > 0 && before[^1] == (byte)',')
        {
            return ("json_trailing_comma", "A comma stands before the closing bracket");
        }

        return ("json_malformed", "The body is not JSON here");
    }

    /// <summary>An array or object that is not closed yet.</summary>
    private sealed class OpenValue
    {
        public required JsonPlace Place { get; init; }

        public required bool IsList { get; init; }

        /// <summary>Number of the next item.</summary>
        public int Next { get; set; }
    }
}
