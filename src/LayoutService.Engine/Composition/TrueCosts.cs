using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Sheets;

using SheetLayout = LayoutService.Engine.Sheets.SheetLayout;

namespace LayoutService.Engine.Composition;

/// <summary>
/// The search judges board by what its pieces take of sheets one course after the other, and without the bulkheads' boards. Here the
/// few best that it met are cut truly, all board of the room together, and one that then costs less than the one chosen, or as
/// much with less length of butts, takes its place; dearer sheets are bought for fewer joints only where the caller puts a cost on joints.
/// Cost: one quick cut of the sheets for each.
/// </summary>
internal static class TrueCosts
{
    public static ChosenCeiling? Better(FramedRoom room, StockPrices prices, ChosenCeiling chosen, IEnumerable<ChosenCeiling> others)
    {
        if (room.Survey.Sheets.Layers > 1)
        {
            return null;
        }

        var boards = room.Solids.Count == 0 ? [] : BoardCut.OfBulkheads(BulkheadCut.Boards(room, chosen)).ToList();
        var kinds = new SheetPricing(room.Survey.Sheets, prices).Kinds();
        var seen = new HashSet<SheetLayout>(ReferenceEqualityComparer.Instance);
        var taste = room.Survey.Sheets.ButtCostPerMetre > 0 || room.Survey.Sheets.TaperedCostPerMetre > 0;
        var best = Key(chosen);
        ChosenCeiling? found = null;
        foreach (var other in others.Where(o => seen.Add(o.Layout)))
        {
            var key = Key(other);
            if (key.Ranked.CompareTo(best.Ranked) < 0 && (taste || key.Sheets <= best.Sheets))
            {
                (best, found) = (key, other);
            }
        }

        return found;

        // sheets as cut, with the straps and joints as the search weighs them
        ((long Cost, long Butts, int Count) Ranked, long Sheets) Key(ChosenCeiling ceiling)
        {
            var layout = ceiling.Layout;
            var cut = SheetCutter.Solve(BoardCut.Problem(room, layout, boards, kinds), SheetCutter.QuickSteps);
            var sheets = cut.Unplaced.Count == 0 ? cut.Cost : layout.SheetCost;
            return ((layout.Cost - layout.SheetCost + sheets, layout.ButtLength, layout.ButtCount), sheets);
        }
    }
}
