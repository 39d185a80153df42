using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>
/// How many candidates of each kind the joint search looks at; counted, so that one request has one answer everywhere.
/// The best <see cref="Carried"/> are laid again with their offcuts carried along, and <see cref="Improved"/> of the best layouts are then bettered course by course, with so many costings each.
/// Over the rows of the best <see cref="Freed"/> the board is then laid anew with butts anywhere, in a beam so wide, and the best <see cref="Cut"/> of all are cut truly.
/// Where <see cref="Best"/> is less than these, a beam an eighth as wide goes over all of them first, and the full one over the best so many, until one is dear no longer.
/// One that is <see cref="Stepped"/> looks at divisions with a narrow course in the field (see <c>SteppedCourses</c>).
/// A budget past the first is spent only on board in at most <see cref="MostRuns"/> runs: what it costs grows faster than they do.
/// </summary>
public sealed record SearchBudget(int Divisions, int Lattices, int Patterns, int Carried, int Improved, int Costings, int Freed, int Beam, int Cut, int MostRuns, bool Stepped = false, int Best = int.MaxValue)
{
    private static readonly SearchBudget Quick = new(3, 5, 8, 15, 2, 12, 2, 8, 4, 60);
    private static readonly SearchBudget Wide = new(10, 5, 8, 30, 2, 12, 10, 24, 12, 60, Best: 4);
    private static readonly SearchBudget Stepping = new(10, 5, 8, 30, 2, 12, 10, 40, 24, 60, true, 4);
    private static readonly SearchBudget SteppingWidest = new(20, 15, 8, 90, 2, 12, 20, 200, 60, 60, true, 4);
    private static readonly SearchBudget SteppingThorough = new(20, 15, 8, 90, 2, 12, 20, 100, 40, 60, true);
    private static readonly SearchBudget Widest = new(10, 15, 8, 90, 2, 12, 10, 200, 40, 60);
    private static readonly SearchBudget Thorough = new(10, 40, 30, 400, 12, 400, 10, 100, 40, 60);

    /// <summary>What is spent on any room at an effort.</summary>
    public static SearchBudget For(Effort effort) => effort == Effort.Quick ? Quick : Thorough;

    /// <summary>What is spent one after the other at an effort while the sheets stay dear.</summary>
    public static IReadOnlyList<SearchBudget> Rounds(Effort effort) => effort == Effort.Quick ? [Quick, Wide, Stepping, SteppingWidest] : [Thorough, SteppingThorough, Widest];
}
