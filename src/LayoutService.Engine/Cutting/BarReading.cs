namespace LayoutService.Engine.Cutting;

/// <summary>Turns a solution back into the caller's bars, pieces and kinds.</summary>
internal static class BarReading
{
    public static BarPlan Plan(BarProblem problem, BarCase bars, BarSearch search, long bound)
    {
        BarSolution solution = search.Best;
        var ways = new List<int>[problem.Bars.Count];
        for (int bar = 0; bar < ways.Length; bar++)
        {
            ways[bar] = [];
        }

        var cuts = new List<BarCut>[solution.Content.Count];
        for (int r = 0; r < bars.Runs.Length; r++)
        {
            BarRun run = bars.Runs[r];
            for (int k = 0; k < solution.Arcs[r].Count; k++)
            {
                int arc = solution.Arcs[r][k];
                int piece = bars.PieceOf[run.Graph][arc];
                long length = bars.Lengths[bars.Graphs[run.Graph].Length[arc]] - problem.Kerf;
                if (run.Bar >= 0)
                {
                    ways[run.Bar].Add(piece);
                }

                (cuts[solution.Sticks[r][k]] ??= []).Add(new BarCut(run.Bar, piece, length));
            }
        }

        var missing = new List<BarCut>();
        foreach (int extra in bars.TooLong)
        {
            missing.Add(new BarCut(-1, extra, problem.Extras[extra].Length));
        }

        List<BarStick> sticks = Sticks(problem, bars, solution, cuts, missing, out long cost);
        bool whole = missing.Count == 0 && bars.WithoutWay.Count == 0;
        int shared = search.Judge.Shared(solution);
        return new BarPlan(
            ways,
            sticks,
            missing,
            bars.WithoutWay,
            cost,
            whole ? Math.Min(bound, cost) : 0,
            (int)search.Score.Joints,
            shared,
            bars.Runs.Length == 0 ? 0 : (int)(search.Score.Violations - shared));
    }

    private static List<BarStick> Sticks(BarProblem problem, BarCase bars, BarSolution solution, List<BarCut>[] cuts, List<BarCut> missing, out long cost)
    {
        var sticks = new List<BarStick>();
        var kinds = new int[cuts.Length];
        new BarStock(bars.Kinds).Assign(solution.Content, kinds);
        cost = 0;
        for (int s = 0; s < cuts.Length; s++)
        {
            if (solution.Content[s] <= 0)
            {
                continue;
            }

            List<BarCut> cut = cuts[s];
            cut.Sort((a, b) => a.Length != b.Length ? b.Length.CompareTo(a.Length) : (a.Bar, a.Piece).CompareTo((b.Bar, b.Piece)));
            int origin = bars.Kinds.Origin[kinds[s]];
            if (origin < 0)
            {
                missing.AddRange(cut);
                continue;
            }

            StickKind kind = problem.Kinds[origin];
            cost += kind.Cost;
            sticks.Add(new BarStick(origin, cut, Math.Max(0, kind.Length - problem.EndTrim - solution.Content[s])));
        }

        sticks.Sort((a, b) => Compare(problem, a, b));
        return sticks;
    }

    private static int Compare(BarProblem problem, BarStick a, BarStick b)
    {
        int order = problem.Kinds[b.Kind].Length.CompareTo(problem.Kinds[a.Kind].Length);
        order = order != 0 ? order : a.Kind.CompareTo(b.Kind);
        for (int k = 0; order == 0 && k < Math.Min(a.Cuts.Count, b.Cuts.Count); k++)
        {
            order = b.Cuts[k].Length.CompareTo(a.Cuts[k].Length);
        }

        order = order != 0 ? order : a.Cuts.Count.CompareTo(b.Cuts.Count);
        return order != 0 ? order : (a.Cuts[0].Bar, a.Cuts[0].Piece).CompareTo((b.Cuts[0].Bar, b.Cuts[0].Piece));
    }
}
