namespace LayoutService.Engine.Standards;

/// <summary>
/// The rules that hold for one request: one ruleset's tables, with the values that the caller set by rule id in place of
/// the tables' own. Throws <see cref="ArgumentException"/> for a ruleset or rule that does not exist.
/// </summary>
public sealed class RuleBook
{
    private readonly PublishedTables tables;
    private readonly RulesetRow profile;
    private readonly Dictionary<string, (RuleRow Row, TableFile<RuleRow> Table)> rows = new(StringComparer.Ordinal);
    private readonly IReadOnlyDictionary<string, decimal> overrides;

    public RuleBook(PublishedTables tables, string ruleset, IReadOnlyDictionary<string, decimal> overrides)
    {
        this.tables = tables;
        this.overrides = overrides;
        profile = tables.Rulesets.Rows.FirstOrDefault(row => row.Id == ruleset)
            ?? throw new ArgumentException($"There is no ruleset '{ruleset}'.", nameof(ruleset));
        foreach (var table in tables.Rules)
        {
            foreach (var row in table.Rows)
            {
                if (row.Rulesets?.Contains(ruleset) ?? table.SpeaksFor(ruleset))
                {
                    rows.Add(row.Rule, (row, table));
                }
            }
        }

        foreach (var id in overrides.Keys)
        {
            if (!rows.ContainsKey(id) && !GridRules.Ids.Contains(id))
            {
                throw new ArgumentException($"There is no rule '{id}' in {ruleset}.", nameof(overrides));
            }
        }
    }

    public PublishedTables Tables => tables;

    /// <summary>Ruleset id.</summary>
    public string Ruleset => profile.Id;

    public string Country => profile.Country;

    /// <summary>True when this ruleset has the rule.</summary>
    public bool Has(string rule) => rows.ContainsKey(rule);

    /// <summary>The rule's value and source: the caller's value where one was set. <paramref name="imperial"/> takes the trade value in inches where there is one.</summary>
    public Cited<Figure> Limit(string rule, bool imperial = false)
    {
        var (row, table) = rows.TryGetValue(rule, out var found) ? found : throw new ArgumentException($"There is no rule '{rule}' in {Ruleset}.");
        var printed = imperial ? row.Imperial ?? row.Value : row.Value;
        return overrides.TryGetValue(rule, out var own)
            ? new(Figure.Of(own, row.Value.Unit), CallersOwn)
            : new(printed, Cite(row.Source, table.Source));
    }

    /// <summary>The caller's value of a rule that is looked up in a grid, or null when none was set.</summary>
    public Cited<decimal>? Override(string rule) =>
        overrides.TryGetValue(rule, out var own) ? new(own, CallersOwn) : null;

    /// <summary>A row's source as this ruleset cites it.</summary>
    public Citation Cite(RowSource? row, Citation table) => Adoption.Adopt(row?.Over(table) ?? table, profile);

    private static Citation CallersOwn { get; } = new()
    {
        Document = "The request", Basis = Basis.SetByCaller, Confidence = Confidence.High,
    };
}
