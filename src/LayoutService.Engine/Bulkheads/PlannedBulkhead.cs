using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Bulkheads;

/// <summary>
/// A bulkhead in the working frame, before ids and stock: what the root cuts and writes. Heights run down from the joists.
/// </summary>
public sealed record PlannedBulkhead(
    BulkheadSolid Solid,
    IReadOnlyList<int> Joins,
    IReadOnlyList<PlannedMember> Members,
    IReadOnlyList<PlannedBoard> Boards,
    IReadOnlyList<PlannedTrim> Beads,
    IReadOnlyList<PlannedTrim> InsideCorners,
    IReadOnlyList<PlannedTrim> Fireblocking,
    long Joints);

/// <summary>One length of frame. <paramref name="Held"/> says what holds a rail or ledger that carries the bulkhead; null for the others.</summary>
public sealed record PlannedMember(MemberRole Role, Uv From, Uv To, long Top, long Bottom, long Length, long Cut, Held? Held = null);

/// <summary>Fastened to supports (indices), bearing lines (indices), walls (outline edges), other bulkheads, or blocks of its own (members of the same bulkhead, indices).</summary>
public sealed record Held(string Kind, IReadOnlyList<int> Of);

/// <summary>One piece of board: for a face its line, for an underside its ring; width and length are its extents as cut.</summary>
public sealed record PlannedBoard(BoardFace Face, IReadOnlyList<Uv> Outline, long Width, long Length, double Area, int Screws);

public sealed record PlannedTrim(Uv From, Uv To, long Length, bool Upright);

/// <summary>What the boards are cut from and how the frame is set out.</summary>
/// <param name="RungSpacing">Rungs and ties on centre, at most.</param>
/// <param name="BlockSpacing">Blocks along a rail that runs with the joists, on centre, at most.</param>
/// <param name="SheetWidth">Width of the sheets.</param>
/// <param name="SheetLength">Length of the sheets that boards may be as long as.</param>
/// <param name="EndTrim">Taken off each length of frame once.</param>
/// <param name="FrameLengths">For each frame's stock, the length that a member may come out of.</param>
public sealed record BulkheadRules(
    long RungSpacing, long BlockSpacing, long SheetWidth, long SheetLength, long EndTrim, IReadOnlyDictionary<FrameWish, long> FrameLengths);
