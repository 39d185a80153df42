using LayoutService.Engine.Geometry;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Measures;
using static LayoutService.Engine.Tests.Insulation.BattBench;

namespace LayoutService.Engine.Tests.Insulation;

public class BattPlannerTests
{
    [Fact]
    public void An_empty_bay_takes_the_thickest_batt_from_wall_to_wall() =>
        Assert.Equal([(0L, 4000L, 1000L, 1368L, 150L)], Laid(Scene()));

    [Fact]
    public void Under_a_duct_lies_what_fits_there()
    {
        // 80 mm below the metal: the thin batt, whole
        Assert.Equal(
            [(0L, 1500L, 1000L, 1368L, 150L), (1500L, 2000L, 1000L, 1368L, 75L), (2000L, 4000L, 1000L, 1368L, 150L)],
            Laid(Scene(Across(1500, 2000, -235, -80))));
    }

    [Fact]
    public void Where_no_whole_batt_fits_under_the_duct_a_split_one_does()
    {
        var laid = BattPlanner.Plan(Scene(Across(1500, 2000, -235, -40))).Laid[1];

        Assert.Equal((true, Mm(75) / 2, "thin"), (laid.Verdict.Layer!.Split, laid.Verdict.Layer.Installed, laid.Batt.Id));
    }

    [Fact]
    public void Mass_goes_below_the_metal_first_and_above_it_only_when_it_cannot()
    {
        Assert.Equal(BattPlace.Below, BattPlanner.Plan(Scene(Across(1500, 2000, -120, -80))).Laid[1].Verdict.Place);
        Assert.Equal(BattPlace.Above, BattPlanner.Plan(Scene(Across(1500, 2000, -60, 100))).Laid[1].Verdict.Place);
    }

    [Fact]
    public void A_duct_that_leaves_nothing_is_open_with_its_place_and_name()
    {
        var open = Assert.Single(BattPlanner.Plan(Scene(Across(1500, 2000, -235, -10))).Open);

        Assert.Equal((OpenReason.NoDepth, "thing"), (open.Reason, open.Obstacles[0].Id));
        Assert.Equal(500 * 368, (long)(Rings.TwiceArea(open.Ring) / 2) / (Length.PerMillimetre * Length.PerMillimetre));
    }

    [Fact]
    public void A_pipe_high_in_the_bay_cuts_no_batt() =>
        Assert.Equal([(0L, 4000L, 1000L, 1368L, 150L)], Laid(Scene(Across(1500, 1600, -235, -160))));

    [Fact]
    public void What_hangs_below_the_joists_is_no_matter_of_the_bay() =>
        Assert.Equal([(0L, 4000L, 1000L, 1368L, 150L)], Laid(Scene(Across(1500, 2000, 10, 200))));

    [Fact]
    public void Nothing_lies_within_the_clearance_of_what_is_hot_on_any_side()
    {
        var laid = Laid(Scene(Box(new Span(1500, 1700), new Span(1100, 1200), -200, -20, ObstacleKind.Hot, 25)));

        Assert.All(laid, l => Assert.True(l.To <= 1475 || l.From >= 1725 || l.High <= 1075 || l.Low >= 1225));
        Assert.Contains((1475L, 1725L, 1225L, 1368L, 150L), laid);
    }

    [Fact]
    public void A_return_bay_stays_empty_from_wall_to_wall_and_its_neighbour_does_not()
    {
        var scene = Scene(Box(new Span(1000, 2000), new Span(1000, 1368), -235, 0, ObstacleKind.PannedReturn)) with
        {
            Bays = [new BattBay("BAY1", new Span(Mm(1000), Mm(1368)), Mm(235)), new BattBay("BAY2", new Span(Mm(1406), Mm(1774)), Mm(235))],
        };
        var layout = BattPlanner.Plan(scene);

        Assert.Equal("BAY2", Assert.Single(layout.Laid).Bay);
        Assert.Equal(Mm(4000), Assert.Single(layout.Open).Ring.Max(c => c.U));
    }

    [Fact]
    public void A_wide_bay_takes_strips_side_by_side()
    {
        var scene = Scene() with { Bays = [new BattBay("BAY1", new Span(Mm(1000), Mm(1600)), Mm(235))], Batts = [Full] };

        Assert.Equal([(0L, 4000L, 1000L, 1381L, 150L), (0L, 4000L, 1381L, 1600L, 150L)], Laid(scene));
        Assert.Equal([Mm(381), Mm(219 + 13)], BattPlanner.Plan(scene).Laid.Select(l => l.CutWidth));
    }

    [Fact]
    public void A_batt_is_cut_a_little_wider_than_its_bay_but_never_wider_than_itself()
    {
        Assert.Equal(Mm(381), BattPlanner.Plan(Scene()).Laid[0].CutWidth);
        Assert.Equal(Mm(313), BattPlanner.Plan(Scene() with { Bays = [new BattBay("BAY1", new Span(0, Mm(300)), Mm(235))] }).Laid[0].CutWidth);
    }

    [Fact]
    public void A_post_in_the_bay_is_gone_round_by_rings_without_holes()
    {
        var region = Region.Of(
            [new(0, 0), new(Mm(4000), 0), new(Mm(4000), Mm(3000)), new(0, Mm(3000))],
            [([new(Mm(2000), Mm(1100)), new(Mm(2090), Mm(1100)), new(Mm(2090), Mm(1190)), new(Mm(2000), Mm(1190))], 0)]);
        var laid = BattPlanner.Plan(Scene() with { Region = region }).Laid;

        Assert.Equal(((4000 * 368) - (90 * 90)) * 2, (long)(laid.Aggregate((Int128)0, (sum, l) => sum + Rings.TwiceArea(l.Ring)) / (Length.PerMillimetre * Length.PerMillimetre)));
        Assert.All(laid, l => Assert.Equal(4, l.Ring.Length));
    }

    [Fact]
    public void At_a_skew_wall_the_batt_is_cut_to_it()
    {
        var region = Region.Of([new(0, 0), new(Mm(4000), 0), new(Mm(3000), Mm(3000)), new(0, Mm(3000))], []);
        var laid = Assert.Single(BattPlanner.Plan(Scene() with { Region = region }).Laid);

        Assert.Equal(Mm(4000) - (Mm(1000) / 3), laid.Along.Hi, 1.0);
        Assert.Equal(4, laid.Ring.Length);
    }
}
