using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>The pieces chosen for every run, the nailers beside them, and the sticks they are cut from.</summary>
public sealed record CutLumber(
    IReadOnlyList<StrapRun> Runs,
    IReadOnlyList<IReadOnlyList<RunPiece>> Ways,
    IReadOnlyList<NailerLine> Nailers,
    IReadOnlyList<CutStick> StrapSticks,
    IReadOnlyList<CutStick> LedgerSticks,
    CutResult? StrapResult,
    CutResult? LedgerResult)
{
    /// <summary>How the straps are brought to a plane; null when no underside was read.</summary>
    public LevelledStraps? Levels { get; init; }

    /// <summary>Breaks that neighbouring rows share, and those where a joint is better not: both only where the rows leave no choice.</summary>
    public int UnwishedBreaks { get; init; }
}

/// <summary>One bought stick. A cut is of a run's piece (Run at least 0), or of nailer number Piece (Run −1), or of a scab (Run −2).</summary>
public sealed record CutStick(StickStock Stock, string Size, IReadOnlyList<(int Run, int Piece, long Length)> Cuts, long Offcut);

/// <summary>Hands the runs to the cutter as bars whose breaks and stock are one problem, and reads its plan back.</summary>
public sealed class LumberCut(FramedRoom room)
{
    /// <summary>What a scab takes: the strap's section, 300 mm. Common practice, no source.</summary>
    public const long ScabLength = 300 * Length.PerMillimetre;

    private readonly StrappingWish _wish = room.Survey.Strapping;

    public (CutLumber? Cut, Finding? Obstacle) Of(IReadOnlyList<StrapLine> lines, IReadOnlyList<StrapRun> runs, RowRules rules, Func<long, string> say)
    {
        var kinds = _wish.Stock
            .Where(s => s.Length.Units - _wish.EndTrim.Units > 0)
            .ToList();
        var (cut, obstacle, outOfStock) = Of(lines, runs, rules, say, kinds);
        var plentiful = kinds.Where(k => k.Quantity is null).ToList();
        if (!outOfStock || plentiful.Count == 0 || plentiful.Count == kinds.Count)
        {
            return (cut, obstacle);
        }

        // the lengths of which there are few did not go round: leave them
        var longest = plentiful.Max(k => k.Length.Units) - _wish.EndTrim.Units;
        var fitting = runs.Select(r => r with { Pieces = [.. r.Pieces.Where(p => p.CutLength <= longest)] }).ToList();
        var (second, stillNot, _) = Of(lines, fitting, rules, say, plentiful);
        return second is null ? (null, obstacle) : (second, stillNot);
    }

    private (CutLumber? Cut, Finding? Obstacle, bool OutOfStock) Of(
        IReadOnlyList<StrapLine> lines, IReadOnlyList<StrapRun> runs, RowRules rules, Func<long, string> say, List<StickStock> kinds)
    {
        var longest = Math.Min(new StrapRuns(room, rules).LongestPiece, kinds.Max(k => k.Length.Units) - _wish.EndTrim.Units);
        var longestLedger = LedgerStock.Longest(room.Survey.Units) - _wish.EndTrim.Units;
        var nailers = new NailerLines(room, rules).Of(lines, runs, longest, longestLedger);
        var priced = kinds.All(s => s.PackPrice is not null);
        var wallNailers = Enumerable.Range(0, nailers.Count).Where(i => nailers[i].OfStrap).ToList();
        var plan = BarBatches.Solve(
            new BarProblem(
                Bars(runs),
                [.. wallNailers.Select(i => new StickWanted(NailerCut(nailers[i]), 1))],
                [.. kinds.Select(s => new StickKind(s.Length.Units, Cost(s, priced), s.Quantity))],
                _wish.Kerf.Units,
                _wish.EndTrim.Units,
                StrapRuns.PoorGrade),
            room.Survey.Effort == Effort.Quick ? BarEffort.Quick : BarEffort.Thorough);
        if (plan.WithoutWay.Count > 0)
        {
            return (null, WhyNoWay(lines, runs, plan.WithoutWay, say, longest), false);
        }

        if (plan.Missing.Count > 0)
        {
            return (null, Findings.OutOfStock("strapping"), true);
        }

        var sticks = plan.Sticks
            .Select(s => new CutStick(
                kinds[s.Kind],
                SizeName(_wish),
                [.. s.Cuts.Select(c => c.Bar < 0 ? (-1, wallNailers[c.Piece], c.Length) : (c.Bar, c.Piece, c.Length))],
                s.Offcut))
            .ToList();
        sticks = Repacked(sticks, kinds, priced);
        var ways = plan.Ways.Select((way, r) => (IReadOnlyList<RunPiece>)[.. way.Select(p => runs[r].Pieces[p])]).ToList();
        var scabs = ways.Select((way, r) => way.Count(p => runs[r].Nodes[p.To].Joint == JointKind.Scab)).Sum();
        AddScabs(sticks, kinds, scabs);
        var cost = sticks.Sum(s => Cost(s.Stock, priced));
        nailers.AddRange(JointBlocks.Of(lines, runs, ways));
        var levels = LevelJoin.Of(room, lines, runs, ways);
        nailers.AddRange((levels?.Sisters ?? []).SelectMany(s => NailerLines.InLengths(s, longestLedger)));
        var (ledgerSticks, ledgerResult) = Ledgers(nailers);
        return (new CutLumber(
            runs, ways, nailers, sticks, ledgerSticks, Result("strapping", priced, cost, Math.Min(kinds.Count == _wish.Stock.Count && plan.LowerBound > 0 ? plan.LowerBound : RateBound(ways, sticks, priced), cost)), ledgerResult) { Levels = levels, UnwishedBreaks = plan.SharedBreaks + plan.PoorBreaks }, null, false);
    }

