using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>
/// The wood that ledgers and blocks are cut from: 2x4 (38 × 89 mm) in 8, 10, 12 and 16 ft, or 2400 to 4800 mm.
/// Common practice, no source.
/// </summary>
public static class LedgerStock
{
    public const string Size = "2x4";

    private static readonly StickStock[] Imperial = [.. new[] { 96, 120, 144, 192 }.Select(i => new StickStock($"2x4-{i}in", Length.FromInches(i)))];
    private static readonly StickStock[] Metric = [.. new[] { 2400, 3000, 3600, 4800 }.Select(m => new StickStock($"2x4-{m}mm", Length.FromMillimetres(m)))];

    public static IReadOnlyList<StickStock> For(UnitSystem units) => units == UnitSystem.Imperial ? Imperial : Metric;

    public static long Longest(UnitSystem units) => For(units)[^1].Length.Units;
}
