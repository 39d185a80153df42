using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace LayoutService.Drawing.Paper;

/// <summary>The letters of printed pages: DejaVu Sans, carried in the assembly, so that every machine prints the same.</summary>
internal sealed class PaperFont : IFontResolver
{
    private const string Family = "DejaVu Sans";

    static PaperFont() => GlobalFontSettings.FontResolver = new PaperFont();

    public static XFont Of(double size, bool bold = false) => new(Family, size, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        new(bold ? "DejaVuSans-Bold.ttf" : "DejaVuSans.ttf");

    public byte[]? GetFont(string faceName)
    {
        using var stored = typeof(PaperFont).Assembly.GetManifestResourceStream(faceName);
        using var kept = new MemoryStream();
        stored!.CopyTo(kept);
        return kept.ToArray();
    }
}
