namespace LayoutService.Engine.Takeoff;

/// <summary>One thing that the layout needs, before it is put into packs.</summary>
internal sealed record Need
{
    public required string Code { get; init; }

    public required string Description { get; init; }

    public string? Id { get; init; }

    public required Measure Measure { get; init; }

    /// <summary>What the layout needs; whole for counts, else to the hundredth.</summary>
    public required decimal Counted { get; init; }

    /// <summary>Fraction added to the count.</summary>
    public decimal WasteFraction { get; init; }

    public IReadOnlyList<Pack> Packs { get; init; } = [];

    /// <summary>Mass of one unit, kg; null when it is not known.</summary>
    public required decimal? KilogramsEach { get; init; }

    public required string CountedFrom { get; init; }
}

/// <summary>A unit of a takeoff line: the trade's word, its UN/ECE Recommendation 20 code, and whether it comes whole only.</summary>
internal sealed record Measure(string Unit, string UnitCode, bool Whole)
{
    public static readonly Measure Length = new("length", "C62", true);

    public static readonly Measure Sheet = new("sheet", "C62", true);

    public static readonly Measure Piece = new("piece", "C62", true);

    public static readonly Measure Batt = new("batt", "C62", true);

    public static readonly Measure Fastener = new("fastener", "C62", true);

    public static readonly Measure Panel = new("panel", "C62", true);

    public static readonly Measure Foot = new("ft", "FOT", false);

    public static readonly Measure Metre = new("m", "MTR", false);

    public static readonly Measure Pound = new("lb", "LBR", false);

    public static readonly Measure Kilogram = new("kg", "KGM", false);

    public static readonly Measure Litre = new("litre", "LTR", false);
}
