namespace LayoutService.Api.Hosting;

/// <summary>
/// The largest that each part of a request may be; enforced where it is read or validated, shown in the contract and by
/// <c>GET /v1/limits</c>.
/// </summary>
public static class ServiceLimits
{
    /// <summary>Bytes of a body.</summary>
    public const int MaxBodyBytes = 1_048_576;

    /// <summary>Bytes that a call in bulk reads ahead while its answer is not taken.</summary>
    public const int BulkReadAheadBytes = 16 * 1_048_576;

    /// <summary>
    /// Work on one room, one order or one cut plan, in elementary operations: some 5 to 30 ns each. Counted, so that the same
    /// request is taken or refused on every machine alike; what takes more is answered with the finding `too_much_work`.
    /// </summary>
    public const long MaxWork = 2_000_000_000;

    /// <summary>Corners of the room's outline, the first not counted twice.</summary>
    public const int MaxCorners = 200;

    /// <summary>Openings of a room.</summary>
    public const int MaxOpenings = 50;

    /// <summary>Corners of one opening.</summary>
    public const int MaxOpeningCorners = 50;

    /// <summary>Ducts, pipes and other services.</summary>
    public const int MaxServices = 200;

    /// <summary>Corners of the centre line of one service.</summary>
    public const int MaxPathCorners = 50;

    /// <summary>Bulkheads.</summary>
    public const int MaxBulkheads = 20;

    /// <summary>Height readings.</summary>
    public const int MaxHeights = 200;

    /// <summary>Readings of the undersides of a joist field.</summary>
    public const int MaxUndersides = 1000;

    /// <summary>Walls inside the room.</summary>
    public const int MaxPartitions = 50;

    /// <summary>Joists in a field.</summary>
    public const int MaxJoists = 1000;

    /// <summary>Joist fields of a room.</summary>
    public const int MaxJoistFields = 20;

    /// <summary>Different lengths, or sheets, that can be bought.</summary>
    public const int MaxStock = 20;

    /// <summary>Different pieces that a cut plan cuts from lengths.</summary>
    public const int MaxCutLengths = 1000;

    /// <summary>Pieces that a cut plan cuts from lengths, all counts together.</summary>
    public const int MaxCutPieces = 5000;

    /// <summary>Different pieces that a cut plan cuts from sheets.</summary>
    public const int MaxCutPanels = 500;

    /// <summary>Pieces that a cut plan cuts from sheets, all counts together.</summary>
    public const int MaxCutPanelPieces = 1000;

    /// <summary>Fixtures, lights of a grid, or mounts.</summary>
    public const int MaxFixtures = 200;

    /// <summary>Packs in a price list.</summary>
    public const int MaxPricedItems = 500;

    /// <summary>Taxes in a price list.</summary>
    public const int MaxTaxes = 10;

    /// <summary>Rooms of a job.</summary>
    public const int MaxRooms = 100;

    /// <summary>Variants of a comparison.</summary>
    public const int MaxVariants = 50;

    /// <summary>Rule values set by the caller.</summary>
    public const int MaxRules = 100;

    /// <summary>Items in any other list.</summary>
    public const int MaxItems = 500;

    /// <summary>Characters of an id.</summary>
    public const int MaxIdLength = 64;

    /// <summary>Characters of any other text.</summary>
    public const int MaxTextLength = 200;

    /// <summary>Longest side of the room's bounding box, in metres.</summary>
    public const int MaxSideMetres = 200;

    /// <summary>Area of the room, in square metres.</summary>
    public const int MaxAreaSquareMetres = 10_000;
}
