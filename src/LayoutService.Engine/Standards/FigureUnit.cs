using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Standards;

/// <summary>What a printed unit measures. Two units of one dimension convert into each other.</summary>
public enum Dimension
{
    Length,
    Area,
    MassPerArea,
    Force,
    WeightPerVolume,
    Pressure,
    Mass,
    Count,
    Share,
    CountPerMass,
    ThermalResistance,
    Temperature,
    MassPerLength,
    Light,
}

/// <summary>
/// A unit as a standard prints it: its symbol, what it measures, and how many of the dimension's first unit it holds.
/// First units: mm, m², kg/m², N, kN/m³, kPa, kg, one, share, per kg, RSI, °C, kg/m.
/// </summary>
public sealed record FigureUnit(string Symbol, Dimension Dimension, decimal Factor)
{
    // 25.4 mm and 0.45359237 kg are exact by the international yard and pound agreement of 1959.
    private const decimal Foot = 304.8m;
    private const decimal Pound = 0.45359237m;

    // R in hour·ft²·°F/Btu is 0.176110 m²·K/W.
    private const decimal RsiPerR = 0.176110m;

    private static readonly FigureUnit[] All =
    [
        new("mm", Dimension.Length, 1m),
        new("m", Dimension.Length, 1000m),
        new("in", Dimension.Length, 25.4m),
        new("ft", Dimension.Length, Foot),
        new("m2", Dimension.Area, 1m),
        new("ft2", Dimension.Area, Foot * Foot / 1_000_000m),
        new("kg/m2", Dimension.MassPerArea, 1m),
        new("lb/ft2", Dimension.MassPerArea, Pound * 1_000_000m / (Foot * Foot)),
        new("kN/m3", Dimension.WeightPerVolume, 1m),
        new("N/m2/mm", Dimension.WeightPerVolume, 1m),
        new("kPa", Dimension.Pressure, 1m),
        new("MPa", Dimension.Pressure, 1000m),

        // One pound-force (0.45359237 kg at 9.80665 m/s²) on one square inch, in kPa.
        new("psi", Dimension.Pressure, Pound * 9.80665m / (25.4m * 25.4m) * 1000m),
        new("N", Dimension.Force, 1m),
        new("lbf", Dimension.Force, Pound * 9.80665m),
        new("kg", Dimension.Mass, 1m),
        new("lb", Dimension.Mass, Pound),
        new("kg/m", Dimension.MassPerLength, 1m),
        new("lb/ft", Dimension.MassPerLength, Pound * 1000m / Foot),
        new("count", Dimension.Count, 1m),
        new("%", Dimension.Share, 0.01m),
        new("of depth", Dimension.Share, 1m),
        new("of span", Dimension.Share, 1m),
        new("factor", Dimension.Share, 1m),
        new("per lb", Dimension.CountPerMass, 1m / Pound),
        new("RSI", Dimension.ThermalResistance, 1m),
        new("R", Dimension.ThermalResistance, RsiPerR),
        new("lux", Dimension.Light, 1m),

        // One lumen on a square foot.
        new("fc", Dimension.Light, 1_000_000m / (Foot * Foot)),
        new("degC", Dimension.Temperature, 1m),
    ];

    /// <summary>The unit with this symbol. Throws <see cref="FormatException"/> for one that no table may use.</summary>
    public static FigureUnit Parse(string symbol)
    {
        foreach (var unit in All)
        {
            if (unit.Symbol == symbol)
            {
                return unit;
            }
        }

        throw new FormatException($"'{symbol}' is not a unit that a table may use.");
    }

    /// <summary>Exact length units in one of this unit. Throws when this is not a unit of length.</summary>
    public long LengthUnits => Dimension == Dimension.Length
        ? (long)(Factor * Length.PerMillimetre)
        : throw new InvalidOperationException($"{Symbol} is not a unit of length.");
}
