using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Standards;

/// <summary>Lumber as it is sold and as it weighs.</summary>
public static class LumberMeasure
{
    // Standard gravity, m/s² (exact by the 3rd CGPM, 1901).
    private const decimal Gravity = 9.80665m;

    /// <summary>Board feet of lumber of these nominal inches: thickness × width × feet / 12.</summary>
    public static decimal BoardFeet(decimal nominalThickness, decimal nominalWidth, Length length) =>
        nominalThickness * nominalWidth * length.Inches / 144m;

    /// <summary>Mass of one metre of this section, kg, as S-P-F at 19 % moisture weighs.</summary>
    public static decimal KilogramsPerMetre(PublishedTables tables, Length thickness, Length width)
    {
        var weight = tables.LumberWeights.Rows[^1].Weight.In("kN/m3");
        return weight * 1000m / Gravity * thickness.Millimetres * width.Millimetres / 1_000_000m;
    }
}
