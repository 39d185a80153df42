using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Composition;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Tests.Optimum;

public sealed class ButtsAnywhereTests
{
    private const long Gap = 77 * Length.PerMillimetre;

    [Fact]
    public void A_butt_stands_on_a_row_or_clear_of_every_strap()
    {
        var room = FramedRoom.Of(SeededSurveys.Make(0).Survey);
        var across = new Span(room.Board.LowV, room.Board.HighV);
        long[] rows = [room.SnapUp(400 * Length.PerMillimetre), room.SnapUp(800 * Length.PerMillimetre)];
        var stand = new ButtStand(room, [.. rows.Select(at => new BearingLine(at, [across], true))], across, [true, false], Gap);

        for (var at = 300 * Length.PerMillimetre; at < 1000 * Length.PerMillimetre; at += 7 * Length.PerMillimetre)
        {
            foreach (var found in new[] { stand.Down(at, false), stand.Up(at, false) })
            {
                Assert.True(found == rows[0] || rows.All(r => Math.Abs(r - found) >= Gap), $"{found} for {at}");
            }

            Assert.True(stand.Down(at, false) <= at && at <= stand.Up(at, false));
        }

        Assert.Equal(rows[0], stand.Down(rows[1], true));
        Assert.Equal(long.MaxValue, stand.Up(rows[1], true));
    }

    [Fact]
    public void No_short_strap_is_laid_that_no_butt_wall_or_opening_asked_for()
    {
        var shorts = 0;
        for (var seed = 0; seed < 25; seed++)
        {
            if (new CeilingSearch(FramedRoom.Of(SeededSurveys.Make(seed).Survey), buttsAnywhere: true).Best().Chosen is { } chosen)
            {
                var used = chosen.Layout.Butts.SelectMany(b => b).ToHashSet();
                var extra = Enumerable.Range(0, chosen.Lines.Count).Where(i => chosen.Lines[i].Bearing.Extra).ToList();
                Assert.All(extra, i => Assert.Contains(i, used));
                shorts += extra.Count;
            }
        }

        Assert.True(shorts > 0, "No room of these has a short strap behind a butt.");
    }

    [Fact]
    public void Other_layouts_keep_the_rules_and_are_better_at_what_they_are_told_for()
    {
        var told = 0;
        for (var seed = 0; seed < 25; seed++)
        {
            if (new CeilingSearch(FramedRoom.Of(SeededSurveys.Make(seed).Survey), buttsAnywhere: true).Best().Chosen is not { } chosen)
            {
                continue;
            }

            if (chosen.Others.FewestButts is { Layout: var butts })
            {
                Assert.True(butts.ButtLength < chosen.Layout.ButtLength && butts.Penalty <= chosen.Layout.Penalty, $"seed {seed}");
                told++;
            }

            if (chosen.Others.LeastMaterial is { Layout: var material })
            {
                Assert.True(material.SheetCost < chosen.Layout.SheetCost && material.Penalty <= chosen.Layout.Penalty, $"seed {seed}");
                told++;
            }
        }

        Assert.True(told > 0, "No other layout is told of for any of these rooms.");
    }

    [Fact]
    public void A_dear_butt_gives_fewer_of_them_and_the_plan_says_what_less_material_would_cost()
    {
        long cheap = 0, dear = 0;
        var told = 0;
        foreach (var seed in Enumerable.Range(0, 25))
        {
            var survey = SeededSurveys.Make(seed).Survey;
            if (survey.Sheets.Stock.Any(s => s.PackPrice is null)
                || LayoutEngine.Plan(survey) is not PlanOutcome.Made { Plan: var plan }
                || LayoutEngine.Plan(survey with { Sheets = survey.Sheets with { ButtCostPerMetre = 40m } }) is not PlanOutcome.Made { Plan: var finished })
            {
                continue;
            }

            cheap += plan.Sheets.ButtJointLength.Units;
            dear += finished.Sheets.ButtJointLength.Units;
            foreach (var other in finished.Alternatives.Where(a => a.Sentence.Code == "least_material"))
            {
                Assert.True(other.Saving > 0, $"seed {seed}: {other.Sentence.Text}");
                told++;
            }
        }

        Assert.True(dear < cheap, $"{dear} with a price, {cheap} without");
        Assert.True(told > 0, "The cheaper end is told of for none of these rooms.");
    }

    [Fact]
    public void A_price_of_tapered_joints_counts_every_seam_between_courses()
    {
        Point At(int x, int y) => new(Length.FromMillimetres(x), Length.FromMillimetres(y));
        var seeded = Enumerable.Range(0, 50).Select(s => SeededSurveys.Make(s).Survey).First(s => s.Units == UnitSystem.Metric && s.Sheets.Stock.All(b => b.PackPrice is not null));
        var survey = seeded with
        {
            Room = new RoomSurvey { Outline = [At(0, 0), At(4000, 0), At(4000, 3600), At(0, 3600)] },
            JoistFields = [seeded.JoistFields[0] with { RunDegrees = 0 }],
            Sheets = seeded.Sheets with { TaperedCostPerMetre = 2m },
        };
        var room = FramedRoom.Of(survey);
        var step = 1200 * Length.PerMillimetre;
        var division = new CourseDivision(step, [room.Board.LowV, room.Board.LowV + step, room.Board.LowV + (2 * step), room.Board.HighV], 0, 0);

        Assert.Equal(2 * 4 * 2 * 10_000L, new StockPrices(survey.Sheets).SeamCost(room, division));
    }
}
