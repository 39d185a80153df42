using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Takeoff;

/// <summary>Mass of what is bought, for carrying and lifting; these are handling masses, not design loads.</summary>
public sealed record MassTable
{
    /// <summary>
    /// S-P-F lumber at 19 % moisture: 4.6 kN/m³ (CWC Wood Design Manual 2021, tables of dead loads), over 9.80665 m/s²:
    /// 469 kg/m³.
    /// </summary>
    public decimal LumberKilogramsPerCubicMetre { get; init; } = 469m;

    /// <summary>
    /// Glass or mineral batts: 0.2 N/m² for each millimetre (CWC Wood Design Manual 2021, tables of dead loads), over
    /// 9.80665 m/s²: 20.4 kg/m³.
    /// </summary>
    public decimal BattKilogramsPerCubicMetre { get; init; } = 20.4m;

    public IReadOnlyList<BoardMass> Boards { get; init; } =
    [
        // Mass by area of board on sale. Secondary sources (trade press, sheet weights): 1/4 in 38.4 lb, 3/8 in 44.8 lb,
        // 1/2 in 54.4 lb (light 40.8 lb) and 5/8 in fire-rated 73.6 lb for a sheet of 4 x 8 ft; the heavier of each spread.
        new("regular", Length.FromMillimetres(6.4m), 5.9m),
        new("regular", Length.FromMillimetres(9.5m), 6.8m),
        new("regular", Length.FromMillimetres(12.7m), 8.3m),
        new("regular", Length.FromMillimetres(15.9m), 11.2m),
        new("type-x", Length.FromMillimetres(15.9m), 11.2m),
        new("lightweight", Length.FromMillimetres(12.7m), 6.2m),
    ];

    /// <summary>For a thickness that the table lacks: 8.3 kg/m² over 12.7 mm (derived from the row above).</summary>
    public decimal BoardKilogramsPerSquareMetrePerMillimetre { get; init; } = 0.654m;

    /// <summary>Board screws: about 300 of 1-1/4 in to the pound, so 1.2 g an inch. From memory.</summary>
    public decimal BoardScrewGramsPerInch { get; init; } = 1.2m;

    /// <summary>#8 wood screws: about 4 g for 2 in, so 2 g an inch. From memory.</summary>
    public decimal WoodScrewGramsPerInch { get; init; } = 2.0m;

    /// <summary>Paper joint tape: about 1.1 kg for a roll of 500 ft. From memory.</summary>
    public decimal TapeGramsPerMetre { get; init; } = 7.2m;

    /// <summary>Wood adhesive: about 1.3 kg a litre. From memory.</summary>
    public decimal AdhesiveKilogramsPerLitre { get; init; } = 1.3m;

    public static MassTable Published { get; } = new();

    /// <summary>Mass by area of a board, kg/m²: its own row, else the regular board of that thickness, else by thickness.</summary>
    public decimal BoardKilogramsPerSquareMetre(string type, Length thickness) =>
        Row(type, thickness) ?? Row("regular", thickness) ?? (BoardKilogramsPerSquareMetrePerMillimetre * thickness.Millimetres);

    /// <summary>Mass of one whole sheet, kg.</summary>
    public decimal SheetKilograms(string type, Length thickness, Length width, Length length) =>
        BoardKilogramsPerSquareMetre(type, thickness) * width.Millimetres * length.Millimetres / 1_000_000m;

    /// <summary>Mass of one length of lumber of the given dressed section, kg.</summary>
    public decimal StickKilograms(Length thickness, Length face, Length length) =>
        LumberKilogramsPerCubicMetre * thickness.Millimetres * face.Millimetres * length.Millimetres / 1_000_000_000m;

    /// <summary>Mass of one batt, kg.</summary>
    public decimal BattKilograms(Length thickness, Length width, Length length) =>
        BattKilogramsPerCubicMetre * thickness.Millimetres * width.Millimetres * length.Millimetres / 1_000_000_000m;

    private decimal? Row(string type, Length thickness)
    {
        foreach (var row in Boards)
        {
            // Half a millimetre: 1/2 in is printed as 12.7 or 12.5 mm, 5/8 in as 15.9 or 15.875 mm.
            if (row.Type == type && Math.Abs(row.Thickness.Units - thickness.Units) <= Length.PerMillimetre / 2)
            {
                return row.KilogramsPerSquareMetre;
            }
        }

        return null;
    }
}

/// <summary>Mass by area of one type and thickness of gypsum board.</summary>
public sealed record BoardMass(string Type, Length Thickness, decimal KilogramsPerSquareMetre);
