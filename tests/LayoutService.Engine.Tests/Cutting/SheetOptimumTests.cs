using Google.OrTools.LinearSolver;
using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Cutting;

public class SheetOptimumTests
{
    [Fact]
    public void Tiny_problems_cost_what_trying_everything_finds()
    {
        var proved = 0;
        const int cases = 600;
        for (var seed = 0; seed < cases; seed++)
        {
            var problem = Tiny(seed);
            var least = new SheetBruteForce(problem).LeastCost();
            var plan = SheetCutter.Solve(problem, SheetCutter.ThoroughSteps);
            var faults = SheetGuillotine.Faults(problem, plan);
            Assert.True(faults.Count == 0, $"seed {seed}: {string.Join("; ", faults)}");
            Assert.True(least is null == plan.Unplaced.Count > 0, $"seed {seed}: {plan.Unplaced.Count} not placed, least cost {least}");
            if (least is not null)
            {
                Assert.True(plan.LowerBound <= least, $"seed {seed}: bound {plan.LowerBound} above the optimum {least}");
                Assert.True(plan.Cost == least, $"seed {seed}: cost {plan.Cost}, optimum {least}");
                proved += plan.ProvedOptimal ? 1 : 0;
                Assert.True((SheetCutter.Estimate(problem) ?? long.MaxValue) >= least, $"seed {seed}: estimate below the optimum");
            }
        }

        Assert.True(proved >= cases / 2, $"only {proved} proved");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(200)]
    public void A_starved_search_still_tells_the_truth(int steps)
    {
        for (var seed = 0; seed < 300; seed++)
        {
            var problem = Tiny(seed);
            var plan = SheetCutter.Solve(problem, steps);
            var faults = SheetGuillotine.Faults(problem, plan);
            Assert.True(faults.Count == 0, $"seed {seed}: {string.Join("; ", faults)}");
            if (new SheetBruteForce(problem).LeastCost() is { } least)
            {
                Assert.True(plan.LowerBound <= least, $"seed {seed}: bound {plan.LowerBound} above the optimum {least}");
                Assert.True(plan.Unplaced.Count > 0 || plan.Cost >= least, $"seed {seed}: cost {plan.Cost} below the optimum {least}");
            }
        }
    }

    [Fact]
    public void Whole_width_pieces_cost_what_an_integer_program_proves()
    {
        for (var seed = 0; seed < 40; seed++)
        {
            var problem = WholeWidth(seed);
            var least = ByIntegerProgram(problem);
            var plan = SheetCutter.Solve(problem, SheetCutter.QuickSteps);
            Assert.True(plan.LowerBound <= least && plan.Cost == least, $"seed {seed}: bound {plan.LowerBound}, cost {plan.Cost}, optimum {least}");
        }
    }

    private static SheetProblem Tiny(int seed)
    {
        var random = new Random(seed);
        var width = random.Next(4, 8);
        var stock = Enumerable.Range(0, random.Next(1, 4)).Select(_ =>
        {
            var own = random.Next(3) == 0 ? random.Next(4, 8) : width;
            var length = random.Next(5, 11);
            return new SheetKind(own, length, random.Next(12) == 0 ? 0 : own * length + random.Next(8), random.Next(5) == 0 ? random.Next(1, 3) : null);
        }).ToList();
        var wanted = Enumerable.Range(0, random.Next(1, 6)).Select(_ =>
        {
            var edges = (FactoryEdges)random.Next(3);
            return new SheetWanted(edges == FactoryEdges.Both ? width : random.Next(1, width + 1), random.Next(1, 9), edges, random.Next(2) == 0);
        }).ToList();
        return new SheetProblem
        {
            Wanted = wanted,
            Stock = stock,
            Kerf = random.Next(4) == 0 ? 1 : 0,
            EdgeTrim = random.Next(8) == 0 ? 1 : 0,
            EndTrim = random.Next(8) == 0 ? 1 : 0,
        };
    }

    private static SheetProblem WholeWidth(int seed)
    {
        var random = new Random(seed);
        var kinds = new[] { 96, 120, 144, 168, 192 }.Where(_ => random.Next(2) == 0).DefaultIfEmpty(144).ToList();
        var wanted = Enumerable.Range(0, random.Next(6, 15)).Select(_ =>
            new SheetWanted(48, Math.Min(kinds.Max(), random.Next(2) == 0 ? random.Next(2, 7) * 16 : random.Next(24, 130)), FactoryEdges.Both)).ToList();
        return new SheetProblem
        {
            Wanted = wanted,
            Stock = [.. kinds.Select(l => new SheetKind(48, l, l * 10 + random.Next(60)))],
        };
    }

    /// <summary>One whole variable for each set of lengths that a kind of sheet holds; every wanted length is covered.</summary>
    private static long ByIntegerProgram(SheetProblem problem)
    {
        using var solver = Solver.CreateSolver("SCIP");
        var wanted = problem.Wanted.GroupBy(w => w.Length).OrderByDescending(g => g.Key).Select(g => (Length: g.Key, Count: g.Count())).ToList();
        var cover = wanted.ConvertAll(w => solver.MakeConstraint(w.Count, double.PositiveInfinity));
        foreach (var kind in problem.Stock)
        {
            foreach (var set in Sets(wanted, 0, kind.Length))
            {
                var times = solver.MakeIntVar(0, problem.Wanted.Count, "");
                solver.Objective().SetCoefficient(times, kind.Cost);
                for (var i = 0; i < set.Length; i++)
                {
                    cover[i].SetCoefficient(times, set[i]);
                }
            }
        }

        solver.Objective().SetMinimization();
        Assert.Equal(Solver.ResultStatus.OPTIMAL, solver.Solve());
        return (long)Math.Round(solver.Objective().Value());
    }

    private static IEnumerable<int[]> Sets(List<(long Length, int Count)> wanted, int from, long room)
    {
        if (from == wanted.Count)
        {
            yield return new int[wanted.Count];
            yield break;
        }

        for (var n = 0; n <= wanted[from].Count && n * wanted[from].Length <= room; n++)
        {
            foreach (var set in Sets(wanted, from + 1, room - n * wanted[from].Length))
            {
                set[from] = n;
                yield return set;
            }
        }
    }
}
