namespace LayoutService.Engine.Cutting;

/// <summary>
/// Stock as the search sees it: sorted by usable length, then cost. Usable is the length less the end trim plus one kerf,
/// to be filled by pieces that each carry one kerf. A last kind, StandIn, stands for stock that cannot be had: as long as
/// the longest, without limit, at a cost above any plan; it is there only where some kind is limited.
/// </summary>
internal sealed class StockKinds
{
    private readonly long _divisor;

    public StockKinds(IReadOnlyList<StickKind> kinds, long kerf, long endTrim, long pieces)
    {
        var order = new int[kinds.Count];
        bool limited = false;
        long dearest = 0;
        for (int i = 0; i < order.Length; i++)
        {
            order[i] = i;
            limited |= kinds[i].Quantity is not null;
            dearest = Math.Max(dearest, kinds[i].Cost);
        }

        Array.Sort(order, (a, b) => (kinds[a].Length, kinds[a].Cost, a).CompareTo((kinds[b].Length, kinds[b].Cost, b)));
        Limited = limited;
        Count = order.Length + (limited ? 1 : 0);
        Usable = new long[Count];
        Cost = new long[Count];
        Quantity = new int[Count];
        Origin = new int[Count];
        for (int i = 0; i < order.Length; i++)
        {
            StickKind kind = kinds[order[i]];
            Usable[i] = Math.Max(0, kind.Length - endTrim + kerf);
            Cost[i] = kind.Cost;
            Quantity[i] = kind.Quantity ?? int.MaxValue;
            Origin[i] = order[i];
            _divisor = (long)System.Numerics.BigInteger.GreatestCommonDivisor(_divisor, kind.Cost);
        }

        _divisor = Math.Max(1, _divisor);
        if (limited)
        {
            Usable[^1] = Usable[^2];
            Cost[^1] = Math.Max(1, dearest) * Math.Min(1_000, Math.Max(2, pieces + 1));
            Cost[^1] += (_divisor - Cost[^1] % _divisor) % _divisor;
            Quantity[^1] = int.MaxValue;
            Origin[^1] = -1;
        }

        Longest = Count == 0 ? 0 : Usable[^1];
        LargestCost = Count == 0 ? 0 : Math.Max(dearest, Cost[^1]);
    }

    public int Count { get; }

    /// <summary>Whether some kind can be had only so many times.</summary>
    public bool Limited { get; }

    public long[] Usable { get; }

    public long[] Cost { get; }

    /// <summary>How many there are; int.MaxValue for no limit.</summary>
    public int[] Quantity { get; }

    /// <summary>Index among the caller's kinds; −1 for the stand-in.</summary>
    public int[] Origin { get; }

    public long LargestCost { get; }

    public long Longest { get; }

    /// <summary>The least whole multiple of the costs' common divisor that is not less.</summary>
    public long RoundUp(long cost) => (cost + _divisor - 1) / _divisor * _divisor;

    /// <summary>Cheapest kind that holds the length; −1 when none does.</summary>
    public int Cheapest(long length)
    {
        int best = -1;
        for (int kind = Count - 1; kind >= 0 && Usable[kind] >= length; kind--)
        {
            if (best < 0 || Cost[kind] <= Cost[best])
            {
                best = kind;
            }
        }

        return best;
    }

    /// <summary>Cheapest unlimited kind that holds the length; −1 when none does.</summary>
    public int CheapestUnlimited(long length)
    {
        int best = -1;
        for (int kind = 0; kind < Count; kind++)
        {
            if (Usable[kind] >= length && Quantity[kind] == int.MaxValue && (best < 0 || Cost[kind] < Cost[best]))
            {
                best = kind;
            }
        }

        return best;
    }
}
