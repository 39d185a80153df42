using System.Diagnostics.CodeAnalysis;

namespace LayoutService.Engine.Measures;

/// <summary>
/// Reads a length as the trade writes it, with its own unit: <c>12' 6 1/2"</c>, <c>12ft 6-1/2in</c>, <c>150 1/2 in</c>,
/// <c>12.54 ft</c>, <c>3.81 m</c>, <c>381 cm</c>, <c>3810 mm</c>. Typographic quotes, primes, dashes and the fraction
/// characters are taken for what they mean. Reading is total: every text is a length or has one <see cref="NotationFault"/>.
/// A fraction is of a tape: its denominator is 2, 4, 8, 16, 32 or 64, and is kept exactly.
/// </summary>
public static class TradeNotation
{
    /// <summary>Longest text that is read, in characters.</summary>
    public const int MaxTextLength = 40;

    /// <summary>Most digits on either side of a decimal point; keeps every sum inside the range of <see cref="Length"/>.</summary>
    public const int MaxDigits = 9;

    /// <summary>Reads <paramref name="text"/>; the length is exact to 1/8000 mm (nearest, ties to even).</summary>
    public static bool TryRead(string text, out Length length, [NotNullWhen(false)] out NotationFault? fault)
    {
        length = default;
        if (text.Length > MaxTextLength)
        {
            fault = new("length_text_too_long", $"A length is at most {MaxTextLength} characters; this text has {text.Length}.");
            return false;
        }

        if (!NotationReader.TrySplit(text, out var marks, out fault))
        {
            return false;
        }

        return NotationSum.TryAdd(marks, out length, out fault);
    }
}
