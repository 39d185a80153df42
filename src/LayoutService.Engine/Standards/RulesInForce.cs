namespace LayoutService.Engine.Standards;

/// <summary>The single rules of one ruleset, gathered once: each row with its source as this ruleset cites it.</summary>
internal sealed class RulesInForce
{
    private readonly Dictionary<string, (RuleRow Row, Citation Source)> rows = new(StringComparer.Ordinal);

    public RulesInForce(PublishedTables tables, RulesetRow profile)
    {
        Profile = profile;
        foreach (var table in tables.Rules)
        {
            foreach (var row in table.Rows.Where(row => row.Rulesets?.Contains(profile.Id) ?? table.SpeaksFor(profile.Id)))
            {
                rows.Add(row.Rule, (row, Adoption.Adopt(row.Source?.Over(table.Source) ?? table.Source, profile)));
            }
        }
    }

    public RulesetRow Profile { get; }

    public bool Has(string rule) => rows.ContainsKey(rule);

    /// <summary>Throws <see cref="ArgumentException"/> when the ruleset has no such rule.</summary>
    public (RuleRow Row, Citation Source) Find(string rule) =>
        rows.TryGetValue(rule, out var found) ? found : throw new ArgumentException($"There is no rule '{rule}' in {Profile.Id}.", nameof(rule));
}
