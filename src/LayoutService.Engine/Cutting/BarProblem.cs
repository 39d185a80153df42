namespace LayoutService.Engine.Cutting;

/// <summary>
/// A place along a bar where it may break (the first and last are its ends). Key says what it lies on, comparable between
/// bars: neighbours should not break on the same one. Grade: 0 is the best place, larger is worse.
/// </summary>
public readonly record struct BarNode(int Key, int Grade);

/// <summary>A feasible piece of a bar, from one node to a later one, with its cut length in 1/8000 mm.</summary>
public readonly record struct BarPiece(int From, int To, long Length);

/// <summary>
/// A run to be pieced together. Pieces lists every feasible piece; a way is a chain of them from node 0 to the last node.
/// Neighbours are indices of other bars. Bars that share the same Pieces list are recognised at once; equal lists are
/// found too.
/// </summary>
public sealed record Bar(IReadOnlyList<BarNode> Nodes, IReadOnlyList<BarPiece> Pieces, IReadOnlyList<int> Neighbours);

/// <summary>
/// Where to break bars and what stock to cut them from, as one problem. Extras are further pieces of the same section,
/// which come out of offcuts where they can. A break at a grade of PoorGrade or more is a violation, as is a break on a
/// key on which a neighbour breaks. Goals, each before the next: fewest violations, least cost, fewest joints, best
/// grades, fewest different cut lengths. Kerf and trim as in <see cref="StickProblem"/>.
/// </summary>
public sealed record BarProblem(
    IReadOnlyList<Bar> Bars,
    IReadOnlyList<StickWanted> Extras,
    IReadOnlyList<StickKind> Kinds,
    long Kerf,
    long EndTrim,
    int PoorGrade);

/// <summary>How hard to search.</summary>
public enum BarEffort
{
    /// <summary>One narrow pass: about a millisecond for a room.</summary>
    Quick,

    /// <summary>Relaxation, wider passes and repair: up to about a second for a room.</summary>
    Thorough,
}

/// <summary>
/// One cut: Bar is the bar's index and Piece the index into its pieces; for an extra Bar is −1 and Piece the index into
/// extras.
/// </summary>
public readonly record struct BarCut(int Bar, int Piece, long Length);

/// <summary>One bought stick, its cuts in cutting order, longest first, and what is left over (1/8000 mm).</summary>
public sealed record BarStick(int Kind, IReadOnlyList<BarCut> Cuts, long Offcut);

/// <summary>
/// A plan. Ways: for each bar the indices of its pieces in order along it, empty where the bar has no way. Missing: cuts
/// that no stick can give, as the stock ran out or is too short. No plan that cuts the same costs less than LowerBound,
/// which ignores violations; it is 0 when something is missing.
/// </summary>
public sealed record BarPlan(
    IReadOnlyList<IReadOnlyList<int>> Ways,
    IReadOnlyList<BarStick> Sticks,
    IReadOnlyList<BarCut> Missing,
    IReadOnlyList<int> WithoutWay,
    long Cost,
    long LowerBound,
    int Joints,
    int SharedBreaks,
    int PoorBreaks)
{
    /// <summary>True when the bound shows that no plan is cheaper.</summary>
    public bool ProvedOptimal => Missing.Count == 0 && WithoutWay.Count == 0 && Cost == LowerBound;

    /// <summary>(cost − bound) / bound; 0 when both are 0.</summary>
    public double Gap => Cost == LowerBound ? 0 : LowerBound == 0 ? double.PositiveInfinity : (Cost - LowerBound) / (double)LowerBound;
}
