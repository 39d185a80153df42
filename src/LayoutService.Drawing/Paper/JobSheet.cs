using System.Text;
using System.Text.RegularExpressions;
using LayoutService.Engine;
using LayoutService.Engine.Ceilings;
using PdfSharp.Pdf;

namespace LayoutService.Drawing.Paper;

/// <summary>
/// The job sheet: a few printed pages to build from. Letter paper for imperial units, A4 for metric. The same plan has the same
/// bytes: dates and ids are fixed.
/// </summary>
public static partial class JobSheet
{
    private static readonly DateTime NoTime = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <param name="plan">The plan.</param>
    /// <param name="survey">What it was made from.</param>
    /// <param name="reference">The caller's own name for it.</param>
    /// <param name="tables">What is printed after the plans: tables, in words.</param>
    /// <param name="after">Tables after the pictures of the sheets.</param>
    public static byte[] Pdf(CeilingPlan plan, Survey survey, string? reference, IReadOnlyList<PaperTable> tables, IReadOnlyList<PaperTable> after)
    {
        using var document = new PdfDocument();
        document.Info.Title = "Job sheet of a ceiling";
        (document.Info.CreationDate, document.Info.ModificationDate) = (NoTime, NoTime);
        (document.Internals.FirstDocumentID, document.Internals.SecondDocumentID) = (new string('0', 16), new string('0', 16));
        var foot = reference is null ? "Job sheet of a ceiling" : $"Job sheet: {(reference.Length > 80 ? reference[..80] : reference)}";
        using (var pages = new PaperPages(document, survey.Units == UnitSystem.Imperial, foot))
        {
            pages.Next();
            new PlanPage(pages, plan, survey, plan.Strapping.Direct ? "Joists" : "Straps and joists").Straps();
            for (var layer = 1; layer <= plan.Sheets.Layers; layer++)
            {
                pages.Next();
                new PlanPage(pages, plan, survey, plan.Sheets.Layers == 1 ? "Board" : FormattableString.Invariant($"Board, layer {layer}")).Board(layer);
            }

            pages.Next();
            Print(pages, [.. tables, HolePlaces.Of(plan, survey)]);
            CutPictures.Print(pages, plan, new TapeInk(survey.Units), survey);
            SectionPictures.Print(pages, plan, survey, new TapeInk(survey.Units));
            Print(pages, after);
        }

        using var kept = new MemoryStream();
        document.Save(kept, false);
        return Steady(kept.ToArray());
    }

    private static void Print(PaperPages pages, IReadOnlyList<PaperTable> tables)
    {
        foreach (var table in tables)
        {
            TableInk.Print(pages, table);
        }
    }

    // the library names each part of a font by chance, six capitals before a plus sign (ISO 32000-1, 9.6.4), and so the
    // document in its metadata; both are written over with as many letters, so that nothing moves
    private static byte[] Steady(byte[] bytes)
    {
        var text = ChanceTag().Replace(Encoding.Latin1.GetString(bytes), "/LAYOUT+DejaVu");
        return Encoding.Latin1.GetBytes(ChanceId().Replace(text, "uuid:00000000-0000-0000-0000-000000000000"));
    }

    [GeneratedRegex(@"/[A-Z]{6}\+DejaVu")]
    private static partial Regex ChanceTag();

    [GeneratedRegex("uuid:[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}")]
    private static partial Regex ChanceId();
}
