using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Cutting;

/// <summary>
/// Problems of the makes that published sets are of, by dice: triplets whose sticks are all full (after E. Falkenauer, Journal of Heuristics 2
/// (1996) 5-30; the optimum is known by the making), and the third set of A. Scholl, R. Klein and C. Jürgens, Computers &amp; Operations Research 24 (1997)
/// 627-645 (200 lengths of 20,000 to 35,000 in 100,000; there the plan and its bound prove each other). The makes are from memory.
/// </summary>
public sealed class ManyLengthsTests
{
    private const int Usual = 2 * StickCutter.UsualSteps;

    [Theory]
    [InlineData(120)]
    [InlineData(249)]
    [InlineData(501)]
    public void Triplets_fill_every_stick(int pieces)
    {
        for (int seed = 0; seed < 8; seed++)
        {
            var dice = new Random(seed);
            var lengths = new List<int>();
            while (lengths.Count < pieces)
            {
                int first = dice.Next(380, 491);
                int second = dice.Next(250, ((1000 - first) / 2) + 1);
                lengths.AddRange([first, second, 1000 - first - second]);
            }

            StickPlan plan = Cut(lengths, 1000, Usual);

            Assert.True(plan.Cost == pieces / 3 && plan.ProvedOptimal, $"seed {seed}: {plan.Cost} of {pieces / 3}, bound {plan.LowerBound}");
        }
    }

    [Fact]
    public void Two_hundred_lengths_of_which_three_or_four_fill_a_stick_are_proved_with_the_steps_of_thorough_effort()
    {
        int proved = 0;
        for (int seed = 0; seed < 6; seed++)
        {
            StickPlan plan = Cut(Uniform(seed, 200, 20_000, 35_000), 100_000, 2 * Usual);
            Assert.InRange(plan.Cost - plan.LowerBound, 0, 1);
            proved += plan.ProvedOptimal ? 1 : 0;
        }

        Assert.True(proved >= 5, $"{proved} of 6 proved");
    }

    // the dive of the whole does not come to its end there; by greedy fillings alone the first is 7 % over its bound
    [Theory]
    [InlineData(20_000, 35_000, 0.05)]
    [InlineData(1_000, 35_000, 0.005)]
    public void A_thousand_lengths_come_near_their_own_bound(int least, int most, double gap)
    {
        for (int seed = 0; seed < 2; seed++)
        {
            int[] lengths = Uniform(seed, 1000, least, most);
            StickPlan plan = Cut(lengths, 100_000, StickCutter.UsualSteps);

            Assert.True(plan.LowerBound >= lengths.Sum(l => (long)l) / 100_000, $"seed {seed}: the bound {plan.LowerBound} is below what the lengths come to");
            Assert.True(plan.Cost <= plan.LowerBound * (1 + gap), $"seed {seed}: {plan.Cost} over {plan.LowerBound}");
        }
    }

    // a knapsack for each of twenty kinds runs past the steps before anybody looks
    [Theory]
    [InlineData(120, 11_000_000)]
    [InlineData(120, 1_000)]
    [InlineData(200, 51_000_000)]
    public void Steps_that_do_not_suffice_for_the_first_relaxation_still_give_a_whole_plan(int count, int steps)
    {
        StickWanted[] wanted = [.. Uniform(3, count, 20_000, 35_000).Distinct().Select(l => new StickWanted(l, 2))];
        StickKind[] kinds = [.. Enumerable.Range(0, 20).Select(k => new StickKind(100_000 + (9_973 * k), 100_000 + (9_973 * k) + (31 * (k % 7))))];
        var problem = new StickProblem(wanted, kinds, 3, 7);
        StickPlan plan = StickCutter.Solve(problem, steps);
        StickPlanCheck.Whole(problem, plan);
        Assert.Empty(plan.Missing);
        Assert.InRange(plan.Cost / (double)plan.LowerBound, 1, 1.02);
    }

    private static int[] Uniform(int seed, int count, int least, int most)
    {
        var dice = new Random(seed);
        return [.. Enumerable.Range(0, count).Select(_ => dice.Next(least, most + 1))];
    }

    private static StickPlan Cut(IEnumerable<int> lengths, int capacity, int steps)
    {
        StickWanted[] wanted = [.. lengths.GroupBy(l => l).OrderByDescending(g => g.Key).Select(g => new StickWanted(g.Key, g.Count()))];
        var problem = new StickProblem(wanted, [new StickKind(capacity, 1)], 0, 0);
        StickPlan plan = StickCutter.Solve(problem, steps);
        StickPlanCheck.Whole(problem, plan);
        Assert.Empty(plan.Missing);
        return plan;
    }
}
