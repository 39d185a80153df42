using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Insulation;

/// <summary>
/// How a width is filled: one batt cut to it, or whole batts side by side and a strip of what is left. The size that needs
/// fewest strips is taken, then the narrowest, then the longest.
/// </summary>
public sealed class BattStrips(BattRules rules)
{
    /// <summary>The batt, and the widths as drawn, which add up to the width.</summary>
    public (Batt Batt, IReadOnlyList<long> Widths) Of(IReadOnlyList<Batt> sizes, long width)
    {
        var batt = sizes[0];
        foreach (var size in sizes)
        {
            batt = Key(size, width).CompareTo(Key(batt, width)) < 0 ? size : batt;
        }

        var count = Count(batt, width);
        if (count == 1)
        {
            return (batt, [width]);
        }

        var rest = width - ((count - 1) * batt.Width.Units);
        if (rest >= rules.LeastStrip)
        {
            return (batt, [.. Enumerable.Repeat(batt.Width.Units, count - 1), rest]);
        }

        var even = width / count;
        return (batt, [.. Enumerable.Repeat(even, count - 1), width - (even * (count - 1))]);
    }

    /// <summary>Width to cut, so that the batt holds by friction: never wider than the batt.</summary>
    public long Cut(Batt batt, long width) => Math.Min(batt.Width.Units, width + rules.Friction);

    private (int, long, long) Key(Batt batt, long width) => (Count(batt, width), batt.Width.Units, -batt.Length.Units);

    private int Count(Batt batt, long width) => (int)Math.Max(1, (width - rules.Tolerance + batt.Width.Units - 1) / batt.Width.Units);
}
