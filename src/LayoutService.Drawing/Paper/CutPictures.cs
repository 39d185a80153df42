using LayoutService.Engine;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using PdfSharp.Drawing;

namespace LayoutService.Drawing.Paper;

/// <summary>
/// One small picture for each sheet bought, face up: the pieces where they are cut from it with their sizes, what is left over
/// dashed, the holes; and beside it where each hole is marked on its piece, and on the sheet from the sheet's own corner.
/// </summary>
internal static class CutPictures
{
    private const double Size = 7;

    public static void Print(PaperPages pages, CeilingPlan plan, TapeInk say, Survey survey)
    {
        if (plan.CutPlan.Sheets.Count == 0)
        {
            return;
        }

        var holed = plan.Sheets.Pieces.Where(piece => piece.Cutouts.Count > 0).ToDictionary(piece => piece.Id);
        pages.Heading("Sheets, and what is cut from each", 120);
        var longest = plan.CutPlan.Sheets.Max(sheet => sheet.Length.Units);
        var wide = pages.Width * 0.56;
        var scale = wide / longest;
        foreach (var sheet in plan.CutPlan.Sheets)
        {
            var holes = sheet.Cuts.Where(cut => holed.ContainsKey(cut.PieceId))
                .SelectMany(cut => SheetHoles.Of(plan.Sheets, sheet, cut, holed[cut.PieceId], Degrees(plan, survey, cut.PieceId)).Select(hole => (cut.PieceId, On: hole))).ToList();
            var notes = holes
                .Select(hole => $"{hole.PieceId}, hole {hole.On.Hole.FixtureId}: {hole.On.Hole.Mark.Text} On the sheet as pictured{hole.On.Lies}: {say.Mark(hole.On.FromLeft)} from its left end, {say.Mark(hole.On.FromTop)} from its top edge.")
                .SelectMany(note => pages.Broken(note, pages.Width - wide - 12, Size)).ToList();
            var height = sheet.Width.Units * scale;
            var taken = Math.Max(height, notes.Count * 9) + 26;
            pages.Need(taken);
            pages.Text($"{sheet.Id}   {say.Mark(sheet.Width)} × {say.Mark(sheet.Length)}   ({sheet.StockId})", PaperPages.Margin, pages.At + 9, 8, bold: true);
            pages.At += 14;
            XRect Box(SheetHole hole) =>
                At(pages, new(hole.FromLeft.Units - (hole.Wide.Units / 2)), new(hole.FromTop.Units - (hole.High.Units / 2)), hole.Wide, hole.High, scale);
            Picture(pages, sheet, scale, say, [.. holes.Select(hole => Box(hole.On))]);
            foreach (var (_, hole) in holes)
            {
                var box = Box(hole);
                var pen = new XPen(XColors.Black, 1);
                if (hole.Hole.Size.Round)
                {
                    pages.Ink.DrawEllipse(pen, box);
                }
                else
                {
                    pages.Ink.DrawRectangle(pen, box);
                }
            }

            for (var i = 0; i < notes.Count; i++)
            {
                pages.Text(notes[i], PaperPages.Margin + wide + 12, pages.At + 8 + (i * 9), Size);
            }

            pages.At += taken - 14;
        }
    }

    // of the joists over a piece
    private static double Degrees(CeilingPlan plan, Survey survey, string piece) =>
        RowLayer.Degrees(plan.Parts.Where(p => p.Plan.Sheets.Pieces.Any(own => own.Id == piece)).Select(p => p.Survey).FirstOrDefault(survey));

    private static void Picture(PaperPages pages, CutSheet sheet, double scale, TapeInk say, XRect[] holes)
    {
        foreach (var left in sheet.Offcuts)
        {
            pages.Ink.DrawRectangle(new XPen(XColors.Gray, 0.5) { DashStyle = XDashStyle.Dash }, At(pages, left.X, left.Y, left.Length, left.Width, scale));
        }

        pages.Ink.DrawRectangle(new XPen(XColors.Black, 1.4), At(pages, new Length(0), new Length(0), sheet.Length, sheet.Width, scale));
        foreach (var cut in sheet.Cuts)
        {
            var box = At(pages, cut.X, cut.Y, cut.Length, cut.Width, scale);
            pages.Ink.DrawRectangle(new XPen(XColors.Black, 0.8), box);
            var size = $"{say.Cut(cut.Width)} × {say.Cut(cut.Length)}";
            var lines = new[] { cut.PieceId, $"{say.Cut(cut.Width)} ×", say.Cut(cut.Length) };
            Write(pages, box, holes, [cut.PieceId, size], lines, [$"{cut.PieceId}  {size}"], [cut.PieceId]);
        }
    }

    // what fits: id and size in two lines, in three, in one, or the id alone; upright in a narrow piece; off the holes where the piece has room
    private static void Write(PaperPages pages, XRect box, XRect[] holes, params string[][] wordings)
    {
        foreach (var upright in new[] { false, true })
        {
            var (along, across) = upright ? (box.Height, box.Width) : (box.Width, box.Height);
            foreach (var lines in wordings)
            {
                var longest = lines.Max(line => pages.WidthOf(line, Size));
                if (longest + 4 > along || (lines.Length * 9) + 2 > across)
                {
                    continue;
                }

                var state = pages.Ink.Save();
                var middle = Middle(box, upright ? new(lines.Length * 9, longest) : new(longest, lines.Length * 9), holes);
                if (upright)
                {
                    pages.Ink.RotateAtTransform(-90, middle);
                }

                for (var i = 0; i < lines.Length; i++)
                {
                    pages.Text(lines[i], middle.X - (pages.WidthOf(lines[i], Size) / 2), middle.Y + ((i - (lines.Length / 2.0)) * 9) + 7, Size);
                }

                pages.Ink.Restore(state);
                return;
            }
        }
    }

    private static XPoint Middle(XRect box, XSize text, XRect[] holes)
    {
        var shares = new[] { 0, 0.2, -0.2, 0.35, -0.35 };
        var middles = shares.SelectMany(down => shares.Select(right => new XPoint(box.X + (box.Width * (0.5 + right)), box.Y + (box.Height * (0.5 + down))))).ToList();
        return middles
            .Where(at => at.X - (text.Width / 2) >= box.Left && at.X + (text.Width / 2) <= box.Right && at.Y - (text.Height / 2) >= box.Top && at.Y + (text.Height / 2) <= box.Bottom)
            .Where(at => !holes.Any(hole => hole.IntersectsWith(new XRect(at.X - (text.Width / 2), at.Y - (text.Height / 2), text.Width, text.Height))))
            .DefaultIfEmpty(middles[0]).First();
    }

    private static XRect At(PaperPages pages, Length x, Length y, Length along, Length across, double scale) =>
        new(PaperPages.Margin + (x.Units * scale), pages.At + (y.Units * scale), along.Units * scale, across.Units * scale);
}
