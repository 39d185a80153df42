using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>
/// How many candidates of each kind the joint search looks at; counted, so that one request has one answer everywhere.
/// <see cref="Improved"/> of the best layouts are then bettered course by course, with so many costings each.
/// </summary>
public sealed record SearchBudget(int Divisions, int Lattices, int Patterns, int Improved, int Costings)
{
    public static SearchBudget For(Effort effort) =>
        effort == Effort.Quick ? new SearchBudget(3, 5, 8, 2, 12) : new SearchBudget(10, 40, 30, 12, 400);
}
