using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Tests.Takeoff;

public class PackCoverTests
{
    [Fact]
    public void Packs_are_the_best_that_trying_every_combination_finds()
    {
        for (var seed = 1; seed <= 600; seed++)
        {
            var random = new Random(seed);
            var packs = Enumerable.Range(0, random.Next(1, 4))
                .Select(index => new Pack(null, $"sku{index}", random.Next(1, 13), random.Next(0, 16)))
                .ToList();
            var need = random.Next(1, 70);

            var found = Key(need, packs, PackCover.Cheapest(need, packs));

            Assert.True(found == TryAll(need, packs), $"seed {seed}: need {need} of {string.Join(", ", packs)}: {found}");
        }
    }

    [Fact]
    public void A_large_need_is_covered_as_well_as_a_full_table_would()
    {
        for (var seed = 1; seed <= 60; seed++)
        {
            var random = new Random(seed);
            var packs = Enumerable.Range(0, 3).Select(index => new Pack(null, null, random.Next(2, 30), random.Next(3, 60))).ToList();
            var need = random.Next(2_000, 5_000);

            var found = Key(need, packs, PackCover.Cheapest(need, packs));

            Assert.True(found.Cost == FullTable(need, packs), $"seed {seed}: need {need} of {string.Join(", ", packs)}: {found}");
        }
    }

    [Fact]
    public void Sizes_may_be_fractions()
    {
        Pack[] packs = [new(null, "half", 0.5m, 2m), new(null, "pail", 1.75m, 5m)];

        // 3.6 asks for 3.75 at least: 1 pail + 4 halves is 13, 2 pails + 1 half is 12, 3 pails is 15.
        Assert.Equal([1, 2], PackCover.Cheapest(3.6m, packs));
    }

    [Fact]
    public void Equal_cost_is_settled_by_surplus_and_then_by_the_number_of_packs()
    {
        Assert.Equal([0, 1], PackCover.Cheapest(4m, [new(null, null, 9, 5m), new(null, null, 5, 5m)]));
        Assert.Equal([0, 1], PackCover.Cheapest(4m, [new(null, null, 2, 2m), new(null, null, 4, 4m)]));
    }

    [Fact]
    public void Sizes_without_a_common_measure_still_cover_the_need_no_dearer_than_one_size_alone()
    {
        Pack[] packs = [new(null, null, 99_991m, 10m), new(null, null, 100_003m, 10.5m)];
        var counts = PackCover.Cheapest(1_234_567m, packs);

        var key = Key(1_234_567, packs, counts);
        Assert.True(key.Surplus >= 0);
        Assert.True(key.Cost <= 130m); // thirteen of the first, alone
    }

    [Fact]
    public void Nothing_needed_is_nothing_bought() =>
        Assert.Equal([0, 0], PackCover.Cheapest(0m, [new(null, null, 1, 1m), new(null, null, 5, 4m)]));

    private static (decimal Cost, decimal Surplus, long Packs) Key(int need, IReadOnlyList<Pack> packs, long[] counts) => (
        counts.Select((count, index) => count * packs[index].Price!.Value).Sum(),
        counts.Select((count, index) => count * packs[index].Size).Sum() - need,
        counts.Sum());

    private static (decimal Cost, decimal Surplus, long Packs) TryAll(int need, IReadOnlyList<Pack> packs)
    {
        var best = (decimal.MaxValue, 0m, 0L);
        var counts = new long[packs.Count];
        void Try(int index, decimal held)
        {
            if (held >= need || index == packs.Count)
            {
                best = held >= need && Key(need, packs, counts).CompareTo(best) < 0 ? Key(need, packs, counts) : best;
                return;
            }

            for (var count = 0; held + ((count - 1) * packs[index].Size) < need; count++)
            {
                counts[index] = count;
                Try(index + 1, held + (count * packs[index].Size));
            }

            counts[index] = 0;
        }

        Try(0, 0);
        return best;
    }

    private static decimal FullTable(int need, IReadOnlyList<Pack> packs)
    {
        var cost = new decimal[need + 1];
        for (var left = 1; left <= need; left++)
        {
            cost[left] = packs.Min(pack => pack.Price!.Value + cost[Math.Max(0, left - (int)pack.Size)]);
        }

        return cost[need];
    }
}
