using Google.OrTools.LinearSolver;
using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Cutting;

/// <summary>
/// The least cost of a bar problem without violations, proved by an integer program (SCIP through Google.OrTools), sharing
/// no code with the engine. The linear relaxation is solved by column generation (GLOP); then every filling of a stick
/// whose reduced cost could still belong to a plan as cheap as the known one is listed, and the integer program over those
/// and over one flow a bar, with breaks on a shared key or at a poor grade forbidden, is exact.
/// </summary>
internal sealed class BarOptimum
{
    private const int MostFillings = 200_000;
    private readonly BarProblem _problem;
    private readonly long[] _lengths;
    private readonly List<StickKind> _kinds;
    private readonly List<int[]> _fillings = [];
    private double[] _price = [];

    private BarOptimum(BarProblem problem)
    {
        _problem = problem;
        _kinds = [.. problem.Kinds.OrderBy(k => k.Length)];
        var lengths = problem.Bars.SelectMany(b => b.Pieces).Select(p => p.Length).Concat(problem.Extras.Where(e => e.Count > 0).Select(e => e.Length));
        _lengths = [.. lengths.Distinct().Where(l => l <= _kinds[^1].Length - problem.EndTrim).Order()];
    }

    /// <summary>The proved optimum; null when it was not proved in the time.</summary>
    public static long? Of(BarProblem problem, long knownCost, int seconds)
    {
        var optimum = new BarOptimum(problem);
        double relaxed = optimum.Relax();
        optimum._fillings.Clear();
        optimum.List(knownCost - relaxed + 0.5);
        return optimum._fillings.Count > MostFillings ? null : optimum.Exact(seconds);
    }

    private long Room(StickKind kind) => kind.Length - _problem.EndTrim + _problem.Kerf;

    private long Use(int length) => _lengths[length] + _problem.Kerf;

    private long CostOf(int[] filling)
    {
        long used = filling.Sum(Use);
        return _kinds.Where(k => Room(k) >= used).Min(k => k.Cost);
    }

    /// <summary>Column generation from one piece a stick; returns the relaxation's cost and keeps its prices.</summary>
    private double Relax()
    {
        for (int length = 0; length < _lengths.Length; length++)
        {
            _fillings.Add([length]);
        }

        while (true)
        {
            Solver solver = Solver.CreateSolver("GLOP");
            Constraint[] rows = Build(solver, whole: false);
            Assert.Equal(Solver.ResultStatus.OPTIMAL, solver.Solve());
            _price = [.. rows.Select(r => r.DualValue())];
            int before = _fillings.Count;
            foreach (StickKind kind in _kinds)
            {
                (double worth, int[] filling) = Best(_lengths.Length - 1, Room(kind));
                if (worth > kind.Cost + 1e-6)
                {
                    _fillings.Add(filling);
                }
            }

            if (_fillings.Count == before)
            {
                return solver.Objective().Value();
            }
        }
    }

    /// <summary>The filling of most worth, by plain recursion with a bound on worth per length.</summary>
    private (double Worth, int[] Filling) Best(int top, long room)
    {
        int[] order = [.. Enumerable.Range(0, top + 1).Where(l => _price[l] > 1e-9).OrderByDescending(l => _price[l] / Use(l))];
        double best = 0;
        int[] filling = [];
        var stack = new List<int>();
        void Search(int from, long left, double worth)
        {
            if (worth > best + 1e-9)
            {
                best = worth;
                filling = [.. stack];
            }

            for (int k = from; k < order.Length && worth + left * _price[order[k]] / Use(order[k]) > best + 1e-9; k++)
            {
                if (Use(order[k]) <= left)
                {
                    stack.Add(order[k]);
                    Search(k, left - Use(order[k]), worth + _price[order[k]]);
                    stack.RemoveAt(stack.Count - 1);
                }
            }
        }

        Search(0, room, 0);
        return (best, filling);
    }

