using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Bulkheads;

/// <summary>
/// Problem: which stretches of a straight line lie inside a bulkhead, so that no wood is laid through a wall or a post that
/// stands into it. Method: every crossing with an edge of the outline, in order along the line, and for the middle of each
/// two neighbours whether it is inside (even-odd rule). Cost: edges × crossings; a line that crosses nothing is one look at
/// each edge.
/// </summary>
internal sealed class InsideStretches(Footprint footprint)
{
    /// <summary>A crossing nearer than this to an end or to another is that end: 0.1 mm.</summary>
    private const double Near = 0.1 * Length.PerMillimetre;

    private readonly List<(Uv From, Uv To)> _edges =
        [.. footprint.Patches.SelectMany(p => p.Loops).SelectMany(ring => ring.Select((c, i) => (c, ring[(i + 1) % ring.Count])))];

    /// <summary>Stretches in distances from the first end.</summary>
    public List<(double From, double To)> Of(Uv from, Uv to)
    {
        var length = Rings.DistanceBetween(from, to);
        List<double> stops = [0, length];
        double du = to.U - from.U, dv = to.V - from.V;
        foreach (var (a, b) in _edges)
        {
            double eu = b.U - a.U, ev = b.V - a.V, pu = a.U - from.U, pv = a.V - from.V;
            var turn = (du * ev) - (dv * eu);
            if (Math.Abs(turn) < 1e-6 * length * Math.Sqrt((eu * eu) + (ev * ev)))
            {
                continue;
            }

            var (on, along) = (((pu * ev) - (pv * eu)) / turn * length, ((pu * dv) - (pv * du)) / turn);
            if (on > 0 && on < length && along is >= -1e-9 and <= 1 + 1e-9)
            {
                stops.Add(on);
            }
        }

        stops.Sort();
        var found = new List<(double From, double To)>();
        for (var i = 0; i + 1 < stops.Count; i++)
        {
            if (stops[i + 1] - stops[i] <= Near || !Holds(from.U + (du * (stops[i] + stops[i + 1]) / 2 / length), from.V + (dv * (stops[i] + stops[i + 1]) / 2 / length)))
            {
                continue;
            }

            if (found.Count > 0 && stops[i] - found[^1].To <= Near)
            {
                found[^1] = (found[^1].From, stops[i + 1]);
            }
            else
            {
                found.Add((stops[i], stops[i + 1]));
            }
        }

        return found;
    }

    /// <summary>True when a place lies inside; on the edge either may be said.</summary>
    public bool Holds(double u, double v)
    {
        var inside = false;
        foreach (var (a, b) in _edges)
        {
            if (a.V <= v != b.V <= v && a.U + ((double)(b.U - a.U) * (v - a.V) / (b.V - a.V)) > u)
            {
                inside = !inside;
            }
        }

        return inside;
    }
}
