using System.Globalization;
using System.Text;
using System.Text.Json;

namespace LayoutService.Api.Wire;

/// <summary>
/// JSON in the one form of RFC 8785 (JSON Canonicalization Scheme): no white space, members sorted by UTF-16 code units,
/// numbers as ECMAScript prints a double, and only the escapes that must be.
/// </summary>
internal static class CanonicalJson
{
    /// <summary>Canonical UTF-8 of <paramref name="root"/> without its member <paramref name="less"/>.</summary>
    public static byte[] Of(JsonElement root, string less)
    {
        var text = new StringBuilder();
        Write(root, text, less);
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void Write(JsonElement value, StringBuilder text, string? less)
    {
        switch (value.ValueKind)
        {
            case JsonValueKind.Object:
                WriteObject(value, text, less);
                break;
            case JsonValueKind.Array:
                text.Append('[');
                var first = true;
                foreach (var item in value.EnumerateArray())
                {
                    text.Append(first ? "" : ",");
                    first = false;
                    Write(item, text, null);
                }

                text.Append(']');
                break;
            case JsonValueKind.String:
                WriteText(value.GetString()!, text);
                break;
            case JsonValueKind.Number:
                text.Append(Number(value.GetDouble()));
                break;
            default:
                text.Append(value.GetRawText());
                break;
        }
    }

    private static void WriteObject(JsonElement value, StringBuilder text, string? less)
    {
        var members = value.EnumerateObject().Where(m => m.Name != less).ToList();
        members.Sort((a, b) => string.CompareOrdinal(a.Name, b.Name));
        text.Append('{');
        for (var i = 0; i < members.Count; i++)
        {
            text.Append(i == 0 ? "" : ",");
            WriteText(members[i].Name, text);
            text.Append(':');
            Write(members[i].Value, text, null);
        }

        text.Append('}');
    }

    private static void WriteText(string value, StringBuilder text)
    {
        text.Append('"');
        foreach (var c in value)
        {
            _ = c switch
            {
                '"' => text.Append("\\\""),
                '\\' => text.Append("\\\\"),
                '\b' => text.Append("\\b"),
                '\t' => text.Append("\\t"),
                '\n' => text.Append("\\n"),
                '\f' => text.Append("\\f"),
                '\r' => text.Append("\\r"),
                < ' ' => text.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}"),
                _ => text.Append(c),
            };
        }

        text.Append('"');
    }

    /// <summary>ECMAScript's Number::toString: the shortest digits, plain from 1e-6 to below 1e21, else with an exponent.</summary>
    internal static string Number(double value)
    {
        if (value == 0)
        {
            return "0";
        }

        var shortest = value.ToString("E16", CultureInfo.InvariantCulture);
        var round = value.ToString("R", CultureInfo.InvariantCulture);
        var sign = value < 0 ? "-" : "";
        var exponent = int.Parse(shortest[(shortest.IndexOf('E', StringComparison.Ordinal) + 1)..], CultureInfo.InvariantCulture);
        var mantissa = round.Split('E')[0].TrimStart('-').Replace(".", "", StringComparison.Ordinal).TrimStart('0').TrimEnd('0');
        var n = exponent + 1;
        var k = mantissa.Length;
        if (k <= n && n <= 21)
        {
            return sign + mantissa + new string('0', n - k);
        }

        if (n is > 0 and <= 21)
        {
            return $"{sign}{mantissa[..n]}.{mantissa[n..]}";
        }

        if (n is > -6 and <= 0)
        {
            return $"{sign}0.{new string('0', -n)}{mantissa}";
        }

        var tail = k == 1 ? "" : "." + mantissa[1..];
        var power = n - 1;
        return $"{sign}{mantissa[0]}{tail}e{(power < 0 ? "-" : "+")}{Math.Abs(power).ToString(CultureInfo.InvariantCulture)}";
    }
}
