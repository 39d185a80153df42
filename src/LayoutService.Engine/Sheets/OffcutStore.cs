namespace LayoutService.Engine.Sheets;

/// <summary>A rectangle left of a sheet, and how many of its long edges the factory made.</summary>
internal readonly record struct Offcut(long Length, long Width, int Edges)
{
    public double Size => (double)Length * Width;

    /// <summary>True when a piece of this width, with so many factory edges, may come out of it.</summary>
    public bool Serves(long width, int edges) => Width >= width && Edges >= edges;
}

/// <summary>
/// Sheets bought and offcuts at hand while pieces are taken one after the other: the smallest offcut that holds the piece,
/// else the new sheet whose price less what it leaves is least.
/// </summary>
internal sealed class OffcutStore
{
    private const int Most = 10;

    // what an offcut is worth, as a part of the best price for its length
    private const double Worth = 0.9;

    // far above what sums of prices are rounded by, as a part
    private const double Rounding = 1e-9;

    private readonly (long Length, long Cost)[] _stock;
    private readonly long _sheetWidth;
    private readonly double _rate;
    private readonly long _allowance;
    private readonly long[] _leastWidthFrom;
    private readonly Offcut[] _offcuts = new Offcut[Most];
    private int _count;

    /// <param name="prices">What sheets cost.</param>
    /// <param name="sheetWidth">Their width.</param>
    /// <param name="sizes">Width and factory edges of each run.</param>
    /// <param name="allowance">What a board is cut short by at a wall.</param>
    public OffcutStore(StockPrices prices, long sheetWidth, (long Width, int Edges)[] sizes, long allowance)
    {
        _allowance = allowance;
        _stock = prices.Offers(sheetWidth);
        _sheetWidth = sheetWidth;
        _rate = _stock.Min(s => (double)s.Cost / s.Length);
        _leastWidthFrom = new long[sizes.Length + 1];
        _leastWidthFrom[^1] = long.MaxValue;
        for (var r = sizes.Length - 1; r >= 0; r--)
        {
            _leastWidthFrom[r] = Math.Min(_leastWidthFrom[r + 1], sizes[r].Width);
        }
    }

    public double Price { get; private set; }

    /// <summary>
    /// What a run adds to the value at least: what its board is worth, and the part of a new sheet's price that no offcut
    /// is worth, for so much of it as the offcuts at hand cannot hold. Of a run that is not plain, whose boards may be narrower
    /// than it, a guess.
    /// </summary>
    public double Least(Offcut[] offcuts, (long Width, int Edges) size, CourseRun run)
    {
        var length = run.Along.Size - (2 * _allowance);
        var least = Worth * _rate * length * size.Width / _sheetWidth;
        if (run.Plain && size.Width == _sheetWidth)
        {
            var bought = length;
            foreach (var offcut in offcuts)
            {
                bought -= offcut.Serves(size.Width, size.Edges) ? offcut.Length : 0;
            }

            least += Math.Max(0, bought) * (1 - Worth) * _rate;
        }

        return least * (1 - Rounding);
    }

    public void Load(Offcut[] offcuts, double price)
    {
        offcuts.CopyTo(_offcuts, 0);
        (_count, Price) = (offcuts.Length, price);
    }

    /// <summary>The offcuts at hand, the most useful first.</summary>
    public Offcut[] Save() => _offcuts.AsSpan(0, _count).ToArray();

    /// <summary>The price so far, less most of what the offcuts would save in the runs from one on.</summary>
    public double Value(int fromRun)
    {
        var value = Price;
        for (var i = 0; i < _count; i++)
        {
            if (_offcuts[i].Width >= _leastWidthFrom[fromRun])
            {
                value -= Worth * _rate * _offcuts[i].Length * Math.Min(_sheetWidth, _offcuts[i].Width) / _sheetWidth;
            }
        }

        return value;
    }

    public void Take(long width, long length, int edges)
    {
        // the smallest stands last; of two of one size the first
        var chosen = -1;
        for (var i = _count - 1; i >= 0 && (chosen < 0 || _offcuts[i].Size == _offcuts[chosen].Size); i--)
        {
            if (_offcuts[i].Length >= length && _offcuts[i].Serves(width, edges))
            {
                chosen = i;
            }
        }

        Offcut from;
        if (chosen >= 0)
        {
            from = _offcuts[chosen];
            _offcuts.AsSpan(chosen + 1, _count - chosen - 1).CopyTo(_offcuts.AsSpan(chosen));
            _count--;
        }
        else
        {
            var best = (Value: double.MaxValue, Length: 0L, Cost: 0L);
            foreach (var (stockLength, cost) in _stock)
            {
                var rest = stockLength - length;
                var value = cost - (rest >= ButtPatterns.LeastPiece ? Worth * _rate * rest : 0);
                if (rest >= 0 && value < best.Value)
                {
                    best = (value, stockLength, cost);
                }
            }

            Price += best.Cost;
            from = new Offcut(best.Length, _sheetWidth, 2);
        }

        Leave(new Offcut(from.Length - length, from.Width, from.Edges));
        Leave(new Offcut(length, from.Width - width, Math.Max(0, from.Edges - Math.Max(1, edges))));
    }

    // keeps the largest, sorted by size; scraps are waste
    private void Leave(Offcut rest)
    {
        if (rest.Length < ButtPatterns.LeastPiece / 2 || rest.Width < ButtPatterns.LeastPiece / 4)
        {
            return;
        }

        var size = rest.Size;
        var place = _count;
        while (place > 0 && _offcuts[place - 1].Size < size)
        {
            place--;
        }

        if (place == Most)
        {
            return;
        }

        _count = Math.Min(Most, _count + 1);
        _offcuts.AsSpan(place, _count - place - 1).CopyTo(_offcuts.AsSpan(place + 1));
        _offcuts[place] = rest;
    }
}
