namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: the linear relaxation of cutting, and a lower bound that is exact. Rows: each length's demand, what ways to
/// break bars ask (LengthWays), each limited kind's quantity; columns: fillings of a stick, ways to break a bar, and, where
/// there are bars, the use of a longer piece's room for the next shorter (dual cuts, Valério de Carvalho 2005). Method:
/// column generation (Gilmore and Gomory 1961) with a knapsack for fillings and a shortest path for ways to break; the
/// bound is Farley's (1990), recomputed in whole numbers from rounded-down prices, so no floating-point figure enters it.
/// Cost: a few hundred pivots and knapsacks. Why this one: the bound of the cutting-stock relaxation is within one stick
/// of the optimum on nearly every instance known.
/// </summary>
internal sealed class LengthRelaxation
{
    private const long NodesAKnapsack = 2_000_000;
    private readonly long[] _lengths;
    private readonly StockKinds _kinds;
    private readonly LengthKnapsack _knapsack;
    private readonly int[] _unit;
    private readonly int[] _begin;
    private readonly int[] _surplus;
    private readonly int[] _limitRow;
    private readonly double[] _rhs;
    private readonly int[] _atMost;
    private readonly long[] _worth;
    private readonly bool _bars;
    private bool _begun;

    public LengthRelaxation(long[] lengths, StockKinds kinds, BarGraph[] graphs, int[][]? caps = null)
    {
        _lengths = lengths;
        _kinds = kinds;
        _bars = graphs.Length > 0;
        Ways = new LengthWays(graphs, caps, lengths.Length);
        _knapsack = new LengthKnapsack(lengths.Length);
        _limitRow = new int[kinds.Count];
        int rows = lengths.Length + Ways.Rows;
        for (int kind = 0; kind < kinds.Count; kind++)
        {
            _limitRow[kind] = kinds.Quantity[kind] == int.MaxValue ? -1 : rows++;
        }

        Program = new LengthProgram(rows, kinds.LargestCost);
        Prices = new long[lengths.Length];
        _unit = new int[rows];
        _begin = new int[rows];
        _surplus = new int[lengths.Length];
        _rhs = new double[rows];
        _atMost = new int[lengths.Length];
        _worth = new long[kinds.Count];
        Scale = (1L << 40) / Math.Max(1, kinds.LargestCost);
        Scale = Math.Max(1, Scale);
        AddUnits();
    }

    public LengthProgram Program { get; }

    /// <summary>Whole-number price of each length: Scale times the linear program's.</summary>
    public long[] Prices { get; }

    /// <summary>Factor from cost to whole-number price.</summary>
    public long Scale { get; }

    /// <summary>The ways to break bars.</summary>
    public LengthWays Ways { get; }

    /// <summary>What the relaxation would pay for one more of a limited kind; 0 for the others.</summary>
    public double Charge(int kind) => _limitRow[kind] < 0 ? 0 : Math.Max(0, -Program.Dual[_limitRow[kind]]);

    /// <summary>Steps spent so far.</summary>
    public long Work => Program.Work + _knapsack.Work * 2;

    /// <summary>
    /// Solves for the demands and returns a valid lower bound (a whole multiple of the costs' common divisor). Stops
    /// early when the bound reaches the cutoff, or the work limit is spent. proper: no filling holds more of a length
    /// than its demand (sound where there are no graphs). While breaks are capped nothing is bound: 0.
    /// </summary>
    public long Solve(ReadOnlySpan<int> demand, ReadOnlySpan<int> bars, ReadOnlySpan<int> quantity, bool proper, long cutoff, long workLimit)
    {
        Begin(demand, bars, quantity, proper);
        long bound = 0;
        long limit = Work + workLimit;
        while (true)
        {
            Program.Improve(limit - Work);
            bool grew = Price(demand, bars, quantity, out long found);
            bound = Math.Max(bound, found);
            if (!grew || bound >= cutoff || Work >= limit || Ways.Caps is null && bound >= _kinds.RoundUp((long)Math.Ceiling(Program.Objective() - 1e-3)))
            {
                return bound;
            }
        }
    }

    /// <summary>Solves for all the runs of a case.</summary>
    public long Solve(BarCase bars, long workLimit)
    {
        var count = new int[bars.Graphs.Length];
        foreach (BarRun run in bars.Runs)
        {
            count[run.Graph]++;
        }

        return Solve(new int[_lengths.Length], count, _kinds.Quantity, false, long.MaxValue, workLimit);
    }

    /// <summary>Gives it fillings to begin with.</summary>
    public void Know(IEnumerable<StickFilling> fillings)
    {
        foreach (StickFilling filling in fillings)
        {
            AddFilling(filling.Kind, filling.Lengths);
        }
    }

