using LayoutService.Engine.Measures;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Tests.Takeoff;

public class PublishedFiguresTests
{
    [Theory]
    [InlineData("1x4", 8, 14, 37.33)]  // 37-1/3: US Army EN5155 p. 1-28
    [InlineData("6x8", 16, 1, 64)]     // Griffith, Carpentry (1916), ch. 77
    [InlineData("2x6", 26, 1, 26)]     // Building Trades Pocketbook (c. 1905)
    [InlineData("2x10", 18, 1, 30)]    // same
    [InlineData("3x10", 20, 1, 50)]    // same
    [InlineData("2x10", 14, 1, 23.33)] // gearupforlife.org unit (its formula line misprints 21.33)
    public void Board_feet_are_as_published(string size, int feet, int count, decimal expected) =>
        Assert.Equal(expected, decimal.Round(LumberSections.BoardFeet(size, feet, count)!.Value, 2));

    [Fact]
    public void Board_feet_have_no_meaning_for_a_metric_or_unknown_name()
    {
        Assert.Null(LumberSections.BoardFeet("hat-channel", 8, 1));
        Assert.Null(LumberSections.Find("hat-channel"));
        Assert.Equal(LumberSections.Find("1x3"), LumberSections.Find("19x64"));
    }

    [Theory]
    [InlineData(12.7, "us-irc-2021", "1-1/8in")] // 1/2 + 5/8 in (IRC R702.3.5.1)
    [InlineData(15.9, "us-irc-2021", "1-1/4in")] // 5/8 + 5/8 in
    [InlineData(9.525, "us-irc-2021", "1in")]    // 3/8 + 5/8 in
    [InlineData(12.7, "ca-nbc-2020", "1-1/8in")] // 12.7 + 15 = 27.7 mm (NBC 9.29.5)
    [InlineData(15.9, "ca-nbc-2020", "1-1/4in")] // 15.9 + 15 = 30.9 mm
    [InlineData(25.4, "ca-nbc-2020", "1-5/8in")] // two layers of 12.7: 40.4 mm
    public void Board_screws_are_the_shortest_that_reach(decimal board, string ruleset, string expected) =>
        Assert.Equal(expected, ScrewLengths.ForBoard(Length.FromMillimetres(board), ruleset).Name);

    [Theory]
    [InlineData(12.7)]
    [InlineData(15.9)]
    public void A_board_screw_through_one_layer_stays_inside_a_strap_of_three_quarters(decimal board)
    {
        var screw = ScrewLengths.ForBoard(Length.FromMillimetres(board), "us-irc-2021");

        Assert.True(screw.Length < Length.FromMillimetres(board) + Length.FromInches(0.75m));
    }

    [Fact]
    public void Strap_and_scab_screws_suit_the_thickness_of_the_strap()
    {
        var grip = Allowances.Usual.StrapScrewGrip;

        Assert.Equal("2in", ScrewLengths.ForStrap(Length.FromMillimetres(19), grip).Name);
        Assert.Equal("2in", ScrewLengths.ForStrap(Length.FromInches(0.75m), grip).Name);
        Assert.Equal("3in", ScrewLengths.ForStrap(Length.FromInches(1.5m), grip).Name);
        Assert.Equal("1-1/4in", ScrewLengths.ForScab(Length.FromInches(0.75m)).Name);
        Assert.Equal("1-1/4in", ScrewLengths.ForScab(Length.FromMillimetres(19)).Name);
    }

    /// <summary>Sheets of 4 × 8 ft: 54.4, 40.8 and 73.6 lb (secondary sources); within 2 % since the table keeps two digits.</summary>
    [Theory]
    [InlineData("regular", 12.7, 54.4)]
    [InlineData("lightweight", 12.5, 40.8)]
    [InlineData("type-x", 15.875, 73.6)]
    [InlineData("regular", 9.5, 44.8)]
    public void Sheets_weigh_about_what_is_published(string type, decimal thickness, decimal pounds)
    {
        var mass = MassTable.Published.SheetKilograms(
            type, Length.FromMillimetres(thickness), Length.FromInches(48), Length.FromInches(96));

        Assert.InRange(mass / 0.45359237m, pounds * 0.98m, pounds * 1.02m);
    }

    /// <summary>4.6 kN/m³ (CWC Wood Design Manual 2021) over 9.80665 m/s².</summary>
    [Fact]
    public void Lumber_weighs_what_its_unit_weight_says() =>
        Assert.Equal(decimal.Round(4600m / 9.80665m), MassTable.Published.LumberKilogramsPerCubicMetre);

    [Theory]
    [InlineData("USD", 2)]
    [InlineData("CAD", 2)]
    [InlineData("JPY", 0)]
    [InlineData("KWD", 3)]
    [InlineData("CLF", 4)]
    public void Minor_units_are_those_of_ISO_4217_from_memory(string currency, int places) =>
        Assert.Equal(places, MinorUnits.Places(currency));
}