    public static string SizeName(StrappingWish wish) =>
        wish.SizeName ?? FormattableString.Invariant($"{wish.Thickness.Millimetres:0.##}x{wish.Face.Millimetres:0.##} mm");

    // runs that share their nodes or pieces give bars that share them
    private static Bar[] Bars(IReadOnlyList<StrapRun> runs)
    {
        var nodes = new Dictionary<object, BarNode[]>(ReferenceEqualityComparer.Instance);
        var pieces = new Dictionary<object, BarPiece[]>(ReferenceEqualityComparer.Instance);
        var bars = new Bar[runs.Count];
        for (var r = 0; r < bars.Length; r++)
        {
            var run = runs[r];
            if (!nodes.TryGetValue(run.Nodes, out var barNodes))
            {
                nodes[run.Nodes] = barNodes = [.. run.Nodes.Select(n => new BarNode(n.Key, n.Grade))];
            }

            if (!pieces.TryGetValue(run.Pieces, out var barPieces))
            {
                pieces[run.Pieces] = barPieces = [.. run.Pieces.Select(p => new BarPiece(p.From, p.To, p.CutLength))];
            }

            bars[r] = new Bar(barNodes, barPieces, run.Neighbours);
        }

        return bars;
    }

    private static long Cost(StickStock stock, bool priced) =>
        priced ? (long)decimal.Round(stock.PackPrice!.Value * 10_000m / stock.PackSize) : stock.Length.Units;

    private long NailerCut(NailerLine nailer) =>
        Math.Max(1, nailer.Length - (nailer.OfStrap ? 0 : 2 * _wish.EndClearance.Units));

    private CutResult Result(string use, bool priced, long cost, long bound)
    {
        var perUnit = priced ? 10_000m : room.Survey.Units == UnitSystem.Imperial ? Length.PerInch : Length.PerMillimetre;
        return new CutResult(
            use,
            priced ? "cost" : "length",
            cost / perUnit,
            bound / perUnit,
            bound == 0 ? 0 : decimal.Round((decimal)(cost - bound) / bound, 6),
            cost == bound,
            priced ? room.Survey.Prices?.Currency ?? string.Empty : room.Survey.Units == UnitSystem.Imperial ? "in" : "mm");
    }

    // the breaks stand: what remains is plain cutting stock, which is worth its own search
    private List<CutStick> Repacked(List<CutStick> sticks, List<StickStock> kinds, bool priced)
    {
        var cuts = sticks.SelectMany(s => s.Cuts).ToList();
        var again = StickCutter.Solve(
            new StickProblem(
                [.. cuts.Select(c => new StickWanted(c.Length, 1))],
                [.. kinds.Select(s => new StickKind(s.Length.Units, Cost(s, priced), s.Quantity))],
                _wish.Kerf.Units,
                _wish.EndTrim.Units),
            OrderBudget.Repack(room.Survey.Effort));
        return again.Missing.Count > 0 || again.Cost >= sticks.Sum(s => Cost(s.Stock, priced))
            ? sticks
            : [.. again.Sticks.Select(s => new CutStick(kinds[s.Kind], SizeName(_wish), [.. s.Pieces.Select(p => cuts[p])], s.Offcut))];
    }

