using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Composition;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine;

/// <summary>
/// Planned rooms in, one order out: lumber and sheets cut together so that offcuts cross rooms, packs bought once, and the
/// money divided over the rooms again. Pure and deterministic.
/// </summary>
public static class JobEngine
{
    /// <summary>
    /// The rooms with one saw for all of them: the widest kerf and the longest trim of any room. To be planned like this, so
    /// that a piece may come from any room's stick.
    /// </summary>
    public static IReadOnlyList<Survey> WithOneSaw(IReadOnlyList<Survey> rooms)
    {
        var kerf = rooms.Max(room => room.Strapping.Kerf);
        var trim = rooms.Max(room => room.Strapping.EndTrim);
        return [.. rooms.Select(room => room with { Strapping = room.Strapping with { Kerf = kerf, EndTrim = trim } })];
    }

    /// <summary>The order, or why there is none, under a meter of its work.</summary>
    public static JobOutcome Pool(IReadOnlyList<JobRoom> rooms, WorkMeter meter) =>
        WorkMeter.Run(meter, () => Pool(rooms), () => new JobOutcome.NotPossible([Findings.TooMuchWork()]));

    public static JobOutcome Pool(IReadOnlyList<JobRoom> rooms)
    {
        var (lumber, noLumber) = new JobLumber(rooms).Of();
        var (boards, noBoards) = new JobBoards(rooms).Of();
        return lumber is null || boards is null
            ? new JobOutcome.NotPossible([.. noLumber, .. noBoards])
            : new JobOutcome.Made(JobWriter.Write(rooms, lumber, boards));
    }
}

/// <summary>A room of a job: the name that its pieces bear in the order, how it was surveyed and planned.</summary>
public sealed record JobRoom(string Name, Survey Survey, CeilingPlan Plan);

/// <summary>Either an order, or the reasons why there is none.</summary>
public abstract record JobOutcome
{
    private JobOutcome()
    {
    }

    public sealed record Made(JobPlan Plan) : JobOutcome;

    public sealed record NotPossible(IReadOnlyList<Finding> Findings) : JobOutcome;
}

/// <summary>Many rooms as one order. Ids of pieces are the room's name, a slash and the id in the room's own plan.</summary>
public sealed record JobPlan(CutPlan CutPlan, TakeoffPlan Takeoff, IReadOnlyList<RoomShare> Rooms, JobSaving Saving);

/// <summary>
/// What one room has of the order. <see cref="Amount"/>, <see cref="Taxes"/> and <see cref="WithTax"/> of all rooms add up to
/// the order's; null without prices.
/// </summary>
public sealed record RoomShare(decimal? Amount, IReadOnlyList<decimal> Taxes, decimal? WithTax, IReadOnlyList<WorkStep> Steps);

/// <summary>The order against its rooms bought one by one.</summary>
public sealed record JobSaving(
    decimal? AmountApart, decimal? AmountTogether, int LengthsApart, int LengthsTogether, int SheetsApart, int SheetsTogether, Length LumberApart, Length LumberTogether);
