namespace LayoutService.Engine.Standards;

/// <summary>
/// The rules that hold for one request: one ruleset's tables, with the values that the caller set by rule id in place of
/// the tables' own. Throws <see cref="ArgumentException"/> for a ruleset or rule that does not exist, or a value out of bounds.
/// </summary>
public sealed class RuleBook
{
    /// <summary>The greatest value that a caller may set a rule to, in the rule's own unit; the least is zero.</summary>
    public const decimal MostOverride = 1_000_000m;

    private static readonly Citation CallersOwn = new()
    {
        Document = "The request", Basis = Basis.SetByCaller, Confidence = Confidence.High,
    };

    private readonly PublishedTables tables;
    private readonly RulesInForce rules;
    private readonly IReadOnlyDictionary<string, decimal> overrides;

    public RuleBook(PublishedTables tables, string ruleset, IReadOnlyDictionary<string, decimal> overrides)
    {
        this.tables = tables;
        this.overrides = overrides;
        rules = tables.InForce.TryGetValue(ruleset, out var found)
            ? found
            : throw new ArgumentException($"There is no ruleset '{ruleset}'.", nameof(ruleset));
        foreach (var (id, value) in overrides)
        {
            if (value is < 0 or > MostOverride)
            {
                throw new ArgumentException($"A rule may be set to 0 to {MostOverride}, and '{id}' is {value}.", nameof(overrides));
            }

            if (!rules.Has(id) && !GridRules.Ids.Contains(id))
            {
                throw new ArgumentException($"There is no rule '{id}' in {ruleset}.", nameof(overrides));
            }
        }
    }

    public PublishedTables Tables => tables;

    /// <summary>Ruleset id.</summary>
    public string Ruleset => rules.Profile.Id;

    public string Country => rules.Profile.Country;

    /// <summary>True when this ruleset has the rule.</summary>
    public bool Has(string rule) => rules.Has(rule);

    /// <summary>
    /// The rule's value and source: the caller's value where one was set. <paramref name="imperial"/> takes the trade value in
    /// inches where there is one. Throws <see cref="ArgumentException"/> when the ruleset has no such rule.
    /// </summary>
    public Cited<Figure> Limit(string rule, bool imperial = false)
    {
        var (row, source) = rules.Find(rule);
        return overrides.TryGetValue(rule, out var own)
            ? new(Figure.Of(own, row.Value.Unit), CallersOwn)
            : new(imperial ? row.Imperial ?? row.Value : row.Value, source);
    }

    /// <summary>The caller's value of a rule that is looked up in a grid, or null when none was set.</summary>
    public Cited<decimal>? Override(string rule) =>
        overrides.TryGetValue(rule, out var own) ? new(own, CallersOwn) : null;

    /// <summary>A row's source as this ruleset cites it.</summary>
    public Citation Cite(RowSource? row, Citation table) => Adoption.Adopt(row?.Over(table) ?? table, rules.Profile);
}
