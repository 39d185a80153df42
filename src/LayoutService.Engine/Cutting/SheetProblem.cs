namespace LayoutService.Engine.Cutting;

/// <summary>How many of a piece's long edges must be edges that the factory made (on gypsum: the tapered ones).</summary>
public enum FactoryEdges
{
    /// <summary>Both long edges may be cut edges.</summary>
    None,

    /// <summary>One long edge, whichever: the piece can be turned half round.</summary>
    One,

    /// <summary>Both long edges, so the piece is as wide as its sheet.</summary>
    Both,
}

/// <summary>
/// One wanted rectangle (the bounding box, when the piece is notched). Width lies across the sheet and length along it,
/// unless <paramref name="MayTurn"/> is set; a piece that needs a factory edge is never turned.
/// </summary>
/// <param name="Width">1/8000 mm, above 0.</param>
/// <param name="Length">1/8000 mm, above 0.</param>
/// <param name="Edges">Factory edges that the piece must keep.</param>
/// <param name="MayTurn">The piece may lie with its length across the sheet.</param>
public readonly record struct SheetWanted(long Width, long Length, FactoryEdges Edges = FactoryEdges.None, bool MayTurn = false);

/// <summary>One kind of sheet that can be bought.</summary>
/// <param name="Width">Between its factory edges, 1/8000 mm.</param>
/// <param name="Length">1/8000 mm.</param>
/// <param name="Cost">Of one sheet, in minor units of money, 0 or more; its area in mm² (<see cref="SquareMillimetres"/>) when there is no price.</param>
/// <param name="Quantity">How many there are; null when as many as needed can be had.</param>
public readonly record struct SheetKind(long Width, long Length, long Cost, int? Quantity = null)
{
    /// <summary>Area in whole square millimetres, at least 1: the cost of a sheet without a price.</summary>
    public static long SquareMillimetres(long width, long length) =>
        Math.Max(1, (long)((decimal)width * length / (Measures.Length.PerMillimetre * Measures.Length.PerMillimetre)));
}

/// <summary>Wanted rectangles and the sheets they can be cut from, by cuts that run from edge to edge of the panel being cut.</summary>
public sealed record SheetProblem
{
    public required IReadOnlyList<SheetWanted> Wanted { get; init; }

    public required IReadOnlyList<SheetKind> Stock { get; init; }

    /// <summary>What one cut takes away, 1/8000 mm; 0 for board that is scored and snapped.</summary>
    public long Kerf { get; init; }

    /// <summary>Taken off each short end of a sheet before anything is cut, 1/8000 mm.</summary>
    public long EndTrim { get; init; }

    /// <summary>Taken off each long edge, 1/8000 mm; above 0 it leaves no factory edge.</summary>
    public long EdgeTrim { get; init; }
}
