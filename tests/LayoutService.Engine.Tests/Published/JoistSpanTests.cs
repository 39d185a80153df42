using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;
using LayoutService.Engine.Tests.Checks;

namespace LayoutService.Engine.Tests.Published;

/// <summary>
/// The floor tables (NBC 2020 Tables 9.23.4.2.-A and -B, read in O. Reg. 332/12 and 163/24): every printed row through the look-up,
/// and the rows that deflection or bending governs worked out again from first principles: span is the lesser of L/360 under 1.9 kPa
/// and bending under 1.25 × 0.5 + 1.5 × 1.9 kPa against 0.9 f K_H K_Z S. Stiffness and strength from CSA O86:19 Table 6.4 (read in a
/// transcription); the dead load of 0.5 kPa, K_H 1.4 and K_Z 1.7, 1.4, 1.2, 1.1, 1.0 are from memory and confirmed by the match.
/// </summary>
public class JoistSpanTests
{
    private static readonly RuleBook Book = PlainRoom.Book("ca-nbc-2020");

    public static TheoryData<string, int> Tables => new() { { "nbc-joist-spans-general", 540 }, { "nbc-joist-spans-furred", 360 } };

    [Theory]
    [MemberData(nameof(Tables))]
    public void Every_printed_span_is_found_again_by_the_look_up(string table, int rows)
    {
        var printed = Table(table);
        Assert.Equal(rows, printed.Count);
        Assert.All(printed, row => Assert.Equal(row.Span, Book.JoistSpan(row.Species, row.Grade, row.Depth.Length, row.Spacing, row.Bracing)!.Value));
    }

    [Theory]
    [InlineData("nbc-joist-spans-general", 148, 97, 295)]
    [InlineData("nbc-joist-spans-furred", 159, 83, 118)]
    public void The_487_of_900_rows_that_deflection_or_bending_governs_are_worked_out_to_the_printed_centimetre_and_413_are_shorter(
        string table, int deflection, int bending, int shorter)
    {
        int sagging = 0, breaking = 0, less = 0;
        foreach (var row in Table(table))
        {
            var (sag, bend) = (Deflection(row), Bending(row));
            var worked = Math.Round(Math.Min(sag, bend), 2);
            var printed = (double)row.Span.Value;
            Assert.True(printed <= worked + 1e-9, $"{row} is printed longer than {worked}.");
            if (printed < worked - 1e-9)
            {
                less++; // the vibration rule governs: its published coefficients were not at hand
            }
            else if (sag <= bend)
            {
                sagging++;
            }
            else
            {
                breaking++;
            }
        }

        Assert.Equal((deflection, bending, shorter), (sagging, breaking, less));
    }

    // Worked in our survey of sources to four figures: 3.747, 2.851, 1.995 and 4.180 by L/360; 4.313 and 5.004 by bending.
    [Theory]
    [InlineData("S-P-F", 184, 400, "furred-ceiling-and-bridging", 3.747)]
    [InlineData("S-P-F", 140, 400, "furred-ceiling", 2.851)]
    [InlineData("S-P-F", 89, 300, "bridging", 1.995)]
    [InlineData("S-P-F", 235, 600, "furred-ceiling-and-bridging", 4.180)]
    [InlineData("D.Fir-L", 235, 600, "furred-ceiling-and-bridging", 4.313)]
    [InlineData("D.Fir-L", 286, 600, "furred-ceiling-and-bridging", 5.004)]
    public void Worked_spans_agree_with_the_survey_to_the_millimetre(string species, int depth, int spacing, string bracing, double metres)
    {
        var row = Table("nbc-joist-spans-general").Concat(Table("nbc-joist-spans-furred"))
            .Single(row => row.Species == species && row.Grade == "No.1 and No.2" && row.Depth.Value == depth && row.Spacing.Value == spacing && row.Bracing == bracing);
        Assert.Equal(metres, Math.Min(Deflection(row), Bending(row)), 0.0006);
        Assert.Equal(Math.Round(metres - 0.0006, 2), (double)row.Span.Value, 0.0101);
    }

    [Fact]
    public void Joists_between_two_printed_spacings_read_the_wider_one_and_16_in_is_400_mm()
    {
        Assert.Equal("400 mm", Book.JoistModule(Length.FromInches(16))!.Printed);
        Assert.Equal("600 mm", Book.JoistModule(Length.FromInches(19.2m))!.Printed);
        Assert.Null(Book.JoistModule(Length.FromInches(25)));
    }

    private static IReadOnlyList<JoistSpanRow> Table(string id) => PublishedTables.Current.JoistSpans.Single(table => table.Id == id).Rows;

    private static WoodValueRow Wood(JoistSpanRow row) =>
        PublishedTables.Current.WoodValues.Rows.Single(wood => wood.Species == row.Species && wood.Grade == row.Grade);

    private static double Deflection(JoistSpanRow row)
    {
        var (depth, load) = ((double)row.Depth.Value, 1.9 * (double)row.Spacing.Value / 1000);
        return Math.Cbrt(384 * (double)Wood(row).Modulus.Value * (38 * depth * depth * depth / 12) / (5 * load * 360)) / 1000;
    }

    private static double Bending(JoistSpanRow row)
    {
        var depth = (double)row.Depth.Value;
        var size = depth switch { 89 => 1.7, 140 => 1.4, 184 => 1.2, 235 => 1.1, _ => 1.0 };
        var load = ((1.25 * 0.5) + (1.5 * 1.9)) * (double)row.Spacing.Value / 1000;
        return Math.Sqrt(8 * 0.9 * (double)Wood(row).Bending.Value * 1.4 * size * (38 * depth * depth / 6) / load) / 1000;
    }
}
