namespace LayoutService.Engine.Standards;

/// <summary>One published table as a file holds it: what it is, where it is printed, and its rows.</summary>
public sealed record TableFile<TRow>
{
    /// <summary>Kebab-case id; equals the file's name.</summary>
    public required string Id { get; init; }

    public required string Title { get; init; }

    public required Citation Source { get; init; }

    /// <summary>Rulesets that the table speaks for; empty means every one.</summary>
    public required IReadOnlyList<string> Rulesets { get; init; }

    public required IReadOnlyList<TRow> Rows { get; init; }

    public bool SpeaksFor(string ruleset) => Rulesets.Count == 0 || Rulesets.Contains(ruleset);
}
