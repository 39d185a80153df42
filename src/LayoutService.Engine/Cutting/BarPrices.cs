namespace LayoutService.Engine.Cutting;

/// <summary>
/// What a length is worth while searching: a price for each piece length, and from it the least that a stick with a given
/// content can still come to cost, net of what its rest could hold. Placing a piece then loses
/// least(content + piece) − least(content) − price(piece), never below 0 for prices of the relaxation. The table of what a
/// rest could hold is an unbounded knapsack over lengths rounded down to a few millimetres: a guide, never a proof.
/// </summary>
internal sealed class BarPrices
{
    private readonly StockKinds _kinds;
    private readonly double[] _kindCost;
    private readonly int _shift;
    private readonly double[] _worth;

    // By content in buckets; a bucket in which some kind ends is measured each time (closing below 0).
    private readonly double[] _least;
    private readonly double[] _closing;

    private BarPrices(BarCase bars, double[] price, double[] kindCost, int buckets)
    {
        _kindCost = kindCost;
        _kinds = bars.Kinds;
        Price = price;
        while (_kinds.Longest >> _shift > buckets)
        {
            _shift++;
        }

        _worth = new double[(int)(_kinds.Longest >> _shift) + 1];
        Fill(bars.Lengths);
        _least = new double[_worth.Length];
        _closing = new double[_worth.Length];
        for (int bucket = 0; bucket < _worth.Length; bucket++)
        {
            Measure((long)bucket << _shift, out _least[bucket], out _closing[bucket]);
        }

        foreach (long usable in _kinds.Usable)
        {
            _closing[usable >> _shift] = -1;
        }

        ToEnd = new double[bars.Graphs.Length][];
        for (int g = 0; g < bars.Graphs.Length; g++)
        {
            ToEnd[g] = Distances(bars.Graphs[g]);
        }

        NewLoss = new double[price.Length];
        NewClosing = new double[price.Length];
        for (int length = 0; length < price.Length; length++)
        {
            Stick(bars.Lengths[length], out double least, out double closing);
            NewLoss[length] = least - price[length];
            NewClosing[length] = closing;
        }

        Shortest = bars.Lengths.Length == 0 ? 0 : bars.Lengths[0];
    }

    /// <summary>Price of each length, in cost.</summary>
    public double[] Price { get; }

    /// <summary>For each graph, the least total price from each node to the end.</summary>
    public double[][] ToEnd { get; }

    /// <summary>Loss of starting a new stick with each length.</summary>
    public double[] NewLoss { get; }

    /// <summary>What closing such a stick at once would lose more.</summary>
    public double[] NewClosing { get; }

    /// <summary>The shortest length there is.</summary>
    public long Shortest { get; }

    /// <summary>
    /// Prices in proportion to length, at the best rate that any kind offers, when each limited kind costs so much more.
    /// </summary>
    public static BarPrices ByRate(BarCase bars, double charge, int buckets)
    {
        StockKinds kinds = bars.Kinds;
        var kindCost = new double[kinds.Count];
        double rate = double.MaxValue;
        for (int kind = 0; kind < kinds.Count; kind++)
        {
            kindCost[kind] = kinds.Cost[kind] + (kinds.Quantity[kind] == int.MaxValue ? 0 : charge);
            rate = kinds.Usable[kind] > 0 ? Math.Min(rate, kindCost[kind] / kinds.Usable[kind]) : rate;
        }

        var price = new double[bars.Lengths.Length];
        for (int length = 0; length < price.Length; length++)
        {
            price[length] = rate * bars.Lengths[length];
        }

        return new BarPrices(bars, price, kindCost, buckets);
    }

    /// <summary>The relaxation's own prices, and what it would pay for one more of each limited kind.</summary>
    public static BarPrices ByRelaxation(BarCase bars, LengthRelaxation relaxation, int buckets)
    {
        var price = new double[bars.Lengths.Length];
        for (int length = 0; length < price.Length; length++)
        {
            price[length] = relaxation.Prices[length] / (double)relaxation.Scale;
        }

        var kindCost = new double[bars.Kinds.Count];
        for (int kind = 0; kind < kindCost.Length; kind++)
        {
            kindCost[kind] = bars.Kinds.Cost[kind] + relaxation.Charge(kind);
        }

        return new BarPrices(bars, price, kindCost, buckets);
    }

    /// <summary>
    /// These prices with each length's moved by up to 7.5 % either way, by a fixed rule that differs from variant to
    /// variant: a search that follows them looks elsewhere.
    /// </summary>
    public BarPrices Varied(BarCase bars, int variant)
    {
        var price = new double[Price.Length];
        for (int length = 0; length < price.Length; length++)
        {
            double part = (length + 1) * 0.6180339887498949 * (variant + 1) * (variant + 2) % 1;
            price[length] = Price[length] * (1 + 0.15 * (part - 0.5));
        }

        return new BarPrices(bars, price, _kindCost, _worth.Length - 1);
    }

    /// <summary>
    /// For a stick with this content: the least net cost it can come to, and how much more it costs when nothing is added.
    /// </summary>
    public void Stick(long content, out double least, out double closing)
    {
        int bucket = (int)(content >> _shift);
        closing = _closing[bucket];
        if (closing >= 0)
        {
            least = _least[bucket];
            return;
        }

        Measure(content, out least, out closing);
    }

    private void Measure(long content, out double least, out double closing)
    {
        least = double.MaxValue;
        double cost = double.MaxValue;
        long[] usable = _kinds.Usable;
        for (int kind = usable.Length - 1; kind >= 0 && usable[kind] >= content; kind--)
        {
            double price = _kindCost[kind];
            cost = Math.Min(cost, price);
            least = Math.Min(least, price - _worth[(int)((usable[kind] - content) >> _shift)]);
        }

        closing = cost - least;
    }

    /// <summary>Over all sticks, what their rests could still be worth.</summary>
    public double Closing(List<long> contents)
    {
        double sum = 0;
        foreach (long content in contents)
        {
            if (content > 0 && content + Shortest <= _kinds.Longest)
            {
                Stick(content, out _, out double closing);
                sum += closing;
            }
        }

        return sum;
    }

    private void Fill(long[] lengths)
    {
        for (int length = 0; length < lengths.Length; length++)
        {
            int size = (int)(lengths[length] >> _shift);
            double price = Price[length];
            for (int room = Math.Max(1, size); room < _worth.Length; room++)
            {
                double with = _worth[room - size] + price;
                if (size > 0 && with > _worth[room])
                {
                    _worth[room] = with;
                }
            }
        }
    }

    private double[] Distances(BarGraph graph)
    {
        var toEnd = new double[graph.Nodes];
        for (int node = graph.Nodes - 2; node >= 0; node--)
        {
            double best = double.PositiveInfinity;
            for (int a = graph.First[node]; a < graph.First[node + 1]; a++)
            {
                best = Math.Min(best, Price[graph.Length[a]] + toEnd[graph.To[a]]);
            }

            toEnd[node] = best;
        }

        return toEnd;
    }
}
