namespace LayoutService.Engine.Cutting;

/// <summary>Which wanted piece is cut from which sheet, and how good that is.</summary>
public sealed record SheetSolution
{
    public required IReadOnlyList<SheetUse> Sheets { get; init; }

    /// <summary>Wanted pieces, by index, that no sheet can hold or for which the stock does not suffice; empty as a rule.</summary>
    public required IReadOnlyList<int> Unplaced { get; init; }

    /// <summary>Sum of the sheets' costs.</summary>
    public required long Cost { get; init; }

    /// <summary>No plan that holds the same pieces can cost less.</summary>
    public required long LowerBound { get; init; }

    /// <summary>Cost equals the bound, and every piece that fits some sheet is placed.</summary>
    public bool ProvedOptimal => Unplaced.Count == 0 && Cost == LowerBound;

    /// <summary>(cost − bound) / bound; 0 when both are 0.</summary>
    public double Gap => LowerBound == 0 ? 0 : (double)(Cost - LowerBound) / LowerBound;
}

/// <summary>
/// One bought sheet. x runs along its length and y across its width, from one corner of the sheet as bought.
/// Cuts stand in an order in which a person can make them: each piece comes off a panel that the cuts before it left.
/// </summary>
public sealed record SheetUse(int Kind, IReadOnlyList<SheetPieceCut> Cuts, IReadOnlyList<SheetRemnant> Offcuts);

/// <summary>A wanted piece where it lies. Width is its extent in y and length in x; when turned they are the piece's length and width.</summary>
public readonly record struct SheetPieceCut(int Piece, long X, long Y, long Width, long Length, bool Turned);

/// <summary>A rectangle that is left over.</summary>
public readonly record struct SheetRemnant(long X, long Y, long Width, long Length);
