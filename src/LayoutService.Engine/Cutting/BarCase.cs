namespace LayoutService.Engine.Cutting;

/// <summary>
/// A bar problem as the search sees it: runs (the bars that have a way, then each extra as a run of one arc), graphs that
/// runs share, and the sorted list of different piece lengths, each with one kerf.
/// </summary>
internal sealed class BarCase
{
    private BarCase(long[] lengths, StockKinds kinds)
    {
        Lengths = lengths;
        Kinds = kinds;
    }

    /// <summary>Different piece lengths plus a kerf, ascending; none longer than the longest stock.</summary>
    public long[] Lengths { get; }

    public StockKinds Kinds { get; }

    public BarGraph[] Graphs { get; private set; } = [];

    /// <summary>For each graph and arc, the caller's piece index.</summary>
    public int[][] PieceOf { get; private set; } = [];

    public BarRun[] Runs { get; private set; } = [];

    /// <summary>Bars without any way from end to end.</summary>
    public List<int> WithoutWay { get; } = [];

    /// <summary>Extras longer than any stock, one entry a piece.</summary>
    public List<int> TooLong { get; } = [];

    public static BarCase Read(BarProblem problem)
    {
        long pieces = 0;
        foreach (StickWanted extra in problem.Extras)
        {
            pieces += extra.Count;
        }

        foreach (Bar bar in problem.Bars)
        {
            pieces += bar.Nodes.Count;
        }

        var kinds = new StockKinds(problem.Kinds, problem.Kerf, problem.EndTrim, pieces);
        List<int> firstOfGraph = BarLikeness.Group(problem.Bars, out int[] graphOf);
        var read = new BarCase(AllLengths(problem, firstOfGraph, kinds.Longest), kinds);
        read.ReadRuns(problem, firstOfGraph, graphOf);
        return read;
    }

    private static long[] AllLengths(BarProblem problem, List<int> firstOfGraph, long longest)
    {
        var all = new List<long>();
        foreach (int bar in firstOfGraph)
        {
            foreach (BarPiece piece in problem.Bars[bar].Pieces)
            {
                all.Add(piece.Length + problem.Kerf);
            }
        }

        foreach (StickWanted extra in problem.Extras)
        {
            if (extra.Count > 0)
            {
                all.Add(extra.Length + problem.Kerf);
            }
        }

        all.Sort();
        int kept = 0;
        for (int i = 0; i < all.Count; i++)
        {
            if (all[i] <= longest && (kept == 0 || all[i] != all[kept - 1]))
            {
                all[kept++] = all[i];
            }
        }

        return [.. all[..kept]];
    }

    private void ReadRuns(BarProblem problem, List<int> firstOfGraph, int[] graphOf)
    {
        var graphs = new List<BarGraph>();
        var pieceOf = new List<int[]>();
        var runs = new List<BarRun>();
        var usable = new bool[firstOfGraph.Count];
        for (int g = 0; g < firstOfGraph.Count; g++)
        {
            graphs.Add(ReadGraph(problem.Bars[firstOfGraph[g]], problem.Kerf, out int[] origin, out usable[g]));
            pieceOf.Add(origin);
        }

        for (int bar = 0; bar < graphOf.Length; bar++)
        {
            if (usable[graphOf[bar]])
            {
                runs.Add(new BarRun(graphOf[bar], bar, problem.Bars[bar].Nodes));
            }
            else
            {
                WithoutWay.Add(bar);
            }
        }

        LinkNeighbours(problem, runs);
        for (int extra = 0; extra < problem.Extras.Count; extra++)
        {
            int length = Array.BinarySearch(Lengths, problem.Extras[extra].Length + problem.Kerf);
            for (int n = 0; n < problem.Extras[extra].Count; n++)
            {
                if (length < 0)
                {
                    TooLong.Add(extra);
                    continue;
                }

                if (n == 0)
                {
                    graphs.Add(new BarGraph(2, [0, 1, 1], [1], [length]));
                    pieceOf.Add([extra]);
                }

                runs.Add(new BarRun(graphs.Count - 1, -1, BarRun.Ends));
            }
        }

        Graphs = [.. graphs];
        PieceOf = [.. pieceOf];
        Runs = [.. runs];
    }

    private static void LinkNeighbours(BarProblem problem, List<BarRun> runs)
    {
        var runOf = new int[problem.Bars.Count];
        Array.Fill(runOf, -1);
        for (int run = 0; run < runs.Count; run++)
        {
            runOf[runs[run].Bar] = run;
        }

        var near = new List<int>[runs.Count];
        for (int run = 0; run < runs.Count; run++)
        {
            near[run] = [];
        }

        for (int run = 0; run < runs.Count; run++)
        {
            foreach (int bar in problem.Bars[runs[run].Bar].Neighbours)
            {
                int other = bar >= 0 && bar < runOf.Length ? runOf[bar] : -1;
                if (other >= 0 && other != run && !near[run].Contains(other))
                {
                    near[run].Add(other);
                    near[other].Add(run);
                }
            }
        }

        for (int run = 0; run < runs.Count; run++)
        {
            runs[run].Near = [.. near[run]];
        }
    }

    /// <summary>Arcs by start node, in order of end node; arcs that no way uses are left out.</summary>
    private BarGraph ReadGraph(Bar bar, long kerf, out int[] origin, out bool usable)
    {
        int nodes = Math.Max(1, bar.Nodes.Count);
        var pieces = new List<(int From, int To, int Length, int Index)>();
        for (int p = 0; p < bar.Pieces.Count; p++)
        {
            BarPiece piece = bar.Pieces[p];
            int length = Array.BinarySearch(Lengths, piece.Length + kerf);
            if (length >= 0 && piece.From >= 0 && piece.From < piece.To && piece.To < nodes)
            {
                pieces.Add((piece.From, piece.To, length, p));
            }
        }

        pieces.Sort();
        var reached = new bool[nodes];
        var ends = new bool[nodes];
        reached[0] = nodes > 1;
        ends[^1] = true;
        foreach (var piece in pieces)
        {
            reached[piece.To] |= reached[piece.From];
        }

        for (int p = pieces.Count - 1; p >= 0; p--)
        {
            ends[pieces[p].From] |= ends[pieces[p].To];
        }

        usable = reached[0] && ends[0];
        pieces.RemoveAll(p => !reached[p.From] || !ends[p.To]);
        var first = new int[nodes + 1];
        var to = new int[pieces.Count];
        var length2 = new int[pieces.Count];
        origin = new int[pieces.Count];
        for (int p = 0; p < pieces.Count; p++)
        {
            first[pieces[p].From + 1]++;
            to[p] = pieces[p].To;
            length2[p] = pieces[p].Length;
            origin[p] = pieces[p].Index;
        }

        for (int node = 0; node < nodes; node++)
        {
            first[node + 1] += first[node];
        }

        return new BarGraph(nodes, first, to, length2);
    }
}
