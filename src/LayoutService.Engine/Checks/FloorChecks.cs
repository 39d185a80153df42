using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

/// <summary>The joists' own clear span against what the floor tables print for them under this ceiling (NBC 9.23.4.2.).</summary>
internal static class FloorChecks
{
    public static IEnumerable<Check> Of(CheckBench bench)
    {
        if (FloorSpans.Of(bench.Book, bench.Facts) is not { } floor)
        {
            yield break;
        }

        var rule = GridRules.FloorSpan;
        var limit = bench.Own(rule, new(floor.With?.Span ?? Length.Zero, floor.With?.Source ?? floor.Source));
        var known = floor.With is not null || bench.Book.Override(rule.Id) is not null;
        if (!known || bench.Facts.Floor.ClearSpan is not { } span)
        {
            IReadOnlyList<string> missing = bench.Facts.Floor.Joists == JoistKind.Sawn && bench.Facts.Floor.ClearSpan is null
                ? [.. floor.Missing, "#/joistFields/0/clearSpan"]
                : floor.Missing;
            yield return bench.NotChecked(
                rule.Id, CheckComparison.AtMost, limit.Source, known ? limit.Value : null, missing,
                floor.Notes.Count > 0 ? floor.Notes[0] : null);
            yield break;
        }

        yield return bench.Lengths(
            rule.Id, CheckComparison.AtMost, span, limit, [],
            Sentence.Of("floor_span_for_engineer", "The tables print a shorter span for such joists: ask an engineer or the building department before you load this floor with a ceiling."),
            bench.Facts.SurveyTolerance, floor.Notes[^1]);
    }
}
