using System.Globalization;
using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Tests.Cutting;

/// <summary>
/// Published one-dimensional packing instances. Source: J. E. Beasley, OR-Library, bin packing section, files binpack1
/// (20 instances, 120 items of 20 to 100, capacity 150) and binpack5 (20 triplet instances, 60 items, capacity 100.0);
/// first used in E. Falkenauer, Journal of Heuristics 2 (1996) 5-30. The bin count is the third number of each instance,
/// the best known when the file was made. Two of them can be packed in one bin fewer (u120_08 in 50, u120_19 in 49): the
/// plan itself is the proof, as StickPlanCheck recomputes it from the instance.
/// </summary>
public sealed class PublishedPackingTests
{
    public static TheoryData<string> Instances()
    {
        var data = new TheoryData<string>();
        foreach (PackingInstance instance in All())
        {
            data.Add(instance.Name);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Instances))]
    public void Instance_is_packed_in_the_published_number_of_bins_or_fewer_and_proved(string name)
    {
        PackingInstance instance = All().Single(i => i.Name == name);
        var problem = new StickProblem(
            [.. instance.Items.Select(item => new StickWanted(item, 1))],
            [new StickKind(instance.Capacity, 1)],
            0,
            0);

        StickPlan plan = StickCutter.Solve(problem);

        StickPlanCheck.Whole(problem, plan);
        int better = name is "u120_08" or "u120_19" ? 1 : 0;
        Assert.Equal(instance.Bins - better, plan.Sticks.Count);
        Assert.True(plan.ProvedOptimal, $"bound {plan.LowerBound}, cost {plan.Cost}");
    }

    /// <summary>
    /// A cutting-stock example reprinted widely (13 widths on a 5600 roll, minimum 73 rolls, area bound 72.7); the numbers
    /// are from a secondary copy, the first publication is not known to us.
    /// </summary>
    [Fact]
    public void Thirteen_width_example_takes_73_rolls()
    {
        var problem = new StickProblem(
            [
                new(1380, 22), new(1520, 25), new(1560, 12), new(1710, 14), new(1820, 18), new(1880, 18), new(1930, 20),
                new(2000, 10), new(2050, 12), new(2100, 14), new(2140, 16), new(2150, 18), new(2200, 20),
            ],
            [new StickKind(5600, 1)],
            0,
            0);

        StickPlan plan = StickCutter.Solve(problem);

        StickPlanCheck.Whole(problem, plan);
        Assert.Equal(73, plan.Sticks.Count);
        Assert.True(plan.ProvedOptimal);
    }

    private static IEnumerable<PackingInstance> All() => [.. Read("binpack1.txt"), .. Read("binpack5.txt")];

    private static IEnumerable<PackingInstance> Read(string file)
    {
        string path = Path.Combine(AppContext.BaseDirectory, "Cutting", "Published", file);
        string[] words = File.ReadAllText(path).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        int at = 0;
        int count = int.Parse(words[at++], CultureInfo.InvariantCulture);
        for (int n = 0; n < count; n++)
        {
            string name = words[at++];
            long capacity = Tenths(words[at++]);
            int items = int.Parse(words[at++], CultureInfo.InvariantCulture);
            int bins = int.Parse(words[at++], CultureInfo.InvariantCulture);
            long[] lengths = new long[items];
            for (int i = 0; i < items; i++)
            {
                lengths[i] = Tenths(words[at++]);
            }

            yield return new PackingInstance(name, capacity, bins, lengths);
        }
    }

    private static long Tenths(string word) => (long)(decimal.Parse(word, CultureInfo.InvariantCulture) * 10);

    private sealed record PackingInstance(string Name, long Capacity, int Bins, long[] Items);
}
