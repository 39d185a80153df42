using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Checks;

public enum CheckStatus
{
    Pass,

    /// <summary>Right or wrong by less than the survey can tell.</summary>
    Marginal,

    Fail,

    /// <summary>Something that the check needs was not said.</summary>
    NotChecked,
}

/// <summary>How the value stands to the limit when the rule is met.</summary>
public enum CheckComparison
{
    AtMost,
    AtLeast,
    Equal,
}

/// <summary>
/// One rule held against the plan. <see cref="Value"/> and <see cref="Limit"/> are in <see cref="Unit"/>, the caller's own;
/// either is null when it is not known or the rule has none. <see cref="Missing"/> points at what the caller could say.
/// </summary>
public sealed record Check
{
    public required string Rule { get; init; }

    public required Citation Source { get; init; }

    public required CheckStatus Status { get; init; }

    public required CheckComparison Comparison { get; init; }

    public decimal? Value { get; init; }

    public decimal? Limit { get; init; }

    public required string Unit { get; init; }

    /// <summary>Ids of rows, joists, services or sheets that show the value.</summary>
    public IReadOnlyList<string> Where { get; init; } = [];

    /// <summary>JSON pointers into the request.</summary>
    public IReadOnlyList<string> Missing { get; init; } = [];

    /// <summary>What to mind about how the rule was read.</summary>
    public Sentence? Note { get; init; }

    /// <summary>What a person could change; given when the check is not passed.</summary>
    public Sentence? Remedy { get; init; }
}

/// <summary>A danger or a limit of the plan that a person must know, with its source.</summary>
public sealed record Caution(Sentence Sentence, Citation Source, IReadOnlyList<string> Where);
