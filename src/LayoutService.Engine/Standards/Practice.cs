using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Standards;

/// <summary>
/// House practice and defaults as typed values, each with its source. The figures stand in <c>practice.json</c>; a caller
/// may set any of them by its rule id. Callers who work in inches get the trade value in inches where the table has one.
/// </summary>
public sealed class Practice
{
    private readonly RuleBook book;
    private readonly bool imperial;
    private int taken;

    /// <summary>Reads every row of the table. Throws when a row is not one of these members.</summary>
    public Practice(RuleBook book, bool imperial)
    {
        this.book = book;
        this.imperial = imperial;
        StrapThickness = Length("strap-thickness-default");
        StrapFace = Length("strap-face-default");
        StrapSpacing = Length("strap-spacing-default");
        FastenersPerCrossing = Count("fasteners-per-crossing");
        FastenersPerJoint = Count("fasteners-per-joint");
        StrapNail = Length("strap-nail-default");
        StrapScrew = Length("strap-screw-default");
        StrapScrewGrip = Length("strap-screw-grip");
        NailerFastenerSpacing = Length("nailer-fastener-spacing");
        FastenersPerBlock = Count("fasteners-per-block");
        WallRowReach = Length("wall-row-reach");
        EndClearance = Length("end-clearance");
        OverhangMax = Length("overhang-most");
        SupportsLeast = Count("supports-least");
        SupportSpread = Length("support-spread");
        JointBearing = Length("joint-bearing");
        DoubledJoistGap = Length("doubled-joist-gap");
        SupportWidest = Length("support-widest");
        ScabLength = Length("scab-length");
        ScabScrewsEachSide = Count("scab-screws");
        ScabAdhesiveBead = Length("scab-adhesive-bead");
        RowJointFromButt = Length("row-joint-from-butt");
        MinPiece = Length("min-piece");
        ButtEdgeWood = Length("butt-edge-wood");
        MinButtStaggerRows = Count("butt-stagger-rows");
        CornerButtClear = Length("butt-from-corner");
        LayerSeamOffset = Length("layer-seam-offset");
        RipPreferred = Length("rip-preferred");
        RipLeast = Length("rip-least");
        BoardPieceLeast = Length("board-piece-least");
        BoardBesideOpening = Length("board-beside-opening");
        BoardShort = Length("board-short");
        BoardGapMax = Length("board-gap-most");
        BoardScrewHalfInch = Length("board-screw-half-inch");
        BoardScrewFiveEighths = Length("board-screw-five-eighths");
        BoardScrewThreeEighths = Length("board-screw-three-eighths");
        BoardScrewSpacing = Length("board-screw-spacing-default");
        PackingFrom = Length("packing-from");
        PackingMax = Length("packing-most");
        RowClearGap = Length("row-clear-gap");
        SeamFromGap = Length("seam-from-gap");
        HoleToStrap = Length("hole-to-strap");
        LightFromWall = Length("light-from-wall");
        BulkheadClear = Length("bulkhead-clearance");
        BulkheadRungSpacing = Length("bulkhead-rung-spacing");
        BulkheadBlockSpacing = Length("bulkhead-block-spacing");
        Kerf = Length("kerf");
        EndTrim = Length("end-trim");
        CullsBoards = Share("culls-boards");
        CullsDimension = Share("culls-dimension");
        CullsLeast = Count("culls-least");
        LiftPeople = Count("lift-people");
        LiftMassMost = Kilograms("lift-mass-most");
        SurveyTolerance = Length("survey-tolerance");
        if (taken != book.Tables.Practice.Rows.Count)
        {
            throw new InvalidOperationException("A row of the practice table is not read.");
        }
    }

    /// <summary>Strap when none is asked for, thickness.</summary>
    public Cited<Length> StrapThickness { get; }

    /// <summary>Strap when none is asked for, face.</summary>
    public Cited<Length> StrapFace { get; }

    /// <summary>Widest row spacing when none is asked for, on centre.</summary>
    public Cited<Length> StrapSpacing { get; }

    /// <summary>Fasteners where a strap crosses a joist.</summary>
    public Cited<int> FastenersPerCrossing { get; }

    /// <summary>Fasteners where two strap ends meet on one joist.</summary>
    public Cited<int> FastenersPerJoint { get; }

    /// <summary>Ring nail through a strap.</summary>
    public Cited<Length> StrapNail { get; }

    /// <summary>#8 screw through a strap.</summary>
    public Cited<Length> StrapScrew { get; }

    /// <summary>Strap screw into the joist.</summary>
    public Cited<Length> StrapScrewGrip { get; }

    /// <summary>Fasteners of a ledger or nailer to its wall, on centre.</summary>
    public Cited<Length> NailerFastenerSpacing { get; }

    /// <summary>Fasteners of a block between joists.</summary>
    public Cited<int> FastenersPerBlock { get; }

    /// <summary>Face of the first and last row from the wall's framing.</summary>
    public Cited<Length> WallRowReach { get; }

    /// <summary>Strap cut short at each wall.</summary>
    public Cited<Length> EndClearance { get; }

    /// <summary>Strap past the last joist face before it needs a ledger or blocks.</summary>
    public Cited<Length> OverhangMax { get; }

    /// <summary>Supports of a strap piece (a doubled joist is one).</summary>
    public Cited<int> SupportsLeast { get; }

    /// <summary>Two supports of a strap piece apart.</summary>
    public Cited<Length> SupportSpread { get; }

    /// <summary>Bearing of each strap end at a joint on a joist.</summary>
    public Cited<Length> JointBearing { get; }

