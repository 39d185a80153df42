using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Tests.Published;

/// <summary>
/// The grids, cell by cell, against a second transcription made without sight of the first (see Tables/README.md): what one
/// has and the other has not is a fault in one of them.
/// </summary>
public class GridTranscriptionTests
{
    private static readonly PublishedTables Tables = PublishedTables.Current;

    [Fact]
    public void Furring_table_has_the_same_nine_cells_in_both_transcriptions() => Same(
        9,
        Csv.Read("nbc-9-29-3-1-furring").Select(row => $"{row["max_furring_spacing_mm"]} {row["max_support_spacing_mm"]} {row["value"]}"),
        Tables.Furring[0].Rows.Select(row => $"{row.RowSpacing!.In("mm"):0} {row.SupportSpacing?.In("mm"):0} {row.Thickness.In("mm"):0}x{row.Face.In("mm"):0}"));

    [Fact]
    public void Canadian_board_span_table_has_the_same_24_cells_in_both_transcriptions() => Same(
        24,
        Csv.Read("nbc-9-29-5-3-board-spans").Where(row => row["item"] == "support spacing").Select(row => $"{row["board"]}, {row["orientation"]}, {row["surface"]}: {row["value"]}"),
        Tables.BoardSpans[0].Rows.Select(row =>
            $"{row.Thickness}{(row.Board == "ceiling-board" ? " ceiling board" : "")}, {row.Orientation}, {Surface(row.Surface)}: {(row.MaxSpacing is null ? "not-permitted" : $"{row.MaxSpacing.Value:0}")}"));

    [Fact]
    public void United_States_board_span_rows_agree_where_both_transcriptions_state_a_framing_spacing() => Same(
        7,
        Csv.Read("irc-r702-3-5-board-spans")
            .Where(row => row["item"] == "framing spacing" && row["location"].StartsWith("ceiling", StringComparison.Ordinal))
            .SelectMany(row => (row["orientation"] == "either" ? new[] { "parallel", "perpendicular" } : [row["orientation"]])
                .Select(way => $"{row["board"]} in {way} {row["value"]} in")),
        // Where a board is given 16 in either way and 24 in square to the framing, the table here keeps the wider for that way.
        Tables.BoardSpans[1].Rows
            .Where(row => row.Board == "regular" && row.Surface == "ceiling-painted" && row.MaxSpacing is not null)
            .SelectMany(row => row.MaxSpacing!.Printed == "24 in"
                ? new[] { $"{row.Thickness} {row.Orientation} 16 in", $"{row.Thickness} {row.Orientation} 24 in" }
                : [$"{row.Thickness} {row.Orientation} {row.MaxSpacing}"]));

    [Fact]
    public void Lumber_sizes_are_the_same_forty_in_both_transcriptions() => Same(
        40,
        Csv.Read("lumber-sizes").Where(row => (row["condition"] is "dressed dry" or "metric") && (row["item"] is "thickness" or "width")).Select(row => $"{row["nominal"]} {row["condition"]} {row["item"]} {row["value"]} {row["unit"]}"),
        Tables.LumberSizes.Rows.SelectMany(row => new[]
        {
            $"{row.Name} dressed dry thickness {row.Thickness}", $"{row.Name} dressed dry width {row.Width}",
            $"{row.Name} metric thickness {row.MetricThickness}", $"{row.Name} metric width {row.MetricWidth}",
        }));

    [Fact]
    public void Stick_lengths_are_the_same_five_in_both_transcriptions() => Same(
        5,
        Csv.Read("lumber-sizes").Where(row => row["condition"] == "stock set").Select(row => $"{row["value"]} {row["unit"]}"),
        Tables.StickLengths.Rows.Select(row => row.Length.Printed));

    [Theory]
    [InlineData("span-table-a", 0, 180)]
    [InlineData("span-table-b", 1, 78)]
    public void Joist_spans_are_the_same_in_both_transcriptions(string file, int table, int cells) => Same(
        cells,
        Csv.Read(file).SelectMany(row => row["species"].Split(" and ").Select(species =>
            $"{species} 38x{row["joist_mm"].Split('x')[1]} {Bracing(row["bracing"])} {row["spacing_mm"]} {row["value"]}")),
        // What the second transcription was made from: one grade, and in the furred table the depths that it lists.
        Tables.JoistSpans[table].Rows
            .Where(row => row.Grade == "No.1 and No.2" && (table == 0 || row.Depth.Value >= 184 || (row.Species == "S-P-F" && row.Depth.Value == 140)))
            .Select(row => $"{row.Species} 38x{row.Depth.Value:0} {row.Bracing} {row.Spacing.Value:0} {row.Span.Value:0.00}"));

