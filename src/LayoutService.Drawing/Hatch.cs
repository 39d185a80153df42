namespace LayoutService.Drawing;

/// <summary>
/// Slanted lines over an area: each is cut where it meets the rings, and every second part lies inside (even-odd rule). Cost:
/// lines × corners.
/// </summary>
internal static class Hatch
{
    /// <param name="ink">Where to.</param>
    /// <param name="rings">The area, holes among its rings.</param>
    /// <param name="step">Pixels between the lines, measured level.</param>
    /// <param name="rising">True for lines that rise to the right.</param>
    public static void Draw(SvgInk ink, IReadOnlyList<IReadOnlyList<Spot>> rings, double step, bool rising)
    {
        var way = rising ? 1 : -1;
        double Of(Spot spot) => spot.X + (way * spot.Y);
        var all = rings.SelectMany(ring => ring).Select(Of).ToList();
        for (var line = (Math.Floor(all.Min() / step) + 0.5) * step; line < all.Max(); line += step)
        {
            var cuts = new List<double>();
            foreach (var ring in rings)
            {
                for (var i = 0; i < ring.Count; i++)
                {
                    var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
                    var (from, to) = (Of(a), Of(b));
                    if (from <= line != to <= line)
                    {
                        cuts.Add(a.X + ((b.X - a.X) * (line - from) / (to - from)));
                    }
                }
            }

            cuts.Sort();
            for (var i = 0; i + 1 < cuts.Count; i += 2)
            {
                ink.Line(new(cuts[i], way * (line - cuts[i])), new(cuts[i + 1], way * (line - cuts[i + 1])));
            }
        }
    }
}
