using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Takeoff;

/// <summary>Adhesive for scabs, and tape and compound for the face layer of the board.</summary>
internal static class FinishLines
{
    /// <summary>One square foot, m², exactly (0.3048 m squared).</summary>
    private const decimal SquareFoot = 0.09290304m;

    /// <summary>One pound, kg, exactly.</summary>
    private const decimal Pound = 0.45359237m;

    public static IEnumerable<TakeoffLine> Count(TakeoffFacts facts, PriceBook prices) =>
        new[] { Adhesive(facts, prices), Tape(facts, prices), Compound(facts, prices) }
            .Where(need => need.Counted > 0)
            .Select(need => Ordering.Order(need, prices.Currency))
            .ToList();

    /// <summary>Two beads along each scab; a bead is a cylinder of the allowance's diameter.</summary>
    private static Need Adhesive(TakeoffFacts facts, PriceBook prices)
    {
        var bead = facts.Allowances.AdhesiveBead.Millimetres;
        var length = facts.Strapping.Scabs.Sum(scab => scab.Length.Millimetres);
        var litres = 2m * length * bead * bead * 0.7853981634m / 1_000_000m;
        return new Need
        {
            Code = TakeoffCodes.ScabAdhesive,
            Description = "Wood adhesive for scabs",
            Measure = Measure.Litre,
            Counted = decimal.Round(litres, 2, MidpointRounding.ToPositiveInfinity),
            WasteFraction = prices.Waste("adhesive", facts.Allowances.AdhesiveWaste),
            Packs = prices.Packs(TakeoffCodes.ScabAdhesive, null),
            KilogramsEach = facts.Masses.AdhesiveKilogramsPerLitre,
            CountedFrom = string.Create(
                CultureInfo.InvariantCulture, $"two beads of {bead:0.##} mm along {facts.Strapping.Scabs.Count} scabs"),
        };
    }

    private static Need Tape(TakeoffFacts facts, PriceBook prices)
    {
        var imperial = facts.Units == UnitSystem.Imperial;

        // edges that show are beaded, not taped
        var beaded = facts.Sheets.WellBeads.Aggregate(facts.Sheets.EdgeBeadLength, (sum, bead) => sum + bead.Length);
        var length = FaceJoints(facts) + facts.Sheets.PerimeterLength - beaded
            + facts.Bulkheads.Bulkheads.SelectMany(b => b.InsideCorners).Aggregate(BoxJoints(facts), (sum, t) => sum + t.Length);
        return new Need
        {
            Code = TakeoffCodes.JointTape,
            Description = "Paper joint tape",
            Measure = imperial ? Measure.Foot : Measure.Metre,
            Counted = decimal.Round(imperial ? length.Inches / 12m : length.Millimetres / 1000m, 2),
            WasteFraction = prices.Waste("tape", facts.Allowances.TapeWaste),
            Packs = prices.Packs(TakeoffCodes.JointTape, null),
            KilogramsEach = facts.Masses.TapeGramsPerMetre / 1000m * (imperial ? 0.3048m : 1m),
            CountedFrom = "butt, tapered and cut-edge joints of the face layer, and the angle at walls, posts and chimneys"
                + (facts.Bulkheads.Bulkheads.Count > 0 ? ", joints and inside corners of bulkheads" : string.Empty),
        };
    }

    /// <summary>Joints between the boards of each bulkhead.</summary>
    internal static Length BoxJoints(TakeoffFacts facts) => facts.Bulkheads.Bulkheads.Aggregate(Length.Zero, (sum, box) => sum + box.JointLength);

    /// <summary>Only the face layer is taped. With one layer that is every joint.</summary>
    private static Length FaceJoints(TakeoffFacts facts)
    {
        var plan = facts.Sheets;
        var layer = FaceLayer(facts);
        if (layer == 1)
        {
            return plan.ButtJointLength + plan.TaperedJointLength + plan.CutEdgeJointLength;
        }

        var face = plan.Pieces.Where(piece => piece.Layer == layer).Select(piece => piece.Id).ToHashSet();
        return plan.Joints
            .Where(joint => joint.Kind != BoardJointKind.Control && face.Contains(joint.PieceA))
            .Aggregate(Length.Zero, (sum, joint) => sum + joint.Length);
    }

    private static Need Compound(TakeoffFacts facts, PriceBook prices)
    {
        var imperial = facts.Units == UnitSystem.Imperial;
        var layer = FaceLayer(facts);
        var face = facts.Sheets.Pieces.Where(piece => piece.Layer == layer);
        var area = decimal.Round((decimal)(face.Sum(piece => piece.AreaSquareMetres) + facts.Bulkheads.Bulkheads.SelectMany(b => b.Boards).Sum(b => b.AreaSquareMetres)), 6);
        var pounds = area / SquareFoot * facts.Allowances.CompoundPoundsPerSquareFoot;
        return new Need
        {
            Code = TakeoffCodes.JointCompound,
            Description = "Ready-mixed joint compound",
            Measure = imperial ? Measure.Pound : Measure.Kilogram,
            Counted = decimal.Round(imperial ? pounds : pounds * Pound, 2),
            WasteFraction = prices.Waste("compound", facts.Allowances.CompoundWaste),
            Packs = prices.Packs(TakeoffCodes.JointCompound, null),
            KilogramsEach = imperial ? Pound : 1m,
            CountedFrom = string.Create(
                CultureInfo.InvariantCulture,
                $"the board's area at {facts.Allowances.CompoundPoundsPerSquareFoot:0.###} lb/ft², all coats"),
        };
    }

    private static int FaceLayer(TakeoffFacts facts) =>
        facts.Sheets.Pieces.Count == 0 ? 1 : facts.Sheets.Pieces.Max(piece => piece.Layer);
}
