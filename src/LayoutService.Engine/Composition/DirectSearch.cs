using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Board screwed straight to the joists: the sheets alone are chosen, in the room turned over, with their long edges square to the joists and
/// their butts on the joists' own middles, wherever those are. Method: as <see cref="CeilingSearch"/> with one lattice, which the joists
/// give: every division into courses, its cheapest layout, and the best of these bettered course by course. Cost: divisions × one board search.
/// </summary>
public static class DirectSearch
{
    public static (ChosenCeiling? Chosen, Finding? Obstacle) Best(FramedRoom room)
    {
        var turned = room.Turned();
        var joists = JoistLine.Of(room);
        IReadOnlyList<BearingLine> lines = [.. joists.Select(j => j.Line)];
        var layout = Best(turned, lines, SearchBudget.For(room.Survey.Effort));
        if (room.Survey.Effort == Effort.Quick && layout is not { Penalty: 0 })
        {
            layout = Best(turned, lines, SearchBudget.For(Effort.Thorough)) ?? layout;
        }

        return layout is null
            ? (null, Findings.SheetsDoNotReachJoists())
            : (new ChosenCeiling(RowRules.Of(room.Survey.Strapping), [], null, [], layout) { BoardRoom = turned, Joists = joists }, null);
    }

    /// <summary>The same board on as many joists, evenly spaced from the first to the last; null where it cannot be laid so either.</summary>
    public static SheetLayout? OnEvenJoists(ChosenCeiling chosen)
    {
        var turned = chosen.BoardRoom!;
        var lines = chosen.Layout.Lines;
        if (lines.Count < 3)
        {
            return null;
        }

        var (first, last) = (lines[0].At, lines[^1].At);
        IReadOnlyList<BearingLine> even = [.. lines.Select((l, i) => l with { At = first + ((last - first) * i / (lines.Count - 1)), Stretches = [new Span(0, turned.Frame.SizeV)] })];
        return Best(turned, even, SearchBudget.For(Effort.Quick));
    }

    private static SheetLayout? Best(FramedRoom turned, IReadOnlyList<BearingLine> lines, SearchBudget budget)
    {
        var prices = new StockPrices(turned.Survey.Sheets);
        var pricing = new SheetPricing(turned.Survey.Sheets, prices);
        var weights = new JointWeights(turned, prices, 0);
        var options = new Dictionary<long, CourseOptions>();
        var found = new List<(SheetLayout Layout, SheetSearch Search, int[] Choice)>();
        foreach (var division in CourseLines.Offer(turned, prices, budget.Divisions))
        {
            if (!options.TryGetValue(division.SheetWidth, out var over))
            {
                options[division.SheetWidth] = over = new CourseOptions(turned, prices, weights, division.SheetWidth, lines, budget.Patterns);
            }

            var runs = CourseRuns.Of(turned, division);
            var costing = new LayoutCosting(turned, pricing.Cost(division.SheetWidth), prices, weights, division, runs);
            if (SheetSearch.Over(turned, costing, prices, division, runs, over) is { } search)
            {
                var (guessed, choice) = search.Guessed();
                var (layout, carried) = search.Carried(guessed, choice);
                found.Add((layout, search, carried));
            }
        }

        return found.OrderBy(f => Key(f.Layout)).Take(budget.Improved)
            .Select(f => f.Search.Improve(f.Layout, f.Choice, budget.Costings))
            .MinBy(Key);
    }

    private static (int, long, long, long, int, long, int) Key(SheetLayout layout) => (
        layout.Division.Holes.Firm, layout.Division.Slivers, layout.Penalty, layout.Cost, layout.Division.Holes.Soft, layout.Division.Narrow, layout.ButtCount);
}
