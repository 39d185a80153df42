namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: give each filled stick a kind that holds it, at least cost, within the kinds' quantities. Method: fullest stick
/// first, each from the cheapest kind left that holds it; exact, because every later stick may use whatever an earlier one
/// may (so any two choices can be swapped). Cost: sticks × kinds, and a sort where some kind is limited.
/// </summary>
internal sealed class BarStock(StockKinds kinds)
{
    private readonly int[] _left = new int[kinds.Count];
    private readonly List<(long Content, int Stick)> _byContent = [];
    private readonly bool _limited = Array.Exists(kinds.Quantity, q => q != int.MaxValue);

    /// <summary>The total cost; into, where given, receives each stick's kind (−1 for an empty stick).</summary>
    public long Assign(List<long> contents, int[]? into = null)
    {
        long cost = 0;
        if (!_limited)
        {
            for (int stick = 0; stick < contents.Count; stick++)
            {
                int kind = contents[stick] > 0 ? kinds.Cheapest(contents[stick]) : -1;
                cost += kind < 0 ? 0 : kinds.Cost[kind];
                if (into is not null)
                {
                    into[stick] = kind;
                }
            }

            return cost;
        }

        kinds.Quantity.CopyTo(_left, 0);
        _byContent.Clear();
        for (int stick = 0; stick < contents.Count; stick++)
        {
            _byContent.Add((-contents[stick], stick));
        }

        _byContent.Sort();
        foreach ((long content, int stick) in _byContent)
        {
            int kind = content < 0 ? Cheapest(-content) : -1;
            cost += kind < 0 ? 0 : kinds.Cost[kind];
            if (into is not null)
            {
                into[stick] = kind;
            }
        }

        return cost;
    }

    private int Cheapest(long content)
    {
        int best = -1;
        for (int kind = kinds.Count - 1; kind >= 0 && kinds.Usable[kind] >= content; kind--)
        {
            if (_left[kind] > 0 && (best < 0 || kinds.Cost[kind] <= kinds.Cost[best]))
            {
                best = kind;
            }
        }

        if (_left[best] != int.MaxValue)
        {
            _left[best]--;
        }

        return best;
    }
}
