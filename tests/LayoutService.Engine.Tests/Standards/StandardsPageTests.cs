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
        var page = StandardsPage.Write(CheckedRules());
        var path = Path.Combine(Root(), "docs", "standards.md");
        if (Environment.GetEnvironmentVariable("WRITE_DOCS") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, page);
        }

        Assert.Equal(page, File.ReadAllText(path));
    }

    // The rules that some check of a room with everything in it is made by.
    private static HashSet<string> CheckedRules()
    {
        var rules = new HashSet<string>(StringComparer.Ordinal);
        foreach (var ruleset in RuleCatalogue.Current.Rulesets)
        {
            rules.UnionWith(CeilingChecks.Of(PlainRoom.Book(ruleset.Id), PlainRoom.Everything()).Select(check => check.Rule));
        }

        return rules;
    }

    private static string Root([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
}
