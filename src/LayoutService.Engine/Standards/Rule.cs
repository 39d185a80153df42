namespace LayoutService.Engine.Standards;

/// <summary>
/// One rule as the catalogue shows it: what it says, and its value in each ruleset that has it. <see cref="Default"/> marks
/// what is planned when the caller does not say, as against a limit that is checked.
/// </summary>
public sealed record Rule(string Id, string Title, string Comparison, bool Default, IReadOnlyList<RuleValue> Values);

/// <summary>A value of a rule. <see cref="When"/> names the row of a grid; null for a rule with one value. A null figure means that the table permits no such use, or gives none.</summary>
public sealed record RuleValue(IReadOnlyList<string> Rulesets, string? When, Figure? Value, Figure? Imperial, string Unit, Citation Source);
