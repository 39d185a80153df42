using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Insulation;

/// <summary>
/// What a batt is worth as it lies. A squeezed batt has what the table of compressed batts gives for the deepest tabulated
/// depth that it fills, or its resistance in proportion to its thickness where that is more; both are at or below what it
/// has, since a squeezed batt is denser. Half of a split batt has half.
/// </summary>
public static class BattWorth
{
    public static decimal Rsi(BattLayer layer, BattRules rules)
    {
        var whole = layer.Split ? layer.Make.Rsi / 2 : layer.Make.Rsi;
        if (!layer.Squeezed)
        {
            return whole;
        }

        var worth = whole * layer.Installed / layer.Loose;
        if (!layer.Split)
        {
            foreach (var row in rules.Squeezed)
            {
                if (Math.Abs(row.NominalRsi - whole) < 0.01m && Math.Abs(row.Thickness - layer.Loose) <= Length.PerMillimetre && row.Depth <= layer.Installed)
                {
                    worth = Math.Max(worth, Math.Min(row.Rsi, whole));
                }
            }
        }

        return worth;
    }

    /// <summary>Mass over an area, kg/m²: squeezing changes the thickness, not the mass.</summary>
    public static decimal KilogramsPerSquareMetre(BattLayer layer, BattRules rules) =>
        new Length(layer.Loose).Millimetres / 1000m * rules.KilogramsPerCubicMetre;
}
