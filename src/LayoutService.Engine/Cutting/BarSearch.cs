namespace LayoutService.Engine.Cutting;

/// <summary>The order of the search: what is tried, how wide, and when it stops.</summary>
internal sealed class BarSearch
{
    private readonly BarCase _bars;
    private readonly BarWeights _weights;
    private readonly BarStagger _stagger;
    private readonly BarJudge _judge;
    private readonly int[] _order;

    public BarSearch(BarCase bars, int poorGrade)
    {
        _bars = bars;
        _weights = new BarWeights(bars, poorGrade);
        _stagger = new BarStagger(bars, poorGrade);
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
        BarPrices prices = ByRate(0, QuickBuckets);
        var beam = new BarBeam(_bars, _weights, prices);
        Try(beam, prices, QuickWidth, QuickShare);
        if (_bars.Kinds.Limited)
        {
            prices = ByRate(_bars.Kinds.LargestCost, QuickBuckets);
            Try(beam, prices, QuickWidth, QuickShare);
        }

        return BarBound.ByRate(_bars);
    }

    /// <summary>Relaxation, beams, repair; returns the relaxation's bound.</summary>
    public long Thorough(long steps)
    {
        var relaxation = new LengthRelaxation(_bars.Lengths, _bars.Kinds, _bars.Graphs);
        long bound = Math.Max(BarBound.ByRate(_bars), relaxation.Solve(_bars, steps / 2));
        BarPrices prices = ByRelaxation(relaxation);
        BarPrices rate = ByRate(0, ThoroughBuckets);
        BarPrices[] all = _bars.Kinds.Limited ? [prices, rate, ByRate(_bars.Kinds.LargestCost, ThoroughBuckets)] : [prices, prices, rate];
        var beam = new BarBeam(_bars, _weights, prices);
        foreach (int width in (int[])[4, 16, 64])
        {
            foreach (double share in (double[])[0.1, 0.3, 0.6])
            {
                Try(beam, all[0], width, share);
            }
        }

        if (_bars.Kinds.Limited)
        {
            Try(beam, all[1], 16, QuickShare);
            Try(beam, all[2], 16, QuickShare);
        }

        var repair = new BarRepair(_bars, _judge, beam, _stagger, _weights);
        Score = repair.Run(Best, Score, all, bound, RepairSteps);
        return bound;
    }

    public static long RepairSteps { get; set; } = 40_000_000;

    private const int ThoroughBuckets = 2000;

    private BarPrices ByRelaxation(LengthRelaxation relaxation)
    {
        var price = new double[_bars.Lengths.Length];
        for (int length = 0; length < price.Length; length++)
        {
            price[length] = relaxation.Prices[length] / (double)relaxation.Scale;
        }

        return new BarPrices(_bars, price, BarPrices.KindCosts(_bars.Kinds, relaxation.Charge), ThoroughBuckets);
    }

    private BarPrices ByRate(double charge, int buckets)
    {
        double[] kindCost = BarPrices.KindCosts(_bars.Kinds, _ => charge);
        return new BarPrices(_bars, BarPrices.ByRate(_bars, kindCost), kindCost, buckets);
    }

    private void Try(BarBeam beam, BarPrices prices, int width, double share)
    {
        var trial = new BarSolution(_bars);
        beam.Place(trial, _order, prices, width, share, _weights.Violation);
        Keep(trial);
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