    [Fact]
    public void Compressed_batt_chart_has_the_same_cells_in_both_transcriptions() => Same(
        25,
        Csv.Read("compressed-batts").Where(row => row["kind"] == "chart").Select(row => $"{row["batt"]} {row["nominal_thickness_in"]} {row["depth_in"]} {row["value"]}"),
        Tables.CompressedBatts.Rows.Select(row => $"R-{row.Nominal.Value:0} {Bare(row.Thickness)} {Bare(row.Depth)} {row.Resistance.Value:0}"));

    [Fact]
    public void Board_handling_masses_are_the_same_in_both_transcriptions() => Same(
        7,
        Csv.Read("board-masses").Where(row => row["use"] == "handling" && row["unit"] == "psf").Select(row => $"{row["board"]} {row["value"]}"),
        Tables.Boards.Rows.Where(row => row.Source!.Basis == Basis.Secondary)
            .SelectMany(row => new[] { row.HandlingMass, row.HandlingMassHigh }.Where(mass => mass is not null).Select(mass => $"{Board(row)} {mass!.Printed.Split(' ')[0]}")));

    [Fact]
    public void Batts_have_the_same_thicknesses_and_widths_in_both_transcriptions() => Same(
        62,
        // Ends of a range of widths count as widths; the second figures in brackets are not in the engine's table.
        Csv.Read("batts").Where(row => row["batt"].StartsWith("R-", StringComparison.Ordinal)
                && (row["item"] == "width" || (row["item"] == "thickness" && row["case"] is "" or "high density" or "R-30C" or "R-38C")))
            .Select(row => $"{Material(row["material"])} {row["batt"]} {row["item"]} {row["value"]}"),
        Tables.Batts.Rows.SelectMany(row => row.Widths.Select(width => $"{row.Material} R-{row.Resistance.Value:0} width {Bare(width)}").Append($"{row.Material} R-{row.Resistance.Value:0} thickness {Bare(row.Thickness)}")));

    [Fact]
    public void Design_loads_are_the_same_figures_in_both_transcriptions()
    {
        var second = Csv.Read("loads").Where(row => row["document"] != "derived" && row["unit"] is "psf" or "kPa" && row["item"] != "S-P-F lumber" && row["confidence"] != "derived")
            .Select(row => $"{row["value"]} {(row["unit"] == "psf" ? "lb/ft2" : "kPa")}").ToHashSet(StringComparer.Ordinal);
        Assert.All(Tables.DeadLoads.Rows.Where(row => row.Load.Unit.Symbol != "N/m2/mm"), row => Assert.Contains(row.Load.Printed, second));
        Assert.All(second, figure => Assert.Contains(Tables.DeadLoads.Rows, row => row.Load.Printed == figure));
        var perMillimetre = Csv.Read("loads").Where(row => row["unit"] == "N/m2").Select(row => row["value"] + " N/m2/mm");
        Assert.Equal(
            perMillimetre.Order(StringComparer.Ordinal),
            Tables.DeadLoads.Rows.Concat(Tables.InsulationWeights.Rows).Where(row => row.Load.Unit.Symbol == "N/m2/mm").Select(row => row.Load.Printed).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Light_levels_are_the_same_figures_in_both_transcriptions()
    {
        var second = Csv.Read("lighting").Where(row => row["unit"] is "fc" or "lux").Select(row => $"{row["value"]} {row["unit"]}").ToHashSet(StringComparer.Ordinal);
        Assert.All(Tables.LightLevels.Rows, row => Assert.Contains(row.Level.Printed, second));
    }

    private static void Same(int cells, IEnumerable<string> second, IEnumerable<string> first)
    {
        var theirs = second.ToHashSet(StringComparer.Ordinal);
        var ours = first.ToHashSet(StringComparer.Ordinal);
        Assert.Empty(theirs.Except(ours).Order(StringComparer.Ordinal));
        Assert.Empty(ours.Except(theirs).Order(StringComparer.Ordinal));
        Assert.Equal(cells, ours.Count);
    }

    private static string Bare(Figure figure) => figure.Printed.Split(' ')[0];

    private static string Surface(string word) => word switch
    {
        "wall" => "wall",
        "ceiling-painted" => "ceiling painted",
        _ => "ceiling water-based texture",
    };

    private static string Material(string words) => words switch
    {
        "fibreglass" => "glass-fibre",
        "fibreglass, Canada" => "glass-fibre-canada",
        _ => "mineral-wool",
    };

    private static string Bracing(string words) => words switch
    {
        "strapping and bridging" => "strapping-and-bridging",
        "furred ceiling, no bridging" => "furred-ceiling",
        "furred ceiling with bridging" => "furred-ceiling-and-bridging",
        _ => words,
    };

    private static string Board(BoardRow row) => (row.Kind, Bare(row.Thickness)) switch
    {
        ("type-x", _) => "5/8 Type X",
        ("lightweight", _) => "1/2 lightweight",
        ("regular", "1/2") => "1/2 regular",
        var (_, thickness) => thickness,
    };
}
