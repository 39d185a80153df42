using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace LayoutService.Drawing.Paper;

/// <summary>Pages filled from top to bottom; lengths are points of 1/72 in.</summary>
internal sealed class PaperPages(PdfDocument document, bool letter, string foot) : IDisposable
{
    public const double Margin = 40;
    private const double Foot = 16;

    public XGraphics Ink { get; private set; } = null!;

    /// <summary>Where the next thing begins.</summary>
    public double At { get; set; }

    public double Width { get; } = (letter ? 612 : 595) - (2 * Margin);

    public double Bottom { get; } = (letter ? 792 : 842) - Margin - Foot;

    public void Next()
    {
        Ink?.Dispose();
        var page = document.AddPage();
        (page.Width, page.Height) = (XUnit.FromPoint(letter ? 612 : 595), XUnit.FromPoint(letter ? 792 : 842));
        Ink = XGraphics.FromPdfPage(page);
        At = Margin;
        Text(foot, Margin, Bottom + Foot, 7);
        var number = $"page {document.PageCount.ToString(CultureInfo.InvariantCulture)}";
        Text(number, Margin + Width - WidthOf(number, 7), Bottom + Foot, 7);
    }

    /// <summary>Begins a new page when less than this is left.</summary>
    public void Need(double height)
    {
        if (At + height > Bottom)
        {
            Next();
        }
    }

    public void Heading(string text, double below = 0)
    {
        Need(24 + below);
        Text(text, Margin, At + 14, 12, bold: true);
        At += 22;
    }

    /// <summary>A text that begins at x and stands on y.</summary>
    public void Text(string text, double x, double y, double size, bool bold = false) =>
        Ink.DrawString(Printable(text), PaperFont.Of(size, bold), XBrushes.Black, x, y);

    public double WidthOf(string text, double size, bool bold = false) => Ink.MeasureString(Printable(text), PaperFont.Of(size, bold)).Width;

    /// <summary>The text broken into lines that are no wider; a word that is too wide alone is broken where it must be.</summary>
    public List<string> Broken(string text, double width, double size)
    {
        var lines = new List<string>();
        var line = string.Empty;
        foreach (var word in Printable(text).Split(' '))
        {
            var rest = word;
            if (WidthOf(line.Length == 0 ? rest : $"{line} {rest}", size) > width && line.Length > 0)
            {
                lines.Add(line);
                line = string.Empty;
            }

            while (rest.Length > 1 && WidthOf(rest, size) > width)
            {
                var fits = Math.Max(1, (int)(rest.Length * width / WidthOf(rest, size)));
                lines.Add(rest[..fits]);
                rest = rest[fits..];
            }

            line = line.Length == 0 ? rest : $"{line} {rest}";
        }

        lines.Add(line);
        return lines;
    }

    public void Dispose() => Ink?.Dispose();

    private static string Printable(string text) => string.Concat(text.Select(sign => char.IsControl(sign) ? ' ' : sign));
}
