using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: fill one stick with the pieces of greatest total price (bounded knapsack). Method: depth-first branch and
/// bound in order of price per length, cut off by what is left × the next price per length. Cost: exponential at worst,
/// in practice a few thousand nodes, as a stick holds few pieces; a node limit keeps it bounded, and then Ceiling is
/// still valid. Why this one: lengths in 1/8000 mm are far too large for the table over every length.
/// </summary>
internal sealed class LengthKnapsack(int items)
{
    /// <summary>Above the rounding of a product below 2^42.</summary>
    private const double Rounding = 0.002;

    private readonly long[] _length = new long[items];
    private readonly long[] _price = new long[items];
    private readonly int[] _left = new int[items];
    private readonly int[] _item = new int[items];
    private readonly double[] _density = new double[items];
    private readonly List<int> _stack = [];
    private readonly List<int> _best = [];
    private int _count;
    private long _shortest;
    private long _nodes;
    private long _limit;

    /// <summary>Price of the best filling found above the threshold, or the threshold.</summary>
    public long Value { get; private set; }

    /// <summary>No filling is worth more than this.</summary>
    public long Ceiling { get; private set; }

    /// <summary>Items of the best filling; empty when none beats the threshold.</summary>
    public IReadOnlyList<int> Best => _best;

    /// <summary>Nodes visited so far, for the step budget.</summary>
    public long Work { get; private set; }

    /// <summary>Loads the items whose price is above 0 and of which at least one may be used.</summary>
    public void Load(ReadOnlySpan<long> lengths, ReadOnlySpan<long> prices, ReadOnlySpan<int> atMost)
    {
        _count = 0;
        _shortest = long.MaxValue;
        for (int i = 0; i < lengths.Length; i++)
        {
            if (prices[i] > 0 && atMost[i] > 0)
            {
                _density[_count] = -prices[i] / (double)lengths[i];
                _item[_count++] = i;
                _shortest = Math.Min(_shortest, lengths[i]);
            }
        }

        Array.Sort(_density, _item, 0, _count);
        for (int k = 0; k < _count; k++)
        {
            _density[k] = -_density[k];
            _length[k] = lengths[_item[k]];
            _price[k] = prices[_item[k]];
            _left[k] = atMost[_item[k]];
        }
    }

    /// <summary>Looks for the best filling worth more than the threshold.</summary>
    public void Fill(long capacity, long threshold, long nodeLimit)
    {
        _best.Clear();
        _stack.Clear();
        Value = threshold;
        Ceiling = threshold;
        _nodes = 0;
        _limit = nodeLimit;
        if (!Search(0, capacity, 0) && _count > 0)
        {
            Ceiling = Math.Max(threshold, (long)(capacity * _density[0] + Rounding));
        }
        else
        {
            Ceiling = Value;
        }

        Work += _nodes;
        WorkMeter.Spend(_nodes);
    }

    private bool Search(int from, long room, long worth)
    {
        if (worth > Value)
        {
            Value = worth;
            _best.Clear();
            foreach (int k in _stack)
            {
                _best.Add(_item[k]);
            }
        }

        if (room < _shortest)
        {
            return true;
        }

        for (int k = from; k < _count; k++)
        {
            if (worth + (long)(room * _density[k] + Rounding) <= Value)
            {
                return true;
            }

            if (_length[k] > room || _left[k] == 0)
            {
                continue;
            }

            if (++_nodes > _limit)
            {
                return false;
            }

            _left[k]--;
            _stack.Add(k);
            bool complete = Search(k, room - _length[k], worth + _price[k]);
            _stack.RemoveAt(_stack.Count - 1);
            _left[k]++;
            if (!complete)
            {
                return false;
            }
        }

        return true;
    }
}
