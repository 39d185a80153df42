using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>What no layout of board can cost less than.</summary>
public static class SheetBound
{
    // no layout whatever covers the ceiling for less than its area, less what is cut short at walls, at the best price
    // per area; and every cost is a whole multiple of the prices' common divisor
    public static long Of(FramedRoom room, StockPrices prices, double bulkheads = 0, int layers = 1)
    {
        var perimeter = room.Board.Edges.Sum(e => Geometry.Rings.DistanceBetween(e.From, e.To));
        var area = (layers * Math.Max(0, room.Board.Area - (perimeter * room.Survey.Sheets.CutAllowance.Units))) + bulkheads;
        var rate = double.MaxValue;
        long divisor = 0;
        foreach (var sheet in room.Survey.Sheets.Stock)
        {
            var cost = prices.Cost(sheet);
            rate = Math.Min(rate, cost / ((double)sheet.Width.Units * sheet.Length.Units));
            divisor = Divisor(divisor, cost);
        }

        var least = (long)Math.Floor(area * rate * (1 - 1e-9));
        return divisor == 0 ? least : (least + divisor - 1) / divisor * divisor;
    }

    /// <summary>The area and a tenth of it, in whole sheets of the kind that is cheapest by area: what many order, with no layout behind it.</summary>
    public static long WithTenth(FramedRoom room, StockPrices prices)
    {
        var cheapest = room.Survey.Sheets.Stock.MinBy(s => prices.Cost(s) / ((double)s.Width.Units * s.Length.Units))!;
        return prices.Cost(cheapest) * (long)Math.Ceiling((room.Board.Area * 1.10 / ((double)cheapest.Width.Units * cheapest.Length.Units)) - 1e-9);
    }

    private static long Divisor(long a, long b) => b == 0 ? a : Divisor(b, a % b);
}
