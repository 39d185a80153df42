namespace LayoutService.Engine.Cutting;

/// <summary>The order of the search: what is tried, how wide, and when it stops.</summary>
internal sealed class BarSearch
{
    private readonly BarCase _bars;
    private readonly BarWeights _weights;
    private readonly BarJudge _judge;
    private readonly int[] _order;

    public BarSearch(BarCase bars, int poorGrade)
    {
        _bars = bars;
        _weights = new BarWeights(bars, poorGrade);
        _judge = new BarJudge(bars, poorGrade);
        Best = new BarSolution(bars);
        _order = new int[bars.Runs.Length];
        for (int r = 0; r < _order.Length; r++)
        {
            _order[r] = r;
        }
    }

    public BarSolution Best { get; private set; }

    public BarScore Score { get; private set; } = new(long.MaxValue, 0, 0, 0, 0);

    public BarJudge Judge => _judge;

    public static int QuickWidth { get; set; } = 4;

    public static double QuickShare { get; set; } = 0.3;

    public static int QuickBuckets { get; set; } = 600;

    /// <summary>One beam by rate; returns the bound by rate.</summary>
    public long Quick()
    {
        var prices = new BarPrices(_bars, BarPrices.ByRate(_bars), QuickBuckets);
        var beam = new BarBeam(_bars, _weights, prices);
        beam.Place(Best, _order, prices, QuickWidth, QuickShare);
        Score = _judge.Of(Best);
        return BarBound.ByRate(_bars);
    }

    public long Thorough(long steps)
    {
        var relaxation = new LengthRelaxation(_bars.Lengths, _bars.Kinds, _bars.Graphs);
        var bars = new int[_bars.Graphs.Length];
        foreach (BarRun run in _bars.Runs)
        {
            bars[run.Graph]++;
        }

        long bound = relaxation.Solve(new int[_bars.Lengths.Length], bars, _bars.Kinds.Quantity, false, long.MaxValue, steps / 2);
        var price = new double[_bars.Lengths.Length];
        for (int length = 0; length < price.Length; length++)
        {
            price[length] = relaxation.Prices[length] / (double)relaxation.Scale;
        }

        var prices = new BarPrices(_bars, price, 2000);
        var beam = new BarBeam(_bars, _weights, prices);
        foreach (int width in (int[])[4, 16, 64])
        {
            foreach (double share in (double[])[0.1, 0.3, 0.6])
            {
                var trial = new BarSolution(_bars);
                beam.Place(trial, _order, prices, width, share);
                Keep(trial);
            }
        }

        return bound;
    }

    private void Keep(BarSolution trial)
    {
        BarScore score = _judge.Of(trial);
        if (score.CompareTo(Score) < 0)
        {
            Score = score;
            Best.CopyFrom(trial);
        }
    }
}
