using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace LayoutService.Engine.Measures;

/// <summary>Splits a written length into numbers, fractions, units and dashes.</summary>
internal static class NotationReader
{
    private const decimal Foot = 12 * Length.PerInch;

    /// <summary>Splits the text in one pass, or says what cannot be read.</summary>
    public static bool TrySplit(string text, out List<NotationMark> marks, [NotNullWhen(false)] out NotationFault? fault)
    {
        marks = [];
        fault = null;
        var at = 0;
        while (at < text.Length && fault is null)
        {
            var c = text[at];
            if (IsSpace(c))
            {
                at++;
            }
            else if (IsDash(c))
            {
                marks.Add(new(NotationKind.Dash, 0, "-"));
                at++;
            }
            else if (char.IsAsciiDigit(c) || c == '.')
            {
                fault = Number(text, ref at, marks);
            }
            else if (TapeFraction(c) is { } eighths)
            {
                marks.Add(new(NotationKind.Fraction, eighths / 8m, c.ToString()));
                at++;
            }
            else
            {
                fault = Unit(text, ref at, marks);
            }
        }

        if (fault is null && marks.Count == 0)
        {
            fault = new("length_text_empty", "The text is empty; a length is a number and a unit, for example 3810 mm or 12' 6 1/2\".");
        }

        return fault is null;
    }

    private static NotationFault? Number(string text, ref int at, List<NotationMark> marks)
    {
        var start = at;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] == '.'))
        {
            at++;
        }

        var written = text[start..at];
        var dot = written.IndexOf('.', StringComparison.Ordinal);
        var whole = dot < 0 ? written : written[..dot];
        var decimals = dot < 0 ? "" : written[(dot + 1)..];
        if (decimals.Contains('.', StringComparison.Ordinal) || (dot >= 0 && decimals.Length == 0))
        {
            return new("length_number_malformed", $"\"{written}\" is no number.");
        }

        if (whole.Length > TradeNotation.MaxDigits || decimals.Length > TradeNotation.MaxDigits)
        {
            return new("length_number_too_long", $"\"{written}\" has more than {TradeNotation.MaxDigits} digits on one side of the point.");
        }

        if (at < text.Length && text[at] is '/' or '\u2044')
        {
            return Fraction(text, start, ref at, marks, written, dot < 0);
        }

        marks.Add(new(NotationKind.Number, decimal.Parse("0" + written, CultureInfo.InvariantCulture), written, dot < 0));
        return null;
    }

    private static NotationFault? Fraction(
        string text, int start, ref int at, List<NotationMark> marks, string numerator, bool isWhole)
    {
        var below = at + 1;
        at = below;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
        {
            at++;
        }

        var written = text[start..at];
        if (!isWhole || at == below || at - below > TradeNotation.MaxDigits)
        {
            return new("length_fraction_malformed", $"\"{written}\" is no fraction of an inch.");
        }

        var top = long.Parse(numerator, CultureInfo.InvariantCulture);
        var bottom = long.Parse(text[below..at], CultureInfo.InvariantCulture);
        if (bottom is not (2 or 4 or 8 or 16 or 32 or 64))
        {
            return new("length_fraction_denominator", $"\"{written}\": a fraction is in halves, quarters, 8ths, 16ths, 32nds or 64ths.");
        }

        if (top >= bottom)
        {
            return new("length_fraction_improper", $"\"{written}\" is not less than one; write the whole number before the fraction.");
        }

        marks.Add(new(NotationKind.Fraction, (decimal)top / bottom, written));
        return null;
    }

    private static NotationFault? Unit(string text, ref int at, List<NotationMark> marks)
    {
        var c = text[at];
        if (IsPrime(c))
        {
            at++;
            var doubled = at < text.Length && IsPrime(text[at]);
            at += doubled ? 1 : 0;
            marks.Add(new(NotationKind.Unit, doubled ? Length.PerInch : Foot, doubled ? "\"" : "'"));
            return null;
        }

        if (c is '"' or '\u2033' or '\u201C' or '\u201D' or '\u201F' or '\u02BA' or '\uFF02')
        {
            at++;
            marks.Add(new(NotationKind.Unit, Length.PerInch, "\""));
            return null;
        }

        if (c == ',')
        {
            return new("length_comma", "A length has no comma; write a decimal point, and no mark between thousands.");
        }

        if (!char.IsAsciiLetter(c))
        {
            return new("length_character", $"A length does not hold the character {Name(text, at)}.");
        }

        var start = at;
        while (at < text.Length && char.IsAsciiLetter(text[at]))
        {
            at++;
        }

        var word = text[start..at];
        if (UnitOf(word) is not { } size)
        {
            return new("length_unit_unknown", $"\"{word}\" is no unit of length; use ft, in, mm, cm or m.");
        }

        if (at < text.Length && text[at] == '.' && (at + 1 == text.Length || !char.IsAsciiDigit(text[at + 1])))
        {
            at++;
        }

        marks.Add(new(NotationKind.Unit, size, word));
        return null;
    }

    private static decimal? UnitOf(string word) => word.ToLowerInvariant() switch
    {
        "ft" or "foot" or "feet" => Foot,
        "in" or "inch" or "inches" => Length.PerInch,
        "mm" or "millimetre" or "millimetres" or "millimeter" or "millimeters" => Length.PerMillimetre,
        "cm" or "centimetre" or "centimetres" or "centimeter" or "centimeters" => 10 * Length.PerMillimetre,
        "m" or "metre" or "metres" or "meter" or "meters" => 1000 * Length.PerMillimetre,
        _ => null,
    };

    private static bool IsSpace(char c) => c is ' ' or '\u00A0' or '\u2007' or '\u2009' or '\u202F';

    private static bool IsDash(char c) => c is '-' or '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\u2014' or '\u2212';

    private static bool IsPrime(char c) => c is '\'' or '\u2032' or '\u2018' or '\u2019' or '\u201B' or '\u02B9' or '`' or '\u00B4' or '\uFF07';

    /// <summary>The single characters for tape fractions, in eighths.</summary>
    private static int? TapeFraction(char c) => c switch
    {
        '\u215B' => 1,
        '\u00BC' => 2,
        '\u215C' => 3,
        '\u00BD' => 4,
        '\u215D' => 5,
        '\u00BE' => 6,
        '\u215E' => 7,
        _ => null,
    };

    private static string Name(string text, int at)
    {
        var rune = char.IsSurrogate(text[at])
            ? at + 1 < text.Length && char.IsSurrogatePair(text, at) ? char.ConvertToUtf32(text, at) : text[at]
            : text[at];
        var printable = rune is > 0x20 and < 0x7F;
        return printable ? $"\"{(char)rune}\"" : $"U+{rune:X4}";
    }
}
