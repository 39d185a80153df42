namespace LayoutService.Api.Plans.Answers;

/// <summary>One comparison with a rule.</summary>
public sealed record CheckAnswer
{
    /// <summary>Id of the rule.</summary>
    public required string Rule { get; init; }

    /// <summary>Where the rule is published.</summary>
    public required SourceAnswer Source { get; init; }

    /// <summary>`pass`, `marginal` (inside the tolerance of the survey), `fail` or `not-checked`.</summary>
    public required string Status { get; init; }

    /// <summary>`at-most`, `at-least` or `equal`.</summary>
    public required string Comparison { get; init; }

    /// <summary>What the plan has.</summary>
    public decimal? Value { get; init; }

    /// <summary>What the rule asks for.</summary>
    public decimal? Limit { get; init; }

    /// <summary>Unit of both.</summary>
    public string? Unit { get; init; }

    /// <summary>Ids of the places that decide.</summary>
    public required IReadOnlyList<string> Where { get; init; }

    /// <summary>What would have to be given to check it.</summary>
    public IReadOnlyList<string>? Missing { get; init; }

    /// <summary>What to mind about how the rule was read.</summary>
    public SentenceAnswer? Note { get; init; }

    /// <summary>What a person could change, when the check is not passed.</summary>
    public SentenceAnswer? Remedy { get; init; }
}

/// <summary>Where a figure is published.</summary>
public sealed record SourceAnswer
{
    /// <summary>The document; for common practice it says so.</summary>
    public required string Document { get; init; }

    /// <summary>Its edition.</summary>
    public string? Edition { get; init; }

    /// <summary>Its clause or table.</summary>
    public string? Clause { get; init; }

    /// <summary>Its publisher.</summary>
    public string? Publisher { get; init; }

    /// <summary>What kind of ground the figure stands on.</summary>
    public required string Basis { get; init; }

    /// <summary>How sure the figure is: `high`, `medium` or `low`.</summary>
    public required string Confidence { get; init; }

    /// <summary>How the figure is known, or what to mind about it.</summary>
    public string? Note { get; init; }
}

/// <summary>Something to look out for.</summary>
public sealed record CautionAnswer
{
    /// <summary>Stable code.</summary>
    public required string Code { get; init; }

    /// <summary>The sentence.</summary>
    public required string Text { get; init; }

    /// <summary>The values in it.</summary>
    public required IReadOnlyDictionary<string, string> Params { get; init; }

    /// <summary>Where it is published.</summary>
    public required SourceAnswer Source { get; init; }

    /// <summary>Ids of the places.</summary>
    public required IReadOnlyList<string> Where { get; init; }
}
