using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace LayoutService.Api.Describing;

/// <summary>Writes a JSON document as YAML 1.2 in block style; texts stand in double quotes, which both read alike.</summary>
internal static class YamlText
{
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Of(JsonNode root)
    {
        var text = new StringBuilder();
        Write(root, 0, text, afterMark: false);
        return text.ToString();
    }

    private static void Write(JsonNode? node, int depth, StringBuilder text, bool afterMark)
    {
        switch (node)
        {
            case JsonObject { Count: > 0 } members:
                WriteMembers(members, depth, text, afterMark);
                break;
            case JsonArray { Count: > 0 } items:
                WriteItems(items, depth, text, afterMark);
                break;
            default:
                text.Append(afterMark ? " " : "").Append(node is null ? "null" : node.ToJsonString(Plain)).Append('\n');
                break;
        }
    }

    private static void WriteMembers(JsonObject members, int depth, StringBuilder text, bool afterMark)
    {
        text.Append(afterMark ? "\n" : "");
        foreach (var (name, value) in members)
        {
            text.Append(' ', 2 * depth).Append(Key(name)).Append(':');
            Write(value, depth + 1, text, afterMark: true);
        }
    }

    private static void WriteItems(JsonArray items, int depth, StringBuilder text, bool afterMark)
    {
        text.Append(afterMark ? "\n" : "");
        foreach (var item in items)
        {
            text.Append(' ', 2 * depth).Append('-');
            Write(item, depth + 1, text, afterMark: true);
        }
    }

    private static string Key(string name) =>
        name.All(c => char.IsAsciiLetterOrDigit(c) || c is '_' or '$') && !char.IsAsciiDigit(name[0]) && name is not ("y" or "n" or "yes" or "no" or "on" or "off" or "true" or "false" or "null")
            ? name
            : string.Create(CultureInfo.InvariantCulture, $"{JsonSerializer.Serialize(name, Plain)}");
}
