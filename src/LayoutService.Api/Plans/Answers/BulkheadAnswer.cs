namespace LayoutService.Api.Plans.Answers;

/// <summary>The bulkheads, and the doors to what must be reached.</summary>
public sealed record BulkheadsAnswer
{
    /// <summary>The bulkheads, in the order of the request.</summary>
    public required IReadOnlyList<BulkheadAnswer> Bulkheads { get; init; }

    /// <summary>Doors to services that must be reached later, in bulkheads and in the ceiling, one for each service; `id` is the fixture that it is.</summary>
    public required IReadOnlyList<AccessPanelAnswer> AccessPanels { get; init; }
}

/// <summary>One bulkhead. Heights run down from the underside of the joists.</summary>
public sealed record BulkheadAnswer
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>Its finished outline, less what a deeper bulkhead takes, as one ring; a hole or a second piece is joined to it by a line walked both ways.</summary>
    public required IReadOnlyList<PointAnswer> Footprint { get; init; }

    /// <summary>The same piece by piece: the outer ring, then its holes.</summary>
    public required IReadOnlyList<IReadOnlyList<IReadOnlyList<PointAnswer>>> Parts { get; init; }

    /// <summary>From the finished ceiling to its finished underside.</summary>
    public required decimal Drop { get; init; }

    /// <summary>The same as tape text.</summary>
    public required string DropText { get; init; }

    /// <summary>Top of its frame.</summary>
    public required decimal Top { get; init; }

    /// <summary>Bottom of its frame.</summary>
    public required decimal FrameBottom { get; init; }

    /// <summary>Its finished underside, down from the joists.</summary>
    public required decimal Underside { get; init; }

    /// <summary>Its finished underside above the finished floor; absent when a height or the floor build-up is missing.</summary>
    public decimal? UndersideHeight { get; init; }

    /// <summary>True when the ceiling is boarded before it goes up.</summary>
    public required bool BoardedAbove { get; init; }

    /// <summary>Ids of the bulkheads that it meets.</summary>
    public required IReadOnlyList<string> Joins { get; init; }

    /// <summary>The lengths of its frame.</summary>
    public required IReadOnlyList<BulkheadMemberAnswer> Members { get; init; }

    /// <summary>Its pieces of board.</summary>
    public required IReadOnlyList<BulkheadBoardAnswer> Boards { get; init; }

    /// <summary>Corner bead, outside corners.</summary>
    public required IReadOnlyList<TrimAnswer> Beads { get; init; }

    /// <summary>Length of bead.</summary>
    public required decimal BeadLength { get; init; }

    /// <summary>Inside corners to be taped; the angle at a ceiling that ends at the face is in `sheets.perimeterLength`.</summary>
    public required IReadOnlyList<TrimAnswer> InsideCorners { get; init; }

    /// <summary>Length of inside corners.</summary>
    public required decimal InsideCornerLength { get; init; }

    /// <summary>What rails and ledgers that carry it are fastened to.</summary>
    public required IReadOnlyList<BackingAnswer> Backing { get; init; }

    /// <summary>Where it opens into wall and joist cavities.</summary>
    public required IReadOnlyList<TrimAnswer> Fireblocking { get; init; }
}

/// <summary>One length of a bulkhead's frame.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Role">`rail`, `rung`, `ledger`, `tie` or `blocking`.</param>
/// <param name="Size">Its section.</param>
/// <param name="Length">From end to end along its centre line; of a rung its height.</param>
/// <param name="CutLength">Length to cut, to the long point.</param>
/// <param name="CutLengthText">The same as tape text, rounded down.</param>
/// <param name="From">One end of its centre line.</param>
/// <param name="To">The other end; of a rung the same place.</param>
/// <param name="Top">Its upper side, down from the joists.</param>
/// <param name="Bottom">Its lower side, down from the joists.</param>
/// <param name="StockId">The stock it is cut from.</param>
public sealed record BulkheadMemberAnswer(
    string Id, string Role, string Size, decimal Length, decimal CutLength, string CutLengthText, PointAnswer From, PointAnswer To,
    decimal Top, decimal Bottom, string StockId);

/// <summary>One piece of a bulkhead's board.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Face">`face` or `underside`.</param>
/// <param name="Outline">The line that a face stands on; the ring of an underside.</param>
/// <param name="Width">Height of a face; extent of an underside across the ties' spacing.</param>
/// <param name="Length">Its length.</param>
/// <param name="Area">Its area, ft² or m².</param>
/// <param name="StockId">The stock it is cut from.</param>
/// <param name="Screws">Screws in it.</param>
/// <param name="Cutouts">Holes in it, marked on its finished face.</param>
public sealed record BulkheadBoardAnswer(
    string Id, string Face, IReadOnlyList<PointAnswer> Outline, decimal Width, decimal Length, decimal Area, string StockId, int Screws, IReadOnlyList<CutoutAnswer> Cutouts);

/// <summary>A length of bead, corner or fireblocking.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="Length">Its length.</param>
/// <param name="Upright">True when it stands upright at one place.</param>
public sealed record TrimAnswer(PointAnswer From, PointAnswer To, decimal Length, bool Upright);

/// <summary>What one member is fastened to.</summary>
/// <param name="MemberId">The member.</param>
/// <param name="Kind">`joist`, `blocking`, `row`, `wall` or `bulkhead`.</param>
/// <param name="Of">Ids of what it is fastened to.</param>
public sealed record BackingAnswer(string MemberId, string Kind, IReadOnlyList<string> Of);

/// <summary>A door to a service.</summary>
/// <param name="Id">Its id.</param>
/// <param name="ServiceId">The service.</param>
/// <param name="BulkheadId">The bulkhead it is in; absent when it is in the ceiling.</param>
/// <param name="At">Its middle.</param>
/// <param name="Size">Its side; it is square.</param>
public sealed record AccessPanelAnswer(string Id, string ServiceId, string? BulkheadId, PointAnswer At, decimal Size);
