using LayoutService.Engine.Bulkheads;

namespace LayoutService.Drawing;

/// <summary>Bulkheads as hatched footprints with their id and drop; a cross marks the doors to what must be reached, which are drawn with the fixtures.</summary>
internal static class BulkheadLayer
{
    public static void Draw(SvgInk ink, BulkheadPlan plan, PlanView view, LabelField labels, TapeInk say)
    {
        if (plan.Empty)
        {
            return;
        }

        ink.Group("bulkheads", null);
        foreach (var bulkhead in plan.Bulkheads)
        {
            ink.Group(bulkhead.Id, $"{bulkhead.Id}: {say.Mark(bulkhead.Drop)} below the ceiling", ("stroke", "#6a6a6a"), ("stroke-width", "0.6"));
            foreach (var part in bulkhead.Parts)
            {
                List<List<Spot>> rings = [.. part.Select(ring => ring.Select(p => view[p]).ToList())];
                Hatch.Draw(ink, rings, 16, rising: true);
                foreach (var ring in rings)
                {
                    ink.Ring(ring, ("stroke-width", "1.6"), ("stroke-dasharray", "3 3"));
                }
            }

            ink.EndGroup();
        }

        foreach (var bulkhead in plan.Bulkheads)
        {
            Letter(ink, bulkhead, view, labels, say);
        }

        foreach (var panel in plan.AccessPanels)
        {
            var (at, half) = (view[panel.At], view.Size(panel.Size) / 2);
            ink.Line(new(at.X - half, at.Y - half), new(at.X + half, at.Y + half));
            ink.Line(new(at.X + half, at.Y - half), new(at.X - half, at.Y + half));
        }

        ink.EndGroup();
    }

    // on the middle of one of its undersides: the middle of all of it may lie outside
    private static void Letter(SvgInk ink, Bulkhead bulkhead, PlanView view, LabelField labels, TapeInk say)
    {
        var places = bulkhead.Boards.Where(board => board.Face == BoardFace.Underside).Select(board => view.BoxOf(board.Outline)).ToList();
        foreach (var text in new[] { $"{bulkhead.Id}  {say.Mark(bulkhead.Drop)} down", bulkhead.Id })
        {
            foreach (var upward in new[] { false, true })
            {
                var size = Lettering.Width(text, Lettering.Size);
                List<Spot> fits = [.. places.Where(box => (upward ? box.Height : box.Width) >= size).SelectMany(box => new[] { box.Middle, new Spot(box.Middle.X, box.Middle.Y + 14), new Spot(box.Middle.X + 14, box.Middle.Y) })];
                if (Label.Write(ink, labels, text, Lettering.Size, fits, null, upward, bold: true))
                {
                    return;
                }
            }
        }

        labels.Miss();
    }
}
