namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: more lengths than one relaxation can have rows (its pivots cost rows²). Method: the lengths are dealt out like cards, so that each
/// hand is a small picture of the whole; each is dived for alone; then the emptiest sticks of all hands are cut anew together, again and again
/// while that saves. Cost: a share of the steps for each dive. Why this one: a dive ends within a stick of its bound, so hands lose a stick each at
/// most, which the emptiest sticks mostly give back; greedy fillings of everything lose one in fifteen where three or four pieces fill a stick.
/// </summary>
internal sealed class StickGroups
{
    private const long StepsOfACube = 25;

    private readonly long[] _lengths;
    private readonly int[] _demand;
    private readonly StockKinds _kinds;
    private readonly long _steps;
    private readonly int _size;
    private readonly int _groups;
    private long _work;

    public StickGroups(long[] lengths, int[] demand, StockKinds kinds, long steps)
    {
        _lengths = lengths;
        _demand = demand;
        _kinds = kinds;
        _steps = steps;
        _size = (int)Math.Clamp(Math.Sqrt(steps / (double)(StepsOfACube * lengths.Length)), 20, lengths.Length);
        _groups = (lengths.Length + _size - 1) / _size;
    }

    /// <summary>In which a relaxation comes to its end where three or four pieces fill a stick; as tried, common ones take a tenth.</summary>
    public static long StepsFor(int lengths) => StepsOfACube * lengths * lengths * lengths;

    /// <summary>A plan for everything.</summary>
    public List<StickFilling> Run()
    {
        var all = new List<StickFilling>();
        for (int g = 0; g < _groups; g++)
        {
            var hand = new int[_lengths.Length];
            for (int i = g; i < _lengths.Length; i += _groups)
            {
                hand[i] = _demand[i];
            }

            all.AddRange(Dive(hand));
        }

        int from = 0;
        all.Sort(Emptier);
        while (from < all.Count && _work < _steps)
        {
            int to = from;
            if (Again(all, from, ref to))
            {
                all.Sort(Emptier);
                from = 0;
            }
            else
            {
                from = Math.Max(from + 1, (from + to) / 2);
            }
        }

        return all;
    }

    // sticks cut anew together, as many as have no more lengths than a hand; whether that saved
    private bool Again(List<StickFilling> all, int from, ref int to)
    {
        var hand = new int[_lengths.Length];
        int different = 0;
        long cost = 0;
        for (; to < all.Count; to++)
        {
            int more = all[to].Lengths.Distinct().Count(i => hand[i] == 0);
            if (different + more > _size)
            {
                break;
            }

            different += more;
            cost += _kinds.Cost[all[to].Kind];
            foreach (int i in all[to].Lengths)
            {
                hand[i]++;
            }
        }

        IReadOnlyList<StickFilling> anew = Dive(hand);
        if (anew.Sum(s => _kinds.Cost[s.Kind]) >= cost)
        {
            return false;
        }

        all.RemoveRange(from, to - from);
        all.AddRange(anew);
        return true;
    }

    private IReadOnlyList<StickFilling> Dive(int[] hand)
    {
        int[] index = [.. Enumerable.Range(0, hand.Length).Where(i => hand[i] > 0)];
        var dive = new StickDive([.. index.Select(i => _lengths[i])], [.. index.Select(i => hand[i])], _kinds, _steps / (_groups + 1), divides: false);
        dive.Run();
        _work += dive.Work;
        return [.. dive.Best.Select(s => s with { Lengths = [.. s.Lengths.Select(i => index[i])] })];
    }

    // the most left over first
    private int Emptier(StickFilling a, StickFilling b)
    {
        int order = Left(b).CompareTo(Left(a));
        for (int k = 0; order == 0 && k < Math.Min(a.Lengths.Count, b.Lengths.Count); k++)
        {
            order = a.Lengths[k].CompareTo(b.Lengths[k]);
        }

        return order != 0 ? order : a.Lengths.Count.CompareTo(b.Lengths.Count);
    }

    private long Left(StickFilling stick) => _kinds.Usable[stick.Kind] - stick.Lengths.Sum(i => _lengths[i]);
}
