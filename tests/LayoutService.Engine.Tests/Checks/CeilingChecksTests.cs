using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;
using static LayoutService.Engine.Tests.Checks.PlainRoom;

namespace LayoutService.Engine.Tests.Checks;

public class CeilingChecksTests
{
    public static TheoryData<string> Rulesets => ["us-irc-2021", "us-irc-2024", "ca-nbc-2020", "ca-on-2024"];

    [Theory]
    [MemberData(nameof(Rulesets))]
    public void A_plain_room_fails_nothing_in_either_unit_system(string ruleset)
    {
        foreach (var facts in new[] { Facts(), Metric() })
        {
            Assert.DoesNotContain(CeilingChecks.Of(Book(ruleset), facts), check => check.Status is CheckStatus.Fail or CheckStatus.Marginal);
        }
    }

    [Theory]
    [MemberData(nameof(Rulesets))]
    public void Every_check_names_a_rule_of_the_catalogue_and_a_document(string ruleset)
    {
        foreach (var check in CeilingChecks.Of(Book(ruleset), Everything()))
        {
            Assert.True(RuleCatalogue.Current.Has(ruleset, check.Rule), check.Rule);
            Assert.NotEmpty(check.Source.Document);
        }
    }

    [Theory]
    [MemberData(nameof(Rulesets))]
    public void A_passed_check_holds_its_value_against_its_limit(string ruleset)
    {
        foreach (var facts in new[] { Facts(), Metric(), Everything() })
        {
            foreach (var check in CeilingChecks.Of(Book(ruleset), facts).Where(check => check.Status == CheckStatus.Pass && check.Note?.Code != "deep_joists_need_no_membrane"))
            {
                Assert.True(check.Comparison == CheckComparison.AtMost ? check.Value <= check.Limit : check.Value >= check.Limit, check.ToString());
                Assert.Null(check.Remedy);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Rulesets))]
    public void A_failed_check_breaks_its_limit_and_says_what_to_change(string ruleset)
    {
        var failed = CeilingChecks.Of(Book(ruleset), Worst()).Where(check => check.Status == CheckStatus.Fail).ToList();
        Assert.Contains(failed, check => check.Rule == "strap-thickness");
        Assert.Contains(failed, check => check.Rule == "row-spacing");
        Assert.Contains(failed, check => check.Rule == "board-screw-penetration");
        Assert.Contains(failed, check => check.Rule == "headroom");
        foreach (var check in failed)
        {
            Assert.True(check.Limit is null || (check.Comparison == CheckComparison.AtMost ? check.Value > check.Limit : check.Value < check.Limit), check.ToString());
            Assert.True(check.Remedy is not null || check.Rule == "fasteners-per-crossing", check.ToString());
        }
    }

    [Fact]
    public void A_one_by_two_on_joists_two_feet_apart_fails_in_Canada_and_passes_in_the_United_States()
    {
        var facts = Facts();
        facts = facts with { Straps = facts.Straps! with { Face = In(1.5m), SupportSpacing = In(24) } };
        var canada = CeilingChecks.Of(Book("ca-nbc-2020"), facts).Find("strap-face");
        Assert.Equal((CheckStatus.Fail, 1.5m, 2.5m, "in"), (canada.Status, canada.Value, canada.Limit, canada.Unit));
        Assert.Equal("Table 9.29.3.1.", canada.Source.Clause);
        Assert.Equal("Use a strap with a face of 2-1/2 in, set the rows closer, or block between the joists.", canada.Remedy!.Text);
        var states = CeilingChecks.Of(Book("us-irc-2024"), facts).Find("strap-face");
        Assert.Equal((CheckStatus.Pass, "R702.3.2"), (states.Status, states.Source.Clause));
    }

    [Theory]
    [InlineData("24", CheckStatus.Pass)]
    [InlineData("24.2", CheckStatus.Marginal)] // 5.08 mm over, the survey is right to 6 mm
    [InlineData("24.25", CheckStatus.Fail)] // 6.35 mm over
    public void Joists_past_two_feet_are_outside_the_furring_table(string inches, CheckStatus expected)
    {
        var facts = Facts();
        var apart = In(decimal.Parse(inches, System.Globalization.CultureInfo.InvariantCulture));
        facts = facts with { Straps = facts.Straps! with { SupportSpacing = apart, Face = In(3.5m) } };
        foreach (var ruleset in new[] { "us-irc-2021", "ca-nbc-2020" })
        {
            var check = CeilingChecks.Of(Book(ruleset), facts).Find("strap-support-spacing");
            Assert.Equal((expected, 24m), (check.Status, check.Limit));
            Assert.Equal(["J4", "J5"], check.Where);
        }
    }

    [Fact]
    public void A_floor_framed_at_16_in_is_the_400_mm_module_and_the_check_says_so()
    {
        var facts = Facts();
        facts = facts with { Board = facts.Board with { Textured = true } };
        var check = CeilingChecks.Of(Book("ca-nbc-2020"), facts).Find("row-spacing");
        Assert.Equal((CheckStatus.Pass, 16m, 16m), (check.Status, check.Value, check.Limit));
        Assert.Equal("The code prints 400 mm; it is read as the 16 in that floors are framed at.", check.Note!.Text);
    }