    private void AddUnits()
    {
        for (int i = 0; i < _lengths.Length; i++)
        {
            int kind = _kinds.CheapestUnlimited(_lengths[i]);
            _unit[i] = Program.Add(_kinds.Cost[kind], [i], [1]);
            _surplus[i] = Program.Add(0, [i], [-1]);
        }

        for (int i = 1; i < _lengths.Length && _bars; i++)
        {
            Program.Add(0, [i - 1, i], [1, -1]);
        }

        Ways.AddUnits(Program, _kinds.LargestCost * 1000.0, _unit);
        for (int kind = 0; kind < _kinds.Count; kind++)
        {
            if (_limitRow[kind] >= 0)
            {
                _unit[_limitRow[kind]] = Program.Add(0, [_limitRow[kind]], [1]);
            }
        }
    }

    private void Begin(ReadOnlySpan<int> demand, ReadOnlySpan<int> bars, ReadOnlySpan<int> quantity, bool proper)
    {
        _unit.CopyTo(_begin, 0);
        double nudge = 0;
        for (int i = 0; i < _lengths.Length; i++)
        {
            nudge = (nudge + 0.6180339887498949) % 1;
            _rhs[i] = demand[i] + 1e-6 * (1 + nudge);
            _begin[i] = demand[i] < 0 ? _surplus[i] : _unit[i];
            _atMost[i] = proper ? Math.Max(0, demand[i]) : int.MaxValue;
        }

        Ways.Ask(bars, _rhs);
        for (int kind = 0; kind < _kinds.Count; kind++)
        {
            if (_limitRow[kind] >= 0)
            {
                _rhs[_limitRow[kind]] = quantity[kind];
            }
        }

        for (int column = 0; column < Program.Columns; column++)
        {
            Program.Activate(column, !proper || column < 2 * _lengths.Length || Fits(column, demand));
        }

        if (!_begun || !Program.Resume(_rhs))
        {
            Program.Begin(_rhs, _begin);
            _begun = true;
        }
    }

    private bool Fits(int column, ReadOnlySpan<int> demand)
    {
        ReadOnlySpan<int> rows = Program.RowsOf(column);
        ReadOnlySpan<double> values = Program.ValuesOf(column);
        for (int e = 0; e < rows.Length; e++)
        {
            if (rows[e] < _lengths.Length && values[e] > Math.Max(demand[rows[e]], 0))
            {
                return false;
            }
        }

        return true;
    }

    private bool Price(ReadOnlySpan<int> demand, ReadOnlySpan<int> bars, ReadOnlySpan<int> quantity, out long bound)
    {
        Int128 sum = 0;
        for (int i = 0; i < _lengths.Length; i++)
        {
            Prices[i] = (long)(Math.Max(0, Program.Dual[i]) * Scale);
            sum += (Int128)Prices[i] * demand[i];
        }

        bool grew = Ways.Price(Program, Prices, Scale, bars, out Int128 worth);
        grew |= PriceFillings(quantity);
        bound = Ways.Caps is null ? LengthBound.Of(sum + worth, Scale, _worth, _kinds, quantity) : 0;
        return grew;
    }

    private bool PriceFillings(ReadOnlySpan<int> quantity)
    {
        bool grew = false;
        _knapsack.Load(_lengths, Prices, _atMost);
        for (int kind = 0; kind < _kinds.Count; kind++)
        {
            if (quantity[kind] <= 0)
            {
                _worth[kind] = 0;
                continue;
            }

            double limitDual = _limitRow[kind] < 0 ? 0 : Program.Dual[_limitRow[kind]];
            long threshold = (long)((_kinds.Cost[kind] - limitDual) * Scale);
            _knapsack.Fill(_kinds.Usable[kind], threshold, NodesAKnapsack);
            _worth[kind] = _knapsack.Ceiling;
            if (_knapsack.Best.Count > 0 && _knapsack.Value - threshold > threshold / 10_000_000)
            {
                AddFilling(kind, _knapsack.Best);
                grew = true;
            }
        }

        return grew;
    }

    private void AddFilling(int kind, IReadOnlyList<int> items)
    {
        int[] rows = new int[items.Count + 1];
        double[] values = new double[items.Count + 1];
        int count = 0;
        foreach (int item in items)
        {
            if (count > 0 && rows[count - 1] == item)
            {
                values[count - 1]++;
            }
            else
            {
                rows[count] = item;
                values[count++] = 1;
            }
        }

        if (_limitRow[kind] >= 0)
        {
            rows[count] = _limitRow[kind];
            values[count++] = 1;
        }

        Program.Add(_kinds.Cost[kind], rows.AsSpan(0, count), values.AsSpan(0, count));
    }
}
