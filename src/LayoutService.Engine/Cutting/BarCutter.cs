namespace LayoutService.Engine.Cutting;

/// <summary>
/// Break points and stock as one problem. Quick: one beam along the bars with prices in proportion to length. Thorough:
/// ways woven from the relaxation (BarWeaving), wider beams at its prices, then repair of a few bars at a time (BarRepair).
/// Either way the bound is exact.
/// </summary>
public static class BarCutter
{
    /// <summary>The best plan that the effort allows. Same problem and effort, same plan.</summary>
    /// <param name="problem">What to break and cut.</param>
    /// <param name="effort">How hard to search.</param>
    /// <param name="parts">How many such problems share the steps of a thorough search.</param>
    public static BarPlan Solve(BarProblem problem, BarEffort effort = BarEffort.Quick, int parts = 1)
    {
        ArgumentNullException.ThrowIfNull(problem);
        BarCase bars = BarCase.Read(problem);
        var search = new BarSearch(bars, problem.PoorGrade);
        long bound = 0;
        if (bars.Runs.Length > 0)
        {
            bound = effort == BarEffort.Quick ? search.Quick() : search.Thorough(Math.Max(1, parts));
        }

        return BarReading.Plan(problem, bars, search, bound);
    }
}
