using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: the program again, with other right sides. Method: dual simplex (Lemke 1954) from the basis that is there, whose prices are
/// (nearly) right still; what a right side below nought takes out is replaced by the column that loses least. Cost: rows² once, then
/// a look at every column and a pivot for each row below nought. Why this one: where little has changed since the last time, as between two nodes of
/// a dive, a handful of pivots leads to the next optimum, and hundreds would from units.
/// </summary>
internal sealed partial class LengthProgram
{
    private const double Drift = 1e-7;

    /// <summary>Beside this a coefficient is no pivot.</summary>
    private const double LeastPivot = 1e-7;

    private readonly double[] _leavingRow;

    /// <summary>
    /// Goes on from the basis of the time before, to a point without values below nought; Improve does the rest. False where there is none from there, or the
    /// figures have drifted: then begin anew.
    /// </summary>
    public bool Resume(ReadOnlySpan<double> rhs)
    {
        Array.Clear(Value);
        for (int k = 0; k < _rows; k++)
        {
            ReadOnlySpan<double> ofRow = _inverse.AsSpan(k * _rows, _rows);
            LengthVector.Subtract(Value, ofRow, -rhs[k]);
            double dual = 0;
            for (int row = 0; row < _rows; row++)
            {
                dual += _cost[Basis[row]] * ofRow[row];
            }

            Dual[k] = dual;
        }

        long steps = _rows * (long)_rows / 2;
        Work += steps;
        WorkMeter.Spend(steps);
        return !Drifted(rhs) && LiftAll();
    }

    private bool LiftAll()
    {
        for (int pivots = 0; pivots < 2 * _rows; pivots++)
        {
            int leaving = 0;
            for (int row = 1; row < _rows; row++)
            {
                leaving = Value[row] < Value[leaving] ? row : leaving;
            }

            if (Value[leaving] >= -Tolerance)
            {
                return true;
            }

            int entering = Replacing(leaving);
            if (entering < 0)
            {
                return false;
            }

            Turn(entering);
            Pivot(entering, leaving, Value[leaving] / _alpha[leaving], Reduced(entering));
        }

        return false;
    }

    // whether basis times values is no longer the right side
    private bool Drifted(ReadOnlySpan<double> rhs)
    {
        rhs.CopyTo(_alpha);
        for (int row = 0; row < _rows; row++)
        {
            for (int e = _start[Basis[row]]; e < _start[Basis[row] + 1]; e++)
            {
                _alpha[_entryRow[e]] -= Value[row] * _entryValue[e];
            }
        }

        for (int k = 0; k < _rows; k++)
        {
            if (!(Math.Abs(_alpha[k]) <= Drift * (1 + Math.Abs(rhs[k]))))
            {
                return true;
            }
        }

        return false;
    }

    // the active column that can lift a row to nought and loses least for it; -1 when none can
    private int Replacing(int leaving)
    {
        for (int k = 0; k < _rows; k++)
        {
            _leavingRow[k] = _inverse[k * _rows + leaving];
        }

        int replacing = -1;
        double least = double.MaxValue;
        double steepest = 0;
        for (int column = 0; column < Columns; column++)
        {
            if (!_active[column])
            {
                continue;
            }

            double alpha = 0;
            double reduced = _cost[column];
            for (int e = _start[column]; e < _start[column + 1]; e++)
            {
                alpha += _leavingRow[_entryRow[e]] * _entryValue[e];
                reduced -= Dual[_entryRow[e]] * _entryValue[e];
            }

            if (alpha < -LeastPivot)
            {
                double loss = Math.Max(0, reduced) / -alpha;
                if (loss < least - 1e-12 || (loss < least + 1e-12 && alpha < steepest))
                {
                    (replacing, least, steepest) = (column, loss, alpha);
                }
            }
        }

        Work += Columns * 4;
        WorkMeter.Spend(Columns * 4L);
        return replacing;
    }
}
