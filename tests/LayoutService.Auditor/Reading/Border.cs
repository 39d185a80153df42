using NetTopologySuite.Geometries;

namespace LayoutService.Auditor.Reading;

/// <summary>The ceiling's border: every wall of the outline and of the openings, and the lines across it.</summary>
public sealed class Border
{
    public Border(IReadOnlyList<IReadOnlyList<Uv>> rings) =>
        Walls = rings.SelectMany((ring, index) => Edges(Turned(ring, index == 0), index)).ToList();

    /// <summary>The border of an area, with a number for each of its edges.</summary>
    internal Border(Geometry area, Func<Wall, int> ringOf)
    {
        area.Normalize();
        // outer rings come clockwise and holes the other way: turned about
        Walls = [.. Planes.Edges(area).Where(e => Planes.Length(e) > 0.02).Select(e => new Wall(ringOf(e), e.B, e.A))];
    }

    public IReadOnlyList<Wall> Walls { get; }

    /// <summary>Where the line of constant across <paramref name="v"/> runs inside the ceiling; rings may be left out.</summary>
    public List<Passage> AlongAt(double v, Func<int, bool> ringCounts) =>
        Paired(Walls.Where(w => ringCounts(w.Ring) && w.Vs.From <= v && v < w.Vs.To).Select(w => (w.UAt(v), w)));

    /// <summary>Where the line of constant along <paramref name="u"/> runs inside the ceiling.</summary>
    public List<Passage> AcrossAt(double u) =>
        Paired(Walls.Where(w => w.Us.From <= u && u < w.Us.To).Select(w => (w.VAt(u), w)));

    public static double SignedArea(IReadOnlyList<Uv> ring)
    {
        double sum = 0;
        for (var i = 0; i < ring.Count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
            sum += (a.U * b.V) - (b.U * a.V);
        }

        return sum / 2;
    }

    private static List<Passage> Paired(IEnumerable<(double At, Wall Wall)> crossings)
    {
        var sorted = crossings.OrderBy(c => c.At).ToList();
        var passages = new List<Passage>(sorted.Count / 2);
        for (var i = 0; i + 1 < sorted.Count; i += 2)
        {
            passages.Add(new Passage(sorted[i].At, sorted[i].Wall, sorted[i + 1].At, sorted[i + 1].Wall));
        }

        return passages;
    }

    private static IReadOnlyList<Uv> Turned(IReadOnlyList<Uv> ring, bool counterClockwise) =>
        SignedArea(ring) > 0 == counterClockwise ? ring : ring.Reverse().ToList();

    private static IEnumerable<Wall> Edges(IReadOnlyList<Uv> ring, int index) =>
        ring.Select((a, i) => new Wall(index, a, ring[(i + 1) % ring.Count]));
}
