using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Requests;

namespace LayoutService.Api.Jobs.Answers;

/// <summary>
/// Many rooms as one order. The job's own figures are in `units`; what stands under a room is in that room's units. Ids of pieces
/// in the cut plan are the room's `name`, a slash and the piece's id in that room's own plan.
/// </summary>
public sealed record JobAnswer
{
    /// <summary>The caller's own name for the job.</summary>
    public string? Reference { get; init; }

    /// <summary>Units of the job's own figures.</summary>
    public required UnitsWord Units { get; init; }

    /// <summary>Version of the planning method.</summary>
    public required string EngineVersion { get; init; }

    /// <summary>Version of the published figures applied.</summary>
    public required string RulesVersion { get; init; }

    /// <summary>SHA-256, in hexadecimal, of the request's canonical JSON (RFC 8785) less `reference`.</summary>
    public required string RequestDigest { get; init; }

    /// <summary>The figures of the whole order.</summary>
    public required JobSummaryAnswer Summary { get; init; }

    /// <summary>The order against its rooms bought one by one.</summary>
    public required SavingAnswer Saving { get; init; }

    /// <summary>The rooms, in the order of the request.</summary>
    public required IReadOnlyList<JobRoomAnswer> Rooms { get; init; }

    /// <summary>Which piece of which room is cut from what; offcuts cross rooms.</summary>
    public required CutPlanAnswer CutPlan { get; init; }

    /// <summary>What to order, packs bought once for all rooms.</summary>
    public required TakeoffAnswer Takeoff { get; init; }
}

/// <summary>The figures of a whole order.</summary>
public sealed record JobSummaryAnswer
{
    /// <summary>How many rooms.</summary>
    public required int Rooms { get; init; }

    /// <summary>Lengths of wood to buy.</summary>
    public required int LengthsToBuy { get; init; }

    /// <summary>Sheets to buy.</summary>
    public required int SheetsToBuy { get; init; }

    /// <summary>Mass of the order, lb or kg.</summary>
    public required decimal Mass { get; init; }

    /// <summary>Mass of the heaviest sheet to be lifted in any room, lb or kg.</summary>
    public required decimal HeaviestLift { get; init; }

    /// <summary>Cost of what has a price, before tax; absent without prices.</summary>
    public decimal? Cost { get; init; }

    /// <summary>ISO 4217 code of the cost.</summary>
    public string? Currency { get; init; }

    /// <summary>How many checks failed in all rooms.</summary>
    public required int ChecksFailed { get; init; }
}

/// <summary>The order against its rooms bought one by one, each with its own cut plan and packs.</summary>
public sealed record SavingAnswer
{
    /// <summary>Sum of the rooms' amounts, each bought alone; absent without prices.</summary>
    public decimal? AmountApart { get; init; }

    /// <summary>Amount of the order.</summary>
    public decimal? AmountTogether { get; init; }

    /// <summary>The difference.</summary>
    public decimal? Amount { get; init; }

    /// <summary>Lengths of wood bought room by room.</summary>
    public required int LengthsApart { get; init; }

    /// <summary>Lengths of wood in the order.</summary>
    public required int LengthsTogether { get; init; }

    /// <summary>Total length of the wood saved; it may be negative where longer lengths cost less.</summary>
    public required decimal LumberSaved { get; init; }

    /// <summary>Sheets bought room by room.</summary>
    public required int SheetsApart { get; init; }

    /// <summary>Sheets in the order.</summary>
    public required int SheetsTogether { get; init; }
}

/// <summary>One room of a job.</summary>
public sealed record JobRoomAnswer
{
    /// <summary>Its number in the request, from 0.</summary>
    public required int Index { get; init; }

    /// <summary>The name that its pieces bear in the order: its reference where every room has one that can be an id, else `room-1` and so on.</summary>
    public required string Name { get; init; }

    /// <summary>The caller's own name for the room.</summary>
    public string? Reference { get; init; }

    /// <summary>Units of the room's figures.</summary>
    public required UnitsWord Units { get; init; }

    /// <summary>The ruleset applied to it.</summary>
    public required string Ruleset { get; init; }

    /// <summary>Digest of its plan, with the job's saw.</summary>
    public required string Digest { get; init; }

    /// <summary>The room's figures when it is bought alone.</summary>
    public required SummaryAnswer Summary { get; init; }

    /// <summary>What it has of the order's money; absent without prices.</summary>
    public ShareAnswer? Share { get; init; }

    /// <summary>Its steps; lengths and sheets are those of the job's cut plan.</summary>
    public required IReadOnlyList<StepAnswer> Steps { get; init; }

    /// <summary>Its own plan, as if it were bought alone, with the blocks that `include` asks for; absent without `include`.</summary>
    public PlanAnswer? Plan { get; init; }
}

/// <summary>
/// A room's part of the order: wood by the length cut for it, board by the area cut for it, everything else by what was counted
/// for it. The parts of all rooms add up to the order's figures to the minor unit.
/// </summary>
/// <param name="Amount">Its part of the amount.</param>
/// <param name="Taxes">Its part of each tax, in the order of the totals; absent without any.</param>
/// <param name="WithTax">Amount and taxes; absent without any.</param>
public sealed record ShareAnswer(decimal Amount, IReadOnlyList<decimal>? Taxes, decimal? WithTax);
