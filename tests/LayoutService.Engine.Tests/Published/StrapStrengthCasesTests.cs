using LayoutService.Engine.Checks;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Tests.Checks;

namespace LayoutService.Engine.Tests.Published;

/// <summary>Sag, bending and withdrawal against published worked examples and handbook formulas, the source beside each.</summary>
public class StrapStrengthCasesTests
{
    // A 100 in steel beam of 285 in4 and 29,000,000 psi under 100 lb/in: 5wL4/384EI. Worked example of an engineering handbook on the
    // web (engineeringtoolbox.com, beams supported at both ends, W 12 x 35), in its own units.
    [Fact]
    public void One_span_sags_as_the_handbook_example() =>
        Assert.Equal(0.0158, StrapBeam.Sag(100, 100, null, 29e6 * 285), 0.00005);

    // Two equal spans: wL4/185EI at 0.4215 L, wL2/8 over the middle support, 9wL2/128 in the span (piping-designer.com, two span continuous
    // beam; American Wood Council, Design Aid 6, figure 29).
    [Fact]
    public void Two_equal_spans_sag_and_bend_as_the_handbook_formulas()
    {
        Assert.Equal(185, Math.Round(1 / StrapBeam.Sag(1, 1, 1, 1)));
        Assert.Equal(1 / 8.0, StrapBeam.Moment(1, 1, 1), 12);
    }

    // One span: wL2/8 at mid span (the same tables).
    [Fact]
    public void One_span_bends_as_the_handbook_formula() => Assert.Equal(1 / 8.0, StrapBeam.Moment(1, 1, null), 12);

    // Unequal spans by hand: L 2, l 1, w 1. Support moment (8 + 1) / (8 × 3) = 0.375; end reaction 1 - 0.375 / 2 = 0.8125;
    // moment in the span 0.8125² / 2 = 0.330. The one over the support is the greater.
    [Fact]
    public void Unequal_spans_bend_as_the_three_moment_equation_says() => Assert.Equal(0.375, StrapBeam.Moment(1, 2, 1), 12);

    // #10 screw (0.190 in) in wood of specific gravity 0.45: 109 lb an inch (engineeringtoolbox.com, wood screws, withdrawal). Here for
    // good, so times 0.9; the diameter is set by rule because straps take #8.
    [Fact]
    public void A_number_10_screw_holds_109_pounds_an_inch_as_the_handbook_example()
    {
        var book = PlainRoom.Book("us-irc-2024", ("strap-screw-diameter", 0.190m));
        var newtons = FastenerHold.Of(book, nail: false, "strap-screw-diameter", 0.45m, Length.FromInches(1));
        Assert.Equal(109, (double)Pounds(newtons) / 0.9, 1.0);
    }

    // A 0.131 in plain nail, 2.395 in deep in spruce-pine-fir (0.42): W is 3619.31 N/m before any factor (American Wood Council, Structural
    // Wood Design Solved Example Problems, E2.1a, as an open-source verification test restates it).
    [Fact]
    public void An_8d_nail_holds_what_the_solved_example_says()
    {
        var book = PlainRoom.Book("us-irc-2024", ("strap-nail-diameter", 0.131m));
        var newtons = FastenerHold.Of(book, nail: true, "strap-nail-diameter", 0.42m, Length.FromInches(2.395m));
        Assert.Equal(3619.31 * 2.395 * 0.0254, (double)newtons / 0.9, 0.05);
    }

    // By hand: board 2.2 lb/ft2 (10.74 kg/m2, 0.10534 kPa) at 406.4 mm is 42.81 N/m, and a 19.05 × 63.5 mm strap of 4.6 kN/m3 is 5.56: 48.37 N/m.
    // One span of 1219.2 mm (a missed joist): 8.99 N·m over 3840.7 mm3 is 2.34 MPa, 339 psi; 500 × 0.9 = 450 psi.
    // Sag 5wL4/384EI with 1,200,000 psi (8274 MPa) and 36,583 mm4 is 4.60 mm, for good 6.90 mm (0.272 in); 48 in / 240 is 0.2 in.
    [Fact]
    public void A_strap_over_a_missed_joist_holds_and_sags_too_far()
    {
        var facts = PlainRoom.Facts();
        facts = facts with { Straps = facts.Straps! with { SupportSpacing = PlainRoom.In(48) } };
        var checks = CeilingChecks.Of(PlainRoom.Book("us-irc-2024"), facts);
        var (bend, sag) = (checks.Find("strap-bending"), checks.Find("strap-deflection"));
        Assert.Equal((CheckStatus.Pass, 450m), (bend.Status, bend.Limit));
        Assert.InRange(bend.Value!.Value, 339.0m, 339.9m);
        Assert.Equal((CheckStatus.Fail, 0.2m), (sag.Status, sag.Limit));
        Assert.InRange(sag.Value!.Value, 0.2705m, 0.2735m);
        Assert.Equal("strap_sags_in_wide_bay", sag.Remedy!.Code);
    }

