using LayoutService.Api.Plans.Answers;
using LayoutService.Engine.Checks;

namespace LayoutService.Api.Plans.Writing;

/// <summary>Writes what the floor tables say.</summary>
internal static class FloorWriting
{
    public static FloorAnswer? Of(FloorStiffness? floor, AnswerInk ink) => floor is null ? null : new FloorAnswer
    {
        EarnsFurredCeiling = floor.Earned,
        Needs = [.. floor.Needs.Select(AnswerInk.Say)],
        JoistModule = floor.Module?.Printed,
        Without = Of(floor.Without, ink),
        With = Of(floor.With, ink),
        Spans = [.. floor.Spans.Select(span => Of(span, ink)!)],
        Notes = [.. floor.Notes.Select(AnswerInk.Say)],
        Missing = floor.Missing.Count == 0 ? null : floor.Missing,
        Source = CheckWriting.Of(floor.Source),
    };

    private static FloorSpanAnswer? Of(FloorSpan? span, AnswerInk ink) =>
        span is null ? null : new(span.Bracing, ink.Number(span.Span), ink.Mark(span.Span), CheckWriting.Of(span.Source));
}
