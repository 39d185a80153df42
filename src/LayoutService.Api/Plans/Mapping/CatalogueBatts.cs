using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Api.Plans.Mapping;

/// <summary>
/// Batts of the material catalogue, for a request that names none: glass fibre, of the thicknesses that the purpose asks
/// for, in the widths that the table lists for joists at 16 and 24 in. Length 48 in or 1220 mm, and that they can be split
/// by hand: common practice, no source.
/// </summary>
internal static class CatalogueBatts
{
    private static readonly string[] Sound = ["8 R", "13 R"];
    private static readonly string[] Thermal = ["8 R", "13 R", "21 R", "30 R"];

    public static IReadOnlyList<Batt> Of(InsulationPurpose purpose, Assumptions assumed)
    {
        var wanted = purpose == InsulationPurpose.Sound ? Sound : Thermal;
        var batts = PublishedTables.Current.Batts.Rows
            .Where(row => row.Material == "glass-fibre" && wanted.Contains(row.Resistance.Printed) && row.Thickness.Length < Length.FromInches(10))
            .SelectMany(row => Widths(row).Select(width => Of(row, width, assumed)))
            .ToList();
        var said = string.Join(", ", batts.Select(b => b.Id));
        assumed.Note("#/insulation/batts", said, $"The batts that can be bought were not given; glass fibre as the catalogue lists it is taken: {said}.");
        return batts;
    }

    // the narrowest that fills a bay between joists at 16 in, and at 24 in
    private static IEnumerable<Figure> Widths(BattRow row) =>
        row.Widths.Where(w => w.Length >= Length.FromInches(14.5m)).GroupBy(w => w.Length >= Length.FromInches(22)).Select(g => g.MinBy(w => w.Length.Units)!);

    private static Batt Of(BattRow row, Figure width, Assumptions assumed) => new(
        string.Create(CultureInfo.InvariantCulture, $"batt-r{row.Resistance.Value:0.##}-{width.Length.Inches:0.##}"),
        Whole(row.Thickness.Length, assumed),
        Whole(width.Length, assumed),
        assumed.Default(48, 1220),
        row.Resistance.In("RSI"),
        Splittable: true);

    // millimetres as a yard says them
    private static Length Whole(Length length, Assumptions assumed) =>
        assumed.Imperial ? length : Length.FromMillimetres(decimal.Round(length.Millimetres));
}
