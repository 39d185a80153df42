using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;

using SheetLayout = LayoutService.Engine.Sheets.SheetLayout;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Says what the other end of <c>jointCost</c> would have cost, and which wishes cost material, from layouts that the search
/// met. Their sheets, which hold the bulkheads' boards too, are counted by the quick cutter, so a thorough one might save another.
/// </summary>
public static class PlanAlternatives
{
    public static IReadOnlyList<Alternative> Of(FramedRoom room, ChosenCeiling chosen, CutBoard board, SheetPlan sheets, CutBulkheads bulkheads)
    {
        var found = new List<Alternative>();
        if (chosen.Upper.Count > 0)
        {
            // what was met was laid for the first layer alone
            return found;
        }

        var prices = new StockPrices(room.Survey.Sheets);
        var cost = board.Result.Cost;
        var others = chosen.Others;
        if (others.FewestButts is { } butts)
        {
            Add(butts.Layout, "fewest_butts", "With the fewest butts that were found", true);
        }

        if (others.LeastMaterial is { } material)
        {
            Add(material.Layout, "least_material", "With the least material that was found", false);
        }

        if (others.RowsThroughPosts is { } posts)
        {
            Add(posts.Layout, "rows_through_posts", "With rows that a post cuts in two", false);
        }

        if (others.LessStagger is { } stagger && room.Survey.Sheets.MinStagger is not null)
        {
            Add(stagger.Layout, "less_stagger", "With butts nearer to each other than minStagger", false);
        }

        if (chosen.BoardRoom is not null && DirectSearch.OnEvenJoists(chosen) is { } even)
        {
            Add(even, "even_joists", "On as many joists evenly spaced", false);
        }

        return found;

        void Add(SheetLayout layout, string code, string begin, bool dearer)
        {
            var (itsCost, count) = Cut(room, layout, bulkheads, prices);
            if (count == 0 || (!dearer && itsCost >= cost))
            {
                return;
            }

            var unit = board.Result.Unit;
            var (said, mine) = (Number(itsCost), Number(cost));
            var (length, mineLength) = (room.Say(layout.ButtLength), room.Say(sheets.ButtJointLength.Units));
            if ((count, said, length) == (board.Sheets.Count, mine, mineLength))
            {
                return;
            }

            found.Add(new Alternative(
                Sentence.Of(
                    code,
                    $"{begin} the board would be {count} sheets ({said} {unit}) and {length} of butts, instead of {board.Sheets.Count} sheets ({mine} {unit}) and {mineLength}.",
                    ("sheets", count.ToString(CultureInfo.InvariantCulture)),
                    ("cost", said),
                    ("unit", unit),
                    ("buttLength", length),
                    ("plannedSheets", board.Sheets.Count.ToString(CultureInfo.InvariantCulture)),
                    ("plannedCost", mine),
                    ("plannedButtLength", mineLength)),
                [],
                prices.Priced ? cost - itsCost : null));
        }
    }

    private static string Number(decimal value) => decimal.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);

    private static (decimal Cost, int Sheets) Cut(FramedRoom room, SheetLayout layout, CutBulkheads bulkheads, StockPrices prices)
    {
        var problem = BoardCut.Problem(room, layout, BoardCut.OfBulkheads(bulkheads.Boards), new SheetPricing(room.Survey.Sheets, prices).Kinds());
        return SheetCutter.Count(problem) is { } cut ? (cut.Cost / prices.PerUnit(room.Survey.Units), cut.Sheets) : (0, 0);
    }
}
