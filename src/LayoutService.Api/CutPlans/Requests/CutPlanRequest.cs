using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;

namespace LayoutService.Api.CutPlans.Requests;

/// <summary>
/// Pieces to cut and what they can be cut from, without a ceiling: lengths under `sticks`, rectangles under `sheets`; one
/// of the two at least.
/// </summary>
public sealed record CutPlanRequest
{
    /// <summary>The caller's own name for this request; echoed unchanged, no part of the digest.</summary>
    public string? Reference { get; init; }

    /// <summary>Units of every number here and in the answer.</summary>
    public UnitsWord? Units { get; init; }

    /// <summary>How hard to search. Default `quick`.</summary>
    public EffortWord? Effort { get; init; }

    /// <summary>ISO 4217 code; needed as soon as a price is given.</summary>
    public string? Currency { get; init; }

    /// <summary>What one saw cut of the sticks takes away; one after each piece that does not end at the stock's end. Default 1/8 in, 3 mm.</summary>
    public WireLength? Kerf { get; init; }

    /// <summary>Cut off one end of each stick to square it. Default 0: the stock is used from end to end.</summary>
    public WireLength? EndTrim { get; init; }

    /// <summary>Pieces cut from lengths.</summary>
    public StickCutsRequest? Sticks { get; init; }

    /// <summary>Pieces cut from sheets, by cuts from edge to edge.</summary>
    public SheetCutsRequest? Sheets { get; init; }
}
