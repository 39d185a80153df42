namespace LayoutService.Engine.Measures;

/// <summary>
/// A length as an exact whole count of 1/8000 mm. In this unit 1/64 in, 0.01 in, 0.01 ft and 0.1 mm are whole,
/// so adding and comparing measured lengths never rounds. Range: about ±1e15 mm; overflow throws.
/// </summary>
public readonly record struct Length(long Units) : IComparable<Length>
{
    /// <summary>Units in one millimetre.</summary>
    public const long PerMillimetre = 8_000;

    /// <summary>Units in one inch (25.4 mm exactly, by the international yard and pound agreement of 1959).</summary>
    public const long PerInch = 203_200;

    /// <summary>Units in one sixteenth of an inch.</summary>
    public const long PerSixteenth = PerInch / 16;

    public static Length Zero => default;

    /// <summary>Nearest unit; ties to even.</summary>
    public static Length FromMillimetres(decimal millimetres) => new((long)decimal.Round(millimetres * PerMillimetre));

    /// <summary>Nearest unit; ties to even.</summary>
    public static Length FromInches(decimal inches) => new((long)decimal.Round(inches * PerInch));

    /// <summary>Millimetres, exact.</summary>
    public decimal Millimetres => (decimal)Units / PerMillimetre;

    /// <summary>Inches, exact to the 28 digits of a decimal.</summary>
    public decimal Inches => (decimal)Units / PerInch;

    /// <summary>Metres as a double, for quantities that a table rounds anyway.</summary>
    public double Metres => Units / (PerMillimetre * 1000.0);

    public int CompareTo(Length other) => Units.CompareTo(other.Units);

    public static Length Min(Length a, Length b) => a.Units <= b.Units ? a : b;

    public static Length Max(Length a, Length b) => a.Units >= b.Units ? a : b;

    public static Length operator +(Length a, Length b) => new(a.Units + b.Units);

    public static Length operator -(Length a, Length b) => new(a.Units - b.Units);

    public static Length operator -(Length a) => new(-a.Units);

    public static Length operator *(Length a, long times) => new(a.Units * times);

    public static Length operator /(Length a, long parts) => new(a.Units / parts);

    public static bool operator <(Length a, Length b) => a.Units < b.Units;

    public static bool operator >(Length a, Length b) => a.Units > b.Units;

    public static bool operator <=(Length a, Length b) => a.Units <= b.Units;

    public static bool operator >=(Length a, Length b) => a.Units >= b.Units;

    public override string ToString() => $"{Millimetres} mm";
}
