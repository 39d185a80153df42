using System.Text.RegularExpressions;

namespace LayoutService.Api.Tests.Contract;

/// <summary>docs/quality-bar.md has every line of the bar, and every check that it names exists.</summary>
public class QualityBarTests
{
    private static readonly (string Letter, int Lines)[] Groups =
        [("C", 12), ("E", 10), ("P", 8), ("B", 6), ("F", 5), ("W", 7), ("O", 7), ("S", 9), ("T", 6), ("D", 4)];

    private static readonly IReadOnlyList<string[]> Rows = [.. File.ReadLines(Path.Combine(Repository.Root, "docs", "quality-bar.md"))
        .Where(line => Regex.IsMatch(line, @"^\| [A-Z]\d"))
        .Select(line => line.Trim('|', ' ').Split(" | "))];

    [Fact]
    public void Every_line_of_the_bar_is_there_once_and_in_order() =>
        Assert.Equal(Groups.SelectMany(g => Enumerable.Range(1, g.Lines).Select(n => $"{g.Letter}{n}")), Rows.Select(row => row[0]));

    [Fact]
    public void Every_line_has_a_state_and_what_is_not_met_says_why()
    {
        Assert.All(Rows, row => Assert.Equal(5, row.Length));
        Assert.All(Rows, row => Assert.Contains(row[3], (string[])["met", "partly", "not met"]));
        Assert.All(Rows.Where(row => row[3] == "met"), row => Assert.Contains('`', row[2]));
        Assert.All(Rows.Where(row => row[3] != "met"), row => Assert.True(row[4].Length > 10, $"{row[0]} does not say why"));
    }

    [Fact]
    public void Every_check_that_is_named_exists()
    {
        var tests = Directory.GetFiles(Path.Combine(Repository.Root, "tests"), "*Tests.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal))
            .ToLookup(file => Path.GetFileNameWithoutExtension(file), File.ReadAllText);
        var named = Rows.SelectMany(row => Regex.Matches(row[2], "`([^`]+)`").Select(match => match.Groups[1].Value)).Distinct().ToList();
        Assert.DoesNotContain(named, name => !Exists(name, tests));
        Assert.True(named.Count > 60, $"only {named.Count} checks are named");
    }

    private static bool Exists(string name, ILookup<string, string> tests) => name.StartsWith("tests/", StringComparison.Ordinal)
        ? File.Exists(Path.Combine(Repository.Root, name))
        : name.Split('.') is [var type, var method] && tests[type].Any(text => Regex.IsMatch(text, $@"public (async Task|void|Task) {method}\("));
}
