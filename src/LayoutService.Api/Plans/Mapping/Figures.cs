using System.Globalization;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>How a figure is written in an answer: in the request's units, six decimals at most, no trailing zeros.</summary>
internal static class Figures
{
    /// <summary>Kilograms in a pound (international avoirdupois pound, exact since 1959).</summary>
    public const decimal KilogramsPerPound = 0.45359237m;

    public static decimal Of(Length length, bool imperial) => Plain(imperial ? length.Inches : length.Millimetres, 6);

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
