namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: cutting stock in whole sticks. Method: column generation at every node, fix the fillings that the relaxation
/// uses whole (else the largest fraction), solve the rest again; limited discrepancy search over the second and third
/// choice, each node finished greedily as well and cut off by its own bound (diving with limited discrepancy, Sadykov and
/// others 2019); where the first relaxation does not come to its end, StickGroups. Cost: one relaxation a node, from the last one's basis; steps bound the whole. Why this one: the rounding gap of this relaxation is
/// almost always below one stick, so a good dive ends at the bound and proves itself.
/// </summary>
internal sealed class StickDive
{
    /// <summary>As many times the steps there are for a relaxation, and it is not begun.</summary>
    private const int FarTooFew = 4;

    /// <summary>So many lengths are one hand however few the steps.</summary>
    private const int NeverDivided = 100;

    private readonly int[] _demand;
    private readonly StockKinds _kinds;
    private readonly LengthRelaxation _relaxation;
    private readonly StickGreedy _greedy;
    private readonly List<StickFilling> _fixed = [];
    private readonly List<StickFilling> _tail = [];
    private readonly List<int> _spent = [];
    private readonly long[] _lengths;
    private readonly long _steps;
    private readonly bool _divides;
    private long _incumbent = long.MaxValue;

    /// <param name="lengths">Different lengths, ascending, with their kerf.</param>
    /// <param name="demand">How many of each.</param>
    /// <param name="kinds">What they are cut from.</param>
    /// <param name="steps">When to stop.</param>
    /// <param name="divides">Whether lengths that are too many may be divided.</param>
    public StickDive(long[] lengths, int[] demand, StockKinds kinds, long steps, bool divides = true)
    {
        _divides = divides;
        _lengths = lengths;
        _demand = demand;
        _kinds = kinds;
        _steps = steps;
        _relaxation = new LengthRelaxation(lengths, kinds, []);
        _greedy = new StickGreedy(lengths, kinds);
    }

    /// <summary>Sticks of the best plan found.</summary>
    public IReadOnlyList<StickFilling> Best { get; private set; } = [];

    public long LowerBound { get; private set; }

    /// <summary>Cost of the relaxed plan of all the pieces when its bound was known; it need not be the least.</summary>
    public double Relaxed { get; private set; }

    /// <summary>Steps spent so far.</summary>
    public long Work => _relaxation.Work + _greedy.Work;

    public void Run()
    {
        if (_lengths.Length == 0)
        {
            return;
        }

        Finish(_demand, _kinds.Quantity, 0);
        LowerBound = ByRate();
        bool divides = _divides && _lengths.Length > NeverDivided && !_kinds.Limited;
        if (divides && StickGroups.StepsFor(_lengths.Length) > FarTooFew * _steps)
        {
            Divide(_steps);
            return;
        }

        _relaxation.Know(Best);
        long forRoot = divides ? _steps / 4 * 3 : _steps;
        LowerBound = Math.Max(LowerBound, _relaxation.Solve(_demand, [], _kinds.Quantity, true, _incumbent, forRoot));
        Relaxed = _relaxation.Program.Objective();
        if (divides && Work >= forRoot && _incumbent > LowerBound)
        {
            Divide(_steps - forRoot);
            return;
        }

        for (int discrepancies = 0; discrepancies < 12 && _incumbent > LowerBound && Work < _steps; discrepancies++)
        {
            Dive(_demand, _kinds.Quantity, 0, discrepancies);
        }
    }

    // the relaxation does not come to its end
    private void Divide(long steps)
    {
        List<StickFilling> plan = new StickGroups(_lengths, _demand, _kinds, steps).Run();
        long cost = plan.Sum(s => _kinds.Cost[s.Kind]);
        if (cost < _incumbent)
        {
            _incumbent = cost;
            Best = plan;
        }
    }

    // what the relaxation comes to at once, and does not where its steps run out before
    private long ByRate()
    {
        Int128 total = 0;
        for (int i = 0; i < _lengths.Length; i++)
        {
            total += (Int128)_lengths[i] * _demand[i];
        }

        return LengthBound.ByRate(total, _kinds);
    }

