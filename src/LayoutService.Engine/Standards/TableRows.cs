namespace LayoutService.Engine.Standards;

/// <summary>
/// The least strap for a row spacing and a support spacing, both on centre. No row spacing means at any; no support spacing
/// means on continuous backing.
/// </summary>
public sealed record FurringRow(Figure? RowSpacing, Figure? SupportSpacing, Figure Thickness, Figure Face, RowSource? Source = null);

/// <summary>How far apart the supports of a single layer of board may be; no spacing means that this use is not permitted.</summary>
public sealed record BoardSpanRow(
    Figure Thickness, string Board, string Orientation, string Surface, Figure? MaxSpacing, RowSource? Source = null);

/// <summary>Least penetration of board fasteners into wood, by the fire rating wanted (<c>none</c> for no rating).</summary>
public sealed record PenetrationRow(string Rating, Figure Nails, Figure Screws, RowSource? Source = null);

/// <summary>A size of lumber: the name it is sold by and its dressed size, dry.</summary>
public sealed record LumberRow(
    string Name, Figure Thickness, Figure Width, Figure MetricThickness, Figure MetricWidth, RowSource? Source = null);

/// <summary>Weight of wood by species group and moisture content.</summary>
public sealed record LumberWeightRow(string Species, Figure Moisture, Figure Weight, RowSource? Source = null);

/// <summary>A gypsum board: what it weighs in the hand, and what a designer counts it as. The two differ on purpose.</summary>
public sealed record BoardRow(
    string Kind, Figure Thickness, Figure MetricThickness, Figure HandlingMass, Figure? HandlingMassHigh, Figure? DesignLoad, RowSource? Source = null);

/// <summary>A size that sheets are sold in.</summary>
public sealed record SheetSizeRow(Figure Width, Figure Length, Figure MetricWidth, Figure MetricLength, RowSource? Source = null);

/// <summary>The most that a board may carry of loose insulation, by the spacing of its supports.</summary>
public sealed record BoardInsulationRow(string Board, Figure Thickness, Figure SupportSpacing, Figure MostMass, RowSource? Source = null);

/// <summary>
/// A least height above the finished floor. <c>share</c> is the part of the required area that must reach it (100 when
/// every part); <c>obstruction</c> rows are for beams and ducts.
/// </summary>
public sealed record HeightRow(
    string Space, bool Obstruction, bool ExistingBuilding, bool SecondarySuite, Figure Least, Figure Share, RowSource? Source = null)
{
    /// <summary>Rulesets of this row, when it speaks for fewer than its table.</summary>
    public IReadOnlyList<string>? Rulesets { get; init; }
}

/// <summary>A weight that a designer counts for a part of the floor or ceiling.</summary>
public sealed record LoadRow(string Part, Figure Load, RowSource? Source = null);

/// <summary>A length that sticks are sold in.</summary>
public sealed record StickLengthRow(Figure Length, Figure MetricLength, RowSource? Source = null);

/// <summary>A batt as sold: its resistance, thickness and the widths it comes in (none where no text lists them).</summary>
public sealed record BattRow(string Material, Figure Resistance, Figure Thickness, IReadOnlyList<Figure> Widths, RowSource? Source = null);

/// <summary>What a batt is worth in a space shallower than itself.</summary>
public sealed record CompressedBattRow(Figure Nominal, Figure Thickness, Figure Depth, Figure Resistance, RowSource? Source = null);

/// <summary>The clear span that a floor table gives a joist, by what braces it.</summary>
public sealed record JoistSpanRow(string Species, string Grade, Figure Depth, string Bracing, Figure Spacing, Figure Span, RowSource? Source = null);

/// <summary>
/// One limit or default: a rule by itself. <c>imperial</c> is the trade value for callers who work in inches, where it
/// is not the same length as <c>value</c>.
/// </summary>
public sealed record RuleRow(string Rule, string Title, string Comparison, Figure Value, RowSource? Source = null)
{
    public Figure? Imperial { get; init; }

    /// <summary>Rulesets of this row, when it speaks for fewer than its table.</summary>
    public IReadOnlyList<string>? Rulesets { get; init; }
}

/// <summary>A code profile: which document a ruleset id stands for.</summary>
public sealed record RulesetRow(string Id, string Title, string Country, RowSource? Source = null);

/// <summary>Stiffness and bending strength of lumber by species group and grade.</summary>
public sealed record WoodValueRow(string Species, string Grade, Figure Modulus, Figure Bending, RowSource? Source = null);

/// <summary>Specific gravity of a species group.</summary>
public sealed record WoodGravityRow(string Species, Figure Gravity, RowSource? Source = null);

/// <summary>A level of finish: coats over joints and over fasteners, what the surface is like, and what it suits.</summary>
public sealed record FinishLevelRow(int Level, Figure JointCoats, Figure FastenerCoats, string Surface, string Use, RowSource? Source = null);

/// <summary>Light on the plane of work that a space is laid out for.</summary>
public sealed record LightLevelRow(string Space, Figure Level, RowSource? Source = null);
