namespace LayoutService.Engine.Sheets;

/// <summary>A rectangle left of a sheet, and how many of its long edges the factory made.</summary>
internal readonly record struct Offcut(long Length, long Width, int Edges)
{
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

    private readonly (long Length, long Cost)[] _stock;
    private readonly long _sheetWidth;
    private readonly double _rate;
    private readonly long[] _leastWidthFrom;
    private readonly Offcut[] _offcuts = new Offcut[Most];
    private int _count;

    public OffcutStore(StockPrices prices, long sheetWidth, (long Width, int Edges)[] sizes)
    {
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

    /// <summary>What a run adds to the value at least.</summary>
    public double Least(long width, long length) => Worth * _rate * length * width / _sheetWidth;

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
        var chosen = -1;
        var least = double.MaxValue;
        for (var i = 0; i < _count; i++)
        {
            if (_offcuts[i].Length >= length && _offcuts[i].Serves(width, edges) && (double)_offcuts[i].Length * _offcuts[i].Width is var area && area < least)
            {
                (chosen, least) = (i, area);
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

        var size = (double)rest.Length * rest.Width;
        var place = _count;
        while (place > 0 && (double)_offcuts[place - 1].Length * _offcuts[place - 1].Width < size)
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
