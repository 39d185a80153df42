using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Requests;

/// <summary>Wishes for the sheets.</summary>
public sealed record SheetsRequest
{
    /// <summary>Kind of board. Default `regular`.</summary>
    public BoardWord? Type { get; init; }

    /// <summary>Thickness of one layer. Default 1/2 in, 12.7 mm.</summary>
    public WireLength? Thickness { get; init; }

    /// <summary>
    /// Layers, 4 at most. Default 1. Each further layer is laid on the same rows or joists with its seams 250 mm (10 in) or more off those of the layer
    /// below where that can be, and has longer screws. Joint lengths are of the layer that shows, the last.
    /// </summary>
    public int? Layers { get; init; }

    /// <summary>Finish of the ceiling. Default `painted`.</summary>
    public BoardFinishWord? Finish { get; init; }

    /// <summary>Fire rating that the ceiling must have. Default none. A plain strapped ceiling earns none: the checks say so.</summary>
    public FireRatingWord? FireRating { get; init; }

    /// <summary>Sheets that can be bought. Default 48 in × 8, 10, 12 ft; 1200 × 2400, 3000, 3600 mm.</summary>
    public IReadOnlyList<SheetStockRequest>? Stock { get; init; }

    /// <summary>How much shorter a piece is cut at each wall. Default 1/8 in, 3 mm.</summary>
    public WireLength? CutAllowance { get; init; }

    /// <summary>Least distance between butt joints of neighbouring courses. Default two row spaces.</summary>
    public WireLength? MinStagger { get; init; }

    /// <summary>What finishing a joint is worth. Default nothing: material only.</summary>
    public JointCostRequest? JointCost { get; init; }
}

/// <summary>A sheet that can be bought.</summary>
public sealed record SheetStockRequest
{
    /// <summary>The caller's id for it.</summary>
    public string? Id { get; init; }

    /// <summary>Width, between the tapered edges.</summary>
    public WireLength? Width { get; init; }

    /// <summary>Length, along the tapered edges.</summary>
    public WireLength? Length { get; init; }

    /// <summary>The yard's number for it.</summary>
    public string? Sku { get; init; }

    /// <summary>Sheets in a pack. Default 1.</summary>
    public int? PackSize { get; init; }

    /// <summary>Price of a pack.</summary>
    public decimal? PackPrice { get; init; }

    /// <summary>How many sheets there are; without it, as many as needed.</summary>
    public int? Quantity { get; init; }
}

/// <summary>Money that finishing a joint is worth, per foot (imperial) or per metre (metric).</summary>
public sealed record JointCostRequest
{
    /// <summary>Of a butt joint.</summary>
    public decimal? Butt { get; init; }

    /// <summary>Of a tapered joint; it tells in the choice of the course lines.</summary>
    public decimal? Tapered { get; init; }
}
