using System.Globalization;
using System.Text.Json;

namespace LayoutService.Auditor.Reading;

/// <summary>
/// The auditor's own reading of a length, in millimetres: a number in the request's units, or a text that carries its
/// unit, as feet-inches-fractions, decimal feet or inches, mm, cm or m. 1 in = 25.4 mm exactly.
/// </summary>
public static class LengthText
{
    private static readonly (string Word, double Millimetres)[] Units =
    [
        ("feet", 304.8), ("foot", 304.8), ("ft", 304.8), ("'", 304.8), ("\u2032", 304.8), ("\u2019", 304.8),
        ("inches", 25.4), ("inch", 25.4), ("in", 25.4), ("\"", 25.4), ("\u2033", 25.4), ("\u201d", 25.4),
        ("mm", 1), ("cm", 10), ("m", 1000),
    ];

    /// <summary>Millimetres of a JSON length; throws <see cref="FormatException"/> for anything else.</summary>
    public static double Millimetres(JsonElement length, double unit) => length.ValueKind switch
    {
        JsonValueKind.Number => length.GetDouble() * unit,
        JsonValueKind.String => TryRead(length.GetString()!, out var mm)
            ? mm : throw new FormatException($"no length: {length.GetString()}"),
        _ => throw new FormatException($"no length: {length.ValueKind}"),
    };

    /// <summary>Reads an answer's tape text, where a feet form may stand beside the inches in brackets: both must agree.</summary>
    public static bool TryReadTape(string text, out double millimetres)
    {
        var forms = text.Split(['(', ')', '='], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        millimetres = 0;
        return forms.Length > 0 && TryRead(forms[0], out millimetres)
            && (forms.Length == 1 || (TryRead(forms[1], out var other) && Math.Abs(other - millimetres) < 0.01));
    }

    /// <summary>Reads a text in trade notation; false when any part of it is no quantity with a unit.</summary>
    public static bool TryRead(string text, out double millimetres)
    {
        millimetres = 0;
        var rest = text.Trim();
        var sign = 1;
        if (rest.StartsWith('-') || rest.StartsWith('\u2212'))
        {
            sign = -1;
            rest = rest[1..].TrimStart();
        }

        var read = false;
        while (rest.Length > 0)
        {
            if (!TryQuantity(ref rest, out var quantity) || !TryUnit(ref rest, out var unit))
            {
                return false;
            }

            millimetres += quantity * unit;
            read = true;
            rest = rest.TrimStart(' ', '-', '\u00a0');
        }

        millimetres *= sign;
        return read;
    }

    private static bool TryQuantity(ref string rest, out double quantity)
    {
        quantity = 0;
        if (!TryNumber(ref rest, out var first))
        {
            return false;
        }

        if (rest.StartsWith('/'))
        {
            rest = rest[1..];
            return TryNumber(ref rest, out var under) && under > 0 && Set(out quantity, first / under);
        }

        quantity = first;
        var ahead = rest.TrimStart(' ', '-', '\u00a0');
        if (TryNumber(ref ahead, out var over) && ahead.StartsWith('/'))
        {
            ahead = ahead[1..];
            if (!TryNumber(ref ahead, out var under) || under <= 0)
            {
                return false;
            }

            quantity += over / under;
            rest = ahead;
        }

        return true;
    }

    private static bool Set(out double place, double value)
    {
        place = value;
        return true;
    }

    private static bool TryNumber(ref string rest, out double number)
    {
        var end = 0;
        while (end < rest.Length && (char.IsAsciiDigit(rest[end]) || rest[end] == '.'))
        {
            end++;
        }

        var read = double.TryParse(rest[..end], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);
        rest = read ? rest[end..] : rest;
        return read;
    }

    private static bool TryUnit(ref string rest, out double unit)
    {
        var ahead = rest.TrimStart(' ', '\u00a0');
        foreach (var (word, millimetres) in Units)
        {
            if (ahead.StartsWith(word, StringComparison.OrdinalIgnoreCase))
            {
                rest = ahead[word.Length..];
                unit = millimetres;
                return true;
            }
        }

        unit = 0;
        return false;
    }
}
