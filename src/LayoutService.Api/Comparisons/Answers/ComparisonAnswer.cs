using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Requests;

namespace LayoutService.Api.Comparisons.Answers;

/// <summary>Variants of one room side by side.</summary>
public sealed record ComparisonAnswer
{
    /// <summary>The caller's own name for the comparison.</summary>
    public string? Reference { get; init; }

    /// <summary>Units of every figure.</summary>
    public required UnitsWord Units { get; init; }

    /// <summary>Version of the planning method.</summary>
    public required string EngineVersion { get; init; }

    /// <summary>Version of the published figures applied.</summary>
    public required string RulesVersion { get; init; }

    /// <summary>SHA-256, in hexadecimal, of the request's canonical JSON (RFC 8785) less `reference`.</summary>
    public required string RequestDigest { get; init; }

    /// <summary>The table: the base first, then the variants in the order of the request.</summary>
    public required IReadOnlyList<VariantAnswer> Variants { get; init; }

    /// <summary>For each figure, the best value and who has it.</summary>
    public required IReadOnlyList<BestAnswer> Best { get; init; }
}

/// <summary>One line of the table: figures, or findings where the variant has no plan.</summary>
public sealed record VariantAnswer
{
    /// <summary>`base`, or the variant's name.</summary>
    public required string Name { get; init; }

    /// <summary>Digest of its plan: the plan that `POST /v1/plans` makes of base and change has the same.</summary>
    public required string Digest { get; init; }

    /// <summary>The figures; absent without a plan.</summary>
    public VariantFiguresAnswer? Figures { get; init; }

    /// <summary>Why it has no plan.</summary>
    public IReadOnlyList<FindingAnswer>? Findings { get; init; }

    /// <summary>Its plan with the blocks that `include` asks for; absent without `include`.</summary>
    public PlanAnswer? Plan { get; init; }
}

/// <summary>The figures that a person decides by.</summary>
public sealed record VariantFiguresAnswer
{
    /// <summary>Cost of what has a price; absent without prices.</summary>
    public decimal? Cost { get; init; }

    /// <summary>Its currency.</summary>
    public string? Currency { get; init; }

    /// <summary>How many takeoff codes have no price; costs compare only where they are the same.</summary>
    public required int Unpriced { get; init; }

    /// <summary>Rows of straps.</summary>
    public required int Rows { get; init; }

    /// <summary>Pieces of strap to cut and put up.</summary>
    public required int StrapPieces { get; init; }

    /// <summary>Pieces of board to cut and hang.</summary>
    public required int BoardPieces { get; init; }

    /// <summary>Joints of straps, where one piece meets the next of its row.</summary>
    public required int StrapJoints { get; init; }

    /// <summary>Lengths of wood to buy.</summary>
    public required int LengthsToBuy { get; init; }

    /// <summary>Sheets to buy.</summary>
    public required int SheetsToBuy { get; init; }

    /// <summary>Length of butt joints.</summary>
    public required decimal ButtJointLength { get; init; }

    /// <summary>Length of all board joints to finish, the angle at the walls apart.</summary>
    public required decimal JointLength { get; init; }

    /// <summary>The same as text.</summary>
    public required string JointLengthText { get; init; }

    /// <summary>Part of the wood bought that is in no piece, kerf and trim included.</summary>
    public required decimal LumberWaste { get; init; }

    /// <summary>Part of the board bought that is in no piece.</summary>
    public required decimal SheetWaste { get; init; }

    /// <summary>Mass of everything that is bought, lb or kg.</summary>
    public required decimal Mass { get; init; }

    /// <summary>Mass of the heaviest sheet to be lifted, lb or kg.</summary>
    public required decimal HeaviestLift { get; init; }

    /// <summary>Lowest finished underside above the finished floor; absent when a height or the floor build-up is missing.</summary>
    public decimal? Headroom { get; init; }

    /// <summary>The same as text.</summary>
    public string? HeadroomText { get; init; }

    /// <summary>How many checks failed.</summary>
    public required int ChecksFailed { get; init; }
}

/// <summary>Who is best by one figure.</summary>
/// <param name="Figure">Its name in the table.</param>
/// <param name="Better">`less` or `more`.</param>
/// <param name="Value">The best value.</param>
/// <param name="Names">All lines that have it.</param>
public sealed record BestAnswer(string Figure, string Better, decimal Value, IReadOnlyList<string> Names);
