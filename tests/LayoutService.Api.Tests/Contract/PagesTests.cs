using System.Text.RegularExpressions;
using LayoutService.Engine;
using LayoutService.Engine.Standards;

namespace LayoutService.Api.Tests.Contract;

/// <summary>The pages of the repository hold together.</summary>
public class PagesTests
{
    [Fact]
    public void Every_link_of_the_docs_leads_to_a_file()
    {
        var pages = Directory.GetFiles(Path.Combine(Repository.Root, "docs"), "*.md", SearchOption.AllDirectories)
            .Concat(["README.md", "DEVELOPERS.md"]).Select(page => Path.Combine(Repository.Root, page)).ToList();
        var links = pages.SelectMany(page => Regex.Matches(File.ReadAllText(page), @"\]\(([^)#:\s]+)(#[^)\s]*)?\)").Select(match => (Page: page, To: match.Groups[1].Value))).ToList();
        Assert.True(links.Count > 50, $"only {links.Count} links were found");
        Assert.Empty(links.Where(link => !Path.Exists(Path.Combine(Path.GetDirectoryName(link.Page)!, link.To))).Select(link => $"{link.Page}: {link.To}"));
    }

    [Fact]
    public void The_change_log_names_the_versions_that_are_served()
    {
        var log = File.ReadAllText(Path.Combine(Repository.Root, "docs", "CHANGELOG.md"));
        Assert.Contains($"engine {LayoutEngine.EngineVersion}", log, StringComparison.Ordinal);
        Assert.Contains("contract 1.0.0", log, StringComparison.Ordinal);
        Assert.Contains($"rules {PublishedTables.Current.RulesVersion.Split('+', '-')[0]}", log, StringComparison.Ordinal);
    }
}
