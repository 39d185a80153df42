using System.Globalization;
using LayoutService.Engine.Cutting;
using Xunit.Abstractions;

namespace LayoutService.Engine.Tests.Cutting;

/// <summary>How far from the proved optimum the engine's bar plans are.</summary>
public sealed class BarOptimumTests(ITestOutputHelper output)
{
    /// <summary>
    /// The table bar-optima.csv holds rooms of SeededRooms (seed, least and most metres) with the least cost
    /// proved by BarOptimum: every room of seeds 0 to 20 that the integer program finished within its time. The next test
    /// proves some of it again. Room 2 is the one that the search misses by more than 1 % (its optimum is twelve sticks of
    /// one kind, nearly full, four and five pieces to a stick).
    /// </summary>
    [Fact]
    public void Thorough_is_within_one_per_cent_of_the_proved_optimum_in_all_but_one_room_of_the_table()
    {
        double sum = 0;
        int missed = 0;
        List<(int Seed, double Least, double Most, long Optimum)> table = Table();
        foreach ((int seed, double least, double most, long optimum) in table)
        {
            BarProblem problem = SeededRooms.Make(seed, least, most);
            BarPlan quick = BarCutter.Solve(problem);
            BarPlan plan = BarCutter.Solve(problem, BarEffort.Thorough);
            double gap = plan.Cost / (double)optimum - 1;
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"room {seed} of {least}-{most} m: optimum {optimum}, thorough +{gap:P2}, quick +{quick.Cost / (double)optimum - 1:P2}, bound {plan.LowerBound / (double)optimum - 1:P2}"));
            Assert.Equal(0, plan.SharedBreaks + plan.PoorBreaks);
            Assert.InRange(gap, 0, 0.032);
            missed += gap > 0.01 ? 1 : 0;
            Assert.True(plan.LowerBound <= optimum);
            sum += gap;
        }

        Assert.InRange(missed, 0, 1);
        Assert.InRange(sum / table.Count, 0, 0.004);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(14)]
    [InlineData(17)]
    public void The_table_holds_what_an_integer_program_proves(int seed)
    {
        (int _, double least, double most, long optimum) = Table().Single(row => row.Seed == seed && row.Most == 5);
        BarProblem problem = SeededRooms.Make(seed, least, most);

        long? proved = BarOptimum.Of(problem, optimum + 1, 60);

        Assert.Equal(optimum, proved);
    }

    private static List<(int Seed, double Least, double Most, long Optimum)> Table()
    {
        var table = new List<(int, double, double, long)>();
        foreach (string line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Cutting", "bar-optima.csv")).Skip(1))
        {
            string[] cells = line.Split(',');
            table.Add((int.Parse(cells[0], CultureInfo.InvariantCulture), double.Parse(cells[1], CultureInfo.InvariantCulture), double.Parse(cells[2], CultureInfo.InvariantCulture), long.Parse(cells[3], CultureInfo.InvariantCulture)));
        }

        return table;
    }
}
