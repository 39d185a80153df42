using LayoutService.Api.Jobs.Answers;
using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Plans.Writing;
using LayoutService.Api.Rooms;
using LayoutService.Engine;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Api.Jobs;

/// <summary>Writes the answer of a job.</summary>
internal static class JobWriting
{
    public static JobAnswer Of(
        JobPlan job, IReadOnlyList<JobRoom> rooms, IReadOnlyList<AcceptedRoom> accepted, string? reference, bool imperial, string requestDigest, Blocks? include)
    {
        var ink = new AnswerInk(imperial);
        var plans = rooms.Select((room, i) => PlanWriting.Of(
            room.Plan, accepted[i].Asked with { Survey = room.Survey }, accepted[i].RequestDigest, include ?? new(Block.None))).ToList();
        return new()
        {
            Reference = reference,
            Units = imperial ? UnitsWord.Imperial : UnitsWord.Metric,
            EngineVersion = LayoutEngine.EngineVersion,
            RulesVersion = PublishedTables.Current.RulesVersion,
            RequestDigest = requestDigest,
            Summary = Summary(job, rooms, ink),
            Saving = Saving(job.Saving, ink),
            Rooms = [.. rooms.Select((room, i) => Room(room, i, job.Rooms[i], plans[i], include is not null))],
            CutPlan = CutPlanWriting.Of(job.CutPlan, ink),
            Takeoff = TakeoffWriting.Of(job.Takeoff, ink),
        };
    }

    private static JobSummaryAnswer Summary(JobPlan job, IReadOnlyList<JobRoom> rooms, AnswerInk ink)
    {
        var totals = TakeoffWriting.Totals(job.Takeoff.Totals, ink);
        return new()
        {
            Rooms = rooms.Count,
            LengthsToBuy = job.CutPlan.Sticks.Count,
            SheetsToBuy = job.CutPlan.Sheets.Count,
            Mass = totals.Mass,
            HeaviestLift = ink.Mass(rooms.Max(room => room.Plan.Summary.HeaviestLiftKilograms)),
            Cost = totals.Amount,
            Currency = totals.Amount is null ? null : totals.Currency,
            ChecksFailed = rooms.Sum(room => room.Plan.Summary.ChecksFailed),
        };
    }

    private static SavingAnswer Saving(JobSaving saving, AnswerInk ink) => new()
    {
        AmountApart = TakeoffWriting.Money(saving.AmountApart),
        AmountTogether = TakeoffWriting.Money(saving.AmountTogether),
        Amount = TakeoffWriting.Money(saving.AmountApart - saving.AmountTogether),
        LengthsApart = saving.LengthsApart,
        LengthsTogether = saving.LengthsTogether,
        LumberSaved = ink.Number(saving.LumberApart - saving.LumberTogether),
        SheetsApart = saving.SheetsApart,
        SheetsTogether = saving.SheetsTogether,
    };

    private static JobRoomAnswer Room(JobRoom room, int index, RoomShare share, PlanAnswer plan, bool whole) => new()
    {
        Index = index,
        Name = room.Name,
        Reference = plan.Reference,
        Units = plan.Units,
        Ruleset = plan.Ruleset,
        Digest = plan.Digest,
        Summary = plan.Summary,
        Share = share.Amount is { } amount
            ? new(Figures.Plain(amount, 6), share.Taxes.Count == 0 ? null : [.. share.Taxes.Select(t => Figures.Plain(t, 6))], TakeoffWriting.Money(share.WithTax))
            : null,
        Steps = RoomWriting.Steps(share.Steps),
        Plan = whole ? plan : null,
    };
}
