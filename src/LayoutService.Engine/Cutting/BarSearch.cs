namespace LayoutService.Engine.Cutting;

/// <summary>
/// The order of the search: what is tried, how wide, and when it stops. All budgets are counted in steps, a step being one
/// piece tried on one stick (about 20 ns).
/// </summary>
internal sealed class BarSearch
{
    private const int QuickWidth = 2;
    private const int QuickBuckets = 600;
    private const long QuickRepairSteps = 40_000;

    /// <summary>Below so many steps a fine table of prices takes longer to fill than it saves.</summary>
    private const long FineSteps = 100_000;

    private const int ThoroughBuckets = 2_000;
    private const long ThoroughRepairSteps = 4_000_000;
    private const long ThoroughBeamSteps = 8_000_000;
    private const long RelaxationWork = 60_000_000;

    /// <summary>More different lengths than this and the relaxation's table would no longer be small.</summary>
    private const int MostLengthsToRelax = 700;

    private readonly BarCase _bars;
    private readonly BarWeights _weights;
    private readonly BarStagger _stagger;
    private readonly BarBeam _beam;
    private readonly int[] _order;
    private readonly int _poorGrade;

    public BarSearch(BarCase bars, int poorGrade)
    {
        _bars = bars;
        _poorGrade = poorGrade;
        _weights = new BarWeights(bars, poorGrade);
        _stagger = new BarStagger(bars, poorGrade);
        Judge = new BarJudge(bars, poorGrade);
        Best = new BarSolution(bars);
        _beam = new BarBeam(bars, _weights);
        _order = new int[bars.Runs.Length];
        for (int r = 0; r < _order.Length; r++)
        {
            _order[r] = r;
        }
    }

    public BarSolution Best { get; }

    /// <summary>Score of the best solution; before the first, worse than any.</summary>
    public BarScore Score { get; private set; } = new(long.MaxValue, 0, 0, 0, 0);

    public BarJudge Judge { get; }

    /// <summary>A narrow beam by rate and a short repair; returns the bound by rate.</summary>
    public long Quick()
    {
        long bound = BarBound.ByRate(_bars);
        BarPrices prices = BarPrices.ByRate(_bars, 0, QuickBuckets);
        Try(prices, QuickWidth, 0.3);
        if (_bars.Kinds.Limited)
        {
            Try(BarPrices.ByRate(_bars, _bars.Kinds.LargestCost, QuickBuckets), QuickWidth, 0.3);
        }

        var repair = new BarRepair(_bars, Judge, _beam, _stagger, _weights, BarRepairStyle.Quick);
        Score = repair.Run(Best, Best, Score, [prices], bound, QuickRepairSteps);
        if (Untangled())
        {
            Score = repair.Run(Best, Best, Score, [prices], bound, QuickRepairSteps);
        }

        return bound;
    }

    /// <summary>A beam and a repair by rate alone, for fixed pieces whose bound is known from elsewhere.</summary>
    public void Repack(long bound, long steps)
    {
        int buckets = steps < FineSteps ? QuickBuckets : ThoroughBuckets;
        BarPrices rate = BarPrices.ByRate(_bars, 0, buckets);
        BarPrices charged = rate;
        Try(rate, 4, 0.3);
        if (_bars.Kinds.Limited)
        {
            charged = BarPrices.ByRate(_bars, _bars.Kinds.LargestCost, buckets);
            Try(charged, 4, 0.3);
        }

        var repair = new BarRepair(_bars, Judge, _beam, _stagger, _weights, BarRepairStyle.Thorough);
        Score = repair.Run(Best, Best, Score, [rate, charged, rate.Varied(_bars, 0), rate.Varied(_bars, 1)], bound, steps);
    }

    /// <summary>Relaxation, weaving, beams of growing width, a long repair; returns the relaxation's bound. Parts: as many such searches share the steps.</summary>
    public long Thorough(int parts)
    {
        long bound = BarBound.ByRate(_bars);
        BarPrices rate = BarPrices.ByRate(_bars, 0, ThoroughBuckets);
        BarPrices first = rate;
        if (_bars.Lengths.Length <= MostLengthsToRelax)
        {
            int[][] caps = BarCaps.Of(_bars, _poorGrade);
            bool few = _bars.Lengths.Length + caps.Sum(nodes => nodes.Count(cap => cap != int.MaxValue)) <= MostLengthsToRelax;
            var relaxation = new LengthRelaxation(_bars.Lengths, _bars.Kinds, _bars.Graphs, few ? caps : null);
            bound = Math.Max(bound, relaxation.Solve(_bars, RelaxationWork / parts));
            first = BarPrices.ByRelaxation(_bars, relaxation, ThoroughBuckets);
            Weave(relaxation, caps, bound, parts);
        }

        List<BarPrices> prices = [first, first, rate];
        if (_bars.Kinds.Limited)
        {
            prices[1] = BarPrices.ByRate(_bars, _bars.Kinds.LargestCost, ThoroughBuckets);
        }

        Beams(prices, ThoroughBeamSteps / parts);
        for (int variant = 0; variant < 4; variant++)
        {
            prices.Add((variant % 2 == 0 ? first : rate).Varied(_bars, variant));
        }

        var repair = new BarRepair(_bars, Judge, _beam, _stagger, _weights, BarRepairStyle.Thorough);
        Score = repair.Run(Best, Best, Score, [.. prices], bound, ThoroughRepairSteps / 2 / parts);
        Score = repair.Run(Best, Best, Score, [.. prices], bound, ThoroughRepairSteps / 2 / parts);
        if (Untangled())
        {
            Score = repair.Run(Best, Best, Score, [.. prices], bound, ThoroughRepairSteps / 2 / parts);
        }

        return bound;
    }

    // breaks that neighbours share, or in poor places, come before cost
    private bool Untangled()
    {
        if (Score.Violations == 0 || new BarUntangle(_bars, Judge, _stagger, _poorGrade).Of(Best) is not { } made)
        {
            return false;
        }

        Score = Judge.Of(made);
        Best.CopyFrom(made);
        return true;
    }

    private void Weave(LengthRelaxation relaxation, int[][] caps, long bound, int parts)
    {
        var weaving = new BarWeaving(_bars, Judge, _stagger, caps, _poorGrade);
        weaving.Run(relaxation, bound, parts);
        if (weaving.Best is { } woven && weaving.Score.CompareTo(Score) < 0)
        {
            Score = weaving.Score;
            Best.CopyFrom(woven);
        }
    }

    private void Beams(List<BarPrices> prices, long steps)
    {
        Try(prices[2], QuickWidth, 0.3);
        foreach (int width in (ReadOnlySpan<int>)[4, 16, 64])
        {
            foreach (double share in (ReadOnlySpan<double>)[0.1, 0.3, 0.6])
            {
                if (_beam.Work * 4 < steps)
                {
                    Try(prices[0], width, share);
                }
            }
        }

        if (_bars.Kinds.Limited)
        {
            Try(prices[1], 4, 0.3);
        }
    }

    private void Try(BarPrices prices, int width, double share)
    {
        var trial = new BarSolution(_bars);
        _beam.Place(trial, _order, prices, new BarBeamStyle(width, share, _weights.Violation, 0));
        _stagger.Settle(trial);
        BarScore score = Judge.Of(trial);
        if (score.CompareTo(Score) < 0)
        {
            Score = score;
            Best.CopyFrom(trial);
        }
    }
}
