namespace LayoutService.Engine.Standards;

/// <summary>Every rule that a plan may apply, by id in ordinal order, with each ruleset's value and its source.</summary>
public sealed class RuleCatalogue
{
    private static readonly Lazy<RuleCatalogue> Loaded = new(() => new RuleCatalogue(PublishedTables.Current));
    private readonly SortedDictionary<string, Rule> rules = new(StringComparer.Ordinal);

    private RuleCatalogue(PublishedTables tables)
    {
        Rulesets = [.. tables.Rulesets.Rows.Select(row => new Ruleset(row.Id, row.Title, row.Country, row.Source!.Document!, row.Source.Edition, row.Source.Publisher))];
        foreach (var ruleset in Rulesets)
        {
            var book = new RuleBook(tables, ruleset.Id, new Dictionary<string, decimal>());
            foreach (var table in tables.Rules)
            {
                foreach (var row in table.Rows.Where(row => row.Rulesets?.Contains(ruleset.Id) ?? table.SpeaksFor(ruleset.Id)))
                {
                    Add(row.Rule, row.Title, row.Comparison, table == tables.Practice || table == tables.Coverage,
                        new([ruleset.Id], null, row.Value, row.Imperial, row.Value.Unit.Symbol, book.Cite(row.Source, table.Source)));
                }
            }

            foreach (var (rule, value) in GridRows.Of(book))
            {
                Add(rule.Id, rule.Title, rule.Comparison, false, value);
            }
        }
    }

    public static RuleCatalogue Current => Loaded.Value;

    public IReadOnlyList<Ruleset> Rulesets { get; }

    public IReadOnlyCollection<Rule> Rules => rules.Values;

    /// <summary>The rule with this id, or null.</summary>
    public Rule? Find(string id) => rules.GetValueOrDefault(id);

    /// <summary>True when the ruleset has the rule, so that a caller may set it.</summary>
    public bool Has(string ruleset, string id) =>
        Find(id)?.Values.Any(value => value.Rulesets.Contains(ruleset)) ?? false;

    // Rulesets that say the same thing from the same source share one value.
    private void Add(string id, string title, string comparison, bool isDefault, RuleValue value)
    {
        if (!rules.TryGetValue(id, out var rule))
        {
            rules.Add(id, new Rule(id, title, comparison, isDefault, [value]));
            return;
        }

        var same = rule.Values.FirstOrDefault(other =>
            other.When == value.When && other.Value == value.Value && other.Imperial == value.Imperial && other.Source == value.Source);
        rules[id] = rule with
        {
            Values = same is null
                ? [.. rule.Values, value]
                : [.. rule.Values.Select(other => other == same ? same with { Rulesets = [.. same.Rulesets, .. value.Rulesets] } : other)],
        };
    }
}

/// <summary>A code profile as the catalogue shows it.</summary>
public sealed record Ruleset(string Id, string Title, string Country, string Document, string? Edition, string? Publisher);
