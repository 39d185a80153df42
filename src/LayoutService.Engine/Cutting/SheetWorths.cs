namespace LayoutService.Engine.Cutting;

/// <summary>What one piece of each type is worth when sheets are compared by worth per cost.</summary>
internal static class SheetWorths
{
    /// <summary>Its area.</summary>
    public static void ByArea(SheetTypes types, double[] worths)
    {
        for (var t = 0; t < types.Count; t++)
        {
            worths[t] = (double)types.Width[t] * types.Length[t];
        }
    }

    /// <summary>Its share of the cheapest sheet that is cut into copies of it alone.</summary>
    public static void CutAlone(SheetTypes types, double[] worths)
    {
        for (var t = 0; t < types.Count; t++)
        {
            var least = double.MaxValue;
            for (var k = 0; k < types.Kinds; k++)
            {
                var copies = CopiesAlone(types, t, types.KindWidth[k], types.KindLength[k]);
                if (copies > 0)
                {
                    least = Math.Min(least, (double)types.KindCost[k] / copies);
                }
            }

            worths[t] = least == double.MaxValue ? 0 : least;
        }
    }

    /// <summary>Copies of the type that simple rows of it give from a sheet.</summary>
    public static long CopiesAlone(SheetTypes types, int type, long width, long length)
    {
        var straight = 0L;
        if (types.LiesStraight(type, width) && types.Length[type] <= length)
        {
            var beside = width / types.Width[type];
            straight = (types.Need[type] switch { 0 => beside, 1 => Math.Min(2, beside), _ => 1 }) * (length / types.Length[type]);
        }

        var turned = types.Turn[type] ? width / types.Length[type] * (length / types.Width[type]) : 0;
        return Math.Max(straight, turned);
    }
}
