using System.Runtime.CompilerServices;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Tests.Checks;

namespace LayoutService.Engine.Tests.Standards;

public class StandardsPageTests
{
    [Fact]
    public void The_page_in_docs_says_what_the_tables_say()
    {
        var page = StandardsPage.Write();
        var path = Path.Combine(Root(), "docs", "standards.md");
        if (Environment.GetEnvironmentVariable("WRITE_DOCS") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, page);
        }

        Assert.Equal(page, File.ReadAllText(path));
    }

    // The rules that some check of a room with everything in it is made by.
    [Fact]
    public void Every_check_is_made_by_a_rule_that_is_listed_as_checked_or_planned_by()
    {
        foreach (var ruleset in RuleCatalogue.Current.Rulesets)
        {
            var checks = new[] { PlainRoom.Everything(), PlainRoom.Stamped() }.SelectMany(facts => CeilingChecks.Of(PlainRoom.Book(ruleset.Id), facts));
            Assert.All(checks, check => Assert.True(RuleUses.Of(check.Rule) is RuleUse.Check or RuleUse.Plan, check.Rule));
        }
    }

    private static string Root([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
}
