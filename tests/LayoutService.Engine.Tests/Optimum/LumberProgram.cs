using Google.OrTools.LinearSolver;
using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Optimum;

/// <summary>What the reference found: its best cost, a bound that no plan goes below, and whether the two meet.</summary>
internal sealed record LumberReference(long Cost, long Bound, bool Proved);

/// <summary>
/// The cheapest sticks for a room's bars, break points included, by a general solver: a way through each bar as a flow
/// along its pieces, equal bars taken together, and sticks as columns made by pricing the linear relaxation (Gilmore and
/// Gomory 1961), then the integer program over the columns found (SCIP), with a time limit. Stagger and butts are left out,
/// so the reference may be cheaper than anything that should be built. Lengths are counted in whole steps, rounded up for
/// the cost; the bound holds where no length had to be rounded.
/// </summary>
internal sealed class LumberProgram
{
    private readonly BarProblem _problem;
    private readonly long _step;
    private readonly List<long> _lengths;
    private readonly int[] _weights;
    private readonly int[] _capacities;
    private readonly List<(Bar Bar, int Count)> _groups;
    private readonly List<(int Kind, int[] Pieces)> _columns = [];

    private LumberProgram(BarProblem problem, long step)
    {
        (_problem, _step) = (problem, step);
        _lengths = [.. problem.Bars.SelectMany(b => b.Pieces.Select(p => p.Length)).Concat(problem.Extras.Select(e => e.Length)).Distinct().Order()];
        Exact = _lengths.TrueForAll(l => (l + problem.Kerf) % step == 0) && problem.Kinds.All(k => (k.Length - problem.EndTrim + problem.Kerf) % step == 0);
        _weights = [.. _lengths.Select(l => (int)((l + problem.Kerf + step - 1) / step))];
        _capacities = [.. problem.Kinds.Select(k => (int)((k.Length - problem.EndTrim + problem.Kerf) / step))];
        _groups = [.. problem.Bars.GroupBy(b => string.Join(' ', b.Pieces.Select(p => $"{p.From}-{p.To}-{p.Length}"))).Select(g => (g.First(), g.Count()))];
    }

    private bool Exact { get; }

    /// <param name="problem">Bars and stock without limits of quantity.</param>
    /// <param name="step">The step that lengths are whole in.</param>
    /// <param name="milliseconds">The time that the integer program may take.</param>
    public static LumberReference? Solve(BarProblem problem, long step, int milliseconds)
    {
        var program = new LumberProgram(problem, step);
        for (var i = 0; i < program._lengths.Count; i++)
        {
            for (var k = 0; k < program._capacities.Length; k++)
            {
                if (program._capacities[k] >= program._weights[i])
                {
                    var alone = new int[program._lengths.Count];
                    alone[i] = program._capacities[k] / program._weights[i];
                    program._columns.Add((k, alone));
                }
            }
        }

        var relaxed = program.Relax();
        if (relaxed is not { } bound)
        {
            return null;
        }

        var divisor = problem.Kinds.Aggregate(0L, (d, k) => (long)System.Numerics.BigInteger.GreatestCommonDivisor(d, k.Cost));
        var least = (long)Math.Ceiling((bound / divisor) - 1e-6) * divisor;
        using var solver = Solver.CreateSolver("SCIP");
        var (sticks, _) = program.Write(solver, true);
        solver.SetTimeLimit(milliseconds);
        var status = solver.Solve();
        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE))
        {
            return null;
        }

        long cost = 0;
        for (var c = 0; c < sticks.Count; c++)
        {
            cost += (long)Math.Round(sticks[c].SolutionValue()) * problem.Kinds[program._columns[c].Kind].Cost;
        }

        return new LumberReference(cost, program.Exact ? Math.Min(least, cost) : 0, program.Exact && cost <= least);
    }

    // prices the relaxation until no stick is worth more than it costs
    private double? Relax()
    {
        for (var round = 0; round < 200; round++)
        {
            using var solver = Solver.CreateSolver("GLOP");
            var (_, demands) = Write(solver, false);
            if (solver.Solve() != Solver.ResultStatus.OPTIMAL)
            {
                return null;
            }

            var worths = demands.Select(d => Math.Max(0, d.DualValue())).ToArray();
            var added = 0;
            for (var k = 0; k < _capacities.Length; k++)
            {
                var (worth, pieces) = Best(worths, _capacities[k]);
                if (worth > _problem.Kinds[k].Cost * (1 + 1e-9))
                {
                    _columns.Add((k, pieces));
                    added++;
                }
            }

            if (added == 0)
            {
                return solver.Objective().Value();
            }
        }

        return null;
    }

    // the unbounded knapsack, by length
    private (double Worth, int[] Pieces) Best(double[] worths, int capacity)
    {
        var best = new double[capacity + 1];
        var by = new int[capacity + 1];
        Array.Fill(by, -1);
        var useful = Enumerable.Range(0, worths.Length).Where(i => worths[i] > 1e-9 && _weights[i] <= capacity).ToArray();
        for (var at = 1; at <= capacity; at++)
        {
            (best[at], by[at]) = (best[at - 1], -1);
            foreach (var i in useful)
            {
                if (_weights[i] <= at && best[at - _weights[i]] + worths[i] > best[at] + 1e-12)
                {
                    (best[at], by[at]) = (best[at - _weights[i]] + worths[i], i);
                }
            }
        }

        var pieces = new int[worths.Length];
        for (var at = capacity; at > 0;)
        {
            if (by[at] < 0)
            {
                at--;
                continue;
            }

            pieces[by[at]]++;
            at -= _weights[by[at]];
        }

        return (best[capacity], pieces);
    }

    private (List<Variable> Sticks, List<Constraint> Demands) Write(Solver solver, bool whole)
    {
        Variable New(string name) => whole ? solver.MakeIntVar(0, 10_000, name) : solver.MakeNumVar(0, double.PositiveInfinity, name);
        var index = _lengths.Select((l, i) => (l, i)).ToDictionary(x => x.l, x => x.i);
        var demands = _lengths.Select((l, i) => solver.MakeConstraint(
            _problem.Extras.Where(e => e.Length == l).Sum(e => e.Count), double.PositiveInfinity, $"d{i}")).ToList();
        foreach (var (bar, count) in _groups)
        {
            var nodes = Enumerable.Range(0, bar.Nodes.Count).Select(n =>
            {
                var net = n == 0 ? count : n == bar.Nodes.Count - 1 ? -count : 0;
                return solver.MakeConstraint(net, net);
            }).ToList();
            foreach (var piece in bar.Pieces)
            {
                var flow = New("f");
                nodes[piece.From].SetCoefficient(flow, 1);
                nodes[piece.To].SetCoefficient(flow, -1);
                demands[index[piece.Length]].SetCoefficient(flow, demands[index[piece.Length]].GetCoefficient(flow) - 1);
            }
        }

        var sticks = new List<Variable>();
        foreach (var (kind, pieces) in _columns)
        {
            var stick = New("s");
            solver.Objective().SetCoefficient(stick, _problem.Kinds[kind].Cost);
            for (var i = 0; i < pieces.Length; i++)
            {
                if (pieces[i] > 0)
                {
                    demands[i].SetCoefficient(stick, pieces[i]);
                }
            }

            sticks.Add(stick);
        }

        solver.Objective().SetMinimization();
        return (sticks, demands);
    }
}
