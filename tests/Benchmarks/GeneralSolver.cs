using System.Diagnostics;
using Google.OrTools.Sat;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Benchmarks;

/// <summary>
/// The same rows and lumber as one integer program, as a developer would put it to Google.OrTools (CP-SAT, all cores). For
/// a rectangle, whose rows are alike. Rows: one yes or no for every 10 mm, at least one in every stretch as long as the
/// widest spacing, fewest of all. Lumber: how many rows use each piece between two joists (a flow from wall to wall), how
/// many of each piece are cut from each stick, which kind each stick is, at least cost. Easier than ours on two counts:
/// neighbouring rows may break on one joist, and each search stops as soon as it is as good as our answer.
/// </summary>
public static class GeneralSolver
{
    public readonly record struct Answer(int Rows, long? Cost, double Milliseconds);

    public static Answer Plan(Survey survey, RowsAndLumber.Answer ours, double seconds)
    {
        var watch = Stopwatch.StartNew();
        var room = FramedRoom.Of(survey);
        var rows = Rows(room, ours, seconds);
        var cost = Lumber(room, rows, ours, seconds);
        return new Answer(rows, cost, watch.Elapsed.TotalMilliseconds);
    }

    private static int Rows(FramedRoom room, RowsAndLumber.Answer ours, double seconds)
    {
        const long step = 80_000;
        var model = new CpModel();
        var first = room.Straps.LowU + (room.Survey.Strapping.Face.Units / 2);
        var last = room.Straps.HighU - (room.Survey.Strapping.Face.Units / 2);
        var places = (int)((last - first + step - 1) / step) + 1;
        var reach = (int)(room.Survey.Strapping.MaxSpacing.Units / step);
        var stands = Enumerable.Range(0, places).Select(i => model.NewBoolVar($"row {i}")).ToArray();
        model.Add(stands[0] == 1);
        model.Add(stands[^1] == 1);
        for (var i = 1; i + reach <= places; i++)
        {
            model.AddBoolOr(stands[i..(i + reach)]);
        }

        model.Minimize(LinearExpr.Sum(stands));
        var solver = Solver(seconds);
        solver.Solve(model, new StopAt(ours.Rows));
        return (int)solver.ObjectiveValue;
    }

    private static long? Lumber(FramedRoom room, int rows, RowsAndLumber.Answer ours, double seconds)
    {
        var wish = room.Survey.Strapping;
        var run = RowsAndLumber.Runs(room).Runs[0];
        var model = new CpModel();
        var used = run.Pieces.Select((_, p) => model.NewIntVar(0, rows, $"used {p}")).ToArray();
        for (var node = 0; node < run.Nodes.Count; node++)
        {
            var into = LinearExpr.Sum(used.Where((_, p) => run.Pieces[p].To == node));
            var outOf = LinearExpr.Sum(used.Where((_, p) => run.Pieces[p].From == node));
            model.Add(into + (node == 0 ? rows : 0) == outOf + (node == run.Nodes.Count - 1 ? rows : 0));
        }

        var cuts = new List<IntVar[]>();
        var costs = new List<LinearExpr>();
        for (var stick = 0; stick < ours.Sticks + 4; stick++)
        {
            var kinds = wish.Stock.Select(s => model.NewBoolVar($"stick {stick} is {s.Id}")).ToArray();
            model.AddAtMostOne(kinds);
            var cut = run.Pieces.Select((p, i) => model.NewIntVar(0, wish.Stock.Max(s => s.Length.Units) / p.CutLength, $"stick {stick} cuts {i}")).ToArray();
            model.Add(LinearExpr.WeightedSum(cut, run.Pieces.Select(p => p.CutLength + wish.Kerf.Units))
                <= LinearExpr.WeightedSum(kinds, wish.Stock.Select(s => s.Length.Units - wish.EndTrim.Units + wish.Kerf.Units)));
            cuts.Add(cut);
            costs.Add(LinearExpr.WeightedSum(kinds, wish.Stock.Select(s => (long)(s.PackPrice!.Value * 10_000m))));
        }

        for (var p = 0; p < used.Length; p++)
        {
            model.Add(LinearExpr.Sum(cuts.Select(c => c[p])) == used[p]);
        }

        model.Minimize(LinearExpr.Sum(costs));
        var solver = Solver(seconds);
        var status = solver.Solve(model, new StopAt(ours.Cost));
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? (long)solver.ObjectiveValue : null;
    }

    private static CpSolver Solver(double seconds) =>
        new() { StringParameters = FormattableString.Invariant($"max_time_in_seconds:{seconds} num_workers:{Environment.ProcessorCount}") };

    private sealed class StopAt(long good) : CpSolverSolutionCallback
    {
        public override void OnSolutionCallback()
        {
            if (ObjectiveValue() <= good)
            {
                StopSearch();
            }
        }
    }
}
