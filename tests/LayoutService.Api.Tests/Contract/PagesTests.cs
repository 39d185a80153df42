using System.Text.Json.Nodes;
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

    [Fact]
    public void The_front_page_shows_what_its_example_answers()
    {
        var shown = Regex.Matches(File.ReadAllText(Path.Combine(Repository.Root, "README.md")), "```json\n(.*?)```", RegexOptions.Singleline)
            .Select(block => JsonNode.Parse(block.Groups[1].Value)!).ToList();
        var answer = JsonNode.Parse(File.ReadAllText(Path.Combine(Repository.Root, "openapi", "examples", "l-room-with-chimney.response.json")))!;
        Assert.Equal(2, shown.Count);
        AssertPart(shown[0], answer["summary"]);
        AssertPart(shown[1], answer["strapping"]!["rows"]!.AsArray().Single(row => (string)row!["id"]! == (string)shown[1]["id"]!));
    }

    // what is shown stands in the answer; members may be left out, items of a list may not
    private static void AssertPart(JsonNode shown, JsonNode? answer)
    {
        switch (shown)
        {
            case JsonObject members:
                Assert.All(members, member => AssertPart(member.Value!, answer?[member.Key]));
                break;
            case JsonArray items:
                Assert.Equal(items.Count, answer!.AsArray().Count);
                Assert.All(items, (item, i) => AssertPart(item!, answer[i]));
                break;
            default:
                Assert.True(JsonNode.DeepEquals(shown, answer), $"{shown.ToJsonString()} is shown, {answer?.ToJsonString()} is answered");
                break;
        }
    }
}
