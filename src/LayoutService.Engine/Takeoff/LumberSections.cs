using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Takeoff;

/// <summary>
/// Dressed sizes of lumber by name. Source: PS 20 softwood lumber sizes, dry (restated at engineeringtoolbox.com); the
/// metric names are those that the NBC prints for the same sticks.
/// </summary>
public static class LumberSections
{
    private static readonly (string Name, string Metric, decimal Thickness, decimal Face)[] Dressed =
    [
        ("1x2", "19x38", 0.75m, 1.5m),
        ("1x3", "19x64", 0.75m, 2.5m),
        ("1x4", "19x89", 0.75m, 3.5m),
        ("2x2", "38x38", 1.5m, 1.5m),
        ("2x3", "38x64", 1.5m, 2.5m),
        ("2x4", "38x89", 1.5m, 3.5m),
        ("2x6", "38x140", 1.5m, 5.5m),
        ("2x8", "38x184", 1.5m, 7.25m),
        ("2x10", "38x235", 1.5m, 9.25m),
        ("2x12", "38x286", 1.5m, 11.25m),
    ];

    /// <summary>The dressed section, or null for a name that is not in the table.</summary>
    public static (Length Thickness, Length Face)? Find(string name)
    {
        foreach (var row in Dressed)
        {
            if (row.Name == name || row.Metric == name)
            {
                return (Length.FromInches(row.Thickness), Length.FromInches(row.Face));
            }
        }

        return null;
    }

    /// <summary>
    /// Board feet of a number of sticks: nominal inches × nominal inches × feet ÷ 12, on the nominal size, as lumber is
    /// priced; null for a name that is no nominal size.
    /// </summary>
    public static decimal? BoardFeet(string nominal, decimal feet, int count)
    {
        var cross = nominal.IndexOf('x', StringComparison.Ordinal);
        return cross > 0 && int.TryParse(nominal.AsSpan(0, cross), out var thickness)
            && int.TryParse(nominal.AsSpan(cross + 1), out var face)
            ? count * thickness * face * feet / 12m
            : null;
    }
}
