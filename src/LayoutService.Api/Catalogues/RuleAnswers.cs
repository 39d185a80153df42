using LayoutService.Api.Plans.Answers;

namespace LayoutService.Api.Catalogues;

/// <summary>Every rule applied.</summary>
/// <param name="RulesVersion">Version of the set of figures.</param>
/// <param name="Rules">The rules, by id.</param>
public sealed record RulesAnswer(string RulesVersion, IReadOnlyList<RuleAnswer> Rules);

/// <summary>One rule, and its value in each ruleset that has it.</summary>
/// <param name="Id">Its id; a request may set its value by this.</param>
/// <param name="Title">What it is about.</param>
/// <param name="Comparison">`at-most`, `at-least` or `equal`.</param>
/// <param name="Default">True for what is planned when the caller does not say, false for a limit that is checked.</param>
/// <param name="Use">What reads it: `check`, `default` (planned or counted by when the request does not say), `plan` (laid out by it, at this value only) or `reference`.</param>
/// <param name="Settable">True when a request may set it in `rules`.</param>
/// <param name="WhyFixed">Why it cannot be set; absent when it can.</param>
/// <param name="UsedIn">The members or blocks that it shapes, for a `default`.</param>
/// <param name="Least">The least that it may be set to, in its own unit, for a `default`.</param>
/// <param name="Most">The most that it may be set to, in its own unit, for a `default`.</param>
/// <param name="Values">Its values.</param>
public sealed record RuleAnswer(
    string Id, string Title, string Comparison, bool Default, string Use, bool Settable, string? WhyFixed, string? UsedIn, decimal? Least, decimal? Most,
    IReadOnlyList<RuleValueAnswer> Values);

/// <summary>A value of a rule.</summary>
/// <param name="Rulesets">The rulesets that have it.</param>
/// <param name="When">The row of a table that it is for; absent for a rule with one value.</param>
/// <param name="Value">The value, as printed; absent when the table permits no such use or gives none.</param>
/// <param name="Imperial">What a caller who works in inches gets instead, where the table has it.</param>
/// <param name="Unit">The unit in which a caller sets it.</param>
/// <param name="Source">Where it is published.</param>
public sealed record RuleValueAnswer(
    IReadOnlyList<string> Rulesets, string? When, FigureAnswer? Value, FigureAnswer? Imperial, string Unit, SourceAnswer Source);

/// <summary>A figure with its unit.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Text">Both, as printed.</param>
public sealed record FigureAnswer(decimal Value, string Unit, string Text);

/// <summary>The rulesets that a request may name.</summary>
/// <param name="RulesVersion">Version of the set of figures.</param>
/// <param name="Rulesets">The rulesets.</param>
public sealed record RulesetsAnswer(string RulesVersion, IReadOnlyList<RulesetAnswer> Rulesets);

/// <summary>A building code whose figures can be applied.</summary>
/// <param name="Id">Its id; it never changes its meaning.</param>
/// <param name="Title">Its name.</param>
/// <param name="Country">ISO 3166 code of its country.</param>
/// <param name="Document">The document.</param>
/// <param name="Edition">Its edition.</param>
/// <param name="Publisher">Its publisher.</param>
public sealed record RulesetAnswer(string Id, string Title, string Country, string Document, string? Edition, string? Publisher);

/// <summary>The materials known.</summary>
/// <param name="RulesVersion">Version of the set of figures.</param>
/// <param name="Materials">The materials.</param>
public sealed record MaterialsAnswer(string RulesVersion, IReadOnlyList<MaterialAnswer> Materials);

/// <summary>One material.</summary>
/// <param name="Kind">What kind of thing it is.</param>
/// <param name="Name">The name it is sold by.</param>
/// <param name="Figures">Its figures.</param>
/// <param name="Source">Where they are published.</param>
public sealed record MaterialAnswer(string Kind, string Name, IReadOnlyList<NamedFigureAnswer> Figures, SourceAnswer Source);

/// <summary>A figure of a material.</summary>
/// <param name="Name">What it is of.</param>
/// <param name="Value">The figure.</param>
public sealed record NamedFigureAnswer(string Name, FigureAnswer Value);
