namespace LayoutService.Api.Plans.Requests;

/// <summary>Prices, packs and waste. Prices given with stock win over those given here.</summary>
public sealed record PricesRequest
{
    /// <summary>ISO 4217 code, needed as soon as any price is given.</summary>
    public string? Currency { get; init; }

    /// <summary>Packs and their prices; several of one code are allowed.</summary>
    public IReadOnlyList<PricedItemRequest>? Items { get; init; }

    /// <summary>Waste by class, as a fraction added to what is counted.</summary>
    public WasteRequest? Waste { get; init; }

    /// <summary>Spare sticks. Not planned yet.</summary>
    public CullsRequest? Culls { get; init; }

    /// <summary>Price of labour. Not planned yet.</summary>
    public LabourRequest? Labour { get; init; }
}

/// <summary>A pack that can be bought.</summary>
public sealed record PricedItemRequest
{
    /// <summary>Code of a takeoff line.</summary>
    public string? Code { get; init; }

    /// <summary>The caller's id for this pack.</summary>
    public string? Id { get; init; }

    /// <summary>The yard's number for it.</summary>
    public string? Sku { get; init; }

    /// <summary>How much of the line's unit is in a pack. Default 1.</summary>
    public decimal? PackSize { get; init; }

    /// <summary>Price of a pack.</summary>
    public decimal? PackPrice { get; init; }
}

/// <summary>A fraction for each class of material; the usual one when left out.</summary>
public sealed record WasteRequest
{
    /// <summary>Of screws and nails.</summary>
    public decimal? Fasteners { get; init; }

    /// <summary>Of joint tape.</summary>
    public decimal? Tape { get; init; }

    /// <summary>Of joint compound.</summary>
    public decimal? Compound { get; init; }

    /// <summary>Of wood adhesive.</summary>
    public decimal? Adhesive { get; init; }
}

/// <summary>Spare sticks for those too bowed or split to hang, as a fraction.</summary>
public sealed record CullsRequest
{
    /// <summary>Of 1x wood.</summary>
    public decimal? Boards { get; init; }

    /// <summary>Of 2x wood.</summary>
    public decimal? Dimension { get; init; }
}

/// <summary>Price of labour.</summary>
public sealed record LabourRequest
{
    /// <summary>Price of an hour.</summary>
    public decimal? HourPrice { get; init; }
}

/// <summary>Head of a request for quotation.</summary>
public sealed record DocumentRequest
{
    /// <summary>Id of the document.</summary>
    public string? Id { get; init; }

    /// <summary>Date of issue.</summary>
    public DateOnly? IssueDate { get; init; }

    /// <summary>Who asks.</summary>
    public string? Buyer { get; init; }

    /// <summary>Who is asked.</summary>
    public string? Seller { get; init; }
}
