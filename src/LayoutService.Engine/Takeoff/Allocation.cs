namespace LayoutService.Engine.Takeoff;

/// <summary>
/// Problem: divide an amount of money by weights so that the parts are whole minor units and add up to it. Usual name: the
/// largest-remainder method (Hamilton's). Cost: a sort. Chosen because no part is off by a whole minor unit, and rounding
/// each part alone does not add up.
/// </summary>
public static class Allocation
{
    /// <summary>The parts, in the order of the weights; equal parts when no weight is above zero.</summary>
    public static decimal[] Of(decimal amount, IReadOnlyList<decimal> weights, string currency)
    {
        if (weights.All(weight => weight <= 0))
        {
            weights = [.. weights.Select(_ => 1m)];
        }

        var unit = 1m;
        for (var place = MinorUnits.Places(currency); place > 0; place--)
        {
            unit /= 10;
        }

        var sum = weights.Sum();
        var exact = weights.Select(weight => amount / unit * (weight / sum)).ToArray();
        var parts = exact.Select(decimal.Floor).ToArray();
        var left = (int)((amount / unit) - parts.Sum());
        foreach (var place in Enumerable.Range(0, parts.Length).OrderByDescending(i => exact[i] - parts[i]).ThenBy(i => i).Take(left))
        {
            parts[place]++;
        }

        return [.. parts.Select(part => part * unit)];
    }
}
