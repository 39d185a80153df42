using PdfSharp.Drawing;

namespace LayoutService.Drawing.Paper;

/// <summary>Prints a table: its head again on every page, a row never broken over two pages, cells broken into lines.</summary>
internal static class TableInk
{
    private const double Size = 8;
    private const double Line = 10.5;
    private const double Box = 14;
    private static readonly XPen Thin = new(XColors.Gray, 0.4);

    public static void Print(PaperPages pages, PaperTable table)
    {
        if (table.Rows.Count == 0)
        {
            return;
        }

        var indent = table.Ticked ? Box : 0;
        var share = (pages.Width - indent) / table.Shares.Sum();
        var widths = table.Shares.Select(part => part * share).ToList();
        pages.Heading(table.Title, 4 * Line);
        Head(pages, table, widths, indent);
        foreach (var row in table.Rows)
        {
            var cells = row.Select((cell, i) => pages.Broken(cell, widths[i] - 6, Size)).ToList();
            var height = (cells.Max(cell => cell.Count) * Line) + 3;
            if (pages.At + height > pages.Bottom)
            {
                pages.Next();
                pages.Heading($"{table.Title}, continued");
                Head(pages, table, widths, indent);
            }

            if (table.Ticked)
            {
                pages.Ink.DrawRectangle(new XPen(XColors.Black, 0.8), PaperPages.Margin, pages.At + 2, 8, 8);
            }

            var x = PaperPages.Margin + indent;
            for (var i = 0; i < cells.Count; i++)
            {
                for (var k = 0; k < cells[i].Count; k++)
                {
                    pages.Text(cells[i][k], x, pages.At + ((k + 1) * Line) - 1.5, Size);
                }

                x += widths[i];
            }

            pages.At += height;
            pages.Ink.DrawLine(Thin, PaperPages.Margin, pages.At, PaperPages.Margin + pages.Width, pages.At);
        }

        pages.At += 12;
    }

    private static void Head(PaperPages pages, PaperTable table, List<double> widths, double indent)
    {
        var x = PaperPages.Margin + indent;
        for (var i = 0; i < table.Heads.Count; i++)
        {
            pages.Text(table.Heads[i], x, pages.At + Line - 1.5, Size, bold: true);
            x += widths[i];
        }

        pages.At += Line + 2;
        pages.Ink.DrawLine(XPens.Black, PaperPages.Margin, pages.At, PaperPages.Margin + pages.Width, pages.At);
    }
}
