namespace LayoutService.Engine.Cutting;

/// <summary>Costs that no plan can go below, from what each sheet can give at most.</summary>
internal static class SheetBounds
{
    /// <summary>Sheets have at least the pieces' area.</summary>
    public static SheetCut Area(SheetTypes types)
    {
        var demand = 0.0;
        for (var t = 0; t < types.Count; t++)
        {
            demand += (double)types.Width[t] * types.Length[t] * types.Demand[t];
        }

        var worths = new double[types.Kinds];
        for (var k = 0; k < worths.Length; k++)
        {
            worths[k] = (double)types.KindWidth[k] * types.KindLength[k];
        }

        return new SheetCut(worths, demand);
    }

    /// <summary>Least cost when sheets may be bought in fractions and without limit.</summary>
    public static double Fractional(SheetTypes types, SheetCut cut)
    {
        var most = 0.0;
        for (var k = 0; k < types.Kinds; k++)
        {
            most = Math.Max(most, cut.WorthOfKind[k] / types.KindCost[k]);
        }

        return most > 0 ? cut.Demand / most : 0;
    }

    /// <summary>The least multiple of the sheet costs' common divisor that is not below a computed bound.</summary>
    public static long Lift(SheetTypes types, double bound)
    {
        var unit = Unit(types);
        return (long)Math.Ceiling(bound * (1 - 1e-9) / unit - 1e-6) * unit;
    }

    /// <summary>The sheet costs' greatest common divisor.</summary>
    public static long Unit(SheetTypes types)
    {
        var unit = 0L;
        foreach (var cost in types.KindCost)
        {
            unit = Divisor(unit, cost);
        }

        return unit;
    }

    private static long Divisor(long a, long b) => b == 0 ? a : Divisor(b, a % b);
}
