using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Insulation;
using static LayoutService.Engine.Tests.Insulation.BattBench;

namespace LayoutService.Engine.Tests.Insulation;

/// <summary>Rows of 64 mm at 400 mm on centre from 32 mm: gaps of 336 mm.</summary>
public class BattsOverStrapsTests
{
    [Fact]
    public void A_batt_in_a_clear_bay_waits_for_no_strap() => Assert.Empty(After(Scene(), 400));

    [Fact]
    public void Under_a_long_shallow_duct_every_strap_that_crosses_it_waits()
    {
        // the batt lies 75 mm thick in 80 mm, from 1000 to 2500: rows at 1232, 1632, 2032, 2432
        var after = After(Scene(Across(1000, 2500, -235, -80)), 400);

        Assert.Equal([3, 4, 5, 6], after.Select(a => a.Row));
        Assert.All(after, a => Assert.Equal(SlideReason.Depth, a.Reason));
    }

    [Fact]
    public void Under_a_duct_no_longer_than_one_gap_the_batt_is_fed_in_from_the_side() =>
        Assert.Empty(After(Scene(Across(1100, 1400, -235, -80)), 400));

    [Fact]
    public void With_room_to_fold_the_batt_under_the_duct_no_strap_waits() =>
        Assert.Empty(After(Scene(Across(1000, 2500, -235, -145)) with { Batts = [Batt("slim", 60, 381)] }, 400));

    [Fact]
    public void Gaps_too_narrow_for_the_batt_make_the_straps_wait()
    {
        // 100 mm on centre: gaps of 36 mm for a batt of 150 mm
        var after = After(Scene(), 100);

        Assert.NotEmpty(after);
        Assert.All(after, a => Assert.Equal(SlideReason.Width, a.Reason));
    }

    private static IReadOnlyList<StrapAfter> After(BattScene scene, long spacing)
    {
        var rows = new List<BearingLine>();
        for (var at = 32L; at < 4000; at += spacing)
        {
            rows.Add(new BearingLine(Mm(at), [new Span(0, Mm(3000))], true));
        }

        return new BattsOverStraps(rows, Mm(64), Rules).Of(BattPlanner.Plan(scene).Laid);
    }
}
