using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Unicode;

namespace LayoutService.Api.Wire;

/// <summary>A request read from JSON, or every fault that keeps it from being read.</summary>
public sealed record JsonReading<T>(T? Value, JsonElement Root, IReadOnlyList<Fault> Faults)
    where T : class
{
    private static readonly Shape Wanted = Shape.Of(typeof(T), WireJson.Options);

    private static readonly JsonDocumentOptions Strict = new()
    {
        MaxDepth = SyntaxCheck.MaxDepth,
        CommentHandling = JsonCommentHandling.Disallow,
        AllowTrailingCommas = false,
    };

    /// <summary>Reads UTF-8 JSON; a byte order mark in front is passed over.</summary>
    public static JsonReading<T> Of(ReadOnlyMemory<byte> json)
    {
        if (json.Span.StartsWith("\uFEFF"u8))
        {
            json = json[3..];
        }

        if (!TryParse(json.Span, out var root, out var syntax))
        {
            return new(null, default, [syntax]);
        }

        var faults = ShapeCheck.FaultsOf(root, Wanted);
        return faults.Count > 0
            ? new(null, default, faults)
            : new(root.Deserialize<T>(WireJson.Options), root, []);
    }

    private static bool TryParse(ReadOnlySpan<byte> json, out JsonElement root, [NotNullWhen(false)] out Fault? fault)
    {
        fault = null;
        root = default;
        if (Utf8.IsValid(json))
        {
            try
            {
                root = JsonElement.Parse(json, Strict);
                return true;
            }
            catch (JsonException)
            {
                // What is wrong, and where, is told below in our own words.
            }
        }

        fault = SyntaxCheck.FaultOf(json) ?? Fault.At("#", "json_malformed", "The body is not JSON.");
        return false;
    }
}
