namespace LayoutService.Engine.Cutting;

/// <summary>
/// The part of the relaxation that breaks bars: a row for each graph's number of bars, a row for each node at which only
/// so many may break, and a column for each way, found by a shortest path at the program's prices. Joints may be charged
/// for, so that of two relaxed plans of one cost the one with fewer joints is preferred. While nothing is capped or
/// charged, what all bars are worth at the prices is part of a bound.
/// </summary>
internal sealed class LengthWays
{
    private readonly BarGraph[] _graphs;
    private readonly int _firstRow;
    private readonly int[][] _capRow;
    private readonly List<int>[] _columns;
    private readonly Dictionary<int, int[]> _arcs = [];
    private readonly long[] _toEnd;
    private readonly int[] _next;
    private readonly long[] _atNode;
    private readonly int[] _rowsBuffer;
    private readonly double[] _valuesBuffer;
    private double _joint;
    private double _dear;

    /// <param name="graphs">The graphs of the bars.</param>
    /// <param name="caps">For each graph and node how many may break there, int.MaxValue for any number; null where nothing is ever capped.</param>
    /// <param name="firstRow">The first row of these; graphs come first, then caps.</param>
    public LengthWays(BarGraph[] graphs, int[][]? caps, int firstRow)
    {
        _graphs = graphs;
        _firstRow = firstRow;
        _capRow = new int[graphs.Length][];
        _columns = new List<int>[graphs.Length];
        int longest = 1;
        int row = firstRow + graphs.Length;
        for (int graph = 0; graph < graphs.Length; graph++)
        {
            int nodes = graphs[graph].Nodes;
            longest = Math.Max(longest, nodes);
            _columns[graph] = [];
            _capRow[graph] = new int[nodes];
            for (int node = 0; node < nodes; node++)
            {
                _capRow[graph][node] = caps is null || caps[graph][node] == int.MaxValue ? -1 : row++;
            }
        }

        Rows = row - firstRow;
        _toEnd = new long[longest];
        _next = new int[longest];
        _atNode = new long[longest];
        _rowsBuffer = new int[2 * longest + 2];
        _valuesBuffer = new double[2 * longest + 2];
    }

    /// <summary>How many rows these take.</summary>
    public int Rows { get; }

    /// <summary>How many may still break at each graph's nodes; null: any number.</summary>
    public int[][]? Caps { get; set; }

    /// <summary>Whether a column is a way to break a bar.</summary>
    public bool IsWay(int column) => _arcs.ContainsKey(column);

    /// <summary>The arcs of a way, in order.</summary>
    public int[] ArcsOf(int column) => _arcs[column];

    /// <summary>The columns of a graph's ways.</summary>
    public IReadOnlyList<int> Of(int graph) => _columns[graph];

    /// <summary>What a joint costs from here on.</summary>
    public void ChargeJoints(LengthProgram program, double joint)
    {
        _joint = joint;
        foreach ((int column, int[] arcs) in _arcs)
        {
            program.SetCost(column, joint * (arcs.Length - 1));
        }
    }

    /// <summary>A unit column for each row: a bar that nothing is cut for, at a price that no plan pays, and what a cap leaves.</summary>
    public void AddUnits(LengthProgram program, double dear, Span<int> unit)
    {
        _dear = dear;
        for (int graph = 0; graph < _graphs.Length; graph++)
        {
            unit[_firstRow + graph] = program.Add(dear, [_firstRow + graph], [1]);
            foreach (int row in _capRow[graph])
            {
                if (row >= 0)
                {
                    unit[row] = program.Add(0, [row], [1]);
                }
            }
        }
    }

    /// <summary>What the rows ask for so many bars of each graph.</summary>
    public void Ask(ReadOnlySpan<int> bars, Span<double> rhs)
    {
        for (int graph = 0; graph < _graphs.Length; graph++)
        {
            rhs[_firstRow + graph] = bars[graph];
            for (int node = 0; node < _capRow[graph].Length; node++)
            {
                if (_capRow[graph][node] >= 0)
                {
                    rhs[_capRow[graph][node]] = Caps is null ? bars[graph] + 1 : Math.Max(0, Caps[graph][node]);
                }
            }
        }
    }

    /// <summary>Adds the ways that are worth adding at these whole-number prices; true when there was one. Worth: of all the bars.</summary>
    public bool Price(LengthProgram program, ReadOnlySpan<long> prices, long scale, ReadOnlySpan<int> bars, out Int128 worth)
    {
        bool grew = false;
        worth = 0;
        for (int graph = 0; graph < _graphs.Length; graph++)
        {
            for (int node = 0; node < _capRow[graph].Length; node++)
            {
                int row = _capRow[graph][node];
                double cap = Caps is null || row < 0 ? 0 : Math.Max(0, -program.Dual[row]);
                _atNode[node] = node < _capRow[graph].Length - 1 ? (long)(Math.Min(_joint + cap, _dear) * scale) : 0;
            }

            _graphs[graph].Shortest(prices, _atNode, _toEnd, _next);
            worth += (Int128)_toEnd[0] * bars[graph];
            double dual = program.Dual[_firstRow + graph];
            if (bars[graph] > 0 && _toEnd[0] / (double)scale < dual - 1e-7 * (1 + Math.Abs(dual)))
            {
                Add(program, graph);
                grew = true;
            }
        }

        return grew;
    }

    private void Add(LengthProgram program, int graph)
    {
        int count = 0;
        var arcs = new List<int>();
        _rowsBuffer[count] = _firstRow + graph;
        _valuesBuffer[count++] = 1;
        for (int node = 0; _next[node] >= 0; node = _graphs[graph].To[_next[node]])
        {
            arcs.Add(_next[node]);
            count = Append(count, _graphs[graph].Length[_next[node]], -1);
            int cap = _capRow[graph][_graphs[graph].To[_next[node]]];
            count = cap < 0 ? count : Append(count, cap, 1);
        }

        int column = program.Add(_joint * (arcs.Count - 1), _rowsBuffer.AsSpan(0, count), _valuesBuffer.AsSpan(0, count));
        _arcs.Add(column, [.. arcs]);
        _columns[graph].Add(column);
    }

    private int Append(int count, int row, double value)
    {
        for (int entry = 0; entry < count; entry++)
        {
            if (_rowsBuffer[entry] == row)
            {
                _valuesBuffer[entry] += value;
                return count;
            }
        }

        _rowsBuffer[count] = row;
        _valuesBuffer[count] = value;
        return count + 1;
    }
}