    private void Dive(int[] demand, int[] quantity, long spent, int discrepancies)
    {
        long bound = _relaxation.Solve(demand, [], quantity, true, _incumbent - spent, Math.Max(1, _steps - Work));
        if (spent + bound >= _incumbent || Work >= _steps)
        {
            return;
        }

        Finish(demand, quantity, spent);
        if (_incumbent <= LowerBound)
        {
            return;
        }

        List<(int Column, double Value)> order = Candidates();
        int mark = _fixed.Count;
        int spentMark = _spent.Count;
        int tries = Math.Min(order.Count, discrepancies + 1);
        for (int choice = 0; choice < tries && _incumbent > LowerBound && Work < _steps; choice++)
        {
            int[] rest = (int[])demand.Clone();
            int[] stock = (int[])quantity.Clone();
            long cost = Fix(order, choice, rest, stock);
            if (_fixed.Count > mark)
            {
                Dive(rest, stock, spent + cost, discrepancies - choice);
                _fixed.RemoveRange(mark, _fixed.Count - mark);
            }

            _spent.Add(order[choice].Column);
        }

        _spent.RemoveRange(spentMark, _spent.Count - spentMark);
    }

    /// <summary>Fillings in use that were not tried above, the largest value first, then the older column.</summary>
    private List<(int Column, double Value)> Candidates()
    {
        LengthProgram program = _relaxation.Program;
        var order = new List<(int Column, double Value)>();
        for (int row = 0; row < program.Basis.Length; row++)
        {
            int column = program.Basis[row];
            if (program.Value[row] > 1e-4 && program.CostOf(column) > 0 && !_spent.Contains(column))
            {
                order.Add((column, program.Value[row]));
            }
        }

        order.Sort((a, b) => Math.Abs(a.Value - b.Value) > 1e-6 ? b.Value.CompareTo(a.Value) : a.Column.CompareTo(b.Column));
        return order;
    }

    /// <summary>Fixes the whole part of every filling used at least once (first choice), or one stick of the chosen filling.</summary>
    private long Fix(List<(int Column, double Value)> order, int choice, int[] rest, int[] stock)
    {
        long cost = 0;
        if (choice > 0 || order[0].Value < 1 - 1e-5)
        {
            return FixOne(order[choice].Column, rest, stock);
        }

        foreach ((int column, double value) in order)
        {
            for (int n = 0; n < (int)(value + 1e-5); n++)
            {
                cost += FixOne(column, rest, stock);
            }
        }

        return cost;
    }

    private long FixOne(int column, int[] rest, int[] stock)
    {
        var lengths = new List<int>();
        long used = 0;
        ReadOnlySpan<int> rows = _relaxation.Program.RowsOf(column);
        ReadOnlySpan<double> values = _relaxation.Program.ValuesOf(column);
        for (int e = 0; e < rows.Length; e++)
        {
            if (rows[e] < _lengths.Length)
            {
                int count = Math.Min((int)values[e], rest[rows[e]]);
                rest[rows[e]] -= count;
                used += count * _lengths[rows[e]];
                for (int n = 0; n < count; n++)
                {
                    lengths.Add(rows[e]);
                }
            }
        }

        int kind = Cheapest(used, stock, (long)_relaxation.Program.CostOf(column));
        if (lengths.Count == 0 || kind < 0)
        {
            return 0;
        }

        lengths.Sort();
        _fixed.Add(new StickFilling(kind, lengths));
        if (stock[kind] != int.MaxValue)
        {
            stock[kind]--;
        }

        return _kinds.Cost[kind];
    }

    /// <summary>The filling's own kind, or where none is left at its cost, the cheapest that is.</summary>
    private int Cheapest(long used, int[] stock, long cost)
    {
        for (int kind = 0; kind < _kinds.Count; kind++)
        {
            if (_kinds.Usable[kind] >= used && stock[kind] > 0 && _kinds.Cost[kind] == cost)
            {
                return kind;
            }
        }

        int best = -1;
        for (int kind = 0; kind < _kinds.Count; kind++)
        {
            if (_kinds.Usable[kind] >= used && stock[kind] > 0 && (best < 0 || _kinds.Cost[kind] < _kinds.Cost[best]))
            {
                best = kind;
            }
        }

        return best;
    }

    /// <summary>Finishes the fixed part greedily and keeps the plan when it is the best.</summary>
    private void Finish(int[] demand, int[] quantity, long spent)
    {
        _tail.Clear();
        long cost = spent + _greedy.Fill(demand, quantity, _tail);
        if (cost < _incumbent)
        {
            _incumbent = cost;
            Best = [.. _fixed, .. _tail];
        }
    }
}
