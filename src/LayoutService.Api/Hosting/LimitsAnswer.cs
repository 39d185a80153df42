using LayoutService.Api.Wire;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Hosting;

/// <summary>The largest that each part of a request may be. One past any of them is refused.</summary>
public sealed record LimitsAnswer
{
    /// <summary>Bytes of a body.</summary>
    public int BodyBytes { get; init; } = ServiceLimits.MaxBodyBytes;

    /// <summary>Bytes of one line of a call in bulk.</summary>
    public int BulkLineBytes { get; init; } = ServiceLimits.MaxBodyBytes;

    /// <summary>Bytes that a call in bulk reads ahead while its answer is not taken: a caller may send as much before it reads.</summary>
    public int BulkReadAheadBytes { get; init; } = ServiceLimits.BulkReadAheadBytes;

    /// <summary>Levels of nesting of a body.</summary>
    public int Depth { get; init; } = SyntaxCheck.MaxDepth;

    /// <summary>Thousands of elementary operations on one room, one order or one cut plan.</summary>
    public long Work { get; init; } = ServiceLimits.MaxWork / 1000;

    /// <summary>Corners of the room's outline, the first not counted twice.</summary>
    public int Corners { get; init; } = ServiceLimits.MaxCorners;

    /// <summary>Openings of a room.</summary>
    public int Openings { get; init; } = ServiceLimits.MaxOpenings;

    /// <summary>Corners of one opening.</summary>
    public int OpeningCorners { get; init; } = ServiceLimits.MaxOpeningCorners;

    /// <summary>Height readings.</summary>
    public int Heights { get; init; } = ServiceLimits.MaxHeights;

    /// <summary>Ducts, pipes and other services.</summary>
    public int Services { get; init; } = ServiceLimits.MaxServices;

    /// <summary>Bulkheads of a room.</summary>
    public int Bulkheads { get; init; } = ServiceLimits.MaxBulkheads;

    /// <summary>Corners of the centre line of one service.</summary>
    public int PathCorners { get; init; } = ServiceLimits.MaxPathCorners;

    /// <summary>Readings of the undersides of a joist field.</summary>
    public int Undersides { get; init; } = ServiceLimits.MaxUndersides;

    /// <summary>Walls inside the room.</summary>
    public int Partitions { get; init; } = ServiceLimits.MaxPartitions;

    /// <summary>Joist fields of a room.</summary>
    public int JoistFields { get; init; } = ServiceLimits.MaxJoistFields;

    /// <summary>Joists in a field.</summary>
    public int Joists { get; init; } = ServiceLimits.MaxJoists;

    /// <summary>Different lengths, or sheets, that can be bought.</summary>
    public int Stock { get; init; } = ServiceLimits.MaxStock;

    /// <summary>Different pieces that a cut plan cuts from lengths.</summary>
    public int CutLengths { get; init; } = ServiceLimits.MaxCutLengths;

    /// <summary>Pieces that a cut plan cuts from lengths, all counts together.</summary>
    public int CutPieces { get; init; } = ServiceLimits.MaxCutPieces;

    /// <summary>Different pieces that a cut plan cuts from sheets.</summary>
    public int CutPanels { get; init; } = ServiceLimits.MaxCutPanels;

    /// <summary>Pieces that a cut plan cuts from sheets, all counts together.</summary>
    public int CutPanelPieces { get; init; } = ServiceLimits.MaxCutPanelPieces;

    /// <summary>Fixtures, lights of a grid, or mounts.</summary>
    public int Fixtures { get; init; } = ServiceLimits.MaxFixtures;

    /// <summary>Packs in a price list.</summary>
    public int PricedItems { get; init; } = ServiceLimits.MaxPricedItems;

    /// <summary>Taxes in a price list.</summary>
    public int Taxes { get; init; } = ServiceLimits.MaxTaxes;

    /// <summary>Rooms of a job.</summary>
    public int Rooms { get; init; } = ServiceLimits.MaxRooms;

    /// <summary>Variants of a comparison.</summary>
    public int Variants { get; init; } = ServiceLimits.MaxVariants;

    /// <summary>Rule values set by the caller.</summary>
    public int Rules { get; init; } = ServiceLimits.MaxRules;

    /// <summary>Items in any other list.</summary>
    public int Items { get; init; } = ServiceLimits.MaxItems;

    /// <summary>Characters of an id.</summary>
    public int IdLength { get; init; } = ServiceLimits.MaxIdLength;

    /// <summary>Characters of any other text.</summary>
    public int TextLength { get; init; } = ServiceLimits.MaxTextLength;

    /// <summary>Characters of a length in trade notation.</summary>
    public int LengthTextLength { get; init; } = TradeNotation.MaxTextLength;

    /// <summary>Largest number that a length may be, either sign, in the request's units.</summary>
    public int LengthNumber { get; init; } = WireLength.MaxNumber;

    /// <summary>Longest side of the room's bounding box, in metres.</summary>
    public int SideMetres { get; init; } = ServiceLimits.MaxSideMetres;

    /// <summary>Area of the room, in square metres.</summary>
    public int AreaSquareMetres { get; init; } = ServiceLimits.MaxAreaSquareMetres;

    /// <summary>Faults told at once.</summary>
    public int Errors { get; init; } = Fault.MaxTold;
}
