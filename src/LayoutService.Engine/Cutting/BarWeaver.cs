namespace LayoutService.Engine.Cutting;

/// <summary>How to weave. From: the candidates' chance; 0 takes what the relaxation uses most. Work: of the relaxation.</summary>
internal readonly record struct WeaveStyle(double Joint, ulong From, long Work);

/// <summary>
/// Problem: ways for some bars, beside those that the others have, in which no two neighbours break on one key and no bar
/// at a poor place, and sticks for all. Method: bar by bar: solve the relaxation of what is left, with caps on how many may
/// still break at a place (BarCaps), and give the bar the way that the relaxation uses most and that goes with its
/// neighbours' (a shortest path at the relaxation's prices, where it uses none); then cut all the pieces as plain cutting
/// stock. Where a relaxation is long, one serves several bars. Cost: a relaxation a bar at most. Why this one: a relaxation
/// that knows the rules of breaks lies close to what can be built, and what remains after it is a problem of sticks alone,
/// of which the relaxation is nearly always within one stick.
/// </summary>
internal sealed class BarWeaver(BarCase bars, LengthRelaxation relaxation, int[][] caps, int poorGrade)
{
    private const int PackSteps = 2_000_000;

    /// <summary>A way that the relaxation does not use may be taken when its reduced cost is below this part of the dearest stick.</summary>
    private const double NearlyUsed = 0.02;
    private const double ShareOfNearlyUsed = 0.3;
    private const double LeastUse = 1e-6;

    private readonly int[] _demand = new int[bars.Lengths.Length];
    private readonly int[] _left = new int[bars.Graphs.Length];
    private readonly int[][] _ways = new int[bars.Runs.Length][];
    private readonly int[][] _caps = [.. caps.Select(nodes => (int[])nodes.Clone())];
    private readonly BarChance _chance = new();
    private double[] _used = [];

    /// <summary>Steps of cutting the pieces.</summary>
    public long Packed { get; private set; }

    /// <summary>What the pieces cost in relaxed sticks: of two solutions of one cost the one nearer to a cheaper one has less.</summary>
    public double Relaxed { get; private set; }

    /// <summary>Weaves the bars in this order; those that are not in it keep the ways of the solution they are in.</summary>
    public BarSolution Weave(ReadOnlySpan<int> order, BarSolution? beside, WeaveStyle style)
    {
        _chance.Begin(style.From);
        foreach (int run in order)
        {
            _left[bars.Runs[run].Graph]++;
        }

        for (int run = 0; beside is not null && run < _ways.Length; run++)
        {
            if (!order.Contains(run))
            {
                Give(run, [.. beside.Arcs[run]]);
            }
        }

        relaxation.Ways.ChargeJoints(relaxation.Program, style.Joint);
        long limit = relaxation.Work + style.Work;
        int served = 0;
        int every = 0;
        foreach (int run in order)
        {
            if (served++ >= every)
            {
                long before = relaxation.Work;
                relaxation.Ways.Caps = _caps;
                relaxation.Solve(_demand, _left, bars.Kinds.Quantity, false, long.MaxValue, Math.Max(1, limit - before));
                _used = [.. relaxation.Program.Value];
                every = (int)Math.Max(1, (relaxation.Work - before) * order.Length / style.Work);
                served = 1;
            }

            _left[bars.Runs[run].Graph]--;
            int[] barred = Barred(run);
            Give(run, Used(run, barred, style.From != 0) ?? Cheapest(run, barred, style.Joint));
        }

        relaxation.Ways.Caps = null;
        return Pack();
    }

    private void Give(int run, int[] way)
    {
        int graph = bars.Runs[run].Graph;
        _ways[run] = way;
        foreach (int arc in way)
        {
            _demand[bars.Graphs[graph].Length[arc]]++;
            ref int cap = ref _caps[graph][bars.Graphs[graph].To[arc]];
            cap -= cap == int.MaxValue ? 0 : 1;
        }
    }

    // what the relaxation uses most (or, by chance, what it uses or nearly uses) and goes with the neighbours
    private int[]? Used(int run, int[] barred, bool byChance)
    {
        LengthProgram program = relaxation.Program;
        int[]? best = null;
        int from = -1;
        double most = LeastUse;
        int graphRow = bars.Lengths.Length + bars.Runs[run].Graph;
        for (int row = 0; row < _used.Length; row++)
        {
            int column = program.Basis[row];
            double use = _used[row] * (byChance && _used[row] > LeastUse ? _chance.Between(0.05, 1.05) : 1);
            if (use > most && relaxation.Ways.IsWay(column) && program.RowsOf(column)[0] == graphRow && Goes(run, relaxation.Ways.ArcsOf(column), barred))
            {
                (best, most, from) = (relaxation.Ways.ArcsOf(column), use, row);
            }
        }

        if (byChance && NearlyUsedWay(run, barred, most) is { } other)
        {
            return other;
        }

        if (from >= 0)
        {
            _used[from]--;
        }

        return best;
    }

