using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Board in several layers: each further layer is laid on the same rows or joists, its seams off those of the layer below. Method: the
/// divisions offered for the room, and that of the layer below shifted by parts of a sheet's width, of which those without a seam near one below come
/// first; butts of the layer below are holes that no butt comes near; then the board search as for one layer. Where nothing keeps off, the
/// layer lies as it can, and the check of its seams fails. Cost: layers × divisions × one board search.
/// </summary>
internal static class LayerSearch
{
    /// <summary>Seams of one layer from those of the next, side by side: 250 mm (10 in). Common practice, no source.</summary>
    public const long Offset = 250 * Length.PerMillimetre;

    /// <summary>The layouts of the second layer and up; null where one cannot be laid at all.</summary>
    public static IReadOnlyList<SheetLayout>? Of(FramedRoom room, SheetLayout first)
    {
        var layers = new List<SheetLayout>();
        for (var below = first; layers.Count + 1 < room.Survey.Sheets.Layers; below = layers[^1])
        {
            if (Best(room, below, Holding(room, below)) is not { } layer && (layer = Best(room, below, room)) is null)
            {
                return null;
            }

            layers.Add(layer);
        }

        return layers;
    }

    private static SheetLayout? Best(FramedRoom room, SheetLayout below, FramedRoom held)
    {
        var budget = SearchBudget.For(room.Survey.Effort);
        var prices = new StockPrices(room.Survey.Sheets);
        var pricing = new SheetPricing(room.Survey.Sheets, prices);
        var weights = new JointWeights(room, prices, StrapWeight.Of(room.Survey, prices));
        var options = new Dictionary<long, CourseOptions>();
        var found = new List<(SheetLayout Layout, SheetSearch Search, int[] Choice)>();
        foreach (var division in Divisions(room, prices, below).Take(2 * budget.Divisions))
        {
            if (!options.TryGetValue(division.SheetWidth, out var over))
            {
                options[division.SheetWidth] = over = new CourseOptions(held, prices, weights, division.SheetWidth, below.Lines, budget.Patterns);
            }

            var runs = CourseRuns.Of(room, division);
            var costing = new LayoutCosting(room, pricing.Cost(division.SheetWidth), prices, weights, division, runs);
            if (SheetSearch.Over(room, costing, prices, division, runs, over) is { } search)
            {
                var (guessed, choice) = search.Guessed();
                var (layout, carried) = search.Carried(guessed, choice);
                found.Add((layout, search, carried));
            }
        }

        return found.OrderBy(f => Key(f.Layout)).Take(budget.Improved)
            .Select(f => f.Search.Improve(f.Layout, f.Choice, budget.Costings))
            .MinBy(Key);

        (int, int, long, long, long, int) Key(SheetLayout layout) => (
            Near(layout.Division, below.Division), layout.Division.Holes.Firm, layout.Division.Slivers, layout.Penalty, layout.Cost, layout.ButtCount);
    }

    private static IEnumerable<CourseDivision> Divisions(FramedRoom room, StockPrices prices, SheetLayout below)
    {
        var shifted = room.Survey.Sheets.Stock.Select(s => s.Width.Units).Distinct().OrderDescending()
            .SelectMany(width => new[] { width / 2, width / 3, 2 * width / 3, width / 4, 3 * width / 4 }
                .Select(shift => CourseLines.From(room, width, room.SnapNearAcross(below.Division.Lines[Math.Min(1, below.Division.Courses - 1)] + shift))));
        return CourseLines.Offer(room, prices, 30).Concat(shifted)
            .Select((d, i) => (Division: d, i))
            .OrderBy(d => Near(d.Division, below.Division))
            .ThenBy(d => room.CourseBreaks.Count(at => !d.Division.Lines.Contains(at)))
            .ThenBy(d => d.Division.Holes.Firm).ThenBy(d => d.Division.Slivers).ThenBy(d => d.Division.Holes.Soft).ThenBy(d => d.Division.Narrow).ThenBy(d => d.i)
            .Select(d => d.Division);
    }

    // seams between courses nearer than the offset to one of the layer below
    private static int Near(CourseDivision own, CourseDivision below) => Inner(own).Count(line => Inner(below).Any(other => Math.Abs(other - line) < Offset));

    private static IEnumerable<long> Inner(CourseDivision division) => division.Lines.Skip(1).Take(division.Courses - 1);

    // the same room with the butts of a layer as holes that butts keep off
    private static FramedRoom Holding(FramedRoom room, SheetLayout below)
    {
        var butts = below.Runs.SelectMany((run, r) => below.Butts[r].Select(line => new Hole(
            string.Empty, new Uv(below.Lines[line].At, run.Across.Middle), 0, Math.Max(0, (run.Across.Size / 2) - Offset), false, Offset)));
        return room.With(new KeepOuts([.. room.KeepOuts.Firm, .. butts], room.KeepOuts.Soft));
    }

    /// <summary>The least distance between seams side by side in neighbouring layers, and the pieces of the upper one; null with one layer or no such seams.</summary>
    public static (Length Least, IReadOnlyList<string> Pieces)? Least(SheetPlan sheets)
    {
        if (sheets.Pieces.Count == 0 || sheets.Pieces[^1].Layer == 1)
        {
            return null;
        }

        var layer = sheets.Pieces.ToDictionary(p => p.Id, p => p.Layer);
        (long Least, IReadOnlyList<string> Pieces)? found = null;
        foreach (var upper in sheets.Joints.Where(j => layer[j.PieceA] > 1))
        {
            foreach (var lower in sheets.Joints.Where(j => layer[j.PieceA] == layer[upper.PieceA] - 1))
            {
                if (Apart(upper, lower) is { } apart && apart < (found?.Least ?? long.MaxValue))
                {
                    found = (apart, [upper.PieceA, upper.PieceB]);
                }
            }
        }

        return found is { } least ? (new Length(least.Least), least.Pieces) : null;
    }

    // seams that run the same way and lie beside each other
    private static long? Apart(BoardJoint one, BoardJoint other)
    {
        double x = one.To.X.Units - one.From.X.Units, y = one.To.Y.Units - one.From.Y.Units;
        var length = Math.Sqrt((x * x) + (y * y));
        double ox = other.To.X.Units - other.From.X.Units, oy = other.To.Y.Units - other.From.Y.Units;
        if (length == 0 || Math.Abs((x * oy) - (y * ox)) > length * Math.Sqrt((ox * ox) + (oy * oy)) * 1e-6)
        {
            return null;
        }

        double Along(Point p) => (((p.X.Units - one.From.X.Units) * x) + ((p.Y.Units - one.From.Y.Units) * y)) / length;
        var (a, b) = (Along(other.From), Along(other.To));
        if (Math.Max(a, b) <= 1 || Math.Min(a, b) >= length - 1)
        {
            return null;
        }

        return (long)Math.Round(Math.Abs(((other.From.X.Units - one.From.X.Units) * y) - ((other.From.Y.Units - one.From.Y.Units) * x)) / length);
    }
}
