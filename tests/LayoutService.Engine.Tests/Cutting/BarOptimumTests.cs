using System.Globalization;
using LayoutService.Engine.Cutting;
using Xunit.Abstractions;

namespace LayoutService.Engine.Tests.Cutting;

/// <summary>How far from the proved optimum the engine's bar plans are.</summary>
public sealed class BarOptimumTests(ITestOutputHelper output)
{
    /// <summary>
    /// The table Published/bar-optima.csv holds rooms of SeededRooms (seed, least and most metres) with the least cost
    /// proved by BarOptimum; the next test proves some of it again.
    /// </summary>
    [Fact]
    public void Thorough_is_within_one_per_cent_of_the_proved_optimum_in_every_room_of_the_table_and_a_third_of_that_on_average()
    {
        double sum = 0;
        List<(int Seed, double Least, double Most, long Optimum)> table = Table();
        foreach ((int seed, double least, double most, long optimum) in table)
        {
            BarProblem problem = SeededRooms.Make(seed, least, most);
            BarPlan quick = BarCutter.Solve(problem);
            BarPlan plan = BarCutter.Solve(problem, BarEffort.Thorough);
            double gap = plan.Cost / (double)optimum - 1;
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"room {seed} of {least}-{most} m: optimum {optimum}, thorough +{gap:P2}, quick +{quick.Cost / (double)optimum - 1:P2}, bound {plan.LowerBound / (double)optimum - 1:P2}"));
            Assert.Equal(0, plan.SharedBreaks + plan.PoorBreaks);
            Assert.InRange(gap, 0, 0.01);
            Assert.True(plan.LowerBound <= optimum);
            sum += gap;
        }

        Assert.InRange(sum / table.Count, 0, 0.003);
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
        foreach (string line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Cutting", "Published", "bar-optima.csv")).Skip(1))
        {
            string[] cells = line.Split(',');
            table.Add((int.Parse(cells[0], CultureInfo.InvariantCulture), double.Parse(cells[1], CultureInfo.InvariantCulture), double.Parse(cells[2], CultureInfo.InvariantCulture), long.Parse(cells[3], CultureInfo.InvariantCulture)));
        }

        return table;
    }
}