    // with some stock left out the relaxation is no bound on all of it: length at the best rate of any stock is, and the
    // length of a run is the same whatever its breaks
    private long RateBound(List<IReadOnlyList<RunPiece>> ways, List<CutStick> sticks, bool priced)
    {
        var length = ways.Sum(way => way.Sum(p => p.CutLength)) + sticks.Sum(s => s.Cuts.Where(c => c.Run == -1).Sum(c => c.Length));
        return (long)Math.Floor(_wish.Stock.Min(s => (double)Cost(s, priced) / s.Length.Units) * length);
    }

    // scabs come out of offcuts first, then out of the shortest stock
    private void AddScabs(List<CutStick> sticks, List<StickStock> kinds, int scabs)
    {
        for (var i = 0; i < scabs; i++)
        {
            var need = ScabLength + _wish.Kerf.Units;
            var index = -1;
            for (var s = 0; s < sticks.Count; s++)
            {
                if (sticks[s].Offcut >= need && (index < 0 || sticks[s].Offcut < sticks[index].Offcut))
                {
                    index = s;
                }
            }

            if (index < 0)
            {
                var stock = kinds.Where(k => k.Quantity is null || sticks.Count(s => s.Stock.Id == k.Id) < k.Quantity).OrderBy(k => k.Length).FirstOrDefault() ?? kinds.MinBy(k => k.Length)!;
                sticks.Add(new CutStick(stock, SizeName(_wish), [(-2, i, ScabLength)], stock.Length.Units - _wish.EndTrim.Units - need));
                continue;
            }

            var stick = sticks[index];
            sticks[index] = stick with { Cuts = [.. stick.Cuts, (-2, i, ScabLength)], Offcut = stick.Offcut - need };
        }
    }

    /// <summary>Cuts the ledgers and blocks from 2x4.</summary>
    internal (IReadOnlyList<CutStick>, CutResult?) Ledgers(List<NailerLine> nailers)
    {
        var ledgers = Enumerable.Range(0, nailers.Count).Where(i => !nailers[i].OfStrap).ToList();
        if (ledgers.Count == 0)
        {
            return ([], null);
        }

        var stock = LedgerStock.For(room.Survey.Units);
        var plan = StickCutter.Solve(new StickProblem(
            [.. ledgers.Select(i => new StickWanted(NailerCut(nailers[i]), 1))],
            [.. stock.Select(s => new StickKind(s.Length.Units, s.Length.Units))],
            _wish.Kerf.Units,
            _wish.EndTrim.Units), OrderBudget.Frame(room.Survey.Effort), OrderBudget.FrameRepack(room.Survey.Effort));
        var sticks = plan.Sticks
            .Select(s => new CutStick(
                stock[s.Kind],
                LedgerStock.Size,
                [.. s.Pieces.Select(p => (-1, ledgers[p], NailerCut(nailers[ledgers[p]])))],
                s.Offcut))
            .ToList();
        return (sticks, Result("nailers", false, plan.Cost, plan.LowerBound));
    }

    private Finding WhyNoWay(IReadOnlyList<StrapLine> lines, IReadOnlyList<StrapRun> runs, IReadOnlyList<int> without, Func<long, string> say, long longest)
    {
        List<string> rows = [.. without.Select(w => $"row at {say(lines[runs[w].Line].At)}").Distinct()];
        if (_wish.JointsAllowed == JointStyles.SideLap)
        {
            return Findings.RowsOfOnePiece(rows, say(longest));
        }

        long bay = 0;
        foreach (var run in without.Select(w => runs[w]))
        {
            for (var i = 0; i + 1 < run.Supports.Count; i++)
            {
                bay = Math.Max(bay, run.Supports[i + 1].Middle - run.Supports[i].Middle);
            }
        }

        return Findings.StockTooShort(rows, say(bay), say(longest));
    }
}
