using LayoutService.Engine.Insulation;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;
using static LayoutService.Engine.Tests.Insulation.BattBench;

namespace LayoutService.Engine.Tests.Insulation;

/// <summary>Resistances of squeezed batts are those of the table compressed-batts (trade press, a secondary source).</summary>
public class BattWorthTests
{
    private const decimal RsiPerR = 0.176110m;

    private static readonly BattRules Tabled = Rules with
    {
        Squeezed = [.. PublishedTables.Current.CompressedBatts.Rows.Select(r =>
            new SqueezedBatt(r.Nominal.In("RSI"), r.Thickness.Length.Units, r.Depth.Length.Units, r.Resistance.In("RSI")))],
    };

    [Theory]
    [InlineData(19, 6.25, 5.5, 18)]
    [InlineData(30, 10, 9.25, 29)]
    [InlineData(38, 12, 11.25, 37)]
    [InlineData(25, 8, 7.25, 24)]
    public void A_squeezed_batt_has_what_the_table_prints(int r, double thickness, double depth, int worth) =>
        Assert.Equal(worth, Math.Round(Worth(r, thickness, depth) / RsiPerR, 2));

    [Fact]
    public void Between_tabled_depths_it_has_no_more_than_the_next_shallower_one_or_its_share() =>
        Assert.Equal(Math.Max(24m, 25m * 7.5m / 8m), Math.Round(Worth(25, 8, 7.5) / RsiPerR, 4));

    [Fact]
    public void Half_of_a_split_batt_has_half() =>
        Assert.Equal(1m, BattWorth.Rsi(new BattLayer(new BattMake(Mm(100), 2m, true, []), true, Mm(50), Mm(50)), Tabled));

    [Fact]
    public void Squeezing_changes_no_mass() =>
        Assert.Equal(0.1m * 20.4m, BattWorth.KilogramsPerSquareMetre(new BattLayer(new BattMake(Mm(100), 2m, true, []), false, Mm(100), Mm(90)), Rules));

    // 10 % wood of RSI 2 and 90 % batt of RSI 3: 1 / (0.1 / 2 + 0.9 / 3) = 2.857143
    [Fact]
    public void Parallel_paths_are_weighted_by_area() => Assert.Equal(2.857143m, ParallelPaths.Rsi([(0.9, 3m)], 0.1, 0, 2m, 0.16m));

    [Fact]
    public void The_limit_of_squeeze_is_kept_to_the_unit()
    {
        var choice = new BattChoice(BattMake.Of([Batt("one", 160, 381, false)]), 0.125m);

        Assert.Equal(Mm(140), choice.For(Mm(140))!.Installed);
        Assert.Null(choice.For(Mm(140) - 1));
    }

    private static decimal Worth(int r, double thickness, double depth)
    {
        var (loose, installed) = (Length.FromInches((decimal)thickness).Units, Length.FromInches((decimal)depth).Units);
        return BattWorth.Rsi(new BattLayer(new BattMake(loose, r * RsiPerR, false, []), false, loose, installed), Tabled);
    }
}