    private int[]? NearlyUsedWay(int run, int[] barred, double most)
    {
        int[]? best = null;
        double span = NearlyUsed * bars.Kinds.LargestCost;
        foreach (int column in relaxation.Ways.Of(bars.Runs[run].Graph))
        {
            double reduced = relaxation.Program.Reduced(column);
            if (reduced >= span)
            {
                continue;
            }

            double use = ShareOfNearlyUsed * (1 - reduced / span) * _chance.Between(0, 1);
            if (use > most && Goes(run, relaxation.Ways.ArcsOf(column), barred))
            {
                (best, most) = (relaxation.Ways.ArcsOf(column), use);
            }
        }

        return best;
    }

    // at the relaxation's prices, around the places that are barred where it can
    private int[] Cheapest(int run, int[] barred, double joint)
    {
        BarGraph graph = bars.Graphs[bars.Runs[run].Graph];
        var atNode = new long[graph.Nodes];
        for (int node = 1; node < graph.Nodes - 1; node++)
        {
            atNode[node] = (long)((joint + (double)barred[node] * bars.Kinds.LargestCost) * relaxation.Scale);
        }

        var next = new int[graph.Nodes];
        graph.Shortest(relaxation.Prices, atNode, new long[graph.Nodes], next);
        var arcs = new List<int>();
        for (int node = 0; next[node] >= 0; node = graph.To[next[node]])
        {
            arcs.Add(next[node]);
        }

        return [.. arcs];
    }

    private bool Goes(int run, int[] way, int[] barred)
    {
        int[] to = bars.Graphs[bars.Runs[run].Graph].To;
        return Array.TrueForAll(way, arc => barred[to[arc]] == 0);
    }

    // how many rules a break at each node breaks, beside the neighbours that have their ways; the ends are no breaks
    private int[] Barred(int run)
    {
        IReadOnlyList<BarNode> nodes = bars.Runs[run].Nodes;
        var barred = new int[bars.Graphs[bars.Runs[run].Graph].Nodes];
        for (int node = 1; node < barred.Length - 1; node++)
        {
            barred[node] = nodes[node].Grade >= poorGrade ? 1 : 0;
            foreach (int near in bars.Runs[run].Near)
            {
                barred[node] += _ways[near] is { } way ? Breaks(near, way, nodes[node].Key) : 0;
            }
        }

        return barred;
    }

    private int Breaks(int run, int[] way, int key)
    {
        int count = 0;
        int[] to = bars.Graphs[bars.Runs[run].Graph].To;
        foreach (int arc in way.AsSpan(0, way.Length - 1))
        {
            count += bars.Runs[run].Nodes[to[arc]].Key == key ? 1 : 0;
        }

        return count;
    }

    private BarSolution Pack()
    {
        int[] wanted = [.. Enumerable.Range(0, _demand.Length).Where(length => _demand[length] > 0)];
        var where = new Queue<(int Run, int Place)>[_demand.Length];
        var solution = new BarSolution(bars);
        for (int run = 0; run < _ways.Length; run++)
        {
            foreach (int arc in _ways[run])
            {
                int length = bars.Graphs[bars.Runs[run].Graph].Length[arc];
                (where[length] ??= new Queue<(int, int)>()).Enqueue((run, solution.Arcs[run].Count));
                solution.Arcs[run].Add(arc);
                solution.Sticks[run].Add(-1);
            }
        }

        var dive = new StickDive([.. wanted.Select(length => bars.Lengths[length])], [.. wanted.Select(length => _demand[length])], bars.Kinds, PackSteps, divides: false);
        dive.Run();
        (Packed, Relaxed) = (dive.Work, dive.Relaxed);
        foreach (StickFilling filling in dive.Best)
        {
            solution.Content.Add(0);
            foreach (int piece in filling.Lengths)
            {
                (int run, int place) = where[wanted[piece]].Dequeue();
                solution.Sticks[run][place] = solution.Content.Count - 1;
                solution.Content[^1] += bars.Lengths[wanted[piece]];
            }
        }

        return solution;
    }
}
