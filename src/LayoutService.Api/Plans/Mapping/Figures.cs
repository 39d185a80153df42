using System.Globalization;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>How a figure is written in an answer: in the request's units, six decimals at most, no trailing zeros.</summary>
internal static class Figures
{
    /// <summary>Kilograms in a pound (international avoirdupois pound, exact since 1959).</summary>
    public const decimal KilogramsPerPound = 0.45359237m;

    // beyond this a product below might not fit
    private const long Longest = 1_000_000_000_000;

    /// <summary>In inches or millimetres, to six decimals.</summary>
    public static decimal Of(Length length, bool imperial)
    {
        if (Math.Abs(length.Units) > Longest)
        {
            return Plain(imperial ? length.Inches : length.Millimetres, 6);
        }

        // a unit is 125 millionths of a millimetre, and 625/127 millionths of an inch: an odd divisor never leaves a half
        var millionths = length.Units * 125;
        if (imperial)
        {
            (millionths, var rest) = Math.DivRem(length.Units * 625, 127);
            millionths += 2 * Math.Abs(rest) > 127 ? Math.Sign(rest) : 0;
        }

        byte decimals = 6;
        while (decimals > 0 && Math.DivRem(millionths, 10) is { Remainder: 0, Quotient: var tenth })
        {
            millionths = tenth;
            decimals--;
        }

        var magnitude = Math.Abs(millionths);
        return new decimal(unchecked((int)magnitude), (int)(magnitude >> 32), 0, millionths < 0, decimals);
    }

    public static string Text(Length length, bool imperial) => Of(length, imperial).ToString(CultureInfo.InvariantCulture);

    public static decimal Mass(decimal kilograms, bool imperial) => Plain(imperial ? kilograms / KilogramsPerPound : kilograms, 3);

    /// <summary>Square feet or square metres.</summary>
    public static decimal Area(double squareMetres, bool imperial) =>
        Plain((decimal)squareMetres / (imperial ? 0.3048m * 0.3048m : 1m), 6);

    /// <summary>Rounded, and without the trailing zeros that a decimal keeps.</summary>
    public static decimal Plain(decimal value, int decimals)
    {
        var rounded = decimal.Round(value, decimals);
        return rounded == 0 ? 0 : rounded / 1.0000000000000000000000000000m;
    }
}
