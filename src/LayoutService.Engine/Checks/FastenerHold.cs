using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>What a fastener holds against being pulled out of side grain (NDS 12.2: screws 2850 G² D, plain nails 1380 G^2.5 D, lb an inch).</summary>
public static class FastenerHold
{
    /// <summary>Under a lasting load, N. <paramref name="diameter"/> is the rule that gives the diameter; no depth holds nothing.</summary>
    public static decimal Of(RuleBook book, bool nail, string diameter, decimal gravity, Length depth)
    {
        var perArea = (double)book.Limit(nail ? "withdrawal-nail" : "withdrawal-screw").Value.In("MPa");
        var dense = Math.Pow((double)gravity, nail ? 2.5 : 2);
        var area = (double)(book.Limit(diameter).Value.Length.Millimetres * Math.Max(0m, depth.Millimetres));
        return HangingLoad.Capped(perArea * dense * area * (double)book.Limit("withdrawal-load-duration").Value.Value);
    }
}
