using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>
/// How many candidates of each kind the joint search looks at; counted, so that one request has one answer everywhere.
/// The best <see cref="Carried"/> are laid again with their offcuts carried along, and <see cref="Improved"/> of the best layouts are then bettered course by course, with so many costings each.
/// Over the rows of the best <see cref="Freed"/> the board is then laid anew with butts anywhere, in a beam so wide.
/// </summary>
public sealed record SearchBudget(int Divisions, int Lattices, int Patterns, int Carried, int Improved, int Costings, int Freed, int Beam)
{
    public static SearchBudget For(Effort effort) =>
        effort == Effort.Quick ? new SearchBudget(3, 5, 8, 15, 2, 12, 2, 8) : new SearchBudget(10, 40, 30, 400, 12, 400, 8, 24);
}
