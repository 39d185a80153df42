namespace LayoutService.Engine.Standards;

/// <summary>How a code profile cites a figure that was transcribed from a sister document or another edition.</summary>
internal static class Adoption
{
    /// <summary>
    /// Ontario adopts the national figures under the same clause numbers, so its profile cites its own document. A figure
    /// of the same document read in another edition keeps its clause and loses its high confidence.
    /// </summary>
    public static Citation Adopt(Citation source, RulesetRow profile)
    {
        var own = profile.Source!;
        if (profile.Id == "ca-on-2024" && source.Document == "National Building Code of Canada")
        {
            return source with { Document = own.Document!, Edition = own.Edition, Publisher = own.Publisher };
        }

        if (source.Document != own.Document || source.Edition == own.Edition || source.Edition is null)
        {
            return source;
        }

        var read = $"Transcribed from the {source.Edition} edition.";
        return source with
        {
            Edition = own.Edition,
            Confidence = source.Confidence == Confidence.High ? Confidence.Medium : source.Confidence,
            Note = source.Note is null ? read : source.Note + " " + read,
        };
    }
}
