namespace LayoutService.Engine.Cutting;

/// <summary>
/// How a repair goes about it. Width: of each beam. MostRuns: taken off at a time, at least two; LargePercent of the time
/// up to five more. Heat: how much worse a solution may become at first, as a part of the dearest stick. Hope: how much of
/// what open sticks could still hold counts as gained at first. The figures were found by trial on seeded rooms.
/// </summary>
internal readonly record struct BarRepairStyle(int Width, int MostRuns, int LargePercent, double Heat, double Hope)
{
    public static readonly BarRepairStyle Quick = new(1, 2, 0, 0, 0.3);

    public static readonly BarRepairStyle Thorough = new(3, 4, 5, 0.2, 0.3);
}

/// <summary>
/// How a beam ranks. Width: states kept at a node. Share: part of the open sticks' closing that counts while under way.
/// Violation: cost of one. Hope: part of the closing that does not count at the end.
/// </summary>
internal readonly record struct BarBeamStyle(int Width, double Share, double Violation, double Hope);
