using LayoutService.Engine.Checks;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Tests.Checks;

namespace LayoutService.Engine.Tests.Published;

/// <summary>Each published row reached through the look-up or check that plans use, with its source beside it.</summary>
public class PublishedCasesTests
{
    private static readonly RuleBook Canada = PlainRoom.Book("ca-nbc-2020");
    private static readonly RuleBook States = PlainRoom.Book("us-irc-2024");

    // National Building Code 2020, Table 9.29.3.1. (read in Ontario Regulations 332/12 and 163/24).
    [Theory]
    [InlineData(300, null, 38)]
    [InlineData(300, 400, 38)]
    [InlineData(300, 600, 64)]
    [InlineData(400, null, 38)]
    [InlineData(400, 400, 38)]
    [InlineData(400, 600, 64)]
    [InlineData(600, null, 38)]
    [InlineData(600, 400, 64)]
    [InlineData(600, 600, 89)]
    [InlineData(401, 400, 38)] // 16 in is the same module
    [InlineData(407, 400, 64)] // past 16 in the next row speaks
    [InlineData(400, 488, 64)] // joists at 19.2 in fall in the 600 mm column
    public void Furring_row_gives_its_least_face(int rows, int? supports, int face)
    {
        var (least, outside) = Canada.Furring(Mm(rows), supports is null ? null : Mm(supports.Value));
        Assert.Equal((face, 19m, false), ((int)least.Value.Face.Value, least.Value.Thickness.Value, outside));
    }

    [Theory]
    [InlineData(400, 610)]
    [InlineData(610, 400)]
    public void Furring_table_ends_at_600(int rows, int supports) => Assert.True(Canada.Furring(Mm(rows), Mm(supports)).Outside);

    // International Residential Code 2024, R702.3.2: nominal 1x2 (3/4 x 1-1/2 in dressed) to 24 in.
    [Theory]
    [InlineData(24, false)]
    [InlineData(25, true)]
    public void One_by_two_furring_serves_framing_to_24_in(int inches, bool outside) =>
        Assert.Equal(outside, States.Furring(Length.FromInches(24), Length.FromInches(inches)).Outside);

    // National Building Code 2020, Table 9.29.5.3. (read in Ontario Regulations 332/12 and 163/24). 0: not permitted.
    [Theory]
    [InlineData("9.5", "regular", "parallel", 0, 0, 0)]
    [InlineData("9.5", "regular", "perpendicular", 400, 400, 0)]
    [InlineData("12.7", "regular", "parallel", 600, 400, 0)]
    [InlineData("12.7", "regular", "perpendicular", 600, 600, 400)]
    [InlineData("15.9", "regular", "parallel", 600, 400, 0)]
    [InlineData("15.9", "regular", "perpendicular", 600, 600, 600)]
    [InlineData("12.7", "ceiling-board", "parallel", 600, 400, 0)]
    [InlineData("12.7", "ceiling-board", "perpendicular", 600, 600, 600)]
    public void Board_span_row_gives_its_support_spacing(string thickness, string board, string way, int wall, int painted, int textured)
    {
        int Span(string surface) =>
            (int)(Canada.BoardSpan(Mm(decimal.Parse(thickness, System.Globalization.CultureInfo.InvariantCulture)), board, way, surface)!.Value?.Value ?? 0);
        Assert.Equal((wall, painted, textured), (Span("wall"), Span("ceiling-painted"), Span("ceiling-textured")));
    }

    // International Residential Code, Table R702.3.5: FROM MEMORY, spacing and orientation of 1/2 in seen in a note on the Ohio text.
    [Theory]
    [InlineData("3/8 in", "perpendicular", 16)]
    [InlineData("1/2 in", "parallel", 16)]
    [InlineData("1/2 in", "perpendicular", 24)]
    [InlineData("5/8 in", "parallel", 16)]
    [InlineData("5/8 in", "perpendicular", 24)]
    public void Board_span_from_memory_is_marked_as_such(string thickness, string way, int inches)
    {
        var span = States.BoardSpan(Figure.Parse(thickness).Length, "regular", way, "ceiling-painted")!;
        Assert.Equal(inches, span.Value!.Value);
        Assert.NotEqual(Basis.Published, span.Source.Basis);
        Assert.NotEqual(Confidence.High, span.Source.Confidence);
    }

