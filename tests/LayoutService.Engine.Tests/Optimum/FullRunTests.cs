using LayoutService.Engine.Ceilings;
using static System.FormattableString;

namespace LayoutService.Engine.Tests.Optimum;

/// <summary>Measures the full sets for the page; the figures hold for seeds from 0 on that have a plan.</summary>
public sealed class FullRunTests
{
    private const int ReferenceMilliseconds = 4000;

    [FullRunFact]
    public void Rows()
    {
        var trials = RowTrial.Run(0, 1000);
        var lines = new List<string> { "| shape | rooms | full rows planned | full rows proved least | rooms that differ |", "|---|---|---|---|---|" };
        foreach (var shape in trials.GroupBy(t => t.Room.Shape).OrderBy(g => g.Key, StringComparer.Ordinal).Append(trials.GroupBy(_ => "all").First()))
        {
            lines.Add(Invariant($"| {shape.Key} | {shape.Count()} | {shape.Sum(t => t.Planned)} | {shape.Sum(t => t.Proved)} | {shape.Count(t => t.Planned != t.Proved)} |"));
        }

        lines.Add(string.Empty);
        lines.AddRange(trials.Where(t => t.Planned != t.Proved).Select(t => $"- {t}"));
        MeasuredPage.Write("Rows", lines);
        Assert.Equal(1000, trials.Count);
    }

    [FullRunFact]
    public void Sheets()
    {
        var lines = new List<string>
        {
            "| effort | rooms | no dearer than (a) and (b) | no dearer than (a) alone | no dearer than (b) alone | no dearer than (a') and (b) | greatest excess over (a) and (b), sheets | more than one sheet over | mean gap to own bound |",
            "|---|---|---|---|---|---|---|---|---|",
        };
        foreach (var (effort, count) in new[] { (Effort.Quick, 500), (Effort.Thorough, 60) })
        {
            var t = SheetTrial.Run(count, effort);
            string Share(Func<SheetTrial, bool> of) => Invariant($"{t.Count(of)} ({100.0 * t.Count(of) / t.Count:F1} %)");
            lines.Add(Invariant($"| {effort.ToString().ToLowerInvariant()} | {t.Count} | {Share(x => x.NoDearerThanHand)} | {Share(x => x.Planned <= x.Backed * 1.000001)} | {Share(x => x.Planned <= x.ByArea * 1.000001)} | {Share(x => x.NoDearerThanAny)} | {t.Max(x => x.SheetsOverHand):F2} | {t.Count(x => x.SheetsOverHand > 1.000001)} | {100 * t.Average(x => x.Gap):F1} % |"));
            MeasuredPage.Write("Sheets", lines);
            Assert.Equal(count, t.Count);
        }
    }

    [FullRunFact]
    public void Lumber()
    {
        var trials = new List<LumberTrial>();
        for (var seed = 0; trials.Count < 200 && seed < 600; seed++)
        {
            if (LumberTrial.Of(SeededSurveys.Make(seed), ReferenceMilliseconds) is { } trial)
            {
                trials.Add(trial);
                if (trials.Count % 25 == 0)
                {
                    MeasuredPage.Write("Lumber", Table(trials));
                }
            }
        }

        Assert.Equal(200, trials.Count);
        Assert.True(trials.Average(t => t.ThoroughOver) <= 0.003);
    }

    private static List<string> Table(List<LumberTrial> t)
    {
        string Row(string name, Func<LumberTrial, double> over, Predicate<LumberTrial>? which = null)
        {
            var of = t.FindAll(which ?? (_ => true));
            return Invariant($"| {name} | {of.Count} | {100 * of.Average(over):F2} % | {100 * of.Max(over):F2} % | {of.Count(x => over(x) <= 1e-9)} | {of.Count(x => over(x) <= 0.01)} |");
        }

        return
        [
            "| cost over the best known | rooms | mean | worst | equal | within 1 % |",
            "|---|---|---|---|---|---|",
            Row("plan at quick effort", x => x.QuickOver),
            Row("thorough cutter on the same rows", x => x.ThoroughOver),
            Row(Invariant($"reference ({ReferenceMilliseconds / 1000} s)"), x => ((double)x.Reference.Cost / x.Best) - 1),
            Row("thorough, where the best is proved", x => x.ThoroughOver, x => x.Proved),
            string.Empty,
            Invariant($"The best known stands {100 * t.Average(x => x.BestOverBound):F2} % above the best bound on average; the two meet (proved) in {t.Count(x => x.Proved)} rooms. In {t.Count(x => x.Named is null)} rooms the reference named no plan (a length had to be rounded up, or its time was out) and the thorough plan stands for it, in {t.Count(x => x.Reference.Cost < x.Thorough)} it bettered it."),
            string.Empty,
            "At thorough effort more than 1 % over the best known:",
            string.Empty,
            .. t.Where(x => x.ThoroughOver > 0.01).Select(x => $"- {x}"),
        ];
    }
}
