using LayoutService.Engine;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Drawing;

/// <summary>
/// The drawing of a plan to scale: one picture of the straps with the joists over them, one of the sheets, one of the batts where there are any. It reads the plan
/// and computes nothing about ceilings.
/// </summary>
public static class CeilingDrawing
{
    /// <summary>Paper round a picture, in pixels: room for dimensions and for the marks of the rows.</summary>
    private const double Margin = 56;
    private const double HeadHeight = 30;

    /// <summary>SVG of the plan with the layers asked for.</summary>
    public static string Svg(CeilingPlan plan, Survey survey, Layers layers = Layers.All)
    {
        var say = new TapeInk(survey.Units);
        var (straps, sheets) = (layers.HasFlag(Layers.Straps) || layers.HasFlag(Layers.Marks), layers.HasFlag(Layers.Sheets));
        var batts = layers.HasFlag(Layers.Insulation) && plan.Insulation is { Fills.Count: > 0 };
        var pictures = Math.Max(1, (straps ? 1 : 0) + (sheets ? plan.Sheets.Layers : 0) + (batts ? 1 : 0));
        var first = PlanView.Of(survey.Room.Outline, default);
        var marked = straps && layers.HasFlag(Layers.Marks);
        var (level, upright) = marked ? (RowMarks.Of(plan, survey, true, say), RowMarks.Of(plan, survey, false, say)) : (null, null);

        // one picture beside the other, or below it when the room is wide
        var beside = first.Room.Width <= first.Room.Height * 1.2;
        var left = Margin + (level?.Room ?? 0);
        var below = Margin + (upright?.Room ?? 0);
        var high = Math.Max(first.Room.Height, level?.Span ?? 0);
        var wide = Math.Max(first.Room.Width, upright?.Span ?? 0);
        var step = beside ? new Spot(wide + left + Margin, 0) : new Spot(0, high + below + Margin + HeadHeight);
        var width = left + wide + Margin + ((pictures - 1) * step.X);
        var height = HeadHeight + Margin + high + below + ((pictures - 1) * step.Y);
        var legend = layers.HasFlag(Layers.Legend) ? Legend.Entries(plan, layers.HasFlag(Layers.Services) && survey.Services is { Count: > 0 }) : [];
        var legendRows = Legend.Rows(legend, Math.Max(width, 320));
        width = Math.Max(width, 320);
        using var ink = new SvgInk(
            width,
            height + (legendRows * Legend.RowHeight) + 12,
            "Ceiling plan, seen from above",
            $"{(plan.Strapping.Direct ? "Board on the joists" : $"{plan.Summary.Rows} rows of straps")}, {plan.Sheets.Pieces.Count} pieces of board, drawn to scale in the plan's own directions.");
        var paper = new Box(0, 0, width, height);
        var origin = new Spot(left, HeadHeight + Margin);
        if (straps || !(sheets || batts))
        {
            var labels = new LabelField(paper);
            Head(ink, first.At(origin), plan.Strapping.Direct ? "Joists" : "Straps and joists", labels);
            Shared(ink, plan, survey, layers, first.At(origin), labels, say);
            level?.Draw(ink, first.At(origin), true, new Spot(origin.X + wide, origin.Y + high), labels);
            upright?.Draw(ink, first.At(origin), false, new Spot(origin.X + wide, origin.Y + high), labels);
            if (marked && !plan.Strapping.Direct)
            {
                StartCorner.Draw(ink, first.At(origin), survey, labels);
            }

            if (layers.HasFlag(Layers.Straps))
            {
                RowLayer.Draw(ink, plan.Strapping, survey, first.At(origin), labels, say);
            }

            BreakLayer.Draw(ink, plan.Joists.Breaks, first.At(origin), labels);
            Low(ink, plan, layers & ~Layers.Bulkheads, first.At(origin), labels, say, onBoard: false);
        }

        for (var layer = 1; sheets && layer <= plan.Sheets.Layers; layer++)
        {
            var steps = layer - (straps ? 0 : 1);
            var place = new Spot(origin.X + (steps * step.X), origin.Y + (steps * step.Y));
            var labels = new LabelField(paper);
            Head(ink, first.At(place), plan.Sheets.Layers == 1 ? "Board, as it hangs (seen from above)" : $"Layer {layer} of the board (seen from above)", labels);
            Shared(ink, plan, survey, layers & ~Layers.Joists, first.At(place), labels, say);
            SheetLayer.Draw(ink, plan.Sheets.OfLayer(layer), first.At(place), labels, say);
            Low(ink, plan, layers, first.At(place), labels, say, onBoard: true);
        }

        if (batts)
        {
            var place = new Spot(origin.X + ((pictures - 1) * step.X), origin.Y + ((pictures - 1) * step.Y));
            var labels = new LabelField(paper);
            Head(ink, first.At(place), "Batts between the joists", labels);
            Shared(ink, plan, survey, layers & ~Layers.Dimensions, first.At(place), labels, say);
            BattLayer.Draw(ink, plan.Insulation!, first.At(place), labels, say);
        }

        Legend.Draw(ink, legend, new Spot(Margin / 2, height), width);
        return ink.Finish();
    }

    private static void Head(SvgInk ink, PlanView view, string text, LabelField labels)
    {
        var size = Lettering.Width(text, 13);
        var middle = new Spot(Math.Max(view.Room.Middle.X, size / 2), view.Room.Top - Margin - 8);
        labels.Keep(Box.Round(middle, size, Lettering.Height(13)));
        ink.Text(middle, text, 13, bold: true);
    }

    // what hangs lower than the board or is let into it
    private static void Low(SvgInk ink, CeilingPlan plan, Layers layers, PlanView view, LabelField labels, TapeInk say, bool onBoard)
    {
        if (layers.HasFlag(Layers.Bulkheads))
        {
            BulkheadLayer.Draw(ink, plan.Bulkheads, view, labels, say);
        }

        if (layers.HasFlag(Layers.Fixtures))
        {
            FixtureLayer.Draw(ink, plan, view, labels, onBoard);
        }
    }

    private static void Shared(SvgInk ink, CeilingPlan plan, Survey survey, Layers layers, PlanView view, LabelField labels, TapeInk say)
    {
        if (layers.HasFlag(Layers.Fixtures))
        {
            FixtureLayer.Shun(plan, view, labels);
        }

        if (layers.HasFlag(Layers.Joists))
        {
            JoistLayer.Draw(ink, plan.Joists, survey.Room.Outline, view);
        }

        if (layers.HasFlag(Layers.Services))
        {
            ServiceLayer.Draw(ink, survey.Services ?? [], view, labels);
        }

        if (layers.HasFlag(Layers.Outline))
        {
            OutlineLayer.Draw(ink, survey.Room, view, labels, plan.Partitions);
        }

        if (layers.HasFlag(Layers.Dimensions))
        {
            DimensionLayer.Draw(ink, plan.Walls, survey.Room.Outline, view, labels, say);
        }
    }
}
