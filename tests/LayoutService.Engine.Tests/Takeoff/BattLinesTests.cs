using LayoutService.Engine.Insulation;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Tests.Takeoff;

/// <summary>Counted by hand: batts of 15 × 48 in.</summary>
public class BattLinesTests
{
    [Fact]
    public void A_bay_of_ten_feet_takes_two_whole_batts_and_half_of_a_third() => Assert.Equal(3, Counted(SmallBatts.Fill(14.5m, 120)));

    [Fact]
    public void What_is_left_of_one_bay_serves_the_next() =>
        Assert.Equal(5, Counted(SmallBatts.Fill(14.5m, 120), SmallBatts.Fill(14.5m, 120)));

    [Fact]
    public void Two_narrow_strips_come_from_one_batt() =>
        Assert.Equal(1, Counted(SmallBatts.Fill(6.5m, 48), SmallBatts.Fill(6.5m, 48)));

    [Fact]
    public void A_split_batt_gives_two_layers() =>
        Assert.Equal(2, Counted(SmallBatts.Fill(14.5m, 48, true), SmallBatts.Fill(14.5m, 40, true), SmallBatts.Fill(14.5m, 48, true)));

    [Fact]
    public void A_quarter_inch_over_whole_batts_takes_no_more() => Assert.Equal(2, Counted(SmallBatts.Fill(14.5m, 96.2m)));

    [Fact]
    public void Whole_packs_are_bought_at_their_price_and_weighed()
    {
        var line = Line(SmallBatts.Fill(14.5m, 480), SmallBatts.Fill(14.5m, 48));

        // 11 batts: two packs of ten; 20 × 3.5 × 15 × 48 in at 20.4 kg/m³
        Assert.Equal((11m, 20m, 60m), (line.Counted, line.Quantity, line.Amount));
        Assert.Equal(20 * 3.5m * 15 * 48 * 0.000016387064m * 20.4m, line.MassKilograms!.Value, 2);
    }

    [Fact]
    public void No_batts_no_line() => Assert.DoesNotContain(TakeoffCounter.Count(SmallCeiling.Facts()).Lines, l => l.Code == TakeoffCodes.Batt);

    private static decimal Counted(params BattFill[] fills) => Line(fills).Counted;

    private static TakeoffLine Line(params BattFill[] fills) =>
        TakeoffCounter.Count(SmallBatts.Over(SmallCeiling.Facts(), fills)).Lines.Single(l => l.Code == TakeoffCodes.Batt);
}
