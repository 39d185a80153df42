using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Measures;

public class TapeTextTests
{
    [Theory]
    [InlineData(150.5, "150-1/2\" (12' 6-1/2\")")]
    [InlineData(24, "24\" (2' 0\")")]
    [InlineData(23.9375, "23-15/16\"")]
    [InlineData(0, "0\"")]
    [InlineData(0.5, "1/2\"")]
    [InlineData(0.0625, "1/16\"")]
    [InlineData(12.25, "12-1/4\"")]
    [InlineData(36.375, "36-3/8\" (3' 3/8\")")]
    [InlineData(-3.5, "-3-1/2\"")]
    [InlineData(-30, "-30\" (-2' 6\")")]
    public void Inches_are_in_the_coarsest_fraction_with_feet_beside_where_long(double inches, string text) =>
        Assert.Equal(text, TapeText.Imperial(Length.FromInches((decimal)inches), TapeRounding.Nearest));

    [Theory]
    [InlineData(15.75, "15-3/4")]
    [InlineData(24, "24")]
    [InlineData(0.0625, "1/16")]
    [InlineData(0, "0")]
    [InlineData(0.03125, null)]
    [InlineData(0.866, null)]
    [InlineData(-1.5, null)]
    public void Whole_sixteenths_have_a_number_in_fractions_and_nothing_else_has(double inches, string? text) =>
        Assert.Equal(text, TapeText.WholeSixteenths(Length.FromInches((decimal)inches)));

    [Theory]
    [InlineData(6350, "1/32 in is a half mark", "1/16\"", "0\"")]
    [InlineData(6349, "a little less", "0\"", "0\"")]
    [InlineData(12699, "just under a sixteenth", "1/16\"", "0\"")]
    [InlineData(12700, "a sixteenth", "1/16\"", "1/16\"")]
    [InlineData(-6350, "half a mark below nought", "0\"", "-1/16\"")]
    [InlineData(-6351, "a little further", "-1/16\"", "-1/16\"")]
    public void A_mark_is_the_nearest_sixteenth_and_a_cut_the_one_below(long units, string what, string mark, string cut)
    {
        Assert.True(mark == TapeText.Imperial(new Length(units), TapeRounding.Nearest), what);
        Assert.True(cut == TapeText.Imperial(new Length(units), TapeRounding.Down), what);
    }

    [Theory]
    [InlineData(3810, "3810 mm", "3810 mm")]
    [InlineData(3810.5, "3811 mm", "3810 mm")]
    [InlineData(3810.4999, "3810 mm", "3810 mm")]
    [InlineData(3809.9, "3810 mm", "3809 mm")]
    [InlineData(0, "0 mm", "0 mm")]
    [InlineData(-0.25, "0 mm", "-1 mm")]
    public void Millimetres_are_whole(double millimetres, string mark, string cut)
    {
        var length = Length.FromMillimetres((decimal)millimetres);
        Assert.Equal(mark, TapeText.Metric(length, TapeRounding.Nearest));
        Assert.Equal(cut, TapeText.Metric(length, TapeRounding.Down));
    }

    [Fact]
    public void What_is_written_for_a_tape_reads_back_as_the_same_mark()
    {
        for (var sixteenths = -4000L; sixteenths < 4000; sixteenths++)
        {
            var length = new Length(sixteenths * Length.PerSixteenth);
            var text = TapeText.Imperial(length, TapeRounding.Nearest);
            foreach (var form in text.TrimEnd(')').Split(" ("))
            {
                Assert.True(TradeNotation.TryRead(form, out var back, out var fault), $"{form}: {fault?.Detail}");
                Assert.Equal(length, back);
            }
        }
    }
}
