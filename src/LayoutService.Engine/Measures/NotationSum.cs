using System.Diagnostics.CodeAnalysis;

namespace LayoutService.Engine.Measures;

/// <summary>
/// Adds the marks of a written length: an optional minus, then one quantity with its unit, or feet and then inches.
/// A number after feet that has no unit of its own is inches, as on a tape.
/// </summary>
internal static class NotationSum
{
    private const decimal Foot = 12 * Length.PerInch;

    /// <summary>The sum of all marks, or what is wrong with them.</summary>
    public static bool TryAdd(List<NotationMark> marks, out Length length, [NotNullWhen(false)] out NotationFault? fault)
    {
        length = default;
        var at = 0;
        var negative = marks[0].Kind == NotationKind.Dash;
        at += negative ? 1 : 0;
        if (Quantity(marks, ref at, out var first, out var firstIsWhole) is { } firstFault)
        {
            fault = firstFault;
            return false;
        }

        if (at == marks.Count)
        {
            fault = new("length_without_unit", $"\"{Written(marks)}\" has no unit; add ft, in, mm, cm or m, or send a JSON number.");
            return false;
        }

        if (marks[at].Kind != NotationKind.Unit)
        {
            fault = new("length_unit_missing", $"A unit is missing before \"{marks[at].Text}\".");
            return false;
        }

        var unit = marks[at].Value;
        var sum = first * unit;
        at++;
        fault = at == marks.Count ? null : Inches(marks, ref at, unit, firstIsWhole, ref sum);
        if (fault is not null)
        {
            return false;
        }

        var units = decimal.Round(negative ? -sum : sum);
        length = new((long)units);
        return true;
    }

    private static NotationFault? Inches(List<NotationMark> marks, ref int at, decimal unit, bool feetAreWhole, ref decimal sum)
    {
        if (unit != Foot)
        {
            return new("length_parts", "Only feet may be followed by a second part, in inches.");
        }

        at += marks[at].Kind == NotationKind.Dash ? 1 : 0;
        if (Quantity(marks, ref at, out var inches, out _) is { } fault)
        {
            return fault;
        }

        if (at < marks.Count && marks[at].Kind == NotationKind.Unit)
        {
            if (marks[at].Value != Length.PerInch)
            {
                return new("length_parts", $"After feet come inches, not \"{marks[at].Text}\".");
            }

            at++;
        }

        if (at < marks.Count)
        {
            return new("length_trailing", $"\"{marks[at].Text}\" stands after the end of the length.");
        }

        if (!feetAreWhole)
        {
            return new("length_feet_not_whole", "Feet with a fraction of a foot are not followed by inches.");
        }

        if (inches >= 12)
        {
            return new("length_inches_over_twelve", $"Beside feet, inches are below 12; this has {inches}.");
        }

        sum += inches * Length.PerInch;
        return null;
    }

    /// <summary>A number, a fraction, or a whole number and a fraction, with or without a dash between them.</summary>
    private static NotationFault? Quantity(List<NotationMark> marks, ref int at, out decimal value, out bool isWhole)
    {
        value = 0;
        isWhole = false;
        if (at == marks.Count || marks[at].Kind is NotationKind.Unit or NotationKind.Dash)
        {
            var place = at == marks.Count ? "at the end" : $"before \"{marks[at].Text}\"";
            return new("length_number_missing", $"A number is missing {place}.");
        }

        var first = marks[at];
        value = first.Value;
        isWhole = first.Whole;
        at++;
        if (first.Kind == NotationKind.Fraction)
        {
            return null;
        }

        var dash = at < marks.Count && marks[at].Kind == NotationKind.Dash ? 1 : 0;
        if (at + dash < marks.Count && marks[at + dash].Kind == NotationKind.Fraction)
        {
            if (!first.Whole)
            {
                return new("length_fraction_after_decimal", $"\"{first.Text}\" has decimals already; a fraction cannot follow it.");
            }

            value += marks[at + dash].Value;
            isWhole = false;
            at += dash + 1;
        }

        return null;
    }

    private static string Written(List<NotationMark> marks) => string.Join(' ', marks.Select(m => m.Text));
}
