using LayoutService.Engine.Standards;
using LayoutService.Engine.Tests.Checks;

namespace LayoutService.Engine.Tests.Standards;

public class RuleBookTests
{
    [Fact]
    public void An_unknown_ruleset_or_rule_is_refused()
    {
        Assert.Throws<ArgumentException>(() => PlainRoom.Book("us-irc-1999"));
        Assert.Throws<ArgumentException>(() => PlainRoom.Book("us-irc-2021", ("no-such-rule", 1m)));
        Assert.Throws<ArgumentException>(() => PlainRoom.Book("us-irc-2021", ("draftstop-length", 1m))); // Canada's only
    }

    [Fact]
    public void A_value_set_by_a_caller_is_taken_at_its_bounds_and_refused_past_them()
    {
        foreach (var rule in RuleCatalogue.Current.Rules.Where(rule => RuleCatalogue.Current.Has("us-irc-2024", rule.Id)))
        {
            Assert.Throws<ArgumentException>(() => PlainRoom.Book("us-irc-2024", (rule.Id, -0.000001m)));
            Assert.Throws<ArgumentException>(() => PlainRoom.Book("us-irc-2024", (rule.Id, RuleBook.MostOverride + 1)));
            foreach (var value in new[] { 0m, RuleBook.MostOverride })
            {
                var book = PlainRoom.Book("us-irc-2024", (rule.Id, value));
                Assert.NotEmpty(LayoutService.Engine.Checks.CeilingChecks.Of(book, PlainRoom.Everything()));
                Assert.NotEmpty(LayoutService.Engine.Checks.CeilingCautions.Of(book, PlainRoom.Everything()));
                Assert.NotNull(new Practice(book, imperial: false));
            }
        }
    }

    [Fact]
    public void Ontario_cites_its_own_code_for_figures_that_it_shares()
    {
        var source = PlainRoom.Book("ca-on-2024").Limit("board-screw-spacing").Source;
        Assert.Equal(("Ontario Building Code", "9.29.5.9.(1)"), (source.Document, source.Clause));
    }

    [Fact]
    public void A_figure_read_in_another_edition_is_not_held_with_high_confidence()
    {
        var source = PlainRoom.Book("us-irc-2021").Limit("board-screw-penetration").Source;
        Assert.Equal(("2021", Confidence.Medium), (source.Edition, source.Confidence));
        Assert.Equal(("2024", Confidence.High), PlainRoom.Book("us-irc-2024").Limit("board-screw-penetration").Source is var later ? (later.Edition, later.Confidence) : default);
    }

    [Fact]
    public void A_default_comes_in_the_callers_trade_size()
    {
        var book = PlainRoom.Book("us-irc-2021");
        Assert.Equal(406.4m, new Practice(book, imperial: true).StrapSpacing.Value.Millimetres);
        Assert.Equal(400m, new Practice(book, imperial: false).StrapSpacing.Value.Millimetres);
    }

    [Fact]
    public void A_default_that_the_caller_sets_is_in_the_rules_own_unit()
    {
        var book = PlainRoom.Book("us-irc-2021", ("min-piece", 450m), ("culls-boards", 7m));
        var practice = new Practice(book, imperial: true);
        Assert.Equal((450m, Basis.SetByCaller), (practice.MinPiece.Value.Millimetres, practice.MinPiece.Source.Basis));
        Assert.Equal(0.07m, practice.CullsBoards.Value);
    }

    [Fact]
    public void Common_practice_never_passes_for_a_published_figure()
    {
        foreach (var table in PublishedTables.Current.Rules)
        {
            foreach (var row in table.Rows)
            {
                var source = row.Source?.Over(table.Source) ?? table.Source;
                Assert.Equal(source.Document.StartsWith("Common practice", StringComparison.Ordinal), source.Basis == Basis.CommonPractice);
            }
        }
    }

    [Fact]
    public void Every_published_figure_names_its_document_and_nothing_from_memory_is_held_with_confidence()
    {
        foreach (var value in RuleCatalogue.Current.Rules.SelectMany(rule => rule.Values))
        {
            Assert.NotEmpty(value.Source.Document);
            Assert.False(value.Source.Basis == Basis.FromMemory && value.Source.Confidence != Confidence.Low, value.ToString());
            Assert.False(value.Source.Basis == Basis.Secondary && value.Source.Confidence == Confidence.High, value.ToString());
        }
    }
}
