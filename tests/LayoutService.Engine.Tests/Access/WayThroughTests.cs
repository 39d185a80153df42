using LayoutService.Engine.Access;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Access;

/// <summary>What gets through an opening and round a turn, against closed forms worked out by hand.</summary>
public class WayThroughTests
{
    // the ladder problem: (a^(2/3) + b^(2/3))^(3/2); 1 and 8 give (1 + 4)^1.5 = 11.180, twice 900 gives 900 × 2√2 = 2545.6
    [Theory]
    [InlineData(1000, 8000, 11180.340)]
    [InlineData(900, 900, 2545.584)]
    public void A_line_round_a_turn_is_the_ladder_problem(int before, int after, double longest) =>
        Assert.Equal(longest, WayThrough.LongestLevel(Turn(before, after, null), 0) / Length.PerMillimetre, 2);

    // in equal passages the narrowest place is at 45°: 2√2 a − 2c
    [Fact]
    public void Thickness_shortens_it_by_twice_itself_in_equal_passages() =>
        Assert.Equal((900 * 2 * Math.Sqrt(2)) - (2 * 100), WayThrough.LongestLevel(Turn(900, 900, null), Mm(100).Units) / Length.PerMillimetre, 2);

    // level on edge 2545.6 − 2 × 12.7 = 2520: 2400 goes round, 3000 only tilted: under 2000, φ = asin(2000/3231) − atan(1200/3000)
    // = 38.24° − 21.80° = 16.44°, plan 3000 cos φ + 1200 sin φ = 2877 + 340 = 3217, so it does not
    [Theory]
    [InlineData(2400, 2000, true)]
    [InlineData(3000, 2000, false)]
    [InlineData(3000, 3300, true)]
    // 8 ft goes round two passages of 900, 9 ft does not: tilted, φ = asin(2000/2994) − atan(1200/2743) = 41.91° − 23.63°, plan 2981
    [InlineData(2438, 2000, true)]
    [InlineData(2743, 2000, false)]
    public void A_sheet_goes_round_on_edge_or_stood_up(int length, int height, bool goes) =>
        Assert.Equal(goes, WayThrough.Round(Turn(900, 900, height), Mm(length), Mm(1200), new Length(127 * Length.PerMillimetre / 10)));

    // 1200 × 13 through 800 × 900: the diagonal is 1204, and a plate 13 thick needs a little more
    [Theory]
    [InlineData(800, 900, 1200, 13, false)]
    [InlineData(820, 920, 1200, 13, true)]
    [InlineData(1200, 13, 1200, 13, true)]
    [InlineData(1199, 200, 1200, 13, true)]
    [InlineData(1100, 200, 1200, 13, false)]
    public void A_plate_goes_through_an_opening_straight_or_aslant(int width, int height, int plate, int thick, bool goes) =>
        Assert.Equal(goes, WayThrough.Through(new ClearOpening(Mm(width), Mm(height)), Mm(plate), Mm(thick)));

    [Fact]
    public void What_does_not_go_round_goes_through_the_window()
    {
        var way = new WayIn([], Turn(700, 700, 1500), new ClearOpening(Mm(1300), Mm(500)));
        Assert.True(WayThrough.Admits(way, Mm(3600), Mm(1200), Mm(13)));
        Assert.False(WayThrough.Admits(way with { Window = null }, Mm(3600), Mm(1200), Mm(13)));
    }

    private static SquareTurn Turn(int before, int after, int? height) => new(Mm(before), Mm(after), height is { } h ? Mm(h) : null);

    private static Length Mm(int millimetres) => Length.FromMillimetres(millimetres);
}
