using System.Text.Json;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Tests.Standards;

public class TableLoadingTests
{
    [Fact]
    public void Every_table_that_is_built_in_loads() => Assert.NotEmpty(PublishedTables.Current.Rules);

    [Fact]
    public void The_rules_version_is_a_date_and_a_fingerprint() =>
        Assert.Matches("^[0-9]{4}-[0-9]{2}-[0-9]{2}-[0-9a-f]{12}$", PublishedTables.Current.RulesVersion);

    [Theory]
    [InlineData("12")]
    [InlineData("12mm")]
    [InlineData("12 cubits")]
    [InlineData("-1 mm")]
    [InlineData("1/0 in")]
    [InlineData("a mm")]
    [InlineData("")]
    [InlineData("1,000 ft2")]
    public void A_cell_without_a_number_and_a_known_unit_is_refused(string cell) =>
        Assert.Throws<FormatException>(() => Figure.Parse(cell));

    [Theory]
    [InlineData("1-1/8 in", "28.575")]
    [InlineData("5/8 in", "15.875")]
    [InlineData("19 mm", "19")]
    [InlineData("2.1 m", "2100")]
    [InlineData("10 ft", "3048")]
    public void A_length_is_converted_exactly_at_load(string cell, string millimetres) =>
        Assert.Equal(decimal.Parse(millimetres, System.Globalization.CultureInfo.InvariantCulture), Figure.Parse(cell).Length.Millimetres);

    [Fact]
    public void A_figure_is_not_said_in_a_unit_that_measures_something_else() =>
        Assert.Throws<InvalidOperationException>(() => Figure.Parse("1 kg").In("mm"));

    [Fact]
    public void Pounds_on_a_square_foot_become_kilograms_on_a_square_metre() =>
        Assert.Equal(4.8824m, decimal.Round(Figure.Parse("1 lb/ft2").In("kg/m2"), 4)); // 0.45359237 / 0.09290304, both exact

    [Theory]
    [InlineData("\"face\": \"38 mm\"", "\"face\": \"38 mm\", \"colour\": \"red\"")]
    [InlineData("\"face\": \"38 mm\"", "\"face\": \"38 cubits\"")]
    [InlineData("\"face\": \"38 mm\"", "\"face\": 38")]
    [InlineData("\"face\": \"38 mm\"", "\"face\": null")]
    [InlineData(", \"face\": \"38 mm\"", "")]
    [InlineData("\"face\": \"38 mm\"", "\"face\": \"38 mm\", \"face\": \"38 mm\"")]
    [InlineData("\"published\"", "\"hearsay\"")]
    [InlineData("\"document\": \"A code\",", "")]
    public void A_table_with_one_thing_wrong_does_not_load(string right, string wrong)
    {
        const string table = """
            { "id": "t", "title": "T", "source": { "document": "A code", "basis": "published", "confidence": "high" }, "rulesets": [],
              "rows": [ { "rowSpacing": null, "supportSpacing": null, "thickness": "19 mm", "face": "38 mm" } ] }
            """;
        Assert.Single(TableReader.ParseFurring(table).Rows);
        Assert.Contains(right, table);
        Assert.Throws<JsonException>(() => TableReader.ParseFurring(table.Replace(right, wrong)));
    }

    [Fact]
    public void A_table_without_rows_does_not_load() =>
        Assert.Throws<JsonException>(() => TableReader.ParseFurring(
            """{ "id": "t", "title": "T", "source": { "document": "A", "basis": "published", "confidence": "high" }, "rulesets": [], "rows": [] }"""));
}
