namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: the best woven solution that the steps allow. Method: all bars at once, along the rows and against them, joints
/// dear at first and then cheaper; then a few bars at a time, by chance, beside the rest (large neighbourhood search, Shaw
/// 1998), until the bound is reached or the steps are spent. Between two solutions of one cost it goes to the one whose
/// pieces cost less in relaxed sticks, whatever its joints: that way lies the next stick less. Cost: steps bound it. Why
/// this one: the first weave is mostly within a stick or two of the bound, and the bars that keep it from it are few.
/// </summary>
internal sealed class BarWeaving(BarCase bars, BarJudge judge, BarStagger stagger, int[][] caps, int poorGrade)
{
    private const long WeaveWork = 25_000_000;
    private const long FirstWork = 90_000_000;
    private const long AgainWork = 150_000_000;
    private const int MostAgain = 9;

    /// <summary>Relaxed costs nearer to each other than this part of the dearest stick are the same: the relaxation's own nudges differ by less.</summary>
    private const double Even = 1e-4;

    /// <summary>What a weave costs at least, in steps of the relaxation.</summary>
    private const long WorkAWeave = 1_000_000;

    /// <summary>Charge for a joint, as a part of the dearest stick, and whether the bars are taken from the last to the first.</summary>
    private static readonly (double Joint, bool Back)[] Firsts = [(0.01, false), (0.005, true), (0.003, false), (0.002, true), (0.001, false), (0, true)];

    private static readonly double[] Joints = [0, 0.002, 0.01];

    private readonly BarChance _chance = new();

    /// <summary>Score of the best solution.</summary>
    public BarScore Score { get; private set; } = new(long.MaxValue, 0, 0, 0, 0);

    /// <summary>The best solution; null before the first.</summary>
    public BarSolution? Best { get; private set; }

    /// <summary>Weaves until the bound is reached or the steps are spent; so many such searches share them.</summary>
    public void Run(LengthRelaxation relaxation, long bound, int parts)
    {
        long limit = relaxation.Work + FirstWork / parts;
        foreach ((double joint, bool back) in Firsts)
        {
            if (Best is not null && (relaxation.Work > limit || Reached(bound)))
            {
                break;
            }

            int[] order = [.. Enumerable.Range(0, bars.Runs.Length)];
            if (back)
            {
                Array.Reverse(order);
            }

            var weaver = new BarWeaver(bars, relaxation, caps, poorGrade);
            BarSolution woven = weaver.Weave(order, null, new WeaveStyle(joint * bars.Kinds.LargestCost, 0, WeaveWork / parts));
            Settle(woven);
        }

        if (bars.Runs.Length > 2)
        {
            Again(relaxation, bound, parts);
        }
    }

    private void Again(LengthRelaxation relaxation, long bound, int parts)
    {
        BarSolution now = Best!;
        BarScore score = Score;
        double relaxed = double.MaxValue;
        long spent = 0;
        while (spent < AgainWork / parts && !Reached(bound))
        {
            long before = relaxation.Work;
            double joint = Joints[_chance.Next(Joints.Length)] * bars.Kinds.LargestCost;
            var weaver = new BarWeaver(bars, relaxation, caps, poorGrade);
            BarSolution trial = weaver.Weave(Some(), now, new WeaveStyle(joint, _chance.State | 1, WeaveWork / parts));
            spent += Math.Max(WorkAWeave, relaxation.Work - before + weaver.Packed);
            BarScore after = Settle(trial);
            bool even = (after.Violations, after.Cost) == (score.Violations, score.Cost);
            if (even ? weaver.Relaxed <= relaxed + Even * bars.Kinds.LargestCost || _chance.Next(20) == 0 : after.CompareTo(score) < 0)
            {
                (now, score, relaxed) = (trial, after, weaver.Relaxed);
            }
        }
    }

    private BarScore Settle(BarSolution woven)
    {
        stagger.Settle(woven);
        BarScore score = judge.Of(woven);
        if (score.CompareTo(Score) < 0)
        {
            (Score, Best) = (score, woven);
        }

        return score;
    }

    // a third of the time some that lie side by side
    private int[] Some()
    {
        int all = bars.Runs.Length;
        int size = Math.Min(all, 2 + _chance.Next(Math.Max(2, Math.Min(MostAgain, all * 2 / 3))));
        int at = _chance.Next(all);
        bool sideBySide = _chance.Next(3) == 0;
        var some = new List<int>();
        while (some.Count < size)
        {
            int run = sideBySide ? at++ % all : _chance.Next(all);
            if (!some.Contains(run))
            {
                some.Add(run);
            }
        }

        return [.. some];
    }

    private bool Reached(long bound) => Score.Violations == 0 && Score.Cost <= bound;
}
