using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Tests.Takeoff;

/// <summary>Batts over an invented ceiling: 15 in by 48 in by 3-1/2 in, in packs of 10.</summary>
internal static class SmallBatts
{
    public static readonly Batt Batt = new("r13", Inches(3.5m), Inches(15), Inches(48), 2.29m, true, 10, 30m);

    public static TakeoffFacts Over(TakeoffFacts facts, params BattFill[] fills) => facts with
    {
        InsulationWish = new InsulationWish { Purpose = InsulationPurpose.Sound, Batts = [Batt], JoistDepths = [Inches(9.25m)] },
        Insulation = new InsulationPlan
        {
            Purpose = InsulationPurpose.Sound,
            Fills = fills.Length == 0 ? [Fill(14.5m, 96)] : fills,
            Uncovered = [],
            AreaRsi = 2m,
            FramingFraction = 0.1m,
            AreaSquareMetres = 6,
            HeaviestKilogramsPerSquareMetre = 1.8m,
        },
    };

    public static BattFill Fill(decimal bay, decimal length, bool split = false) => new()
    {
        Id = $"FILL-{bay}-{length}-{split}",
        Bay = "BAY1",
        Outline = [],
        AreaSquareMetres = 0,
        DepthAvailable = Inches(9.25m),
        Top = -Inches(9.25m),
        Bottom = Length.Zero,
        Thickness = Inches(split ? 1.75m : 3.5m),
        BattId = Batt.Id,
        Split = split,
        Width = Inches(Math.Min(15, bay + 0.5m)),
        Length = Inches(length),
        Rsi = 2.29m,
        Kilograms = 1,
        KilogramsPerSquareMetre = 1.8m,
        Reasons = [],
    };

    private static Length Inches(decimal inches) => Length.FromInches(inches);
}
