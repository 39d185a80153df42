using Google.OrTools.LinearSolver;
using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Optimum;

/// <summary>What the reference found: its best cost, a bound that no plan goes below, and whether the two meet.</summary>
internal sealed record LumberReference(long Cost, long Bound, bool Proved);

/// <summary>
/// The cheapest sticks for a room's bars, break points included, by a general solver: a way through each bar as a flow
/// along its pieces, equal bars taken together, and sticks as columns made by pricing the linear relaxation (Gilmore and
/// Gomory 1961), then the integer program over the columns found (SCIP), with a time limit. Lengths are counted in whole
/// steps, rounded up for the cost; the bound holds where no length had to be rounded.
/// With the rules of breaks each bar has a flow of its own, neighbours never break on one key and no bar at a poor place:
/// the same problem as the engine's. Without them the reference may be cheaper than anything that should be built. The
/// bound is that of the relaxation with the same rules.
/// A start is a plan whose sticks join the columns and which the solver begins from: what comes back is no dearer, and
/// cheaper wherever the solver can better it.
/// </summary>
internal sealed class LumberProgram
{
    private readonly BarProblem _problem;
    private readonly List<long> _lengths;
    private readonly int[] _weights;
    private readonly int[] _capacities;
    private readonly List<(Bar Bar, int Count)> _groups;
    private readonly List<(int Kind, int[] Pieces)> _columns = [];

    private readonly bool _rules;

    private LumberProgram(BarProblem problem, long step, bool rules)
    {
        (_problem, _rules) = (problem, rules);
        _lengths = [.. problem.Bars.SelectMany(b => b.Pieces.Select(p => p.Length)).Concat(problem.Extras.Select(e => e.Length)).Distinct().Order()];
        Exact = _lengths.TrueForAll(l => (l + problem.Kerf) % step == 0) && problem.Kinds.All(k => (k.Length - problem.EndTrim + problem.Kerf) % step == 0);
        _weights = [.. _lengths.Select(l => (int)((l + problem.Kerf + step - 1) / step))];
        _capacities = [.. problem.Kinds.Select(k => (int)((k.Length - problem.EndTrim + problem.Kerf) / step))];
        _groups = [.. problem.Bars.GroupBy(b => string.Join(' ', b.Pieces.Select(p => $"{p.From}-{p.To}-{p.Length}"))).Select(g => (g.First(), g.Count()))];
        if (rules)
        {
            _groups = [.. problem.Bars.Select(b => (b, 1))];
        }
    }

    private bool Exact { get; }

    /// <param name="problem">Bars and stock without limits of quantity.</param>
    /// <param name="step">The step that lengths are whole in.</param>
    /// <param name="milliseconds">The time that the integer program may take.</param>
    /// <param name="rules">Whether neighbours may not break on one key, nor any bar at a poor place.</param>
    /// <param name="start">A plan to begin from.</param>
    public static LumberReference? Solve(BarProblem problem, long step, int milliseconds, bool rules = false, BarPlan? start = null)
    {
        var program = new LumberProgram(problem, step, rules);
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
        var used = start is null ? [] : program.AddSticks(start);
        using var solver = Solver.CreateSolver("SCIP");
        var (sticks, _, flows) = program.Write(solver, true);
        if (start is not null)
        {
            program.Hint(solver, start, used, sticks, flows);
        }

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
            var (_, demands, _) = Write(solver, false);
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

    // the columns of a plan's sticks, one a stick; a filling that rounding up makes too long is left out
    private List<int> AddSticks(BarPlan start)
    {
        var index = _lengths.Select((l, i) => (l, i)).ToDictionary(x => x.l, x => x.i);
        var used = new List<int>();
        foreach (var stick in start.Sticks)
        {
            var pieces = new int[_lengths.Count];
            foreach (var cut in stick.Cuts)
            {
                pieces[index[cut.Length]]++;
            }

            if (pieces.Select((n, i) => n * _weights[i]).Sum() > _capacities[stick.Kind])
            {
                continue;
            }

            var column = _columns.FindIndex(c => c.Kind == stick.Kind && c.Pieces.SequenceEqual(pieces));
            if (column < 0)
            {
                _columns.Add((stick.Kind, pieces));
                column = _columns.Count - 1;
            }

            used.Add(column);
        }

        return used;
    }

    private void Hint(Solver solver, BarPlan start, List<int> used, List<Variable> sticks, List<Variable[]> flows)
    {
        var all = new List<Variable>();
        var values = new List<double>();
        for (var c = 0; c < sticks.Count; c++)
        {
            all.Add(sticks[c]);
            values.Add(used.Count(u => u == c));
        }

        for (var bar = 0; _rules && bar < flows.Count; bar++)
        {
            for (var p = 0; p < flows[bar].Length; p++)
            {
                all.Add(flows[bar][p]);
                values.Add(start.Ways[bar].Contains(p) ? 1 : 0);
            }
        }

        solver.SetHint([.. all], [.. values]);
    }

    private (List<Variable> Sticks, List<Constraint> Demands, List<Variable[]> Flows) Write(Solver solver, bool whole)
    {
        var flows = new List<Variable[]>();
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
            flows.Add(new Variable[bar.Pieces.Count]);
            for (var p = 0; p < bar.Pieces.Count; p++)
            {
                var piece = bar.Pieces[p];
                var flow = flows[^1][p] = New("f");
                if (_rules && piece.To < bar.Nodes.Count - 1 && bar.Nodes[piece.To].Grade >= _problem.PoorGrade)
                {
                    flow.SetUb(0);
                }

                nodes[piece.From].SetCoefficient(flow, 1);
                nodes[piece.To].SetCoefficient(flow, -1);
                demands[index[piece.Length]].SetCoefficient(flow, demands[index[piece.Length]].GetCoefficient(flow) - 1);
            }
        }

        if (_rules)
        {
            PartNeighbours(solver, flows);
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
        return (sticks, demands, flows);
    }

    // of two neighbours at most one breaks on a key
    private void PartNeighbours(Solver solver, List<Variable[]> flows)
    {
        var pairs = new HashSet<(int, int)>();
        for (var bar = 0; bar < flows.Count; bar++)
        {
            foreach (var near in _problem.Bars[bar].Neighbours.Where(n => n != bar))
            {
                if (!pairs.Add((Math.Min(bar, near), Math.Max(bar, near))))
                {
                    continue;
                }

                var (one, other) = (Breaks(bar), Breaks(near));
                foreach (var key in one.Select(g => g.Key).Intersect(other.Select(g => g.Key)))
                {
                    var atMostOne = solver.MakeConstraint(double.NegativeInfinity, 1);
                    foreach (var (b, p) in one[key].Concat(other[key]))
                    {
                        atMostOne.SetCoefficient(flows[b][p], 1);
                    }
                }
            }
        }
    }

    private ILookup<int, (int Bar, int Piece)> Breaks(int bar)
    {
        var b = _problem.Bars[bar];
        return Enumerable.Range(0, b.Pieces.Count).Where(p => b.Pieces[p].To < b.Nodes.Count - 1).ToLookup(p => b.Nodes[b.Pieces[p].To].Key, p => (bar, p));
    }
}
