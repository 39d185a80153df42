using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: least cost·x with A x = b, x ≥ 0, where columns keep arriving. Method: primal revised simplex with a dense
/// basis inverse, columns kept sparse; the first basis is one unit column a row, so b (with the column's sign) must be
/// ≥ 0. Cost: rows² a pivot at worst, less where the entering column touches few rows. Why this one: a few hundred rows
/// at most, columns of two to five entries, and the next column always at hand from a knapsack. Nothing that is
/// reported rests on these floating-point figures: bounds are recomputed in whole numbers (see LengthPrices).
/// </summary>
internal sealed class LengthProgram
{
    private const double Tolerance = 1e-9;
    private readonly int _rows;
    private readonly double _scale;
    private readonly double[] _inverse;
    private readonly double[] _alpha;
    private readonly double[] _rhs;
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
        _rhs = new double[rows];
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
            _rhs[row] = rhs[row];
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
        while (Work < limit)
        {
            int entering = -1;
            double best = -Tolerance;
            for (int column = 0; column < Columns; column++)
            {
                if (_active[column])
                {
                    double scaled = Reduced(column) / _scale;
                    if (scaled < best)
                    {
                        best = scaled;
                        entering = column;
                    }
                }
            }

            Work += Columns * 4;
            WorkMeter.Spend(Columns * 4L);
            if (entering < 0 || !Enter(entering))
            {
                return;
            }
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
        for (int row = 0; row < _rows; row++)
        {
            double sum = 0;
            int offset = row * _rows;
            for (int e = _start[column]; e < _start[column + 1]; e++)
            {
                sum += _inverse[offset + _entryRow[e]] * _entryValue[e];
            }

            _alpha[row] = sum;
        }

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

    private void Pivot(int column, int leaving, double ratio, double reduced)
    {
        Span<double> pivotRow = _inverse.AsSpan(leaving * _rows, _rows);
        double scale = 1 / _alpha[leaving];
        for (int k = 0; k < pivotRow.Length; k++)
        {
            pivotRow[k] *= scale;
        }

        for (int row = 0; row < _rows; row++)
        {
            double factor = _alpha[row];
            if (row == leaving || factor == 0)
            {
                continue;
            }

            Value[row] -= factor * ratio;
            LengthVector.Subtract(_inverse.AsSpan(row * _rows, _rows), pivotRow, factor);
            Work += _rows / 4;
        }

        Value[leaving] = ratio;
        Basis[leaving] = column;
        LengthVector.Subtract(Dual, pivotRow, -reduced);
        Work += _rows * 2;
        WorkMeter.Spend(_rows * (2L + _rows / 4));
    }
}
