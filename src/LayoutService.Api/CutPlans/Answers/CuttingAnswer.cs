using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Requests;

namespace LayoutService.Api.CutPlans.Answers;

/// <summary>Which piece is cut from which length and sheet, and how good that is: the block `cutPlan` of a plan, with a head.</summary>
public sealed record CuttingAnswer
{
    /// <summary>The caller's own name for the request.</summary>
    public string? Reference { get; init; }

    /// <summary>Units of every number here.</summary>
    public required UnitsWord Units { get; init; }

    /// <summary>Version of the planning method.</summary>
    public required string EngineVersion { get; init; }

    /// <summary>Digest of the request as sent, less its reference.</summary>
    public required string RequestDigest { get; init; }

    /// <summary>Every default that was taken.</summary>
    public required IReadOnlyList<AssumedAnswer> Assumed { get; init; }

    /// <summary>The lengths bought and the cuts made of each.</summary>
    public required IReadOnlyList<StickAnswer> Stock { get; init; }

    /// <summary>The sheets bought and the cuts made of each.</summary>
    public required IReadOnlyList<CutSheetAnswer> SheetStock { get; init; }

    /// <summary>Lost by one saw cut of a length; 0 when no lengths are cut.</summary>
    public required decimal Kerf { get; init; }

    /// <summary>Cut off one end of each length; 0 when no lengths are cut.</summary>
    public required decimal EndTrim { get; init; }

    /// <summary>How good the plan is, for `sticks` and for `sheets`.</summary>
    public required IReadOnlyList<CutResultAnswer> Results { get; init; }
}
