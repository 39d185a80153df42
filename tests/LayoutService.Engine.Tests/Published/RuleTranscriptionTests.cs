using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Tests.Published;

/// <summary>
/// Single limits against the second transcription: each pair names a line of a CSV file (file, document, item, case) and the
/// rule that holds the same figure. Lines and rules without a partner are listed in <see cref="RulePairs"/>, with why.
/// </summary>
public class RuleTranscriptionTests
{
    private static readonly string[] Files = ["ceiling-fasteners", "strap-nails", "fire", "electrical", "tolerances-waste", "practice-defaults", "joist-restraint", "notching"];

    [Fact]
    public void Every_paired_limit_has_the_same_figure_in_both_transcriptions()
    {
        foreach (var pair in RulePairs.Pairs)
        {
            var line = Lines(pair.File).Where(row => Key(row) == pair.Line).ToList();
            Assert.True(line.Count > 0, $"No line '{pair.Line}' in {pair.File}.csv.");
            var book = new RuleBook(PublishedTables.Current, pair.Ruleset, new Dictionary<string, decimal>());
            var figure = book.Limit(pair.Rule).Value;
            var imperial = book.Limit(pair.Rule, imperial: true).Value;
            Assert.True(
                line.Any(row => Same(row, figure) || Same(row, imperial)),
                $"{pair.Rule} in {pair.Ruleset} is {figure} here and {string.Join(", ", line.Select(row => row["value"] + " " + row["unit"]))} in {pair.File}.csv.");
        }
    }

    [Fact]
    public void Every_line_of_the_second_transcription_is_paired_or_said_to_have_no_rule()
    {
        foreach (var file in Files)
        {
            var known = RulePairs.Pairs.Where(pair => pair.File == file).Select(pair => pair.Line)
                .Concat(RulePairs.LinesWithoutRule.Where(pair => pair.File == file).Select(pair => pair.Line)).ToHashSet(StringComparer.Ordinal);
            Assert.All(Lines(file).Select(Key).Distinct(), key => Assert.Contains(key, known));
        }
    }

    [Fact]
    public void Every_rule_is_paired_or_said_to_have_been_transcribed_once_only()
    {
        var known = RulePairs.Pairs.Select(pair => pair.Rule).Concat(RulePairs.RulesWithoutLine).ToHashSet(StringComparer.Ordinal);
        var rules = PublishedTables.Current.Rules.SelectMany(table => table.Rows).Select(row => row.Rule).Distinct();
        Assert.All(rules, rule => Assert.Contains(rule, known));
    }

    [Fact]
    public void Nothing_is_listed_that_is_not_there()
    {
        var rules = PublishedTables.Current.Rules.SelectMany(table => table.Rows).Select(row => row.Rule).ToHashSet(StringComparer.Ordinal);
        Assert.All(RulePairs.RulesWithoutLine, rule => Assert.Contains(rule, rules));
        foreach (var group in RulePairs.LinesWithoutRule.GroupBy(pair => pair.File))
        {
            var keys = Lines(group.Key).Select(Key).ToHashSet(StringComparer.Ordinal);
            Assert.All(group.Select(pair => pair.Line), line => Assert.Contains(line, keys));
        }
    }

    internal static string Key(IReadOnlyDictionary<string, string> row) =>
        string.Join(" | ", new[] { row.GetValueOrDefault("document"), row.GetValueOrDefault("country"), row["item"], row["case"] }.Where(part => part is not null));

    private static IReadOnlyList<IReadOnlyDictionary<string, string>> Lines(string file) => Csv.Read(file);

    private static bool Same(IReadOnlyDictionary<string, string> row, Figure figure)
    {
        var unit = row["unit"] switch
        {
            "fasteners" or "nails" or "screws" or "supports" or "row spaces" or "stick" or "people" => "count",
            "of required length" => "%",
            "in nominal" => "in",
            "C" => "degC",
            var same => same,
        };
        var value = row["unit"] == "of required length" && row["value"] == "1/2" ? "50" : row["value"];
        return figure == Figure.Parse($"{value} {unit}") || (figure.Unit.Symbol == unit && figure.Value == Figure.Parse($"{value} {unit}").Value);
    }
}
