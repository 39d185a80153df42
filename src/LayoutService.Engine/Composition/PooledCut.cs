using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Lumber and sheets of the parts of a room, cut together. Bounds and gaps are of the pieces as the parts have them: another way of piecing
/// them is not weighed here, so nothing is said to be proved best.
/// </summary>
internal static class PooledCut
{
    private const string Strapping = "strapping";

    public static (CutPlan? Cut, IReadOnlyList<Finding> Obstacles) Of(IReadOnlyList<(Survey Survey, CeilingPlan Plan)> parts)
    {
        List<JobRoom> rooms = [.. parts.Select((p, i) => new JobRoom($"{i}", p.Survey, p.Plan))];
        var (lumber, noLumber) = new JobLumber(rooms).Of();
        var (boards, noBoards) = new JobBoards(rooms).Of();
        if (lumber is null || boards is null)
        {
            return (null, [.. noLumber, .. noBoards]);
        }

        var straps = parts.SelectMany(p => p.Plan.Strapping.Rows).SelectMany(r => r.Pieces).Select(p => p.Id).ToHashSet();
        var members = parts.SelectMany(p => p.Plan.Bulkheads.Bulkheads).SelectMany(b => b.Members).Select(m => m.Id).ToHashSet();
        return (new CutPlan(
            [.. lumber.SelectMany(p => p.Together).Select((s, i) => s with { Id = $"K{i + 1}", Cuts = [.. s.Cuts.Select(c => c with { PieceId = Own(c.PieceId) })] })],
            [.. boards.SelectMany(p => p.Together).Select((s, i) => s with { Id = $"B{i + 1}", Cuts = [.. s.Cuts.Select(c => c with { PieceId = Own(c.PieceId) })] })],
            parts[0].Plan.CutPlan.Kerf,
            parts[0].Plan.CutPlan.EndTrim,
            [.. lumber.Select(p => p.Result with { Use = Use(p) }).OrderByDescending(r => r.Use == Strapping).Concat(boards.Select(b => b.Result)).GroupBy(r => (r.Use, r.Objective)).Select(Sum)]), []);

        string Use(LumberPool pool)
        {
            var ids = pool.Apart.SelectMany(s => s.Cuts).Select(c => Own(c.PieceId)).ToList();
            return ids.Exists(straps.Contains) ? Strapping : ids.Exists(members.Contains) ? "bulkheads" : "nailers";
        }
    }

    private static CutResult Sum(IEnumerable<CutResult> same)
    {
        var results = same.ToList();
        var (cost, bound) = (results.Sum(r => r.Cost), results.Sum(r => r.LowerBound));
        return results[0] with
        {
            Cost = cost,
            LowerBound = bound,
            Gap = cost == bound ? 0 : bound == 0 ? 1 : decimal.Round((cost - bound) / bound, 6),
            ProvedOptimal = false,
        };
    }

    // ids are one room's already
    private static string Own(string named) => named[(named.IndexOf('/', StringComparison.Ordinal) + 1)..];
}
