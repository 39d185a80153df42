using System.Globalization;

namespace LayoutService.Engine.Measures;

/// <summary>To which side a length is rounded when it is written for a tape.</summary>
public enum TapeRounding
{
    /// <summary>To the nearest mark, a half upward: for places.</summary>
    Nearest,

    /// <summary>To the mark below: for lengths to cut, so that a piece is never too long.</summary>
    Down,
}

/// <summary>Writes a length as it is read off a tape.</summary>
public static class TapeText
{
    /// <summary>From this length on, the feet form stands beside the inches.</summary>
    public static readonly Length FeetFrom = Length.FromInches(24);

    /// <summary>Inches and sixteenths, the feet form in brackets where long: <c>150-1/2" (12' 6-1/2")</c>.</summary>
    public static string Imperial(Length length, TapeRounding rounding)
    {
        var sixteenths = Marks(length, Length.PerSixteenth, rounding);
        var magnitude = Math.Abs(sixteenths);
        var sign = sixteenths < 0 ? "-" : "";
        var inches = sign + Inches(magnitude);
        return magnitude * Length.PerSixteenth < FeetFrom.Units
            ? inches
            : $"{inches} ({sign}{(magnitude / 192).ToString(CultureInfo.InvariantCulture)}' {Inches(magnitude % 192)})";
    }

    /// <summary>Whole millimetres: <c>3810 mm</c>.</summary>
    public static string Metric(Length length, TapeRounding rounding) =>
        Marks(length, Length.PerMillimetre, rounding).ToString(CultureInfo.InvariantCulture) + " mm";

    /// <summary>How many whole marks of a tape the length is.</summary>
    private static long Marks(Length length, long perMark, TapeRounding rounding)
    {
        var units = rounding == TapeRounding.Nearest ? length.Units + (perMark / 2) : length.Units;
        var (whole, rest) = Math.DivRem(units, perMark);
        return rest < 0 ? whole - 1 : whole;
    }

    /// <summary>A number of inches as the trade writes it where it is whole sixteenths, and not below nothing: <c>15-3/4</c>; else null.</summary>
    public static string? WholeSixteenths(Length length) =>
        length.Units >= 0 && length.Units % Length.PerSixteenth == 0 ? Number(length.Units / Length.PerSixteenth) : null;

    private static string Inches(long sixteenths) => Number(sixteenths) + "\"";

    private static string Number(long sixteenths)
    {
        var (whole, rest) = Math.DivRem(sixteenths, 16);
        if (rest == 0)
        {
            return whole.ToString(CultureInfo.InvariantCulture);
        }

        var below = 16L;
        while (rest % 2 == 0)
        {
            rest /= 2;
            below /= 2;
        }

        var fraction = string.Create(CultureInfo.InvariantCulture, $"{rest}/{below}");
        return whole == 0 ? fraction : string.Create(CultureInfo.InvariantCulture, $"{whole}-{fraction}");
    }
}
