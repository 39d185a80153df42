using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Standards;

namespace LayoutService.Api.Plans.Writing;

/// <summary>Writes checks and cautions with their sources.</summary>
internal static class CheckWriting
{
    public static IReadOnlyList<CheckAnswer> Checks(IReadOnlyList<Check> checks) =>
        [.. checks.Select(c => new CheckAnswer
        {
            Rule = c.Rule,
            Source = Of(c.Source),
            Status = Words.Text(c.Status),
            Comparison = Words.Text(c.Comparison),
            Value = c.Value is { } value ? Figures.Plain(value, 6) : null,
            Limit = c.Limit is { } limit ? Figures.Plain(limit, 6) : null,
            Unit = c.Unit,
            Where = c.Where,
            Missing = c.Missing.Count == 0 ? null : c.Missing,
            Note = c.Note is { } note ? AnswerInk.Say(note) : null,
            Remedy = c.Remedy is { } remedy ? AnswerInk.Say(remedy) : null,
        })];

    public static IReadOnlyList<CautionAnswer> Cautions(IReadOnlyList<Caution> cautions) =>
        [.. cautions.Select(c => new CautionAnswer
        {
            Code = c.Sentence.Code,
            Text = c.Sentence.Text,
            Params = AnswerInk.Params(c.Sentence),
            Source = Of(c.Source),
            Where = c.Where,
        })];

    public static SourceAnswer Of(Citation source) => new()
    {
        Document = source.Document,
        Edition = source.Edition,
        Clause = source.Clause,
        Publisher = source.Publisher,
        Basis = Words.Text(source.Basis),
        Confidence = Words.Text(source.Confidence),
        Note = source.Note,
    };
}
