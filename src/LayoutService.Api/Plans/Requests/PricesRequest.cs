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

    /// <summary>Taxes on the sum of the amounts; each is worked out once, on the sum, and none on another.</summary>
    public IReadOnlyList<TaxRequest>? Tax { get; init; }

    /// <summary>Spare sticks. They stand on a line of their own, never in the waste.</summary>
    public CullsRequest? Culls { get; init; }

    /// <summary>Hours and price of labour; without it no hours are counted.</summary>
    public LabourRequest? Labour { get; init; }
}

/// <summary>A pack that can be bought.</summary>
public sealed record PricedItemRequest
{
    /// <summary>Code of a takeoff line.</summary>
    public string? Code { get; init; }

    /// <summary>
    /// Of straps, nailers, sheets and batts, the id of the stock that it prices; of screws, their length (`2in`, `1-1/8in`), when it
    /// prices that length alone. Any other id is the caller's name for the pack, which then serves every line of its code.
    /// </summary>
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
    /// <summary>Of 1x wood. Default 0.1; 0 leaves the line out.</summary>
    public decimal? Boards { get; init; }

    /// <summary>Of 2x wood. Default 0.05; 0 leaves the line out.</summary>
    public decimal? Dimension { get; init; }
}

/// <summary>One tax.</summary>
public sealed record TaxRequest
{
    /// <summary>Its name, as the order shows it.</summary>
    public string? Name { get; init; }

    /// <summary>Fraction of the amounts that it is charged on: 0.13 is 13 %.</summary>
    public decimal? Rate { get; init; }

    /// <summary>True when it is charged on labour too. Default true.</summary>
    public bool? OnLabour { get; init; }
}

/// <summary>
/// Price of an hour, and hours by the crew's own records. Work without hours has no line: none are assumed.
/// </summary>
public sealed record LabourRequest
{
    /// <summary>Price of an hour.</summary>
    public decimal? HourPrice { get; init; }

    /// <summary>Hours for one strap piece put up.</summary>
    public decimal? PerStrapPiece { get; init; }

    /// <summary>Hours for one board piece hung.</summary>
    public decimal? PerBoardPiece { get; init; }

    /// <summary>Hours for one foot (imperial) or metre (metric) of joint finished.</summary>
    public decimal? PerJointLength { get; init; }
}

/// <summary>Head of a request for quotation or an order. It decides nothing of the plan.</summary>
public sealed record DocumentRequest
{
    /// <summary>Id of the document.</summary>
    public string? Id { get; init; }

    /// <summary>Date of issue.</summary>
    public DateOnly? IssueDate { get; init; }

    /// <summary>Name of who asks.</summary>
    public string? Buyer { get; init; }

    /// <summary>Name of who is asked.</summary>
    public string? Seller { get; init; }
}
