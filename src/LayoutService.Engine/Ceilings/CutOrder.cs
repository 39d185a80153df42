using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Ceilings;

/// <summary>Pieces to be cut and what they can be cut from, with no ceiling round them. At least one of the two orders stands.</summary>
public sealed record CutOrder
{
    public required UnitSystem Units { get; init; }

    public required Effort Effort { get; init; }

    /// <summary>ISO 4217 code of every price; empty when there is none.</summary>
    public string Currency { get; init; } = string.Empty;

    public StickOrder? Sticks { get; init; }

    public SheetOrder? Sheets { get; init; }
}

/// <summary>Pieces of one section, to be cut from lengths.</summary>
public sealed record StickOrder
{
    public required IReadOnlyList<WantedStick> Wanted { get; init; }

    public required IReadOnlyList<StickStock> Stock { get; init; }

    /// <summary>Lost after each piece that does not end at the stock's end.</summary>
    public required Length Kerf { get; init; }

    /// <summary>Taken off each length once.</summary>
    public required Length EndTrim { get; init; }

    /// <summary>Name of the section, for the one who cuts; empty when it has none.</summary>
    public string Size { get; init; } = string.Empty;
}

/// <summary>A piece that is wanted <paramref name="Count"/> times, 1 or more.</summary>
public sealed record WantedStick(string Id, Length Length, int Count);

/// <summary>Rectangles to be cut from sheets by cuts from edge to edge.</summary>
public sealed record SheetOrder
{
    public required IReadOnlyList<WantedPanel> Wanted { get; init; }

    public required IReadOnlyList<SheetStock> Stock { get; init; }

    /// <summary>What one cut takes away; 0 for board that is scored and snapped.</summary>
    public required Length Kerf { get; init; }

    /// <summary>Taken off each short end of a sheet.</summary>
    public required Length EndTrim { get; init; }

    /// <summary>Taken off each long edge of a sheet; above 0 it leaves no factory edge.</summary>
    public required Length EdgeTrim { get; init; }
}

/// <summary>
/// A rectangle that is wanted <paramref name="Count"/> times, 1 or more. Width lies across the sheet, unless it may turn;
/// a piece that keeps factory edges is never turned.
/// </summary>
/// <param name="Id">The caller's id.</param>
/// <param name="Width">Across the sheet.</param>
/// <param name="Length">Along the sheet.</param>
/// <param name="Count">How many.</param>
/// <param name="FactoryEdges">How many of its long edges must be the factory's: 0, 1 or 2.</param>
/// <param name="MayTurn">It may lie with its length across the sheet.</param>
public sealed record WantedPanel(string Id, Length Width, Length Length, int Count, int FactoryEdges = 0, bool MayTurn = false);
