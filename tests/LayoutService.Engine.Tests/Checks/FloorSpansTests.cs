using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using static LayoutService.Engine.Tests.Checks.PlainRoom;

namespace LayoutService.Engine.Tests.Checks;

/// <summary>What the floor tables say of joists with and without the ceiling (NBC 9.23.4.2., 9.23.9.4.).</summary>
public class FloorSpansTests
{
    // S-P-F 38 × 235 at 400 mm: strapping 3.96 m, furred ceiling 4.28 m, furred ceiling and bridging 4.75 m (printed).
    [Theory]
    [InlineData(false, 3960, 4280)]
    [InlineData(true, 4170, 4750)]
    public void A_furred_ceiling_earns_the_longer_printed_span(bool bridging, int without, int with)
    {
        var facts = Stamped();
        var floor = FloorSpans.Of(Book("ca-nbc-2020"), facts with { Floor = facts.Floor with { Bridging = bridging } })!;
        Assert.True(floor.Earned);
        Assert.Equal((Mm(without), Mm(with)), (floor.Without!.Span, floor.With!.Span));
        Assert.Equal(5, floor.Spans.Count);
    }

    // 9.23.9.4.(6): 1x2 at 400 mm never earns it; 19 × 64 to 400 mm, 19 × 89 to 600 mm; board of 12.7 mm.
    [Theory]
    [InlineData(38, 400, "12.7", "furred_ceiling_needs_wider_straps")]
    [InlineData(64, 600, "12.7", "furred_ceiling_needs_closer_rows")]
    [InlineData(64, 400, "9.5", "furred_ceiling_needs_board")]
    [InlineData(89, 610, "12.7", "furred_ceiling_needs_closer_rows")]
    [InlineData(64, 406, "12.7", null)]
    [InlineData(89, 600, "12.7", null)]
    public void What_the_straps_lack_is_said(int face, int spacing, string board, string? lacks)
    {
        var facts = Stamped();
        facts = facts with
        {
            Straps = facts.Straps! with { Face = Mm(face), RowSpacing = Mm(spacing) },
            Board = facts.Board with { Thickness = Mm(decimal.Parse(board, System.Globalization.CultureInfo.InvariantCulture)) },
        };
        var floor = FloorSpans.Of(Book("ca-nbc-2020"), facts)!;
        Assert.Equal(lacks is null ? [] : [lacks], floor.Needs.Select(need => need.Code));
        Assert.Equal(lacks is null ? Mm(4280) : Mm(3960), floor.With!.Span);
    }

    [Fact]
    public void Nothing_is_assumed_of_the_stamp()
    {
        var check = CeilingChecks.Of(Book("ca-nbc-2020"), Metric()).Find("floor-span");
        Assert.Equal(CheckStatus.NotChecked, check.Status);
        Assert.Equal(["#/joistFields/0/species", "#/joistFields/0/grade", "#/joistFields/0/clearSpan"], check.Missing);
        Assert.Null(check.Limit);
    }

    [Theory]
    [InlineData(4280, CheckStatus.Pass)]
    [InlineData(4284, CheckStatus.Marginal)]
    [InlineData(4300, CheckStatus.Fail)]
    public void The_joists_own_span_is_held_against_the_printed_one(int span, CheckStatus status)
    {
        var facts = Stamped();
        var check = CeilingChecks.Of(Book("ca-nbc-2020"), facts with { Floor = facts.Floor with { ClearSpan = Mm(span) } }).Find("floor-span");
        Assert.Equal((status, 4280m), (check.Status, check.Limit));
        Assert.Equal(status == CheckStatus.Pass, check.Remedy is null);
    }

    [Fact]
    public void I_joists_get_what_is_published_and_no_span()
    {
        var facts = Stamped();
        var floor = FloorSpans.Of(Book("ca-nbc-2020"), facts with { Floor = facts.Floor with { Joists = JoistKind.IJoist } })!;
        Assert.False(floor.Earned);
        Assert.Empty(floor.Spans);
        Assert.Equal(("i_joist_published_effect", "5 %"), (floor.Notes[0].Code, floor.Notes[0].Params[0].Value));
        Assert.Equal("floor_for_engineer", floor.Notes[^1].Code);
    }

    [Fact]
    public void A_code_without_floor_tables_says_nothing_of_the_floor() => Assert.Null(FloorSpans.Of(Book("us-irc-2024"), Stamped()));

    // The greatest gain that the tables print anywhere, furred ceiling and bridging over strapping alone, is a quarter of the span.
    [Fact]
    public void No_gain_is_ever_claimed_beyond_what_is_printed()
    {
        var rows = LayoutService.Engine.Standards.PublishedTables.Current.JoistSpans.SelectMany(table => table.Rows).ToList();
        foreach (var joist in rows.GroupBy(row => (row.Species, row.Grade, row.Depth.Value, row.Spacing.Value)))
        {
            Assert.InRange(joist.Max(row => row.Span.Value) / joist.Min(row => row.Span.Value), 1m, 1.25m);
        }
    }

    [Theory]
    [InlineData("Hem-Fir", "Utility", 235, 400)]
    [InlineData("S-P-F", "No.1 and No.2", 300, 400)]
    [InlineData("S-P-F", "No.1 and No.2", 235, 700)]
    public void Joists_that_the_tables_do_not_know_get_no_span(string species, string grade, int depth, int spacing)
    {
        var facts = Stamped();
        facts = facts with { Floor = facts.Floor with { Species = species, Grade = grade, JoistDepth = Mm(depth), JoistSpacing = Mm(spacing) } };
        Assert.Null(FloorSpans.Of(Book("ca-nbc-2020"), facts)!.With);
        Assert.Equal(CheckStatus.NotChecked, CeilingChecks.Of(Book("ca-nbc-2020"), facts).Find("floor-span").Status);
    }
}
