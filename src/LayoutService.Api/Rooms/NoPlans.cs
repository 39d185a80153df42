using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Writing;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.Rooms;

/// <summary>Findings as they are written; of one room of several, with the place of that room in the body.</summary>
internal static class NoPlans
{
    public static IEnumerable<FindingAnswer> Of(IEnumerable<Finding> findings, string? pointer = null) => findings.Select(f => new FindingAnswer
    {
        Code = f.Sentence.Code,
        Text = f.Sentence.Text,
        Params = AnswerInk.Params(f.Sentence),
        Pointer = pointer,
        Where = f.Where,
        Remedies = [.. f.Remedies.Select(AnswerInk.Say)],
    });
}
