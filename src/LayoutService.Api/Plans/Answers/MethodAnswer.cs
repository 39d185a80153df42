namespace LayoutService.Api.Plans.Answers;

/// <summary>One way to carry the board, with the figures a person chooses by.</summary>
public sealed record MethodAnswer
{
    /// <summary>`strapped`, `direct` (board screwed to the joists) or `channel` (resilient channel across them).</summary>
    public required string Method { get; init; }

    /// <summary>True for the way that this plan is. The other of strapped and direct is laid out as well; of channel what follows from the survey is said.</summary>
    public required bool Planned { get; init; }

    /// <summary>From the finished floor to the finished ceiling; absent when a height or the floor build-up is missing.</summary>
    public decimal? FinishedHeight { get; init; }

    /// <summary>The same as text.</summary>
    public string? FinishedHeightText { get; init; }

    /// <summary>Pieces of strap.</summary>
    public int? StrapPieces { get; init; }

    /// <summary>Length of butt joints; absent where it is not laid out.</summary>
    public decimal? ButtJointLength { get; init; }

    /// <summary>Cost of what has a price; absent where it is not laid out, or nothing has a price.</summary>
    public decimal? Cost { get; init; }

    /// <summary>What of that cost is straps, ledgers and blocks, their fasteners and packing.</summary>
    public decimal? StrapCost { get; init; }

    /// <summary>Headroom, plane, and the board's span on what carries it.</summary>
    public required IReadOnlyList<CheckAnswer> Checks { get; init; }

    /// <summary>What it does about sound.</summary>
    public required SentenceAnswer Sound { get; init; }

    /// <summary>What to know of it.</summary>
    public required IReadOnlyList<SentenceAnswer> Notes { get; init; }
}
