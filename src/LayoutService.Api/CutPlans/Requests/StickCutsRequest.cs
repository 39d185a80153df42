using LayoutService.Api.Wire;

namespace LayoutService.Api.CutPlans.Requests;

/// <summary>Pieces of one section, and the lengths that they can be cut from.</summary>
public sealed record StickCutsRequest
{
    /// <summary>Name of the section, such as 2x4; echoed as `size` of each length bought.</summary>
    public string? Size { get; init; }

    /// <summary>What is wanted.</summary>
    public IReadOnlyList<WantedStickRequest>? Wanted { get; init; }

    /// <summary>What can be bought. Cost is made least when every one has a price, else total length.</summary>
    public IReadOnlyList<StickOfferRequest>? Stock { get; init; }
}

/// <summary>A piece that is wanted once or more often.</summary>
public sealed record WantedStickRequest
{
    /// <summary>The caller's id; default `piece-1` by its number in the list. Wanted once, it is the `pieceId`; wanted more often, its pieces are `id-1`, `id-2` and so on.</summary>
    public string? Id { get; init; }

    /// <summary>Length to cut.</summary>
    public WireLength? Length { get; init; }

    /// <summary>How many. Default 1.</summary>
    public int? Count { get; init; }
}

/// <summary>A length that can be bought.</summary>
public sealed record StickOfferRequest
{
    /// <summary>The caller's id; default `stick-1` by its number in the list.</summary>
    public string? Id { get; init; }

    /// <summary>Length as bought.</summary>
    public WireLength? Length { get; init; }

    /// <summary>The yard's number for it.</summary>
    public string? Sku { get; init; }

    /// <summary>Lengths in a pack, over which its price is shared. Default 1.</summary>
    public int? PackSize { get; init; }

    /// <summary>Price of a pack.</summary>
    public decimal? PackPrice { get; init; }

    /// <summary>How many lengths there are; without it, as many as needed.</summary>
    public int? Quantity { get; init; }
}
