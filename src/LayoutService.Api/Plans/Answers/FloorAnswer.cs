namespace LayoutService.Api.Plans.Answers;

/// <summary>
/// What the code's floor tables print for the joists as found, with and without this ceiling; absent where the ruleset has no such
/// tables. It compares printed spans only: an engineer or the building department judges the floor.
/// </summary>
public sealed record FloorAnswer
{
    /// <summary>True when this board on these straps is the furred ceiling that the longer spans ask for.</summary>
    public required bool EarnsFurredCeiling { get; init; }

    /// <summary>What straps and board lack for that.</summary>
    public required IReadOnlyList<SentenceAnswer> Needs { get; init; }

    /// <summary>The printed joist spacing that speaks for the widest bay found.</summary>
    public string? JoistModule { get; init; }

    /// <summary>The printed clear span without this ceiling.</summary>
    public FloorSpanAnswer? Without { get; init; }

    /// <summary>The printed clear span with this ceiling.</summary>
    public FloorSpanAnswer? With { get; init; }

    /// <summary>Every span that is printed for these joists, by what braces them.</summary>
    public required IReadOnlyList<FloorSpanAnswer> Spans { get; init; }

    /// <summary>The limits of the method.</summary>
    public required IReadOnlyList<SentenceAnswer> Notes { get; init; }

    /// <summary>What would have to be given to read the tables.</summary>
    public IReadOnlyList<string>? Missing { get; init; }

    /// <summary>Where the tables are published.</summary>
    public required SourceAnswer Source { get; init; }
}

/// <summary>One printed clear span, face to face of supports.</summary>
/// <param name="Bracing">What braces the joists: `strapping`, `bridging`, `strapping-and-bridging`, `furred-ceiling` or `furred-ceiling-and-bridging`.</param>
/// <param name="Span">The span.</param>
/// <param name="SpanText">The same as text.</param>
/// <param name="Source">Where it is printed.</param>
public sealed record FloorSpanAnswer(string Bracing, decimal Span, string SpanText, SourceAnswer Source);