    [Theory]
    [InlineData("400", "400", false)]
    [InlineData("406", "406.4", true)]
    public void A_metric_limit_is_the_printed_one_until_the_module_is_needed(string asked, string limit, bool noted)
    {
        var facts = Metric();
        facts = facts with { Board = facts.Board with { Textured = true, SupportSpacing = Mm(decimal.Parse(asked)) } };
        var check = CeilingChecks.Of(Book("ca-nbc-2020"), facts).Find("row-spacing");
        Assert.Equal(CheckStatus.Pass, check.Status);
        Assert.Equal(decimal.Parse(limit, System.Globalization.CultureInfo.InvariantCulture), check.Limit);
        Assert.Equal(noted, check.Note is not null);
    }

    [Fact]
    public void A_joist_found_a_hair_past_16_in_leaves_a_narrow_strap_marginal()
    {
        var facts = Facts();
        facts = facts with { Straps = facts.Straps! with { Face = In(1.5m), SupportSpacing = In(16.125m) } };
        Assert.Equal(CheckStatus.Marginal, CeilingChecks.Of(Book("ca-nbc-2020"), facts).Find("strap-face").Status);
    }

    [Theory]
    [InlineData("1.125", CheckStatus.Pass)] // 3.2 mm short of the back
    [InlineData("1.25", CheckStatus.Pass)] // at the back: 1/2 + 3/4
    [InlineData("1.625", CheckStatus.Fail)] // 9.5 mm past it
    public void A_board_screw_past_the_back_of_the_strap_fails(string inches, CheckStatus expected)
    {
        var facts = Facts();
        facts = facts with { Board = facts.Board with { ScrewLength = In(decimal.Parse(inches, System.Globalization.CultureInfo.InvariantCulture)) } };
        Assert.Equal(expected, CeilingChecks.Of(Book("us-irc-2021"), facts).Find("screw-tip").Status);
    }

    [Theory]
    [InlineData("84", CheckStatus.Marginal)]
    [InlineData("84.2", CheckStatus.Marginal)] // 5.08 mm above
    [InlineData("84.25", CheckStatus.Pass)] // 6.35 mm above
    [InlineData("83.8", CheckStatus.Marginal)]
    [InlineData("83.75", CheckStatus.Fail)]
    public void Headroom_inside_the_survey_tolerance_is_marginal(string inches, CheckStatus expected)
    {
        var facts = Facts();
        facts = facts with { Headroom = facts.Headroom with { FinishedHeight = In(decimal.Parse(inches, System.Globalization.CultureInfo.InvariantCulture)) } };
        var check = CeilingChecks.Of(Book("us-irc-2021"), facts).Find("headroom");
        Assert.Equal((expected, 84m, "R305.1", "2021"), (check.Status, check.Limit, check.Source.Clause, check.Source.Edition));
    }

    [Fact]
    public void Headroom_without_the_floor_to_come_is_not_checked_and_says_what_is_missing()
    {
        var facts = Facts();
        facts = facts with { Headroom = new HeadroomFacts { FinishedHeight = null, HeightsGiven = true, FloorBuildUpGiven = false } };
        var check = CeilingChecks.Of(Book("us-irc-2024"), facts).Find("headroom");
        Assert.Equal(CheckStatus.NotChecked, check.Status);
        Assert.Equal(["#/room/floorBuildUp"], check.Missing);
        Assert.Null(check.Value);
        Assert.Equal(84m, check.Limit);
    }

    [Theory]
    [InlineData("us-irc-2021", "habitable", false, false, "84")]
    [InlineData("us-irc-2021", "bathroom", false, false, "80")]
    [InlineData("us-irc-2021", "habitable", true, false, "84")] // the 2021 code has no easing for existing buildings
    [InlineData("us-irc-2024", "habitable", true, false, "80")]
    [InlineData("us-irc-2024", "bathroom", true, false, "76")]
    public void The_height_wanted_depends_on_the_room_and_the_building(string ruleset, string use, bool existing, bool suite, string inches)
    {
        var facts = Facts();
        facts = facts with { Headroom = facts.Headroom with { Use = use, ExistingBuilding = existing, SecondarySuite = suite } };
        Assert.Equal(decimal.Parse(inches), CeilingChecks.Of(Book(ruleset), facts).Find("headroom").Limit);
    }

    [Theory]
    [InlineData("ca-nbc-2020", false, "2100")]
    [InlineData("ca-nbc-2020", true, "1950")]
    [InlineData("ca-on-2024", true, "1950")]
    public void A_secondary_suite_in_Canada_may_be_lower(string ruleset, bool suite, string millimetres)
    {
        var facts = Metric();
        facts = facts with { Headroom = facts.Headroom with { SecondarySuite = suite } };
        Assert.Equal(decimal.Parse(millimetres), CeilingChecks.Of(Book(ruleset), facts).Find("headroom").Limit);
    }

