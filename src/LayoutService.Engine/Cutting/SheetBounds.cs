namespace LayoutService.Engine.Cutting;

/// <summary>Costs that no plan can go below.</summary>
internal static class SheetBounds
{
    /// <summary>All pieces' area at the least cost per area.</summary>
    public static long Area(SheetTypes types)
    {
        var area = 0m;
        for (var t = 0; t < types.Count; t++)
        {
            area += (decimal)types.Width[t] * types.Length[t] * types.Demand[t];
        }

        var least = decimal.MaxValue;
        for (var k = 0; k < types.Kinds; k++)
        {
            least = Math.Min(least, area * types.KindCost[k] / ((decimal)types.KindWidth[k] * types.KindLength[k]));
        }

        return (long)decimal.Ceiling(least - 0.000001m);
    }
}
