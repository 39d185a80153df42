using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: least cost·x with A x = b, x ≥ 0, where columns keep arriving. Method: primal revised simplex with a dense
/// basis inverse held by columns (an entering column touches few of them), columns kept sparse; the first basis is one unit column a row, so b (with the column's sign) must be
/// ≥ 0. Cost: rows² a pivot at worst, less where the entering column touches few rows. Why this one: a few hundred rows
/// at most, columns of two to five entries, and the next column always at hand from a knapsack. Nothing that is
/// reported rests on these floating-point figures: bounds are recomputed in whole numbers (see LengthPrices).
/// </summary>
internal sealed partial class LengthProgram
{
    private const double Tolerance = 1e-9;

    /// <summary>Columns that are looked at first until none of them gains (multiple pricing).</summary>
    private const int MostPromising = 8;

    private readonly int _rows;
    private readonly double _scale;
    private readonly double[] _inverse;
    private readonly double[] _alpha;
    private readonly List<int> _promising = new(MostPromising + 1);
    private int[] _entryRow = new int[1024];
    private double[] _entryValue = new double[1024];
    private int[] _start = new int[257];
    private double[] _cost = new double[256];
    private bool[] _active = new bool[256];

    /// <param name="rows">How many equations.</param>
    /// <param name="largestCost">Of a column that is meant to be used: beside it a reduced cost is small or is not.</param>
    public LengthProgram(int rows, double largestCost)
    {
        _scale = 1 + largestCost;
        _rows = rows;
        _inverse = new double[rows * rows];
        _alpha = new double[rows];
        _leavingRow = new double[rows];
        Value = new double[rows];
        Basis = new int[rows];
        Dual = new double[rows];
    }

    /// <summary>Number of columns so far.</summary>
    public int Columns { get; private set; }

    /// <summary>Value of the basic column of each row.</summary>
    public double[] Value { get; }

    /// <summary>Basic column of each row.</summary>
    public int[] Basis { get; }

    /// <summary>Price of each row.</summary>
    public double[] Dual { get; }

    /// <summary>Elementary operations so far, for the step budget.</summary>
    public long Work { get; private set; }

    public ReadOnlySpan<int> RowsOf(int column) => _entryRow.AsSpan(_start[column], _start[column + 1] - _start[column]);

    public ReadOnlySpan<double> ValuesOf(int column) => _entryValue.AsSpan(_start[column], _start[column + 1] - _start[column]);

    public double CostOf(int column) => _cost[column];

    public void SetCost(int column, double cost) => _cost[column] = cost;

    /// <summary>An inactive column never enters the basis.</summary>
    public void Activate(int column, bool active) => _active[column] = active;

    public int Add(double cost, ReadOnlySpan<int> rows, ReadOnlySpan<double> values)
    {
        int column = Columns++;
        if (Columns == _cost.Length)
        {
            Array.Resize(ref _cost, Columns * 2);
            Array.Resize(ref _active, Columns * 2);
            Array.Resize(ref _start, Columns * 2 + 1);
        }

        int from = _start[column];
        while (from + rows.Length > _entryRow.Length)
        {
            Array.Resize(ref _entryRow, _entryRow.Length * 2);
            Array.Resize(ref _entryValue, _entryValue.Length * 2);
        }

        rows.CopyTo(_entryRow.AsSpan(from));
        values.CopyTo(_entryValue.AsSpan(from));
        _start[column + 1] = from + rows.Length;
        _cost[column] = cost;
        _active[column] = true;
        return column;
    }

    /// <summary>Starts from one unit column (+1 or −1 in its own row) a row.</summary>
    public void Begin(ReadOnlySpan<double> rhs, ReadOnlySpan<int> unitColumns)
    {
        Array.Clear(_inverse);
        for (int row = 0; row < _rows; row++)
        {
            double sign = ValuesOf(unitColumns[row])[0];
            _inverse[row * _rows + row] = sign;
            Value[row] = rhs[row] * sign;
            Basis[row] = unitColumns[row];
            Dual[row] = _cost[unitColumns[row]] * sign;
        }
    }

    /// <summary>Cost of the present point.</summary>
    public double Objective()
    {
        double sum = 0;
        for (int row = 0; row < _rows; row++)
        {
            sum += _cost[Basis[row]] * Value[row];
        }

        return sum;
    }

    /// <summary>Pivots until no active column has a negative reduced cost, or the work limit is reached.</summary>
    public void Improve(long workLimit)
    {
        long limit = Work + workLimit;
        _promising.Clear();
        while (Work < limit)
        {
            int entering = Promising();
            if (entering < 0)
            {
                entering = Dearest();
                Work += Columns * 4;
                WorkMeter.Spend(Columns * 4L);
            }

            if (entering < 0 || !Enter(entering))
            {
                return;
            }
        }
    }

