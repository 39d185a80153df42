using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Bulkheads;

/// <summary>All bulkheads as they will be framed, boarded and trimmed. Points are the caller's.</summary>
public sealed record BulkheadPlan(IReadOnlyList<Bulkhead> Bulkheads, IReadOnlyList<AccessPanel> AccessPanels)
{
    public static BulkheadPlan None { get; } = new([], []);

    public bool Empty => Bulkheads.Count == 0 && AccessPanels.Count == 0;
}

/// <summary>One bulkhead. Heights run down from the underside of the joists.</summary>
public sealed record Bulkhead
{
    public required string Id { get; init; }

    /// <summary>Finished outline of each connected piece, less what a deeper bulkhead takes; holes after it.</summary>
    public required IReadOnlyList<IReadOnlyList<IReadOnlyList<Point>>> Parts { get; init; }

    /// <summary>From the finished ceiling to the finished underside.</summary>
    public required Length Drop { get; init; }

    /// <summary>Top and bottom of the frame, and the finished underside.</summary>
    public required Length Top { get; init; }

    public required Length FrameBottom { get; init; }

    public required Length Underside { get; init; }

    public required bool BoardedAbove { get; init; }

    public required string FrameSize { get; init; }

    public required IReadOnlyList<StickStock> FrameStock { get; init; }

    public required Length FrameThickness { get; init; }

    public required Length FrameFace { get; init; }

    /// <summary>Ids of the bulkheads that it meets.</summary>
    public required IReadOnlyList<string> Joins { get; init; }

    public required IReadOnlyList<BulkheadMember> Members { get; init; }

    public required IReadOnlyList<BulkheadBoard> Boards { get; init; }

    public required IReadOnlyList<Trim> Beads { get; init; }

    /// <summary>Inside corners to be taped, less the angle at the ceiling where the ceiling's own perimeter counts it.</summary>
    public required IReadOnlyList<Trim> InsideCorners { get; init; }

    /// <summary>Length of the joints between its boards in one plane.</summary>
    public Length JointLength { get; init; }

    /// <summary>What each rail and ledger that carries it is fastened to.</summary>
    public required IReadOnlyList<Backing> Backing { get; init; }

    /// <summary>Ids of its ledgers on walls of concrete.</summary>
    public IReadOnlySet<string> OnConcrete { get; init; } = new HashSet<string>();

    /// <summary>Lengths along which it opens into the joist bays or meets a wall's cavity, to be fireblocked.</summary>
    public required IReadOnlyList<Trim> Fireblocking { get; init; }

    /// <summary>Finished underside above the finished floor; null when a height or the floor build-up is missing.</summary>
    public required Length? UndersideAboveFloor { get; init; }
}

public enum MemberRole
{
    /// <summary>Top or bottom length of a ladder, along a face.</summary>
    Rail,

    /// <summary>Upright between the rails of a ladder.</summary>
    Rung,

    /// <summary>Along a wall at the bottom, to carry the ties.</summary>
    Ledger,

    /// <summary>Across the bottom, from ladder to ledger or ladder.</summary>
    Tie,

    /// <summary>Between two joists, above a rail that runs with them, or above the board behind a rail without a strap.</summary>
    Blocking,
}

/// <summary>One length of frame: centre line in plan, and how high it stands (down from the joists). A rung stands on one place.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Role">What it does.</param>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="Top">Its upper side.</param>
/// <param name="Bottom">Its lower side.</param>
/// <param name="Length">From end to end along its centre line; for a rung its height.</param>
/// <param name="CutLength">Length to cut: to the long point where an end is cut to an angle.</param>
/// <param name="StockId">The stock it is cut from.</param>
public sealed record BulkheadMember(
    string Id, MemberRole Role, Point From, Point To, Length Top, Length Bottom, Length Length, Length CutLength, string StockId);

public enum BoardFace
{
    Face,
    Underside,
}

/// <summary>One piece of board. A face is drawn as the line it stands on; an underside as its outline.</summary>
public sealed record BulkheadBoard
{
    public required string Id { get; init; }

    public required BoardFace Face { get; init; }

    /// <summary>From and to of a face; the ring of an underside.</summary>
    public required IReadOnlyList<Point> Outline { get; init; }

    public required Length Width { get; init; }

    public required Length Length { get; init; }

    public required double AreaSquareMetres { get; init; }

    public required string StockId { get; init; }

    public required int Screws { get; init; }

    /// <summary>Holes in it.</summary>
    public IReadOnlyList<BoardCutout> Cutouts { get; init; } = [];
}

/// <summary>A length of bead or corner: level from one place to another, or upright at one place.</summary>
public sealed record Trim(Point From, Point To, Length Length, bool Upright);

/// <summary>What a rail or ledger is fastened to: <c>joist</c>, <c>blocking</c>, <c>row</c>, <c>wall</c> or <c>bulkhead</c>.</summary>
public sealed record Backing(string MemberId, string Kind, IReadOnlyList<string> Of);

/// <summary>A door to something that must be reached later: the fixture that it is, the service it is for, and whether something is in its way.</summary>
public sealed record AccessPanel(string Id, string ServiceId, string? BulkheadId, Point At, Length Size, bool InConflict);