    // One span of 60 in: 339 psi × (60/48)² is 530, over 450.
    [Fact]
    public void A_strap_over_two_missed_joists_is_stressed_too_far()
    {
        var facts = PlainRoom.Facts();
        facts = facts with { Straps = facts.Straps! with { SupportSpacing = PlainRoom.In(60) } };
        var bend = CeilingChecks.Of(PlainRoom.Book("us-irc-2024"), facts).Find("strap-bending");
        Assert.Equal((CheckStatus.Fail, 450m, "strap_sags_in_wide_bay"), (bend.Status, bend.Limit, bend.Remedy!.Code));
        Assert.InRange(bend.Value!.Value, 529m, 531m);
    }

    // The same bay with the piece running on over another such bay: 2/5 of the sag.
    [Fact]
    public void A_piece_that_runs_on_sags_by_two_fifths_and_passes()
    {
        var facts = PlainRoom.Facts();
        facts = facts with { Straps = facts.Straps! with { SupportSpacing = PlainRoom.In(48), NextSpan = PlainRoom.In(48) } };
        var sag = CeilingChecks.Of(PlainRoom.Book("us-irc-2024"), facts).Find("strap-deflection");
        Assert.Equal(CheckStatus.Pass, sag.Status);
        Assert.Equal(0.272 * 384 / (5 * 185), (double)sag.Value!.Value, 0.001);
        Assert.Equal("strap_as_two_spans", sag.Note!.Code);
    }

    // Canada, the same strap in limit states: 7.0 MPa × 0.65 for a lasting load × 0.9 / 1.4 is 2.925 MPa.
    [Fact]
    public void Canadian_straps_are_held_to_their_factored_strength() =>
        Assert.Equal(2.925m, CeilingChecks.Of(PlainRoom.Book("ca-nbc-2020"), PlainRoom.Metric()).Find("strap-bending").Limit);

    // By hand: 48.37 N/m × 0.4064 m × 1.25 over two fasteners is 12.29 N; a 0.113 in plain nail 1-1/2 in deep in 0.42 holds
    // 1380 × 0.1143 × 0.113 × 1.5 × 0.9 = 24.1 lb.
    [Fact]
    public void Two_nails_at_a_crossing_share_the_pull()
    {
        var check = CeilingChecks.Of(PlainRoom.Book("us-irc-2024"), PlainRoom.Facts()).Find("strap-withdrawal");
        Assert.InRange(check.Value!.Value, 2.74m, 2.78m);
        Assert.InRange(check.Limit!.Value, 24.0m, 24.1m);
        Assert.Equal(CheckStatus.Pass, check.Status);
    }

    [Fact]
    public void Straps_are_as_strong_as_the_lowest_grade_of_spruce_pine_fir_in_the_table()
    {
        var row = PublishedTables.Current.WoodValues.Rows.Single(row => row is { Species: "S-P-F", Grade: "No.3" });
        var book = PlainRoom.Book("ca-nbc-2020");
        Assert.Equal((row.Modulus, row.Bending), (book.Limit("strap-modulus").Value, book.Limit("strap-bending-value").Value));
        Assert.Equal(0.42m, book.Limit("joist-gravity").Value.Value);
    }

    [Fact]
    public void What_a_fastener_holds_grows_with_depth_and_is_nothing_without() =>
        Assert.Equal(0m, FastenerHold.Of(PlainRoom.Book("us-irc-2024"), false, "strap-screw-diameter", 0.42m, -Length.FromInches(1)));

    private static decimal Pounds(decimal newtons) => Figure.Of(newtons, FigureUnit.Parse("N")).In("lbf");
}
