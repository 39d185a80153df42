using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Tests.Takeoff;

public class AllocationTests
{
    [Fact]
    public void The_parts_add_up_and_none_is_a_minor_unit_off()
    {
        var dice = new Random(7);
        for (var n = 0; n < 500; n++)
        {
            var currency = new[] { "CAD", "JPY", "KWD" }[dice.Next(3)];
            var amount = MinorUnits.Round(dice.Next(1_000_000) / 1000m, currency);
            decimal[] weights = [.. Enumerable.Range(0, dice.Next(1, 9)).Select(_ => (decimal)dice.Next(1, 1000))];
            var parts = Allocation.Of(amount, weights, currency);
            Assert.Equal(amount, parts.Sum());
            for (var i = 0; i < parts.Length; i++)
            {
                Assert.Equal(MinorUnits.Round(parts[i], currency), parts[i]);
                Assert.InRange(parts[i] - (amount * weights[i] / weights.Sum()), -1m, 1m);
            }
        }
    }

    [Fact]
    public void Without_weights_the_parts_are_equal_but_for_a_minor_unit() =>
        Assert.Equal([3.34m, 3.33m, 3.33m], Allocation.Of(10m, [0, 0, 0], "CAD"));
}
