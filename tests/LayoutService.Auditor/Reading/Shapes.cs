namespace LayoutService.Auditor.Reading;

/// <summary>Rings in the frame of the joists, by their crossings with lines along them.</summary>
internal static class Shapes
{
    /// <summary>Where a line of constant across runs inside a ring.</summary>
    public static List<Stretch> At(IReadOnlyList<Uv> ring, double v)
    {
        var cuts = new List<double>();
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            if (a.V <= v != b.V <= v)
            {
                cuts.Add(a.U + ((b.U - a.U) * (v - a.V) / (b.V - a.V)));
            }
        }

        cuts.Sort();
        return [.. Enumerable.Range(0, cuts.Count / 2).Select(i => new Stretch(cuts[2 * i], cuts[(2 * i) + 1]))];
    }

    /// <summary>
    /// Integrates a length along lines of constant across from one to another: exact where the length is linear between the
    /// levels given, which are the corners of everything that it is made of, and the places where edges cross.
    /// </summary>
    public static double Integrate(Stretch across, IEnumerable<double> levels, Func<double, double> length)
    {
        double sum = 0, from = across.From;
        foreach (var to in levels.Where(l => l > across.From && l < across.To).Append(across.To).Order())
        {
            if (to - from > 1e-9)
            {
                sum += length((from + to) / 2) * (to - from);
            }

            from = to;
        }

        return sum;
    }

    /// <summary>Levels of the corners of rings, and of the places where their edges cross.</summary>
    public static List<double> Levels(IReadOnlyList<IReadOnlyList<Uv>> rings)
    {
        var levels = rings.SelectMany(r => r.Select(p => p.V)).ToList();
        var edges = rings.SelectMany(r => r.Select((a, i) => (A: a, B: r[(i + 1) % r.Count]))).ToList();
        for (var i = 0; i < edges.Count; i++)
        {
            for (var j = i + 1; j < edges.Count; j++)
            {
                if (Crossing(edges[i], edges[j]) is { } level)
                {
                    levels.Add(level);
                }
            }
        }

        return levels;
    }

    /// <summary>Length that two sets of stretches share.</summary>
    public static double Shared(IEnumerable<Stretch> some, IReadOnlyList<Stretch> others) =>
        some.Sum(a => others.Sum(b => Math.Max(0, Math.Min(a.To, b.To) - Math.Max(a.From, b.From))));

    /// <summary>Area that two rings share, mm².</summary>
    public static double SharedArea(IReadOnlyList<Uv> a, IReadOnlyList<Uv> b)
    {
        var across = new Stretch(Math.Max(a.Min(p => p.V), b.Min(p => p.V)), Math.Min(a.Max(p => p.V), b.Max(p => p.V)));
        return across.Length <= 0 ? 0 : Integrate(across, Levels([a, b]), v => Shared(At(a, v), At(b, v)));
    }

    /// <summary>Distance between two rings that do not overlap, mm.</summary>
    public static double Distance(IReadOnlyList<Uv> a, IReadOnlyList<Uv> b) => Math.Min(ToEdges(a, b), ToEdges(b, a));

    private static double ToEdges(IReadOnlyList<Uv> corners, IReadOnlyList<Uv> ring) =>
        corners.Min(p => ring.Select((a, i) => new Wall(0, a, ring[(i + 1) % ring.Count]).Distance(p)).Min());

    private static double? Crossing((Uv A, Uv B) p, (Uv A, Uv B) q)
    {
        double pu = p.B.U - p.A.U, pv = p.B.V - p.A.V, qu = q.B.U - q.A.U, qv = q.B.V - q.A.V;
        var det = (pu * qv) - (pv * qu);
        if (Math.Abs(det) < 1e-9)
        {
            return null;
        }

        var t = (((q.A.U - p.A.U) * qv) - ((q.A.V - p.A.V) * qu)) / det;
        var s = (((q.A.U - p.A.U) * pv) - ((q.A.V - p.A.V) * pu)) / det;
        return t is > 0 and < 1 && s is > 0 and < 1 ? p.A.V + (t * pv) : null;
    }
}
