using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Tests.Standards;

public class CatalogueTests
{
    private static readonly RuleCatalogue Catalogue = RuleCatalogue.Current;

    [Fact]
    public void Rule_ids_are_kebab_case_and_in_order()
    {
        var ids = Catalogue.Rules.Select(rule => rule.Id).ToList();
        Assert.All(ids, id => Assert.Matches("^[a-z][a-z0-9]*(-[a-z0-9]+)*$", id));
        Assert.Equal(ids.Order(StringComparer.Ordinal), ids);
    }

    [Fact]
    public void Every_rule_is_found_by_its_id_and_no_other_is()
    {
        Assert.All(Catalogue.Rules, rule => Assert.Same(rule, Catalogue.Find(rule.Id)));
        Assert.Null(Catalogue.Find("no-such-rule"));
    }

    [Fact]
    public void The_four_rulesets_name_their_document_and_edition() => Assert.Equal(
        ["us-irc-2021: International Residential Code 2021", "us-irc-2024: International Residential Code 2024",
            "ca-nbc-2020: National Building Code of Canada 2020", "ca-on-2024: Ontario Building Code 2024 (O. Reg. 163/24)"],
        Catalogue.Rulesets.Select(ruleset => $"{ruleset.Id}: {ruleset.Document} {ruleset.Edition}"));

    [Fact]
    public void Every_rule_that_a_ruleset_has_may_be_set_by_a_caller_of_it()
    {
        foreach (var ruleset in Catalogue.Rulesets)
        {
            foreach (var rule in Catalogue.Rules.Where(rule => Catalogue.Has(ruleset.Id, rule.Id)))
            {
                Assert.NotNull(new RuleBook(PublishedTables.Current, ruleset.Id, new Dictionary<string, decimal> { [rule.Id] = 1m }));
            }
        }
    }

    [Fact]
    public void A_value_that_several_rulesets_share_is_shown_once() =>
        Assert.Equal(4, Assert.Single(Catalogue.Find("kerf")!.Values).Rulesets.Count);

    [Fact]
    public void A_rule_says_the_same_thing_in_every_ruleset() => Assert.All(
        PublishedTables.Current.Rules.SelectMany(table => table.Rows).GroupBy(row => row.Rule),
        rows => Assert.Single(rows.Select(row => (row.Title, row.Comparison, row.Value.Unit.Dimension)).Distinct()));

    [Fact]
    public void Every_material_has_a_figure_and_a_source()
    {
        var materials = MaterialCatalogue.Of(PublishedTables.Current);
        Assert.Equal(["batt", "board", "compressed-batt", "design-load", "finish-level", "finishing", "joist-span", "light-level", "lumber", "sheet-size", "stick-length", "wood", "wood-grade", "wood-gravity"], materials.Select(material => material.Kind).Distinct().Order(StringComparer.Ordinal));
        Assert.All(materials, material => Assert.NotEmpty(material.Figures));
        Assert.All(materials, material => Assert.NotEmpty(material.Source.Document));
    }
}
