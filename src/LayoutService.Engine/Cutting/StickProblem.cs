namespace LayoutService.Engine.Cutting;

/// <summary>A piece that is wanted so many times. Length in 1/8000 mm, above 0; count 0 or more.</summary>
public sealed record StickWanted(long Length, int Count);

/// <summary>
/// A stock length that can be bought. Length in 1/8000 mm, above 0; cost of one stick in minor units of money (or its
/// length, where there is no price), 0 or more; quantity is how many can be had, null for as many as wanted.
/// </summary>
public sealed record StickKind(long Length, long Cost, int? Quantity = null);

/// <summary>
/// One-dimensional cutting: cut every wanted piece from the stock kinds at least cost. The kerf is lost after each piece
/// that does not end at the stock's end; the end trim is taken off each stick once. So pieces fit a stick when their sum
/// plus one kerf fewer than their number is at most the stick's length less the end trim.
/// </summary>
public sealed record StickProblem(
    IReadOnlyList<StickWanted> Wanted,
    IReadOnlyList<StickKind> Kinds,
    long Kerf,
    long EndTrim);

/// <summary>
/// One bought stick: its kind (index into the problem's kinds), its pieces in cutting order (indices into wanted), and
/// the length left over (0 or more, after the trim and every kerf).
/// </summary>
public sealed record Stick(int Kind, IReadOnlyList<int> Pieces, long Offcut);

/// <summary>
/// A cut plan. Missing lists the wanted indices (one entry a piece) that no stick can give: too long, or the stock ran
/// out. Cost is the sum of the sticks' costs; no plan of the same pieces costs less than LowerBound. When pieces are
/// missing the bound is 0 and nothing is proved.
/// </summary>
public sealed record StickPlan(
    IReadOnlyList<Stick> Sticks,
    IReadOnlyList<int> Missing,
    long Cost,
    long LowerBound)
{
    /// <summary>True when the bound shows that no plan is cheaper.</summary>
    public bool ProvedOptimal => Missing.Count == 0 && Cost == LowerBound;

    /// <summary>(cost − bound) / bound; 0 when both are 0.</summary>
    public double Gap => Cost == LowerBound ? 0 : LowerBound == 0 ? double.PositiveInfinity : (Cost - LowerBound) / (double)LowerBound;
}