    // Canada: National Building Code 2020, 9.29.5.5., .8. and .9. (read in O. Reg. 332/12). United States: IRC 2024 R702.3.5.1 (read);
    // screw spacing and edge distance from trade guides; nail spacings from the Gypsum Association's guide, section III.
    [Theory]
    [InlineData("ca-nbc-2020", "board-screw-spacing", "300 mm", "9.29.5.9.(1)")]
    [InlineData("ca-nbc-2020", "board-nail-spacing", "180 mm", "9.29.5.8.(1)(a)")]
    [InlineData("ca-nbc-2020", "board-nail-pair-spacing", "300 mm", "9.29.5.8.(1)(b)")]
    [InlineData("ca-nbc-2020", "board-screw-edge", "10 mm", "9.29.5.9.(6)")]
    [InlineData("ca-nbc-2020", "board-nail-edge", "10 mm", "9.29.5.8.(6)")]
    [InlineData("ca-nbc-2020", "board-screw-penetration", "15 mm", "Table 9.29.5.5.")]
    [InlineData("ca-nbc-2020", "board-nail-penetration", "20 mm", "Table 9.29.5.5.")]
    [InlineData("ca-nbc-2020", "board-under-insulation", "12.7 mm", "9.29.5.4.(1)")]
    [InlineData("ca-on-2024", "strap-nail-length", "51 mm", "9.29.3.2.(1)")]
    [InlineData("ca-nbc-2020", "bracing-strap-nail-length", "57 mm", "Table 9.23.3.4.")]
    [InlineData("ca-nbc-2020", "bracing-strap-nails", "2 count", "Table 9.23.3.4.")]
    [InlineData("us-irc-2024", "board-screw-spacing", "12 in", "Table R702.3.5")]
    [InlineData("us-irc-2024", "board-nail-spacing", "7 in", "Section III")]
    [InlineData("us-irc-2024", "board-nail-pair-spacing", "12 in", "Section III")]
    [InlineData("us-irc-2024", "board-screw-edge", "3/8 in", null)]
    [InlineData("us-irc-2021", "board-screw-penetration", "5/8 in", "R702.3.5.1")]
    [InlineData("us-irc-2021", "diaphragm-fastener-spacing", "7 in", "R702.3.6")]
    public void Fastener_row_gives_its_limit_and_its_clause(string ruleset, string rule, string value, string? clause)
    {
        var limit = PlainRoom.Book(ruleset).Limit(rule);
        Assert.Equal((value, clause), (limit.Value.Printed, limit.Source.Clause));
    }

    // National Building Code 2020, Table 9.29.5.5., ceilings (read in O. Reg. 332/12).
    [Theory]
    [InlineData("45 min", 30)]
    [InlineData("1 h", 45)]
    [InlineData("1.5 h", 60)]
    public void Rated_ceiling_wants_this_much_wood(string rating, int millimetres)
    {
        var check = CeilingChecks.Of(Canada, PlainRoom.Metric() with { FireRating = rating }).Find("rated-ceiling-penetration");
        Assert.Equal((millimetres, CheckStatus.Fail), ((int)check.Limit!.Value, check.Status));
    }

    // National Building Code 9.23.3.2. (read in O. Reg. 332/12): half the required length enters the second member. 57 - 19 = 38.
    [Fact]
    public void A_57_mm_nail_through_a_19_mm_strap_enters_38_mm_and_needs_half_of_51()
    {
        var check = CeilingChecks.Of(Canada, PlainRoom.Metric()).Find("strap-fastener-penetration");
        Assert.Equal((38m, 25.5m, CheckStatus.Pass), (check.Value, check.Limit, check.Status));
    }

    // Insulation on board (trade texts that quote one handbook): 1/2 in at 24 in 1.3, at 16 in 2.2; 5/8 in at 24 in 2.2 lb/ft2.
    [Theory]
    [InlineData("1/2 in", "regular", 24, "1.3")]
    [InlineData("1/2 in", "regular", 16, "2.2")]
    [InlineData("1/2 in", "regular", 12, "2.2")]
    [InlineData("5/8 in", "regular", 24, "2.2")]
    [InlineData("1/2 in", "ceiling-board", 24, "2.2")]
    public void Insulation_that_a_board_carries(string thickness, string board, int supports, string most) =>
        Assert.Equal(most + " lb/ft2", States.InsulationOnBoard(Figure.Parse(thickness).Length, board, Length.FromInches(supports))!.Value.Printed);

    // 0.2 N/m2 per mm (Wood Design Manual 2021) on 159 mm of batt is 0.66 lb/ft2 (derived in our survey of sources): batts never govern.
    [Fact]
    public void An_R19_batt_weighs_two_thirds_of_a_pound_on_a_square_foot()
    {
        var newtons = PublishedTables.Current.InsulationWeights.Rows[0].Load.In("kN/m3") * 159m;
        var mass = Figure.Of(newtons / 9.80665m, FigureUnit.Parse("kg/m2")).In("lb/ft2");
        Assert.Equal(0.66m, decimal.Round(mass, 2));
    }

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);
}
