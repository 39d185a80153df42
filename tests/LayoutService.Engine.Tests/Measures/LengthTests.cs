using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Measures;

public class LengthTests
{
    private static readonly Length Short = Length.FromMillimetres(89);
    private static readonly Length Long = Length.FromInches(16);

    [Fact]
    public void An_inch_and_a_millimetre_are_whole_units_and_come_back_exactly()
    {
        Assert.Equal(203_200, Length.FromInches(1).Units);
        Assert.Equal(8_000, Length.FromMillimetres(1).Units);
        Assert.Equal(406.4m, Long.Millimetres);
        Assert.Equal(16m, Long.Inches);
        Assert.Equal(0.4064, Long.Metres);
        Assert.Equal(12_700, Length.PerSixteenth);
    }

    [Theory]
    [InlineData("0.0000625", 0)]
    [InlineData("0.0001875", 2)]
    [InlineData("-0.0000626", -1)]
    public void What_lies_between_two_units_goes_to_the_nearest_and_a_half_to_the_even_one(string millimetres, long units) =>
        Assert.Equal(units, Length.FromMillimetres(decimal.Parse(millimetres, System.Globalization.CultureInfo.InvariantCulture)).Units);

    [Fact]
    public void Lengths_are_added_taken_away_turned_round_repeated_and_divided_without_rounding()
    {
        Assert.Equal(495.4m, (Short + Long).Millimetres);
        Assert.Equal(-317.4m, (Short - Long).Millimetres);
        Assert.Equal(-89m, (-Short).Millimetres);
        Assert.Equal(267m, (Short * 3).Millimetres);
        Assert.Equal(44.5m, (Short / 2).Millimetres);
        Assert.Equal(3, (new Length(7) / 2).Units);
        Assert.Equal(0, Length.Zero.Units);
    }

    [Fact]
    public void Lengths_are_in_order_and_an_equal_one_is_neither_less_nor_more()
    {
        Assert.True(Short < Long && Long > Short && Short <= Long && Long >= Short);
        Assert.False(Long < Short || Short > Long || Long <= Short || Short >= Long);
        var same = new Length(Short.Units);
        Assert.True(Short <= same && Short >= same);
        Assert.False(Short < same || Short > same);
        Assert.True(Short.CompareTo(Long) < 0 && Long.CompareTo(Short) > 0 && Short.CompareTo(same) == 0);
        Assert.Equal((Short, Short), (Length.Min(Short, Long), Length.Min(Long, Short)));
        Assert.Equal((Long, Long), (Length.Max(Short, Long), Length.Max(Long, Short)));
        Assert.Equal("89 mm", Short.ToString());
    }

    [Fact]
    public void What_goes_out_of_range_is_no_length() => Assert.Throws<OverflowException>(() => new Length(long.MaxValue) + Short);
}