    /// <summary>
    /// Every filling of reduced cost at most slack that no longer piece could improve at the same cost: room for a longer
    /// piece serves a shorter one.
    /// </summary>
    private void List(double slack)
    {
        var stack = new List<int>();
        void Search(int top, long used, double worth)
        {
            if (stack.Count > 0)
            {
                int[] filling = [.. stack];
                long cost = CostOf(filling);
                long room = _kinds.Where(k => k.Cost <= cost).Max(Room);
                bool full = used + Use(0) > room;
                foreach (int length in filling)
                {
                    full &= length + 1 == _lengths.Length || used - Use(length) + Use(length + 1) > room;
                }

                if (full && cost - worth <= slack)
                {
                    _fillings.Add(filling);
                }
            }

            for (int length = top; length >= 0 && _fillings.Count <= MostFillings; length--)
            {
                if (used + Use(length) <= Room(_kinds[^1]))
                {
                    stack.Add(length);
                    Search(length, used + Use(length), worth + _price[length]);
                    stack.RemoveAt(stack.Count - 1);
                }
            }
        }

        Search(_lengths.Length - 1, 0, 0);
    }

    private long? Exact(int seconds)
    {
        Solver solver = Solver.CreateSolver("SCIP");
        Build(solver, whole: true);
        solver.SetTimeLimit(seconds * 1000);
        return solver.Solve() == Solver.ResultStatus.OPTIMAL ? (long)Math.Round(solver.Objective().Value()) : null;
    }

    /// <summary>Rows by length (supply at least what the ways use), fillings, downgrades, and one flow a bar.</summary>
    private Constraint[] Build(Solver solver, bool whole)
    {
        var rows = new Constraint[_lengths.Length];
        for (int length = 0; length < rows.Length; length++)
        {
            int wanted = _problem.Extras.Where(e => e.Length == _lengths[length]).Sum(e => e.Count);
            rows[length] = solver.MakeConstraint(wanted, double.PositiveInfinity);
        }

        foreach (int[] filling in _fillings)
        {
            Variable times = solver.MakeVar(0, double.PositiveInfinity, whole, "");
            solver.Objective().SetCoefficient(times, CostOf(filling));
            foreach (IGrouping<int, int> same in filling.GroupBy(l => l))
            {
                rows[same.Key].SetCoefficient(times, same.Count());
            }
        }

        for (int length = 1; length < rows.Length; length++)
        {
            Variable down = solver.MakeVar(0, double.PositiveInfinity, whole, "");
            rows[length].SetCoefficient(down, -1);
            rows[length - 1].SetCoefficient(down, 1);
        }

        var breaks = new Dictionary<(int Bar, int Key), List<Variable>>();
        for (int b = 0; b < _problem.Bars.Count; b++)
        {
            AddBar(solver, rows, b, whole, breaks);
        }

        foreach (((int bar, int key), List<Variable> own) in breaks.Where(_ => whole))
        {
            foreach (int near in _problem.Bars[bar].Neighbours.Where(n => n > bar && breaks.ContainsKey((n, key))))
            {
                Constraint once = solver.MakeConstraint(0, 1);
                own.Concat(breaks[(near, key)]).ToList().ForEach(v => once.SetCoefficient(v, 1));
            }
        }

        solver.Objective().SetMinimization();
        return rows;
    }

    private void AddBar(Solver solver, Constraint[] rows, int b, bool whole, Dictionary<(int Bar, int Key), List<Variable>> breaks)
    {
        Bar bar = _problem.Bars[b];
        int last = bar.Nodes.Count - 1;
        var nodes = Enumerable.Range(0, last + 1).Select(n => solver.MakeConstraint(n == 0 ? 1 : n == last ? -1 : 0, n == 0 ? 1 : n == last ? -1 : 0)).ToArray();
        foreach (BarPiece piece in bar.Pieces)
        {
            int length = Array.BinarySearch(_lengths, piece.Length);
            if (length < 0 || (piece.To < last && bar.Nodes[piece.To].Grade >= _problem.PoorGrade))
            {
                continue;
            }

            Variable used = solver.MakeVar(0, 1, whole, "");
            nodes[piece.From].SetCoefficient(used, 1);
            nodes[piece.To].SetCoefficient(used, -1);
            rows[length].SetCoefficient(used, -1);
            if (piece.To < last)
            {
                (int, int) place = (b, bar.Nodes[piece.To].Key);
                if (!breaks.TryGetValue(place, out List<Variable>? there))
                {
                    breaks[place] = there = [];
                }

                there.Add(used);
            }
        }
    }
}
