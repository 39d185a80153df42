namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: a quick complete plan for the pieces that are left. Method: the longest piece first, then the fullest
/// completion of its stick (minimum bin slack, Gupta and Ho 1999), the kind with the least cost per length used. Cost:
/// sticks × kinds × a bounded knapsack.
/// </summary>
internal sealed class StickGreedy(long[] lengths, StockKinds kinds)
{
    private const long NodesAStick = 4_000;
    private readonly LengthKnapsack _knapsack = new(lengths.Length);
    private readonly int[] _demand = new int[lengths.Length];
    private readonly int[] _quantity = new int[kinds.Count];
    private readonly List<int> _best = [];

    public long Work => _knapsack.Work;

    /// <summary>Adds sticks for all of the demand; returns their cost.</summary>
    public long Fill(ReadOnlySpan<int> demand, ReadOnlySpan<int> quantity, List<StickFilling> into)
    {
        demand.CopyTo(_demand);
        quantity.CopyTo(_quantity);
        long cost = 0;
        for (int longest = lengths.Length - 1; longest >= 0; longest--)
        {
            while (_demand[longest] > 0)
            {
                cost += FillOne(longest, into);
            }
        }

        return cost;
    }

    private long FillOne(int longest, List<StickFilling> into)
    {
        _demand[longest]--;
        _knapsack.Load(lengths, lengths, _demand);
        int chosen = -1;
        double least = double.MaxValue;
        _best.Clear();
        for (int kind = 0; kind < kinds.Count; kind++)
        {
            long room = kinds.Usable[kind] - lengths[longest];
            if (room < 0 || _quantity[kind] == 0)
            {
                continue;
            }

            _knapsack.Fill(room, 0, NodesAStick);
            double rate = kinds.Cost[kind] / (double)(_knapsack.Value + lengths[longest]);
            if (rate < least)
            {
                least = rate;
                chosen = kind;
                _best.Clear();
                _best.AddRange(_knapsack.Best);
            }
        }

        foreach (int length in _best)
        {
            _demand[length]--;
        }

        _best.Add(longest);
        _best.Sort();
        into.Add(new StickFilling(chosen, [.. _best]));
        if (_quantity[chosen] != int.MaxValue)
        {
            _quantity[chosen]--;
        }

        return kinds.Cost[chosen];
    }
}
