using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Checks;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Standards;

namespace LayoutService.Engine.Tests.Checks;

/// <summary>Facts of an invented plain room that meets every rule: 1x3 at 16 in on joists at 16 in, 1/2 in board.</summary>
internal static class PlainRoom
{
    public static RuleBook Book(string ruleset, params (string Rule, decimal Value)[] own) =>
        new(PublishedTables.Current, ruleset, own.ToDictionary(pair => pair.Rule, pair => pair.Value));

    public static Length In(decimal inches) => Length.FromInches(inches);

    public static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    public static CheckFacts Facts(UnitSystem units = UnitSystem.Imperial) => new()
    {
        Units = units,
        Straps = new StrapFacts
        {
            Thickness = In(0.75m),
            Face = In(2.5m),
            RowSpacing = In(16),
            Rows = ["R2", "R3"],
            SupportSpacing = In(16),
            Supports = ["J4", "J5"],
            Fastener = StrapFastener.Nail,
            FastenerLength = In(2.25m),
            FastenersPerCrossing = 2,
        },
        Board = new BoardFacts
        {
            Type = "regular",
            Thickness = In(0.5m),
            Layers = 1,
            SupportSpacing = In(16),
            Supports = ["R2", "R3"],
            ScrewLength = In(1.125m),
            ScrewSpacing = In(12),
            ScrewEdge = In(0.375m),
            HeaviestSheet = 37m,
            HeaviestSheets = ["S1"],
        },
        Headroom = new HeadroomFacts { FinishedHeight = In(92), HeightsGiven = true, FloorBuildUpGiven = true, Use = "habitable" },
        Floor = new FloorFacts { Joists = JoistKind.Sawn, JoistDepth = In(9.25m), ConcealedArea = 30m, GreatestStep = Length.Zero },
        SurveyTolerance = Mm(6),
        ServicesGiven = true,
    };

    public static CheckFacts Metric()
    {
        var facts = Facts(UnitSystem.Metric);
        return facts with
        {
            Straps = facts.Straps! with { Thickness = Mm(19), Face = Mm(64), RowSpacing = Mm(400), SupportSpacing = Mm(400), FastenerLength = Mm(57) },
            Board = facts.Board with { Thickness = Mm(12.7m), SupportSpacing = Mm(400), ScrewSpacing = Mm(300), ScrewEdge = Mm(10) },
        };
    }

    /// <summary>The plain room with insulation, a rating, cables, a bulkhead and a low beam.</summary>
    public static CheckFacts Everything()
    {
        var facts = Facts();
        return facts with
        {
            InsulationMassPerArea = 3m,
            FireRating = "1 h",
            CablesInGap = ["C1"],
            CableToStrap = In(1),
            Unreached = ["B2"],
            Bulkheads = ["K1"],
            Fixtures =
            [
                new FixtureFact
                {
                    Id = "L1", Light = true, Wired = true, Fan = false, Sprinkler = false, InsulationContact = false, Deep = true,
                    Clear = In(0.5m), ToStrap = In(3), ToSeam = In(3), ToJoist = In(1), InConflict = true,
                },
            ],
            Headroom = facts.Headroom with { Obstructions = [new("B1", In(80))], Stairs = [new("S1", 0, In(79))] },
            Floor = facts.Floor with { Joists = JoistKind.OpenWebTruss, ConcealedLength = Mm(9000), WallHeight = In(98) },
        };
    }

    /// <summary>The plain room under sawn joists whose stamp and span are known: 38 × 235 S-P-F No.2 at 400 mm, 4.2 m clear.</summary>
    public static CheckFacts Stamped()
    {
        var facts = Metric();
        return facts with
        {
            Floor = facts.Floor with
            {
                JoistDepth = Mm(235), JoistThickness = Mm(38), JoistSpacing = Mm(400), Species = "S-P-F", Grade = "No.1 and No.2", ClearSpan = Mm(4200), Bridging = false,
            },
        };
    }

    public static Check Find(this IReadOnlyList<Check> checks, string rule) => Assert.Single(checks, check => check.Rule == rule);
}
