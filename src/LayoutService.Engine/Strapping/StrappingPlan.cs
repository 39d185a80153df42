using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Strapping;

/// <summary>The straps as they will hang: rows square to the joists, each pieced from stock. Points are the caller's.</summary>
public sealed record StrappingPlan
{
    public required IReadOnlyList<StrapRow> Rows { get; init; }

    /// <summary>True when the board is screwed to the joists: there are no rows.</summary>
    public bool Direct { get; init; }

    /// <summary>Lengths of wood that are not part of a row: ledgers along walls, nailers along oblique walls.</summary>
    public required IReadOnlyList<Nailer> Nailers { get; init; }

    /// <summary>The loose blocks to cut to the clear gap between straps, one for each different gap.</summary>
    public required IReadOnlyList<Spacer> Spacers { get; init; }

    /// <summary>Each place where a strap is fastened to a joist, ledger or nailer; a joint counts for both its ends.</summary>
    public required IReadOnlyList<Crossing> Crossings { get; init; }

    public required IReadOnlyList<Scab> Scabs { get; init; }

    /// <summary>The fasteners and how many go where, in words.</summary>
    public required IReadOnlyList<Sentence> Fastening { get; init; }

    /// <summary>The plane that the straps are packed to; null when no underside was read.</summary>
    public StrapPlane? Plane { get; init; }

    /// <summary>The widest distance between neighbouring rows, on centre, and the rows that show it.</summary>
    public required Length WidestSpacing { get; init; }

    /// <summary>How far the board spans where a row is trimmed round a hole and neither headers nor short straps bring it within the row spacing; null where none does.</summary>
    public (Length Span, IReadOnlyList<string> Rows)? WideTrim { get; init; }

    public required IReadOnlyList<string> WidestSpacingRows { get; init; }
}

/// <summary>One line of strapping. <see cref="At"/> is its centre along the joists from the outline's lowest coordinate.</summary>
public sealed record StrapRow
{
    public required string Id { get; init; }

    public required Length At { get; init; }

    /// <summary>True when the row does not cross the whole room at its place: it serves a butt, a wall's jog or an opening.</summary>
    public required bool Short { get; init; }

    public required IReadOnlyList<TapeMark> Marks { get; init; }

    /// <summary>Distance on centre from the row before it that faces it; null for the first.</summary>
    public required Length? SpacingBefore { get; init; }

    public required IReadOnlyList<Reason> Reasons { get; init; }

    public required IReadOnlyList<RowPiece> Pieces { get; init; }
}

/// <summary>
/// A mark for one end of a row: the near edge of the strap from the outline's lowest coordinate along the joists, and
/// on which side of the mark the strap lies (always the far side, so that one tape from one corner does for all).
/// </summary>
public sealed record TapeMark(string End, Point At, Length NearEdge, string Side);

public enum JointKind
{
    Wall,
    Joist,
    Lap,
    Scab,
    Block,
    Opening,
    Bulkhead,
    Fixture,
}

/// <summary>One length of strap in a row, drawn wall to joint or joint to joint along its centre line.</summary>
public sealed record RowPiece
{
    public required string Id { get; init; }

    public required Point From { get; init; }

    public required Point To { get; init; }

    /// <summary>Drawn length, from <see cref="From"/> to <see cref="To"/>.</summary>
    public required Length Length { get; init; }

    /// <summary>Length to cut: drawn length less the end clearance at each wall, plus what a bevel's long point adds.</summary>
    public required Length CutLength { get; init; }

    /// <summary>Id of the stock it is cut from.</summary>
    public required string StockId { get; init; }

    public required JointKind StartJoint { get; init; }

    public required JointKind EndJoint { get; init; }

    public Bevel? StartBevel { get; init; }

    public Bevel? EndBevel { get; init; }

    /// <summary>Supports at which the piece stays loose until batts lie over it; empty for most.</summary>
    public IReadOnlyList<FastenAfter> FastenAfter { get; init; } = [];
}

/// <summary>A crossing that is fastened only when the batts that slide over the strap lie in their bay.</summary>
public sealed record FastenAfter(string SupportId, IReadOnlyList<string> Fills, Sentence Why);

/// <summary>
/// An end cut along an oblique wall: degrees off square, and how far the long point stands past the centre line.
/// </summary>
public sealed record Bevel(decimal Degrees, Length LongPoint, string LongEdge);

public enum NailerRole
{
    /// <summary>Along a wall that runs with the joists, where the last joist is too far to carry the strap ends.</summary>
    Ledger,

    /// <summary>Along a wall that is neither square nor parallel to the joists, between rows.</summary>
    WallNailer,

    /// <summary>Between two joists, to carry the end of a short strap or what hangs there.</summary>
    Block,

    /// <summary>Along a joist beside a hole that a row is trimmed round, to carry the board there; cut from strap.</summary>
    Header,

    /// <summary>Beside a joist that is too high to pack, its lower edge in the plane.</summary>
    Sister,
}

public sealed record Nailer(string Id, NailerRole Role, Point From, Point To, Length Length, string StockId, Length CutLength, IReadOnlyList<Reason> Reasons)
{
    /// <summary>True when it is fastened into concrete.</summary>
    public bool Masonry { get; init; }
}

public sealed record Spacer(Length Length, IReadOnlyList<string> Between);

public enum CrossingKind
{
    /// <summary>A strap passes under or ends on a joist (two fasteners).</summary>
    Plain,

    /// <summary>Two strap ends meet on one support (four fasteners).</summary>
    Joint,
}

/// <summary>One strap on one support. <see cref="SupportId"/> is a joist's or a nailer's id.</summary>
public sealed record Crossing(string RowId, string SupportId, Point At, CrossingKind Kind, int Fasteners)
{
    /// <summary>Packing between joist and strap; none when zero.</summary>
    public Length Packing { get; init; }

    /// <summary>How far the joist is off the plane there.</summary>
    public Length Gap { get; init; }

    /// <summary>Pieces of packing: one, or one under each of two strap ends that meet.</summary>
    public int Shims => Packing == Length.Zero ? 0 : Kind == CrossingKind.Joint ? 2 : 1;
}

/// <summary>
/// The level plane of the straps' upper side: the crossing that sets it, its level as the readings count, and the greatest step
/// between neighbouring crossings before and after packing. <see cref="Estimated"/> counts crossings under joists that were not read.
/// </summary>
public sealed record StrapPlane(string RowId, string SupportId, Point At, Length Level, Length StepFound, Length StepLeft, IReadOnlyList<string> StepRows, int Estimated);

/// <summary>A short length laminated over a joint between joists, from below.</summary>
public sealed record Scab(string Id, string RowId, Point At, Length Length, string StockId);
