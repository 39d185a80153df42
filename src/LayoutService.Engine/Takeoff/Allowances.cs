using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Takeoff;

/// <summary>
/// What is added to, or assumed for, things that no cut list counts. Waste is a fraction that is added to the count:
/// counted × (1 + waste), never counted ÷ (1 − waste). Lumber and sheets have a cut list and carry no waste.
/// </summary>
public sealed record Allowances
{
    /// <summary>Waste classes that a price list may set. Any other class means nothing here and should be refused at the door.</summary>
    public static readonly IReadOnlyList<string> WasteClasses = ["fasteners", "tape", "compound", "adhesive"];

    /// <summary>The house defaults.</summary>
    public static readonly Allowances Usual = new();

    /// <summary>The house defaults with the caller's own figures for culls.</summary>
    public static Allowances For(PriceList? prices) => prices is { OneByCulls: null, TwoByCulls: null } or null
        ? Usual
        : Usual with
        {
            OneByCulls = prices.OneByCulls ?? Usual.OneByCulls,
            TwoByCulls = prices.TwoByCulls ?? Usual.TwoByCulls,
        };

    /// <summary>Dropped, stripped and over-driven screws: 5 %. Common practice, no source.</summary>
    public decimal FastenerWaste { get; init; } = 0.05m;

    /// <summary>Torn ends and laps: 5 %. Common practice, no source.</summary>
    public decimal TapeWaste { get; init; } = 0.05m;

    /// <summary>None: a coverage figure is of compound used, droppings included. Common practice, no source.</summary>
    public decimal CompoundWaste { get; init; }

    /// <summary>What stays in the nozzle: 5 %. Common practice, no source.</summary>
    public decimal AdhesiveWaste { get; init; } = 0.05m;

    /// <summary>Sticks of one-inch (19 mm) lumber that turn out unfit to hang: one in ten. Common practice, no source.</summary>
    public decimal OneByCulls { get; init; } = 0.10m;

    /// <summary>Sticks of two-inch (38 mm) lumber that turn out unfit: one in twenty. Common practice, no source.</summary>
    public decimal TwoByCulls { get; init; } = 0.05m;

    /// <summary>
    /// Ready-mixed compound by ceiling area, lb/ft², all coats: 0.13, the middle of "12 to 14 lb per 100 ft²"
    /// (howtobuildplans.com, a secondary source). Another secondary source (thebalancesmb) says 0.053; published
    /// figures spread from 0.053 to 0.14, and no association's table was found. The higher one is taken because running
    /// short costs a trip.
    /// </summary>
    public decimal CompoundPoundsPerSquareFoot { get; init; } = 0.13m;

    /// <summary>Screws through a scab: two each side of the joint. Common practice, no source.</summary>
    public int ScrewsPerScab { get; init; } = 4;

    /// <summary>Diameter of each of the two adhesive beads along a scab: 6 mm. Common practice, no source.</summary>
    public Length AdhesiveBead { get; init; } = Length.FromMillimetres(6);

    /// <summary>Two wall fasteners at each end of a ledger or nailer and at most this far apart between: 400 mm. Common practice, no source.</summary>
    public Length NailerFastenerSpacing { get; init; } = Length.FromMillimetres(400);

    /// <summary>Fasteners of one block between joists: two at each end. Common practice, no source.</summary>
    public int FastenersPerBlock { get; init; } = 4;

    /// <summary>Wood that a strap screw takes in the joist: 1-1/4 in, so a 2 in screw for a 3/4 in strap. Common practice, no source.</summary>
    public Length StrapScrewGrip { get; init; } = new(Length.PerInch * 5 / 4);
}
