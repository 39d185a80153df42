using LayoutService.Api.Wire;

namespace LayoutService.Api.CutPlans.Requests;

/// <summary>Rectangles, and the sheets that they can be cut from.</summary>
public sealed record SheetCutsRequest
{
    /// <summary>What is wanted.</summary>
    public IReadOnlyList<WantedSheetRequest>? Wanted { get; init; }

    /// <summary>What can be bought. Cost is made least when every one has a price, else total area.</summary>
    public IReadOnlyList<SheetOfferRequest>? Stock { get; init; }

    /// <summary>What one cut takes away. Default 0: board is scored and snapped.</summary>
    public WireLength? Kerf { get; init; }

    /// <summary>Taken off each short end of a sheet before anything is cut. Default 0.</summary>
    public WireLength? EndTrim { get; init; }

    /// <summary>Taken off each long edge of a sheet; above 0 it leaves no factory edge. Default 0.</summary>
    public WireLength? EdgeTrim { get; init; }
}

/// <summary>A rectangle that is wanted once or more often.</summary>
public sealed record WantedSheetRequest
{
    /// <summary>The caller's id; default `panel-1` by its number in the list. Wanted once, it is the `pieceId`; wanted more often, its pieces are `id-1`, `id-2` and so on.</summary>
    public string? Id { get; init; }

    /// <summary>Across the sheet.</summary>
    public WireLength? Width { get; init; }

    /// <summary>Along the sheet.</summary>
    public WireLength? Length { get; init; }

    /// <summary>How many. Default 1.</summary>
    public int? Count { get; init; }

    /// <summary>How many of its long edges must be the factory's. Default `none`.</summary>
    public FactoryEdgesWord? FactoryEdges { get; init; }

    /// <summary>It may lie with its length across the sheet. Default false.</summary>
    public bool? MayTurn { get; init; }
}

/// <summary>A sheet that can be bought. Its length runs along its factory edges.</summary>
public sealed record SheetOfferRequest
{
    /// <summary>The caller's id; default `sheet-1` by its number in the list.</summary>
    public string? Id { get; init; }

    /// <summary>Width, between the factory edges.</summary>
    public WireLength? Width { get; init; }

    /// <summary>Length, along the factory edges.</summary>
    public WireLength? Length { get; init; }

    /// <summary>The yard's number for it.</summary>
    public string? Sku { get; init; }

    /// <summary>Sheets in a pack, over which its price is shared. Default 1.</summary>
    public int? PackSize { get; init; }

    /// <summary>Price of a pack.</summary>
    public decimal? PackPrice { get; init; }

    /// <summary>How many sheets there are; without it, as many as needed.</summary>
    public int? Quantity { get; init; }
}

/// <summary>Factory (tapered) edges that a piece keeps: `both` takes a piece as wide as its sheet.</summary>
public enum FactoryEdgesWord
{
    None,
    One,
    Both,
}
