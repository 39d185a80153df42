using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>How many candidates of each kind the joint search looks at; counted, so that one request has one answer everywhere.</summary>
public sealed record SearchBudget(int Divisions, int Lattices, int Patterns, int Costings)
{
    public static SearchBudget For(Effort effort) =>
        effort == Effort.Quick ? new SearchBudget(3, 6, 8, 10) : new SearchBudget(8, 40, 24, 400);
}
