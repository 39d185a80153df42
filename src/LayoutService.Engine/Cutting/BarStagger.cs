namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: neighbours that break on the same key, or bars that break at a poor place. Method: exchange the ways of two
/// bars that have the same feasible pieces while that takes violations away; the cut plan stays as it is, so this is free.
/// Cost: bars in violation × bars, a few rounds.
/// </summary>
internal sealed class BarStagger(BarCase bars, int poorGrade)
{
    private const int MostRounds = 8;

    // pieces of a fixed length break nowhere
    private readonly bool _breaks = Array.Exists(bars.Runs, run => run.Nodes.Count > 2);

    public void Settle(BarSolution solution)
    {
        bool better = _breaks;
        for (int round = 0; better && round < MostRounds; round++)
        {
            better = false;
            for (int run = 0; run < bars.Runs.Length; run++)
            {
                if (Of(solution, run) > 0)
                {
                    better |= ExchangeBest(solution, run);
                }
            }
        }
    }

    /// <summary>Violations that this run takes part in.</summary>
    public int Of(BarSolution solution, int r)
    {
        BarRun run = bars.Runs[r];
        int count = 0;
        int[] to = bars.Graphs[run.Graph].To;
        List<int> arcs = solution.Arcs[r];
        for (int k = 0; k < arcs.Count - 1; k++)
        {
            count += run.Nodes[to[arcs[k]]].Grade >= poorGrade ? 1 : 0;
        }

        foreach (int near in run.Near)
        {
            count += Shared(solution, r, near);
        }

        return count;
    }

    /// <summary>Breaks of the one on keys on which the other breaks.</summary>
    public int Shared(BarSolution solution, int a, int b)
    {
        int shared = 0;
        int[] toA = bars.Graphs[bars.Runs[a].Graph].To;
        int[] toB = bars.Graphs[bars.Runs[b].Graph].To;
        List<int> arcsA = solution.Arcs[a];
        List<int> arcsB = solution.Arcs[b];
        for (int i = 0; i < arcsA.Count - 1; i++)
        {
            int key = bars.Runs[a].Nodes[toA[arcsA[i]]].Key;
            for (int j = 0; j < arcsB.Count - 1; j++)
            {
                shared += bars.Runs[b].Nodes[toB[arcsB[j]]].Key == key ? 1 : 0;
            }
        }

        return shared;
    }

    private bool ExchangeBest(BarSolution solution, int run)
    {
        int most = 0;
        int with = -1;
        for (int other = 0; other < bars.Runs.Length; other++)
        {
            if (other == run || bars.Runs[other].Graph != bars.Runs[run].Graph)
            {
                continue;
            }

            int before = Of(solution, run) + Of(solution, other);
            solution.Exchange(run, other);
            int gain = before - Of(solution, run) - Of(solution, other);
            solution.Exchange(run, other);
            if (gain > most)
            {
                most = gain;
                with = other;
            }
        }

        if (with >= 0)
        {
            solution.Exchange(run, with);
        }

        return with >= 0;
    }
}
