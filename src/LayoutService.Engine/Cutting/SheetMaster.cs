using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Cutting;

/// <summary>
/// The linear master program of column generation: least cost of sheets such that every row is covered. A primal revised
/// simplex with a dense basis inverse (rows are few). Time per column: rows². Rows are "at least"; a limit on stock is a
/// row with negative sign. Surplus columns are priced here, sheets by the caller.
/// </summary>
internal sealed class SheetMaster
{
    private const double Epsilon = 1e-9;

    private readonly int rows;
    private readonly double[] inverse;
    private readonly double[] basisCost;
    private readonly int[] basis;
    private readonly double[] direction;
    private readonly double[] surplus;

    /// <summary>Value of the basic variable of each row.</summary>
    public readonly double[] Value;

    public readonly double[] Price;

    /// <summary>Starts from one column a row: <paramref name="unit"/>[i] in row i at cost[i], column number −1 − i.</summary>
    public SheetMaster(double[] demand, double[] unit, double[] cost)
    {
        rows = demand.Length;
        inverse = new double[rows * rows];
        basisCost = [.. cost];
        basis = new int[rows];
        direction = new double[rows];
        surplus = new double[rows];
        Value = new double[rows];
        Price = new double[rows];
        for (var i = 0; i < rows; i++)
        {
            inverse[i * rows + i] = 1 / unit[i];
            basis[i] = -1 - i;
            Value[i] = demand[i] / unit[i];
        }

        SetPrices();
    }

    /// <summary>Work so far: a step is about as long as one pair of boxes joined.</summary>
    public long Steps { get; private set; }

    /// <summary>Column numbers of the basis, as given to <see cref="Enter"/>; negative: the starting ones and surplus.</summary>
    public ReadOnlySpan<int> Basis => basis;

    public double Objective
    {
        get
        {
            var sum = 0.0;
            for (var i = 0; i < rows; i++)
            {
                sum += basisCost[i] * Value[i];
            }

            return sum;
        }
    }

    /// <summary>Brings in surplus columns while some price is negative; false when the pivots ran out.</summary>
    public bool EnterSurplus(ref int pivots)
    {
        while (true)
        {
            var worst = -1;
            for (var i = 0; i < rows; i++)
            {
                if (Price[i] < -Epsilon && (worst < 0 || Price[i] < Price[worst]))
                {
                    worst = i;
                }
            }

            if (worst < 0)
            {
                return true;
            }

            if (--pivots < 0)
            {
                return false;
            }

            Array.Clear(surplus);
            surplus[worst] = -1;
            if (!Enter(surplus, 0, int.MinValue + worst))
            {
                return false;
            }
        }
    }

    /// <summary>Brings a column into the basis; false when it is unbounded or numerically useless.</summary>
    public bool Enter(ReadOnlySpan<double> column, double cost, int number)
    {
        Steps += 1 + (long)rows * rows / 16;
        WorkMeter.Spend((long)rows * rows / 4);
        for (var i = 0; i < rows; i++)
        {
            var sum = 0.0;
            for (var j = 0; j < rows; j++)
            {
                sum += inverse[i * rows + j] * column[j];
            }

            direction[i] = sum;
        }

        var leave = -1;
        var step = double.MaxValue;
        for (var i = 0; i < rows; i++)
        {
            if (direction[i] > 1e-7)
            {
                var ratio = Value[i] / direction[i];
                if (ratio < step - 1e-12 || (ratio < step + 1e-12 && direction[i] > direction[leave]))
                {
                    (leave, step) = (i, Math.Min(step, ratio));
                }
            }
        }

        if (leave < 0)
        {
            return false;
        }

        step = Math.Max(0, Value[leave] / direction[leave]);
        for (var i = 0; i < rows; i++)
        {
            Value[i] = i == leave ? step : Math.Max(0, Value[i] - step * direction[i]);
        }

        var pivot = 1 / direction[leave];
        for (var j = 0; j < rows; j++)
        {
            inverse[leave * rows + j] *= pivot;
        }

        for (var i = 0; i < rows; i++)
        {
            var factor = direction[i];
            if (i == leave || factor == 0)
            {
                continue;
            }

            for (var j = 0; j < rows; j++)
            {
                inverse[i * rows + j] -= factor * inverse[leave * rows + j];
            }
        }

        (basisCost[leave], basis[leave]) = (cost, number);
        SetPrices();
        return true;
    }

    private void SetPrices()
    {
        for (var j = 0; j < rows; j++)
        {
            var sum = 0.0;
            for (var i = 0; i < rows; i++)
            {
                sum += basisCost[i] * inverse[i * rows + j];
            }

            Price[j] = sum;
        }
    }
}
