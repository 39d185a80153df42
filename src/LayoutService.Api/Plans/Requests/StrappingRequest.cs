using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Requests;

/// <summary>Wishes for the straps.</summary>
public sealed record StrappingRequest
{
    /// <summary>
    /// Default `strapped`. With `direct` the board is screwed to the joists: its long edges lie square to them and its butt ends on their
    /// middles. What is said of straps then changes nothing, but for `maxSpacing`, which an edge of the board is carried at, and `kerf`, `endTrim`
    /// and `endClearance`, by which ledgers and blocks are cut.
    /// </summary>
    public StrappingMethodWord? Method { get; init; }

    /// <summary>Size of the strap. Default 1x3.</summary>
    public StrapSizeRequest? Size { get; init; }

    /// <summary>Widest distance between rows, on centre. Default 16 in, 400 mm.</summary>
    public WireLength? MaxSpacing { get; init; }

    /// <summary>
    /// How strap ends may meet. Default on a joist only. A joint on a block between joists is made where the row cannot be pieced by the
    /// others of the set. A side lap puts the strap beyond it a face off the row's line, so it is laid nowhere that another joint may be made;
    /// with `side-lap` alone, every row must be one piece.
    /// </summary>
    public IReadOnlyList<JointWord>? JointsAllowed { get; init; }

    /// <summary>Shortest piece that may be put up. Default 24 in, 600 mm.</summary>
    public WireLength? MinPiece { get; init; }

    /// <summary>Lengths that can be bought. Default 8, 10, 12, 14, 16 ft; 2400, 3000, 3600, 4200, 4800 mm.</summary>
    public IReadOnlyList<StickStockRequest>? Stock { get; init; }

    /// <summary>Wood lost by one saw cut. Default 1/8 in, 3 mm.</summary>
    public WireLength? Kerf { get; init; }

    /// <summary>Wood cut off one end of each length to square it. Default 1/8 in, 3 mm.</summary>
    public WireLength? EndTrim { get; init; }

    /// <summary>How much shorter a piece is cut at each wall. Default 1/4 in, 6 mm.</summary>
    public WireLength? EndClearance { get; init; }

    /// <summary>Longest piece that can be handled; longer stock is cut before it is carried.</summary>
    public WireLength? LongestHandled { get; init; }
}

/// <summary>Size of a strap: by its trade name, or by thickness and face.</summary>
public sealed record StrapSizeRequest
{
    /// <summary>Nominal size; its dressed size is taken.</summary>
    public StrapSizeWord? Name { get; init; }

    /// <summary>Thickness as it is, square to the ceiling.</summary>
    public WireLength? Thickness { get; init; }

    /// <summary>Width of the face that the sheet is screwed to.</summary>
    public WireLength? Face { get; init; }
}

/// <summary>A length of strap that can be bought.</summary>
public sealed record StickStockRequest
{
    /// <summary>The caller's id for it.</summary>
    public string? Id { get; init; }

    /// <summary>Length as bought.</summary>
    public WireLength? Length { get; init; }

    /// <summary>The yard's number for it.</summary>
    public string? Sku { get; init; }

    /// <summary>Lengths in a pack. Default 1.</summary>
    public int? PackSize { get; init; }

    /// <summary>Price of a pack.</summary>
    public decimal? PackPrice { get; init; }

    /// <summary>How many lengths there are; without it, as many as needed.</summary>
    public int? Quantity { get; init; }
}
