using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>Strap section against row and support spacing, and strap fasteners (NBC 9.29.3; IRC R702.3.2).</summary>
internal static class StrapChecks
{
    public static IEnumerable<Check> Of(CheckBench bench)
    {
        if (bench.Facts.Straps is not { } straps)
        {
            yield break;
        }

        var book = bench.Book;
        var (least, _) = book.Furring(straps.RowSpacing, straps.SupportSpacing);
        yield return bench.Lengths(
            GridRules.StrapThickness.Id, CheckComparison.AtLeast, straps.Thickness,
            bench.Own(GridRules.StrapThickness, new(bench.Dressed(least.Value.Thickness, straps.Thickness), least.Source)), straps.Rows,
            Sentence.Of("use_thicker_strap", "Use a thicker strap."));

        yield return Face(bench, straps, least);

        if (straps.SupportSpacing is { } apart)
        {
            var widest = book.WidestFurringSupports();
            var (limit, note) = bench.Module(widest.Value, apart);
            yield return bench.Lengths(
                GridRules.StrapSupports.Id, CheckComparison.AtMost, apart, bench.Own(GridRules.StrapSupports, new(limit, widest.Source)), straps.Supports,
                Sentence.Of("block_between_joists", "Put blocking between these joists, so that straps have a support midway."),
                bench.Facts.SurveyTolerance, note);
        }

        if (straps.Fastener == StrapFastener.Nail)
        {
            yield return bench.Lengths(
                "strap-nail-length", CheckComparison.AtLeast, straps.FastenerLength, bench.Limit("strap-nail-length"), [],
                Sentence.Of("use_longer_strap_nail", "Use a longer nail."));
        }

        var into = bench.Limit("strap-fastener-penetration");
        yield return bench.Lengths(
            "strap-fastener-penetration", CheckComparison.AtLeast, straps.FastenerLength - straps.Thickness - straps.Through, into, [],
            Sentence.Of(
                "use_longer_strap_fastener", $"Use a fastener of {bench.Text(into.Value + straps.Thickness + straps.Through)} or longer.",
                ("length", bench.Text(into.Value + straps.Thickness + straps.Through))));

        var (count, source) = book.Limit("fasteners-per-crossing");
        yield return new Check
        {
            Rule = "fasteners-per-crossing",
            Source = source,
            Status = straps.FastenersPerCrossing >= count.Value ? CheckStatus.Pass : CheckStatus.Fail,
            Comparison = CheckComparison.AtLeast,
            Value = straps.FastenersPerCrossing,
            Limit = count.Value,
            Unit = "count",
        };

        var (face, from) = book.Limit("strap-joint-face");
        yield return bench.Lengths(
            "strap-joint-face", CheckComparison.AtLeast, straps.Face, new(bench.Dressed(face, straps.Face), from), [],
            Sentence.Of("use_wider_strap", "Use a strap with a wider face where sheets meet."));
    }

    // A joist found a hair beyond its module (within the survey's tolerance) leaves the face marginal, not failed.
    private static Check Face(CheckBench bench, StrapFacts straps, Cited<FurringRow> least)
    {
        var limit = bench.Own(GridRules.StrapFace, new(bench.Dressed(least.Value.Face, straps.Face), least.Source));
        var check = bench.Lengths(
            GridRules.StrapFace.Id, CheckComparison.AtLeast, straps.Face, limit, [.. straps.Rows, .. straps.Supports],
            Sentence.Of(
                "use_wider_strap_or_closer_rows", $"Use a strap with a face of {bench.Text(limit.Value)}, set the rows closer, or block between the joists.",
                ("face", bench.Text(limit.Value))));
        if (check.Status != CheckStatus.Fail || straps.SupportSpacing is not { } apart || limit.Source.Basis == Basis.SetByCaller)
        {
            return check;
        }

        var (nearer, _) = bench.Book.Furring(straps.RowSpacing, apart - bench.Facts.SurveyTolerance);
        return straps.Face >= bench.Dressed(nearer.Value.Face, straps.Face) ? check with { Status = CheckStatus.Marginal } : check;
    }
}
