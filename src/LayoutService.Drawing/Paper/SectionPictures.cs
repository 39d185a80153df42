using LayoutService.Engine;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using PdfSharp.Drawing;

namespace LayoutService.Drawing.Paper;

/// <summary>A picture of each bulkhead cut across: wood that is cut through is crossed, what lies behind is thin, board is filled.</summary>
internal static class SectionPictures
{
    private const double Size = 7;
    private const double Highest = 110;

    public static void Print(PaperPages pages, CeilingPlan plan, Survey survey, TapeInk say)
    {
        var bulkheads = plan.Bulkheads.Bulkheads.Select(bulkhead => (Bulkhead: bulkhead, Section: BulkheadSection.Of(bulkhead, survey.Sheets.Thickness.Units)))
            .Where(pair => pair.Section is { Width: > 0 }).ToList();
        if (bulkheads.Count == 0)
        {
            return;
        }

        pages.Heading("Bulkheads, cut across", Highest + 40);
        foreach (var (bulkhead, section) in bulkheads)
        {
            var wide = pages.Width * 0.5;
            var scale = Math.Min((wide - 70) / section!.Width, (Highest - 30) / bulkhead.Underside.Units);
            pages.Need(Highest + 24);
            pages.Text($"{bulkhead.Id}   {bulkhead.FrameSize}", PaperPages.Margin, pages.At + 9, 8, bold: true);
            Picture(pages, section, bulkhead.Underside.Units - bulkhead.Drop.Units, new(PaperPages.Margin + 34, pages.At + 26), scale);
            var lines = new List<string>
            {
                $"{say.Mark(new Length((long)Math.Round(section.Width)))} from side to side, finished, where it is cut",
                $"{say.Mark(bulkhead.Drop)} from the finished ceiling to the finished underside",
                $"{say.Mark(bulkhead.Underside)} from the underside of the joists (dashed) to the finished underside",
            };
            if (bulkhead.UndersideAboveFloor is { } height)
            {
                lines.Add($"{say.Mark(height)} from the finished floor to the finished underside");
            }

            lines.Add("Crossed: wood that is cut through. Thin: the nearest rung and tie behind. Filled: board.");
            var broken = lines.SelectMany(line => pages.Broken(line, pages.Width - wide - 12, Size)).ToList();
            for (var i = 0; i < broken.Count; i++)
            {
                pages.Text(broken[i], PaperPages.Margin + wide + 12, pages.At + 30 + (i * 9), Size);
            }

            pages.At += Highest + 24;
        }
    }

    private static void Picture(PaperPages pages, BulkheadSection section, double ceiling, XPoint corner, double scale)
    {
        XRect On(SectionBox box) => new(corner.X + (box.From * scale), corner.Y + (box.Top * scale), (box.To - box.From) * scale, (box.Bottom - box.Top) * scale);
        XPoint Place(double along, double down) => new(corner.X + (along * scale), corner.Y + (down * scale));

        pages.Ink.DrawLine(new XPen(XColors.Black, 0.7) { DashStyle = XDashStyle.Dash }, Place(0, 0).X - 24, corner.Y, Place(section.Width, 0).X + 24, corner.Y);
        foreach (var box in section.Behind)
        {
            pages.Ink.DrawRectangle(new XPen(XColors.Gray, 0.5), On(box));
        }

        foreach (var box in section.Cut)
        {
            var on = On(box);
            pages.Ink.DrawRectangle(new XPen(XColors.Black, 1), XBrushes.White, on);
            pages.Ink.DrawLine(new XPen(XColors.Black, 0.5), on.TopLeft, on.BottomRight);
            pages.Ink.DrawLine(new XPen(XColors.Black, 0.5), on.BottomLeft, on.TopRight);
        }

        foreach (var box in section.Faces.Append(section.Underside))
        {
            pages.Ink.DrawRectangle(new XPen(XColors.Black, 0.5), XBrushes.DarkGray, On(box));
        }

        // the ceiling goes on where there is a face, a wall stands where there is none
        foreach (var (side, away) in new[] { (0.0, -24.0), (section.Width, 24.0) })
        {
            var at = Place(side, ceiling);
            if (section.Faces.Any(face => side == 0 ? face.From < section.Width / 2 : face.To > section.Width / 2))
            {
                pages.Ink.DrawLine(new XPen(XColors.Black, 1.6), at.X, at.Y, at.X + away, at.Y);
            }
            else
            {
                pages.Ink.DrawLine(new XPen(XColors.Black, 2.4), at.X, corner.Y, at.X, Place(0, section.Underside.Bottom).Y + 8);
            }
        }
    }
}
