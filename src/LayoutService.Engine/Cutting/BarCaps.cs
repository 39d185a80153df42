namespace LayoutService.Engine.Cutting;

/// <summary>
/// How many of the bars of one graph may break at each of its nodes, when no two neighbours may break on one key and no bar
/// at a poor place: where all have the same key there, a set of bars of which no two are neighbours, taken in order (along
/// a row of bars the greatest there is). It steers the weaving of ways; no bound rests on it.
/// </summary>
internal static class BarCaps
{
    /// <summary>For each graph and node; int.MaxValue where nothing is asked.</summary>
    public static int[][] Of(BarCase bars, int poorGrade)
    {
        var most = new int[bars.Graphs.Length][];
        for (int graph = 0; graph < most.Length; graph++)
        {
            most[graph] = new int[bars.Graphs[graph].Nodes];
            Array.Fill(most[graph], int.MaxValue);
            BarRun[] runs = Array.FindAll(bars.Runs, run => run.Graph == graph);
            int apart = Apart(bars, graph);
            for (int node = 1; node < most[graph].Length - 1 && runs.Length > 0; node++)
            {
                most[graph][node] = At(node, runs, apart, poorGrade);
            }
        }

        return most;
    }

    private static int At(int node, BarRun[] runs, int apart, int poorGrade)
    {
        int good = 0;
        bool same = true;
        foreach (BarRun run in runs)
        {
            good += run.Nodes[node].Grade < poorGrade ? 1 : 0;
            same &= run.Nodes[node].Key == runs[0].Nodes[node].Key;
        }

        int most = same ? Math.Min(good, apart) : good;
        return most == runs.Length ? int.MaxValue : most;
    }

    private static int Apart(BarCase bars, int graph)
    {
        var taken = new HashSet<int>();
        for (int run = 0; run < bars.Runs.Length; run++)
        {
            if (bars.Runs[run].Graph == graph && !Array.Exists(bars.Runs[run].Near, taken.Contains))
            {
                taken.Add(run);
            }
        }

        return taken.Count;
    }
}