    /// <summary>Joists closer than this, face to face, are one support.</summary>
    public Cited<Length> DoubledJoistGap { get; }

    /// <summary>Straps carried from one support to the next, at most.</summary>
    public Cited<Length> SupportWidest { get; }

    /// <summary>Short length laminated over a joint.</summary>
    public Cited<Length> ScabLength { get; }

    /// <summary>Screws through a scab, each side of the joint.</summary>
    public Cited<int> ScabScrewsEachSide { get; }

    /// <summary>Diameter of each of the two beads of adhesive along a scab.</summary>
    public Cited<Length> ScabAdhesiveBead { get; }

    /// <summary>Joint in a row from a sheet's butt joint that crosses it.</summary>
    public Cited<Length> RowJointFromButt { get; }

    /// <summary>Shortest strap piece.</summary>
    public Cited<Length> MinPiece { get; }

    /// <summary>Wood behind each butt end of a sheet.</summary>
    public Cited<Length> ButtEdgeWood { get; }

    /// <summary>Row spaces between butts of neighbouring courses.</summary>
    public Cited<int> MinButtStaggerRows { get; }

    /// <summary>Butt joint from the line of an inside corner.</summary>
    public Cited<Length> CornerButtClear { get; }

    /// <summary>Seams of a layer of board from those of the layer below, side by side.</summary>
    public Cited<Length> LayerSeamOffset { get; }

    /// <summary>Strip of board at a wall, preferred width.</summary>
    public Cited<Length> RipPreferred { get; }

    /// <summary>Strip of board at a wall, least width.</summary>
    public Cited<Length> RipLeast { get; }

    /// <summary>Shortest piece of board in a course.</summary>
    public Cited<Length> BoardPieceLeast { get; }

    /// <summary>Shortest piece of board between an opening and a wall.</summary>
    public Cited<Length> BoardBesideOpening { get; }

    /// <summary>Board cut short at each wall.</summary>
    public Cited<Length> BoardShort { get; }

    /// <summary>Gap between board and wall, or round a cutout.</summary>
    public Cited<Length> BoardGapMax { get; }

    /// <summary>Screw for 1/2 in board on a 19 mm strap.</summary>
    public Cited<Length> BoardScrewHalfInch { get; }

    /// <summary>Screw for 5/8 in board on a 19 mm strap.</summary>
    public Cited<Length> BoardScrewFiveEighths { get; }

    /// <summary>Screw for 3/8 in board on a 19 mm strap.</summary>
    public Cited<Length> BoardScrewThreeEighths { get; }

    /// <summary>Board screws along a strap when none is asked for.</summary>
    public Cited<Length> BoardScrewSpacing { get; }

    /// <summary>Step between neighbouring joists above which straps are packed.</summary>
    public Cited<Length> PackingFrom { get; }

    /// <summary>Packing above which a joist is sistered instead.</summary>
    public Cited<Length> PackingMax { get; }

    /// <summary>Clear gap between two neighbouring straps.</summary>
    public Cited<Length> RowClearGap { get; }

    /// <summary>Seam from a gap between two straps side by side.</summary>
    public Cited<Length> SeamFromGap { get; }

    /// <summary>Edge of a hole from a strap (or the clip's reach, when more).</summary>
    public Cited<Length> HoleToStrap { get; }

    /// <summary>Light from a wall, unless grazing is asked.</summary>
    public Cited<Length> LightFromWall { get; }

    /// <summary>Bulkhead from what it hides (the duct's own code clearance first).</summary>
    public Cited<Length> BulkheadClear { get; }

    /// <summary>Rungs of a bulkhead's underside, on centre.</summary>
    public Cited<Length> BulkheadRungSpacing { get; }

    /// <summary>Blocks where a bulkhead runs along the joists, on centre.</summary>
    public Cited<Length> BulkheadBlockSpacing { get; }

    /// <summary>Width of a saw cut.</summary>
    public Cited<Length> Kerf { get; }

    /// <summary>Trimmed off a bought length to square its end.</summary>
    public Cited<Length> EndTrim { get; }

    /// <summary>Sticks of 1x that are too bent to use (own line, never inside waste), as a fraction.</summary>
    public Cited<decimal> CullsBoards { get; }

    /// <summary>Sticks of 2x that are too bent to use (own line, never inside waste), as a fraction.</summary>
    public Cited<decimal> CullsDimension { get; }

    /// <summary>Sticks allowed for culls, at least.</summary>
    public Cited<int> CullsLeast { get; }

    /// <summary>People for lifting sheets overhead.</summary>
    public Cited<int> LiftPeople { get; }

    /// <summary>Sheet that is lifted without a lift, kg.</summary>
    public Cited<decimal> LiftMassMost { get; }

    /// <summary>A measured height or spacing is right to within.</summary>
    public Cited<Length> SurveyTolerance { get; }

    private Cited<Figure> Take(string rule)
    {
        taken++;
        return book.Limit(rule, imperial);
    }

    private Cited<Length> Length(string rule)
    {
        var (figure, source) = Take(rule);
        return new(figure.Length, source);
    }

    private Cited<int> Count(string rule)
    {
        var (figure, source) = Take(rule);
        return new((int)figure.In("count"), source);
    }

    private Cited<decimal> Share(string rule)
    {
        var (figure, source) = Take(rule);
        return new(figure.Value * figure.Unit.Factor, source);
    }

    private Cited<decimal> Kilograms(string rule)
    {
        var (figure, source) = Take(rule);
        return new(figure.In("kg"), source);
    }
}