    [Fact]
    public void A_low_duct_is_held_to_the_height_under_obstructions()
    {
        var facts = Facts();
        facts = facts with { Headroom = facts.Headroom with { Obstructions = [new("B1", In(75)), new("B2", null)] } };
        var checks = CeilingChecks.Of(Book("us-irc-2024"), facts).Where(check => check.Rule == "headroom-obstruction").ToList();
        Assert.Equal([CheckStatus.Fail, CheckStatus.NotChecked], checks.Select(check => check.Status));
        Assert.Equal(76m, checks[0].Limit);
        Assert.Equal(["B1"], checks[0].Where);
    }

    [Fact]
    public void Ontario_wants_2300_over_part_of_a_living_room_and_2100_everywhere()
    {
        var facts = Metric();
        facts = facts with { Headroom = facts.Headroom with { FinishedHeight = Mm(2200) } };
        var checks = CeilingChecks.Of(Book("ca-on-2024"), facts);
        Assert.Equal((CheckStatus.Pass, 2100m), (checks.Find("headroom").Status, checks.Find("headroom").Limit));
        Assert.Equal((CheckStatus.Fail, 2300m), (checks.Find("headroom-over-area").Status, checks.Find("headroom-over-area").Limit));
        Assert.Equal("Ontario Building Code", checks.Find("headroom").Source.Document);
    }

    [Fact]
    public void A_callers_own_value_replaces_the_tables_and_says_whose_it_is()
    {
        var checks = CeilingChecks.Of(Book("us-irc-2021", ("row-spacing", 12m), ("board-screw-spacing", 8m)), Facts());
        Assert.Equal((CheckStatus.Fail, 12m, Basis.SetByCaller), (checks.Find("row-spacing").Status, checks.Find("row-spacing").Limit, checks.Find("row-spacing").Source.Basis));
        Assert.Equal((CheckStatus.Fail, 8m), (checks.Find("board-screw-spacing").Status, checks.Find("board-screw-spacing").Limit));
    }

    [Fact]
    public void A_rated_ceiling_on_plain_straps_fails_for_want_of_wood()
    {
        var facts = Metric() with { FireRating = "45 min" };
        facts = facts with { Board = facts.Board with { Thickness = Mm(15.9m), ScrewLength = Mm(51) } };
        var check = CeilingChecks.Of(Book("ca-nbc-2020"), facts).Find("rated-ceiling-penetration");
        Assert.Equal((CheckStatus.Fail, 19m, 30m), (check.Status, check.Value, check.Limit));
    }

    [Theory]
    [InlineData(JoistKind.IJoist, "9.25", CheckStatus.Fail)]
    [InlineData(JoistKind.Sawn, "9.25", CheckStatus.Pass)]
    [InlineData(JoistKind.Sawn, "7.25", CheckStatus.Fail)]
    [InlineData(JoistKind.Sawn, null, CheckStatus.NotChecked)]
    public void Thin_board_under_a_floor_is_excused_by_deep_sawn_joists_only(JoistKind kind, string? depth, CheckStatus expected)
    {
        var facts = Facts();
        facts = facts with
        {
            Board = facts.Board with { Thickness = In(0.375m) },
            Floor = facts.Floor with { Joists = kind, JoistDepth = depth is null ? null : In(decimal.Parse(depth, System.Globalization.CultureInfo.InvariantCulture)) },
        };
        Assert.Equal(expected, CeilingChecks.Of(Book("us-irc-2021"), facts).Find("floor-membrane").Status);
    }

    [Fact]
    public void A_board_fastened_to_joists_has_no_strap_checks()
    {
        var checks = CeilingChecks.Of(Book("us-irc-2021"), Facts() with { Straps = null });
        Assert.DoesNotContain(checks, check => check.Rule.StartsWith("strap", StringComparison.Ordinal) || check.Rule == "screw-tip");
    }

    [Fact]
    public void A_board_that_is_not_permitted_on_a_ceiling_fails_without_a_limit()
    {
        var facts = Facts();
        facts = facts with { Board = facts.Board with { Thickness = In(0.375m), Textured = true } };
        var check = CeilingChecks.Of(Book("ca-nbc-2020"), facts).Find("row-spacing");
        Assert.Equal((CheckStatus.Fail, null), (check.Status, check.Limit));
    }

    private static CheckFacts Worst()
    {
        var facts = Facts();
        return facts with
        {
            Straps = facts.Straps! with { Thickness = In(0.5m), Face = In(1), RowSpacing = In(30), SupportSpacing = In(40), FastenerLength = In(1), FastenersPerCrossing = 1 },
            Board = facts.Board with { SupportSpacing = In(30), ScrewLength = In(0.75m), ScrewSpacing = In(20), ScrewEdge = In(0.1m) },
            Headroom = facts.Headroom with { FinishedHeight = In(70), Obstructions = [new("B1", In(60))] },
            Floor = facts.Floor with { Joists = JoistKind.OpenWebTruss, ConcealedArea = 400m, GreatestStep = In(1) },
        };
    }
}
