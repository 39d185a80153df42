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
}

/// <summary>Where a figure is published.</summary>
/// <param name="Document">The document; absent for common practice.</param>
/// <param name="Edition">Its edition.</param>
/// <param name="Clause">Its clause or table.</param>
/// <param name="Basis">What the figure rests on.</param>
public sealed record SourceAnswer(string? Document, string? Edition, string? Clause, string Basis);

/// <summary>Something to look out for.</summary>
public sealed record CautionAnswer
{
    /// <summary>Stable code.</summary>
    public required string Code { get; init; }

    /// <summary>The sentence.</summary>
    public required string Text { get; init; }

    /// <summary>The values in it.</summary>
    public required IReadOnlyDictionary<string, string> Params { get; init; }

    /// <summary>Where it is published; absent for common sense.</summary>
    public SourceAnswer? Source { get; init; }

    /// <summary>Ids of the places.</summary>
    public required IReadOnlyList<string> Where { get; init; }
}
