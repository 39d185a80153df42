using LayoutService.Engine;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using PdfSharp.Drawing;

namespace LayoutService.Drawing.Paper;

/// <summary>
/// One small picture for each sheet bought: the pieces where they are cut from it with their sizes, what is left over dashed,
/// and beside it where the holes of each piece are marked on the finished face.
/// </summary>
internal static class CutPictures
{
    private const double Size = 7;

    public static void Print(PaperPages pages, CeilingPlan plan, TapeInk say)
    {
        if (plan.CutPlan.Sheets.Count == 0)
        {
            return;
        }

        var holes = plan.Sheets.Pieces.Where(piece => piece.Cutouts.Count > 0).ToDictionary(piece => piece.Id, piece => piece.Cutouts);
        pages.Heading("Sheets, and what is cut from each", 120);
        var longest = plan.CutPlan.Sheets.Max(sheet => sheet.Length.Units);
        var wide = pages.Width * 0.56;
        var scale = wide / longest;
        foreach (var sheet in plan.CutPlan.Sheets)
        {
            var notes = sheet.Cuts
                .Where(cut => holes.ContainsKey(cut.PieceId))
                .SelectMany(cut => holes[cut.PieceId].Select(hole => $"{cut.PieceId}, hole {hole.FixtureId}: {hole.Mark.Text}"))
                .SelectMany(note => pages.Broken(note, pages.Width - wide - 12, Size)).ToList();
            var height = sheet.Width.Units * scale;
            var taken = Math.Max(height, notes.Count * 9) + 26;
            pages.Need(taken);
            pages.Text($"{sheet.Id}   {say.Mark(sheet.Width)} × {say.Mark(sheet.Length)}   ({sheet.StockId})", PaperPages.Margin, pages.At + 9, 8, bold: true);
            pages.At += 14;
            Picture(pages, sheet, scale, say);
            for (var i = 0; i < notes.Count; i++)
            {
                pages.Text(notes[i], PaperPages.Margin + wide + 12, pages.At + 8 + (i * 9), Size);
            }

            pages.At += taken - 14;
        }
    }

    private static void Picture(PaperPages pages, CutSheet sheet, double scale, TapeInk say)
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
            var lines = new[] { cut.PieceId, $"{say.Cut(cut.Width)} ×", say.Cut(cut.Length) };
            Write(pages, box, [cut.PieceId, $"{say.Cut(cut.Width)} × {say.Cut(cut.Length)}"], lines);
        }
    }

    // what fits: id and size in two lines, in three, or the id alone; upright in a narrow piece
    private static void Write(PaperPages pages, XRect box, params string[][] wordings)
    {
        foreach (var upright in new[] { false, true })
        {
            var (along, across) = upright ? (box.Height, box.Width) : (box.Width, box.Height);
            foreach (var lines in wordings)
            {
                if (lines.Max(line => pages.WidthOf(line, Size)) + 4 > along || (lines.Length * 9) + 2 > across)
                {
                    continue;
                }

                var state = pages.Ink.Save();
                var middle = new XPoint(box.X + (box.Width / 2), box.Y + (box.Height / 2));
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

    private static XRect At(PaperPages pages, Length x, Length y, Length along, Length across, double scale) =>
        new(PaperPages.Margin + (x.Units * scale), pages.At + (y.Units * scale), along.Units * scale, across.Units * scale);
}
