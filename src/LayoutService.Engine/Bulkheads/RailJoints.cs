namespace LayoutService.Engine.Bulkheads;

/// <summary>
/// Problem: a rail longer than the stock is jointed; where, so that every joint is on a rung and the two rails of a ladder are not
/// jointed at the same one. Method: as few parts as the stock allows, each joint on the rung nearest its equal share of those that
/// leave no part too long; where there is none, at the equal share, and a rung is set there. Cost: joints × rungs.
/// </summary>
internal static class RailJoints
{
    /// <param name="rungs">Where rungs stand, rising.</param>
    /// <param name="from">Where the rail begins.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="cut">Its length with the long points of slanting ends.</param>
    /// <param name="longest">The longest part that the stock gives.</param>
    /// <param name="taken">Joints of the other rail.</param>
    public static IReadOnlyList<double> Of(IReadOnlyList<double> rungs, double from, double to, double cut, long longest, IReadOnlyList<double> taken)
    {
        var parts = Math.Max(1, (int)Math.Ceiling(cut / longest));
        // an end cut aslant takes its part of the stock
        double ends = (cut - (to - from)) / 2, reach = longest - 1;
        var joints = new List<double>(parts - 1);
        for (var k = 1; k < parts; k++)
        {
            var even = from + ((to - from) * k / parts);
            var low = to + ends - ((parts - k) * reach);
            var high = k == 1 ? from - ends + reach : joints[^1] + reach;
            var on = rungs.Where(r => r > from && r < to && r >= low && r <= high && !taken.Contains(r)).ToList();
            joints.Add(on.Count > 0 ? on.MinBy(r => Math.Abs(r - even)) : Math.Clamp(even, Math.Min(low, high), high));
        }

        return joints;
    }
}
