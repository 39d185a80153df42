using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Engine.Composition;

namespace LayoutService.Api.Plans.Writing;

/// <summary>Writes the ways to carry the board, side by side.</summary>
internal static class MethodWriting
{
    public static IReadOnlyList<MethodAnswer> Of(IReadOnlyList<MethodCompared> methods, AnswerInk ink) =>
        [.. methods.Select(m => new MethodAnswer
        {
            Method = Words.Text(m.Method),
            Planned = m.Planned,
            FinishedHeight = ink.Number(m.FinishedHeight),
            FinishedHeightText = ink.Mark(m.FinishedHeight),
            StrapPieces = m.StrapPieces,
            ButtJointLength = ink.Number(m.ButtJointLength),
            Cost = m.Cost,
            StrapCost = m.StrapCost,
            Checks = CheckWriting.Checks(m.Checks),
            Sound = AnswerInk.Say(m.Sound),
            Notes = [.. m.Notes.Select(AnswerInk.Say)],
        })];
}
