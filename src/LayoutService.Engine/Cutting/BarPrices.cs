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

    public BarPrices(BarCase bars, double[] price, double[] kindCost, int buckets)
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

    /// <summary>Cost of each kind, with the charge added for each kind of which there are only so many.</summary>
    public static double[] KindCosts(StockKinds kinds, Func<int, double> charge)
    {
        var cost = new double[kinds.Count];
        for (int kind = 0; kind < cost.Length; kind++)
        {
            cost[kind] = kinds.Cost[kind] + (kinds.Quantity[kind] == int.MaxValue ? 0 : charge(kind));
        }

        return cost;
    }

    /// <summary>Prices in proportion to length, at the best rate that any kind offers.</summary>
    public static double[] ByRate(BarCase bars, double[] kindCost)
    {
        double rate = double.MaxValue;
        for (int kind = 0; kind < bars.Kinds.Count; kind++)
        {
            if (bars.Kinds.Usable[kind] > 0)
            {
                rate = Math.Min(rate, kindCost[kind] / bars.Kinds.Usable[kind]);
            }
        }

        var price = new double[bars.Lengths.Length];
        for (int length = 0; length < price.Length; length++)
        {
            price[length] = rate * bars.Lengths[length];
        }

        return price;
    }

    /// <summary>
    /// For a stick with this content: the least net cost it can come to, and how much more it costs when nothing is added.
    /// </summary>
    public void Stick(long content, out double least, out double closing)
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