    // of the few that gained most when all were last looked at, the one that gains most now; -1 when none does
    private int Promising()
    {
        int promising = -1;
        double best = -Tolerance * _scale;
        for (int k = 0; k < _promising.Count; k++)
        {
            double reduced = Reduced(_promising[k]);
            if (reduced < best)
            {
                (best, promising) = (reduced, _promising[k]);
            }
        }

        Work += _promising.Count * 4;
        return promising;
    }

    // the active column that gains most, -1 when none does; the few next to it are kept in mind
    private int Dearest()
    {
        ReadOnlySpan<double> dual = Dual;
        ReadOnlySpan<double> cost = _cost.AsSpan(0, Columns);
        ReadOnlySpan<bool> active = _active.AsSpan(0, Columns);
        ReadOnlySpan<int> start = _start.AsSpan(0, Columns + 1);
        ReadOnlySpan<int> entryRow = _entryRow.AsSpan(0, start[^1]);
        ReadOnlySpan<double> entryValue = _entryValue.AsSpan(0, entryRow.Length);
        Span<double> gains = stackalloc double[MostPromising];
        gains.Fill(-Tolerance * _scale);
        _promising.Clear();
        int from = start[0];
        for (int column = 0; column < cost.Length; column++)
        {
            int to = start[column + 1];
            if (active[column])
            {
                double reduced = cost[column];
                for (int e = from; e < to; e++)
                {
                    reduced -= dual[entryRow[e]] * entryValue[e];
                }

                if (reduced < gains[^1])
                {
                    Keep(gains, column, reduced);
                }
            }

            from = to;
        }

        return _promising.Count > 0 ? _promising[0] : -1;
    }

    // gains rise, the greatest first as they are below zero
    private void Keep(Span<double> gains, int column, double reduced)
    {
        int at = _promising.Count;
        while (at > 0 && gains[at - 1] > reduced)
        {
            at--;
        }

        gains[at..^1].CopyTo(gains[(at + 1)..]);
        gains[at] = reduced;
        _promising.Insert(at, column);
        if (_promising.Count > MostPromising)
        {
            _promising.RemoveAt(MostPromising);
        }
    }

    public double Reduced(int column)
    {
        double reduced = _cost[column];
        for (int e = _start[column]; e < _start[column + 1]; e++)
        {
            reduced -= Dual[_entryRow[e]] * _entryValue[e];
        }

        return reduced;
    }

    /// <summary>Brings a column into the basis; false when nothing limits it.</summary>
    public bool Enter(int column)
    {
        double reduced = Reduced(column);
        Turn(column);
        int leaving = -1;
        double ratio = double.MaxValue;
        for (int row = 0; row < _rows; row++)
        {
            if (_alpha[row] > Tolerance)
            {
                double candidate = Math.Max(0, Value[row]) / _alpha[row];
                if (candidate < ratio - 1e-12 || (candidate < ratio + 1e-12 && _alpha[row] > _alpha[leaving]))
                {
                    ratio = candidate;
                    leaving = row;
                }
            }
        }

        if (leaving < 0)
        {
            return false;
        }

        Pivot(column, leaving, ratio, reduced);
        return true;
    }

    // the column in terms of the basis
    private void Turn(int column)
    {
        Array.Clear(_alpha);
        for (int e = _start[column]; e < _start[column + 1]; e++)
        {
            LengthVector.Subtract(_alpha, _inverse.AsSpan(_entryRow[e] * _rows, _rows), -_entryValue[e]);
        }
    }

    private void Pivot(int column, int leaving, double ratio, double reduced)
    {
        double scale = 1 / _alpha[leaving];
        for (int row = 0; row < _rows; row++)
        {
            double factor = _alpha[row];
            if (row != leaving && factor != 0)
            {
                Value[row] -= factor * ratio;
                Work += _rows / 4;
            }
        }

        for (int k = 0; k < _rows; k++)
        {
            Span<double> ofRow = _inverse.AsSpan(k * _rows, _rows);
            double pivot = ofRow[leaving] * scale;
            if (pivot != 0)
            {
                LengthVector.Subtract(ofRow, _alpha, pivot);
                ofRow[leaving] = pivot;
                Dual[k] += reduced * pivot;
            }
        }

        Value[leaving] = ratio;
        Basis[leaving] = column;
        Work += _rows * 2;
        WorkMeter.Spend(_rows * (2L + _rows / 4));
    }
}
