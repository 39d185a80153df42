using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Composition;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Tests.Optimum;

/// <summary>
/// What one room's straps cost: as planned, by the thorough cutter on the same rows, and by the reference, which keeps the
/// same rules of breaks and begins from the thorough plan (where a room forces a break against the rules, from nothing and
/// without them; where it can name no plan of its own, the thorough plan stands).
/// </summary>
internal sealed record LumberTrial(SeededSurvey Room, long Planned, long PlannedBound, long Thorough, long ThoroughBound, LumberReference? Named)
{
    /// <summary>What the reference found; where it named no plan, the thorough plan stands for it.</summary>
    public LumberReference Reference => Named ?? new LumberReference(Thorough, ThoroughBound, false);

    /// <summary>The cheapest that anyone found.</summary>
    public long Best => Math.Min(Reference.Cost, Math.Min(Planned, Thorough));

    public double QuickOver => ((double)Planned / Best) - 1;

    public double ThoroughOver => ((double)Thorough / Best) - 1;

    /// <summary>The greater of the reference's bound, which knows the rules of breaks, and the engine's own.</summary>
    public long Bound => Math.Max(Reference.Bound, ThoroughBound);

    public double BestOverBound => ((double)Best / Bound) - 1;

    /// <summary>Whether a bound shows that nothing cheaper keeps the rules.</summary>
    public bool Proved => Best <= Bound;

    /// <summary>Null where the room has no plan, or has nailers cut from the same sticks as its rows.</summary>
    public static LumberTrial? Of(SeededSurvey seeded, int milliseconds)
    {
        if (LayoutEngine.Plan(seeded.Survey) is not PlanOutcome.Made { Plan: var plan } || Runs(seeded.Survey) is not { } runs)
        {
            return null;
        }

        var survey = seeded.Survey;
        var wish = survey.Strapping;
        var priced = wish.Stock.All(s => s.PackPrice is not null);
        var problem = new BarProblem(
            [.. runs.Select(r => new Bar(
                [.. r.Nodes.Select(n => new BarNode(n.Key, n.Grade))],
                [.. r.Pieces.Select(p => new BarPiece(p.From, p.To, p.CutLength))],
                r.Neighbours))],
            [],
            [.. wish.Stock.Select(s => new StickKind(s.Length.Units, priced ? (long)(s.PackPrice!.Value * 100) : s.Length.Units))],
            wish.Kerf.Units,
            wish.EndTrim.Units,
            StrapRuns.PoorGrade);
        var result = plan.CutPlan.Results.Single(r => r.Use == "strapping");
        var scale = priced ? 100m : survey.Units == UnitSystem.Imperial ? Length.PerInch : Length.PerMillimetre;
        var step = survey.Units == UnitSystem.Imperial ? Length.PerSixteenth : Length.PerMillimetre;
        var thorough = BarCutter.Solve(problem, BarEffort.Thorough);
        var rules = thorough.SharedBreaks + thorough.PoorBreaks == 0;
        var reference = LumberProgram.Solve(problem, step, milliseconds, rules, rules ? thorough : null);
        return new LumberTrial(
            seeded,
            (long)decimal.Round(result.Cost * scale),
            (long)decimal.Round(result.LowerBound * scale),
            thorough.Cost,
            thorough.LowerBound,
            reference);
    }

    public static List<LumberTrial> Run(int count, int milliseconds)
    {
        var trials = new List<LumberTrial>();
        for (var seed = 0; trials.Count < count && seed < 3 * count; seed++)
        {
            if (Of(SeededSurveys.Make(seed), milliseconds) is { } trial)
            {
                trials.Add(trial);
            }
        }

        return trials;
    }

    // the rows as the plan draws them, each stretch with its feasible pieces
    private static List<StrapRun>? Runs(Survey survey)
    {
        var room = FramedRoom.Of(Pricing.WithListPrices(survey));
        if (new CeilingSearch(room).Best().Chosen is not { } chosen)
        {
            return null;
        }

        var straps = new StrapRuns(room, chosen.Rules);
        var runs = straps.Of(chosen.Lines, ButtZones.Of(chosen, new BoardPieces(room).Cut(chosen.Layout)));
        var nailers = new NailerLines(room, chosen.Rules).Of(chosen.Lines, runs, straps.LongestPiece, straps.LongestPiece);
        return nailers.Exists(n => n.Role == NailerRole.WallNailer) ? null : runs;
    }

    public override string ToString() =>
        $"{Room}: planned {Planned} (bound {PlannedBound}), thorough {Thorough} (bound {ThoroughBound}), reference {Reference.Cost} (bound {Reference.Bound})";
}
