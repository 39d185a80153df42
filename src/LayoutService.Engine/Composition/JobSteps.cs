using System.Globalization;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>
/// The steps of one room of a job. They are the room's own but for two: lumber and sheets are taken from the job's cut plan, and
/// the steps name the lengths and sheets there that hold pieces of this room.
/// </summary>
internal static class JobSteps
{
    public static IReadOnlyList<WorkStep> Of(JobRoom room, CutPlan cut) => [.. room.Plan.Steps.Select(step => step.Sentence.Code switch
    {
        "cut-lumber" => With(step, room, "cut-lumber-of-job", "lengths", cut.Sticks.Where(s => s.Cuts.Any(c => IsOf(room, c.PieceId))).Select(s => s.Id)),
        "check-sheets" => With(step, room, "check-sheets-of-job", "sheets", cut.Sheets.Where(s => s.Cuts.Any(c => IsOf(room, c.PieceId))).Select(s => s.Id)),
        _ => step,
    })];

    private static WorkStep With(WorkStep step, JobRoom room, string code, string what, IEnumerable<string> stock)
    {
        var ids = stock.ToList();
        var count = ids.Count.ToString(CultureInfo.InvariantCulture);
        var kind = step.Touches.Count > 0 ? step.Touches[0].Kind : what;
        return step with
        {
            Sentence = Sentence.Of(
                code,
                $"This room's pieces come out of {count} {what} of the job's cut plan: {string.Join(", ", ids)}. Write on each piece its room and id, and "
                + "keep what the plan cuts from them for other rooms.",
                ("count", count),
                (what, string.Join(", ", ids))),
            Touches = [.. ids.Select(id => new Touch(kind, id))],
        };
    }

    private static bool IsOf(JobRoom room, string pieceId) => pieceId.StartsWith(room.Name + "/", StringComparison.Ordinal);
}
