using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Writing;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Standards;

namespace LayoutService.Api.Catalogues;

/// <summary>Writes rules, rulesets and materials as the engine has them.</summary>
internal static class CatalogueWriting
{
    public static string Version => PublishedTables.Current.RulesVersion;

    public static RulesAnswer Rules() => new(Version, [.. RuleCatalogue.Current.Rules.Select(Of)]);

    public static RuleAnswer Of(Rule rule) => new(
        rule.Id, rule.Title, rule.Comparison, rule.Default, Words.Text(RuleUses.Of(rule.Id)), RuleUses.WhyFixed(rule.Id) is null, RuleUses.WhyFixed(rule.Id),
        RuleUses.Bounds(rule.Id)?.UsedIn, RuleUses.Bounds(rule.Id)?.Least, RuleUses.Bounds(rule.Id)?.Most,
        [.. rule.Values.Select(v => new RuleValueAnswer(v.Rulesets, v.When, Of(v.Value), Of(v.Imperial), v.Unit, CheckWriting.Of(v.Source)))]);

    public static RulesetsAnswer Rulesets() => new(
        Version,
        [.. RuleCatalogue.Current.Rulesets.Select(r => new RulesetAnswer(r.Id, r.Title, r.Country, r.Document, r.Edition, r.Publisher))]);

    public static MaterialsAnswer Materials() => new(
        Version,
        [.. MaterialCatalogue.Of(PublishedTables.Current).Select(m => new MaterialAnswer(
            m.Kind, m.Name, [.. m.Figures.Select(f => new NamedFigureAnswer(f.Name, Of(f.Value)!))], CheckWriting.Of(m.Source)))]);

    private static FigureAnswer? Of(Figure? figure) => figure is null
        ? null
        : new(Figures.Plain(figure.Value, 9), figure.Unit.Symbol, figure.Printed);
}
