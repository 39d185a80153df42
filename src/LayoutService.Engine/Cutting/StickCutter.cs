namespace LayoutService.Engine.Cutting;

/// <summary>
/// Plain one-dimensional cutting stock, several stock lengths, exact costs. The search is StickDive; this file turns a
/// problem into lengths with counts and a solution back into sticks.
/// </summary>
public static class StickCutter
{
    private const int MostToRepack = 500;
    private const long RepackStepsAPiece = 20_000;

    /// <summary>Steps times pieces: a step of packing again is as long as there are pieces.</summary>
    private const long RepackWork = 400_000_000;

    /// <summary>Enough steps for every published instance tried; about a second.</summary>
    public const int UsualSteps = 100_000_000;

    /// <summary>
    /// The cheapest plan that the steps allow, with a valid lower bound. Same problem and steps, same plan. Pieces that no
    /// stock can give are listed as missing.
    /// </summary>
    /// <param name="problem">What to cut.</param>
    /// <param name="steps">Steps of the dive.</param>
    /// <param name="repack">Steps for packing its plan again where it is not proved; a tenth of the dive's when not given.</param>
    /// <exception cref="ArgumentException">A length, cost, count, quantity, kerf or trim out of its range.</exception>
    public static StickPlan Solve(StickProblem problem, int steps = UsualSteps, int? repack = null)
    {
        Check(problem);
        var missing = new List<int>();
        long pieces = 0;
        foreach (StickWanted wanted in problem.Wanted)
        {
            pieces += wanted.Count;
        }

        var kinds = new StockKinds(problem.Kinds, problem.Kerf, problem.EndTrim, pieces);
        long[] lengths = Distinct(problem, kinds.Longest);
        var demand = new int[lengths.Length];
        var queues = new Queue<int>[lengths.Length];
        for (int i = 0; i < lengths.Length; i++)
        {
            queues[i] = new Queue<int>();
        }

        for (int w = 0; w < problem.Wanted.Count; w++)
        {
            StickWanted wanted = problem.Wanted[w];
            int index = Array.BinarySearch(lengths, wanted.Length + problem.Kerf);
            for (int n = 0; n < wanted.Count; n++)
            {
                if (index < 0)
                {
                    missing.Add(w);
                }
                else
                {
                    demand[index]++;
                    queues[index].Enqueue(w);
                }
            }
        }

        var dive = new StickDive(lengths, demand, kinds, steps);
        dive.Run();
        StickPlan plan = Read(problem, kinds, dive, queues, missing);
        return plan.ProvedOptimal || pieces > MostToRepack ? plan : Repacked(problem, plan, dive.LowerBound, Math.Min(Math.Min(pieces * RepackStepsAPiece, RepackWork / pieces), repack ?? steps / 10));
    }

    /// <summary>
    /// The plan, or a better one from BarRepair with every piece a bar of its own: it finds what a dive cannot, plans that
    /// the relaxation uses nothing of (a single dear stick in place of two limited ones).
    /// </summary>
    private static StickPlan Repacked(StickProblem problem, StickPlan plan, long bound, long steps)
    {
        BarCase bars = BarCase.Read(new BarProblem([], problem.Wanted, problem.Kinds, problem.Kerf, problem.EndTrim, int.MaxValue));
        if (bars.Runs.Length < 2)
        {
            return plan;
        }

        var search = new BarSearch(bars, int.MaxValue);
        search.Repack(bound, steps);
        BarPlan other = BarReading.Plan(new BarProblem([], problem.Wanted, problem.Kinds, problem.Kerf, problem.EndTrim, int.MaxValue), bars, search, bound);
        if ((other.Missing.Count, other.Cost).CompareTo((plan.Missing.Count, plan.Cost)) >= 0)
        {
            return plan;
        }

        List<Stick> sticks = other.Sticks.Select(s => new Stick(s.Kind, [.. s.Cuts.Select(c => c.Piece)], s.Offcut)).ToList();
        return new StickPlan(sticks, [.. other.Missing.Select(c => c.Piece)], other.Cost, other.LowerBound);
    }

    private static StickPlan Read(StickProblem problem, StockKinds kinds, StickDive dive, Queue<int>[] queues, List<int> missing)
    {
        var sticks = new List<Stick>();
        long cost = 0;
        foreach (StickFilling filling in dive.Best)
        {
            var cut = new List<int>();
            long used = 0;
            for (int k = filling.Lengths.Count - 1; k >= 0; k--)
            {
                int wanted = queues[filling.Lengths[k]].Dequeue();
                cut.Add(wanted);
                used += problem.Wanted[wanted].Length + problem.Kerf;
            }

            if (kinds.Origin[filling.Kind] < 0)
            {
                missing.AddRange(cut);
                continue;
            }

            StickKind kind = problem.Kinds[kinds.Origin[filling.Kind]];
            cost += kind.Cost;
            sticks.Add(new Stick(kinds.Origin[filling.Kind], cut, Math.Max(0, kind.Length - problem.EndTrim - used)));
        }

        sticks.Sort((a, b) => Compare(problem, a, b));
        return new StickPlan(sticks, missing, cost, missing.Count > 0 ? 0 : Math.Min(dive.LowerBound, cost));
    }

    private static int Compare(StickProblem problem, Stick a, Stick b)
    {
        int order = problem.Kinds[b.Kind].Length.CompareTo(problem.Kinds[a.Kind].Length);
        order = order != 0 ? order : a.Kind.CompareTo(b.Kind);
        for (int k = 0; order == 0 && k < Math.Min(a.Pieces.Count, b.Pieces.Count); k++)
        {
            order = problem.Wanted[b.Pieces[k]].Length.CompareTo(problem.Wanted[a.Pieces[k]].Length);
            order = order != 0 ? order : a.Pieces[k].CompareTo(b.Pieces[k]);
        }

        return order != 0 ? order : a.Pieces.Count.CompareTo(b.Pieces.Count);
    }

    private static long[] Distinct(StickProblem problem, long longest)
    {
        var lengths = new SortedSet<long>();
        foreach (StickWanted wanted in problem.Wanted)
        {
            if (wanted.Count > 0 && wanted.Length + problem.Kerf <= longest)
            {
                lengths.Add(wanted.Length + problem.Kerf);
            }
        }

        return [.. lengths];
    }

    private static void Check(StickProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentOutOfRangeException.ThrowIfNegative(problem.Kerf);
        ArgumentOutOfRangeException.ThrowIfNegative(problem.EndTrim);
        foreach (StickWanted wanted in problem.Wanted)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(wanted.Length);
            ArgumentOutOfRangeException.ThrowIfNegative(wanted.Count);
        }

        foreach (StickKind kind in problem.Kinds)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(kind.Length);
            ArgumentOutOfRangeException.ThrowIfNegative(kind.Cost);
            ArgumentOutOfRangeException.ThrowIfNegative(kind.Quantity ?? 0);
        }
    }
}
