using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Insulation;

/// <summary>Batts that differ in width and length only.</summary>
public sealed record BattMake(long Thickness, decimal Rsi, bool Splittable, IReadOnlyList<Batt> Sizes)
{
    public static IReadOnlyList<BattMake> Of(IReadOnlyList<Batt> batts) =>
        [.. batts.GroupBy(b => (b.Thickness.Units, b.Rsi, b.Splittable)).Select(g => new BattMake(g.Key.Units, g.Key.Rsi, g.Key.Splittable, [.. g]))];
}

/// <summary>
/// A make as it lies: whole or split, and how thick it is then. <see cref="Loose"/> is its thickness before it is squeezed.
/// </summary>
public sealed record BattLayer(BattMake Make, bool Split, long Loose, long Installed)
{
    public bool Squeezed => Installed < Loose;
}

/// <summary>
/// Which batt goes into a depth: the one that lies thickest without more squeeze than the limit; of equals the least
/// squeezed, then a whole one before a split one, then the better resistance.
/// </summary>
public sealed class BattChoice(IReadOnlyList<BattMake> makes, decimal squeezeMost)
{
    private readonly Dictionary<long, BattLayer?> known = [];

    public BattLayer? For(long depth)
    {
        if (!known.TryGetValue(depth, out var best))
        {
            foreach (var layer in Layers(depth))
            {
                if (best is null || Key(layer).CompareTo(Key(best)) < 0)
                {
                    best = layer;
                }
            }

            known[depth] = best;
        }

        return best;
    }

    private static (long, long, bool, decimal) Key(BattLayer layer) => (-layer.Installed, layer.Loose - layer.Installed, layer.Split, -layer.Make.Rsi);

    private IEnumerable<BattLayer> Layers(long depth)
    {
        foreach (var make in makes)
        {
            if (Fits(make.Thickness, depth))
            {
                yield return new BattLayer(make, false, make.Thickness, Math.Min(make.Thickness, depth));
            }

            if (make.Splittable && Fits(make.Thickness / 2, depth))
            {
                yield return new BattLayer(make, true, make.Thickness / 2, Math.Min(make.Thickness / 2, depth));
            }
        }
    }

    private bool Fits(long loose, long depth) => depth > 0 && loose - depth <= loose * squeezeMost;
}
