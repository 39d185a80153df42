using System.Globalization;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Tests.Published;

/// <summary>Every height of the second transcription that a table here holds, through the look-up that the checks use.</summary>
public class HeightTranscriptionTests
{
    // Document, place, case; then ruleset, space, obstruction, existing building, suite, share.
    private static readonly (string Line, string Ruleset, string Space, bool Under, bool Existing, bool Suite, int Share)[] Pairs =
    [
        ("IRC | habitable space, hallways and basement parts containing them | ", "us-irc-2024", "habitable", false, false, false, 100),
        ("IRC | habitable space, hallways and basement parts containing them | ", "us-irc-2021", "hallway", false, false, false, 100),
        ("IRC | bathrooms, toilet rooms, laundry | ", "us-irc-2024", "bathroom", false, false, false, 100),
        ("IRC | bathrooms, toilet rooms, laundry | ", "us-irc-2021", "laundry", false, false, false, 100),
        ("IRC | basement with habitable space | under beams, girders, ducts, other obstructions", "us-irc-2024", "habitable", true, false, false, 100),
        ("IRC | basement without habitable space or hallways | ", "us-irc-2024", "unfinished-basement", false, false, false, 100),
        ("IRC | basement without habitable space or hallways | under obstructions", "us-irc-2021", "unfinished-basement", true, false, false, 100),
        ("IRC | new habitable basement in an existing building | ", "us-irc-2024", "habitable", false, true, false, 100),
        ("IRC | new habitable basement in an existing building | bath and laundry", "us-irc-2024", "laundry", false, true, false, 100),
        ("IRC | new habitable basement in an existing building | under beams and obstructions", "us-irc-2024", "habitable", true, true, false, 100),
        ("IRC | stair | ", "us-irc-2024", "stair", false, false, false, 100),
        ("NBC | living | ", "ca-nbc-2020", "habitable", false, false, false, 100),
        ("NBC | dining | ", "ca-nbc-2020", "habitable", false, false, false, 100),
        ("NBC | kitchen | ", "ca-nbc-2020", "habitable", false, false, false, 100),
        ("NBC | other habitable rooms | ", "ca-nbc-2020", "habitable", false, false, false, 100),
        ("NBC | bedroom | ", "ca-nbc-2020", "bedroom", false, false, false, 100),
        ("NBC | unfinished basement incl. laundry | under beams and wherever normally used for passage", "ca-nbc-2020", "unfinished-basement", true, false, false, 100),
        ("NBC | bathroom or laundry above grade | ", "ca-nbc-2020", "laundry", false, false, false, 100),
        ("NBC | passage, hall, entrance | whole area", "ca-nbc-2020", "hallway", false, false, false, 100),
        ("NBC | secondary suite | ", "ca-nbc-2020", "habitable", false, false, true, 100),
        ("NBC | secondary suite | under beams and ducting", "ca-nbc-2020", "habitable", true, false, true, 100),
        ("NBC | stairs in a dwelling unit | ", "ca-nbc-2020", "stair", false, false, false, 100),
        ("OBC | living, dining, kitchen | ", "ca-on-2024", "habitable", false, false, false, 75),
        ("OBC | living, dining, kitchen | clear at any point over the required area", "ca-on-2024", "habitable", false, false, false, 100),
        ("OBC | bedroom | first choice", "ca-on-2024", "bedroom", false, false, false, 50),
        ("OBC | bedroom | second choice, all required area", "ca-on-2024", "bedroom", false, false, false, 100),
        ("OBC | basement | ", "ca-on-2024", "basement", false, false, false, 75),
        ("OBC | basement | under beams and ducts", "ca-on-2024", "basement", true, false, false, 100),
        ("OBC | bathroom or laundry above grade | where a person normally stands", "ca-on-2024", "bathroom", false, false, false, 100),
        ("OBC | passage, hall, entrance | ", "ca-on-2024", "hallway", false, false, false, 100),
        ("OBC | secondary suite | ", "ca-on-2024", "habitable", false, false, true, 100),
        ("OBC | secondary suite | under beams and ducting", "ca-on-2024", "habitable", true, false, true, 100),
        ("OBC | stairs in a dwelling unit | ", "ca-on-2024", "stair", false, false, false, 100),
        ("OBC | existing house | first choice, over required area", "ca-on-2024", "habitable", false, true, false, 100),
        ("OBC | existing house | second choice", "ca-on-2024", "habitable", false, true, false, 50),
    ];

    // Conditions that no least height by itself says, or that a common row already answers.
    private static readonly string[] NotHeld =
    [
        "IRC | sloped ceiling | that counts for the 50 % share", "IRC | sloped ceiling | anywhere in the required area",
        "IRC | beams and girders | spaced at least the clear width", "NBC | finished basement room | as the rows of its use",
        "OBC | bedroom | area not counted below this", "OBC | other habitable rooms | ", "OBC | stairs in a secondary suite | under beams and ducting",
    ];

    [Fact]
    public void Every_height_is_the_same_in_both_transcriptions()
    {
        var lines = Csv.Read("heights").Where(row => row["item"] is "height" or "headroom").ToList();
        foreach (var pair in Pairs)
        {
            var book = new RuleBook(PublishedTables.Current, pair.Ruleset, new Dictionary<string, decimal>());
            var least = book.Heights(pair.Space, pair.Under, pair.Existing, pair.Suite).Single(row => row.Value.Share.Value == pair.Share).Value.Least;
            var printed = lines.Where(row => Key(row) == pair.Line).Select(Height).ToList();
            Assert.True(printed.Contains(least.Length), $"{pair} is {least} here and {string.Join(", ", printed)} in the second transcription.");
        }
    }

    [Fact]
    public void Every_line_of_heights_is_paired_or_said_not_to_be_held() =>
        Assert.All(
            Csv.Read("heights").Where(row => row["item"] is "height" or "headroom").Select(Key).Distinct(),
            key => Assert.Contains(key, Pairs.Select(pair => pair.Line).Concat(NotHeld)));

    [Fact]
    public void Every_row_of_the_height_tables_is_reached_by_a_pair_or_repeats_one()
    {
        var spaces = Pairs.Select(pair => (pair.Ruleset, pair.Under, pair.Existing, pair.Suite)).ToHashSet();
        foreach (var table in PublishedTables.Current.Heights)
        {
            foreach (var row in table.Rows)
            {
                var rulesets = row.Rulesets ?? table.Rulesets;
                Assert.Contains(rulesets, ruleset => spaces.Contains((ruleset, row.Obstruction, row.ExistingBuilding, row.SecondarySuite)));
            }
        }
    }

    private static string Key(IReadOnlyDictionary<string, string> row) => $"{row["document"]} | {row["place"]} | {row["case"]}";

    private static Length Height(IReadOnlyDictionary<string, string> row)
    {
        var words = row["value"].Split(' ');
        return row["unit"] == "ft-in"
            ? Length.FromInches((12 * decimal.Parse(words[0], CultureInfo.InvariantCulture)) + decimal.Parse(words[2], CultureInfo.InvariantCulture))
            : Figure.Parse($"{row["value"]} {row["unit"]}").Length;
    }
}
