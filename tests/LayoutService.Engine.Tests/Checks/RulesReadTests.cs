using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Standards;
using static LayoutService.Engine.Tests.Checks.PlainRoom;

namespace LayoutService.Engine.Tests.Checks;

public class RulesReadTests
{
    [Theory]
    [InlineData("us-irc-2024")]
    [InlineData("ca-nbc-2020")]
    [InlineData("ca-on-2024")]
    public void A_rule_may_be_set_exactly_when_its_value_changes_what_is_said(string ruleset)
    {
        var usual = Said(Book(ruleset));
        foreach (var rule in RuleCatalogue.Current.Rules.Where(rule => RuleCatalogue.Current.Has(ruleset, rule.Id)))
        {
            var changes = new[] { 0m, 7m, 123_456m }.Any(value => Said(Book(ruleset, (rule.Id, value))) != usual);
            Assert.True(changes == RulesRead.MaySet(ruleset, rule.Id), $"{rule.Id}: changes {changes}");
        }
    }

    [Fact]
    public void A_rule_of_another_country_may_not_be_set() => Assert.False(RulesRead.MaySet("ca-nbc-2020", "floor-membrane"));

    // Everything that checks and cautions say, over rooms that reach each rule.
    private static string Said(RuleBook book)
    {
        var facts = Everything();
        var thin = Facts();
        thin = thin with { Board = thin.Board with { Thickness = In(0.375m) }, Floor = thin.Floor with { JoistDepth = In(9.25m) } };
        var rated = facts with { FireRating = "1 h" };
        return string.Join("\n", new[] { facts, thin, rated }.SelectMany(some =>
            CeilingChecks.Of(book, some).Select(check => $"{check.Rule} {check.Status} {check.Limit} {check.Source.Basis}")
                .Concat(CeilingCautions.Of(book, some).Select(caution => caution.Sentence.Text))));
    }
}
