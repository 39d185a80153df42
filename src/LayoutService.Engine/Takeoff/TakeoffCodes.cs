namespace LayoutService.Engine.Takeoff;

/// <summary>
/// The stable codes of takeoff lines. A price list names what it prices by these, so a code never changes meaning.
/// Counts are in UN/ECE Recommendation 20 units, named beside each.
/// </summary>
public static class TakeoffCodes
{
    /// <summary>Bought lengths of strap, one line for each stock id (C62). Counted from the cut plan; no waste.</summary>
    public const string Strap = "strap";

    /// <summary>Spare straps for sticks too bowed or split to hang (C62); their own line, never inside waste. Priced as the strap.</summary>
    public const string StrapCulls = "strap-culls";

    /// <summary>Bought lengths of another size for ledgers, nailers and blocks, by stock id (C62). No waste.</summary>
    public const string Nailer = "nailer";

    /// <summary>Spare lengths of nailer stock (C62), one line for each size. Priced as the nailer stock.</summary>
    public const string NailerCulls = "nailer-culls";

    /// <summary>Bought lengths for the frames of bulkheads, one line for each stock id (C62). No waste.</summary>
    public const string BulkheadFrame = "bulkhead-frame";

    /// <summary>Spare lengths for the frames of bulkheads (C62). Priced as the frame's stock.</summary>
    public const string BulkheadFrameCulls = "bulkhead-frame-culls";

    /// <summary>Screws of the frames of bulkheads: two at each end of every member (C62).</summary>
    public const string BulkheadScrew = "bulkhead-screw";

    /// <summary>Corner bead along the outside corners of bulkheads (FOT or MTR).</summary>
    public const string CornerBead = "corner-bead";

    /// <summary>Control joint trim along the lines where the joists change direction (FOT or MTR).</summary>
    public const string ControlJoint = "control-joint";

    /// <summary>Solid wood or mineral wool to close a bulkhead against wall and joist cavities (FOT or MTR).</summary>
    public const string Fireblocking = "fireblocking";

    /// <summary>Doors to what must be reached later (C62).</summary>
    public const string AccessPanel = "access-panel";

    /// <summary>Gypsum sheets, one line for each stock id (C62). Counted from the cut plan; no waste.</summary>
    public const string Sheet = "sheet";

    /// <summary>Packing between joists and straps, one line for each thickness; the line's id is that thickness, such as <c>1/4in</c> or <c>6mm</c> (C62).</summary>
    public const string Shim = "shim";

    /// <summary>Screws that hold straps to joists, ledgers and blocks (C62).</summary>
    public const string StrapScrew = "strap-screw";

    /// <summary>Shorter screws through a scab and the strap under it (C62).</summary>
    public const string ScabScrew = "scab-screw";

    /// <summary>Wood adhesive between scab and strap (LTR).</summary>
    public const string ScabAdhesive = "scab-adhesive";

    /// <summary>Screws of ledgers and nailers into walls that were said to be concrete (C62).</summary>
    public const string MasonryFastener = "masonry-fastener";

    /// <summary>Fasteners of ledgers and nailers to the wall, and of blocks to the joists (C62).</summary>
    public const string NailerFastener = "nailer-fastener";

    /// <summary>Board screws, one line for each length; the line's id is that length, such as <c>1-1/8in</c> (C62).</summary>
    public const string BoardScrew = "board-screw";

    /// <summary>Ceiling boxes for alarms and surface fixtures (C62).</summary>
    public const string FixtureBox = "fixture-box";

    /// <summary>Ceiling boxes rated for fans (C62).</summary>
    public const string FanBox = "fan-box";

    /// <summary>Access doors, one line for each size (C62).</summary>
    public const string AccessDoor = "access-door";

    /// <summary>Batts, one line for each batt used (C62). Counted from the strips with their offcuts reused; no waste.</summary>
    public const string Batt = "batt";

    /// <summary>Joint tape over every seam of the face layer and the angle at the walls (FOT or MTR).</summary>
    public const string JointTape = "joint-tape";

    /// <summary>Ready-mixed joint compound for the face layer (LBR or KGM).</summary>
    public const string JointCompound = "joint-compound";

    /// <summary>Hours of putting up straps, hanging board and finishing joints, by the caller's own rates (HUR).</summary>
    public const string LabourStraps = "labour-straps";

    public const string LabourBoards = "labour-boards";

    public const string LabourJoints = "labour-joints";

    /// <summary>True for hours of work, which no yard sells.</summary>
    public static bool IsLabour(string code) => code is LabourStraps or LabourBoards or LabourJoints;

    /// <summary>Every code that packs are sold for, in the order of the lines. A price list may name any of them but the culls, which are priced as their stock.</summary>
    public static readonly IReadOnlyList<string> All =
    [
        Strap, StrapCulls, Nailer, NailerCulls, BulkheadFrame, BulkheadFrameCulls, Sheet, Batt, Shim, StrapScrew, ScabScrew, MasonryFastener, NailerFastener, BulkheadScrew,
        BoardScrew, ScabAdhesive, JointTape, JointCompound, CornerBead, ControlJoint, Fireblocking, AccessPanel, FixtureBox, FanBox, AccessDoor,
    ];
}
