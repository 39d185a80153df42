using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using Shapes = NetTopologySuite.Geometries.Geometry;

namespace LayoutService.Engine.Geometry;

/// <summary>
/// A straight wall edge of a region. <see cref="Source"/> tells whose edge it is: 0 and up, an edge of the outline in the
/// caller's order; below 0, opening number −(source + 1). <see cref="InsideUp"/> is true when the room lies towards +u.
/// </summary>
public readonly record struct WallEdge(Uv From, Uv To, int Source, bool InsideUp)
{
    /// <summary>Square to the joists: runs along v.</summary>
    public bool Square => From.U == To.U;

    /// <summary>Runs with the joists, along u.</summary>
    public bool Parallel => From.V == To.V;

    public Span Across => new(Math.Min(From.V, To.V), Math.Max(From.V, To.V));

    public Span Along => new(Math.Min(From.U, To.U), Math.Max(From.U, To.U));
}

/// <summary>
/// A polygon with holes (or several) in the working frame, cut into trapezoids at every corner's level, which makes
/// every question about straps and courses a walk over intervals. Cost of building: O(corners²), of a question: O(cells).
/// </summary>
public sealed class Region
{
    private static readonly GeometryFactory Factory = new(new PrecisionModel(1));

    internal Region(Shapes shape, Cell[] cells, WallEdge[] edges)
    {
        Shape = shape;
        Cells = cells;
        Edges = edges;
        Holes = [.. HolesOf(shape).OrderBy(h => h.Along.Lo).ThenBy(h => h.Across.Lo)];
        foreach (var cell in cells)
        {
            LowU = Math.Min(LowU, cell.LowU);
            HighU = Math.Max(HighU, cell.HighU);
            LowV = Math.Min(LowV, cell.V0);
            HighV = Math.Max(HighV, cell.V1);
            Area += (double)(cell.V1 - cell.V0) * ((cell.R0 - cell.L0) + (cell.R1 - cell.L1)) / 2.0;
        }
    }

    public Shapes Shape { get; }

    public Cell[] Cells { get; }

    public WallEdge[] Edges { get; }

    /// <summary>Extents of the holes that lie wholly inside the region.</summary>
    public IReadOnlyList<(Span Along, Span Across)> Holes { get; }

    public long LowU { get; } = long.MaxValue;

    public long HighU { get; } = long.MinValue;

    public long LowV { get; } = long.MaxValue;

    public long HighV { get; } = long.MinValue;

    /// <summary>Area in square units.</summary>
    public double Area { get; }

    /// <summary>The outline less the openings, each widened by its clearance with square corners.</summary>
    public static Region Of(IReadOnlyList<Uv> outline, IReadOnlyList<(IReadOnlyList<Uv> Ring, long Clearance)> openings) =>
        Of(outline, openings, []);

    /// <summary>The same, less footprints as well; the source of a footprint's edge counts on after the openings.</summary>
    public static Region Of(
        IReadOnlyList<Uv> outline, IReadOnlyList<(IReadOnlyList<Uv> Ring, long Clearance)> openings, IReadOnlyList<Footprint> footprints)
    {
        Shapes shape = Polygon(outline);
        foreach (var (ring, clearance) in openings)
        {
            Shapes hole = Polygon(ring);
            if (clearance > 0)
            {
                hole = hole.Buffer(clearance, new NetTopologySuite.Operation.Buffer.BufferParameters(
                    8, NetTopologySuite.Operation.Buffer.EndCapStyle.Flat, NetTopologySuite.Operation.Buffer.JoinStyle.Mitre, 5.0));
            }

            shape = Overlays.Of(shape, hole, SpatialFunction.Difference);
        }

        shape = Footprint.Left(shape, footprints);
        return new Region(shape, CutCells(shape), WallEdges.Find(shape, outline, openings, footprints));
    }

    public static Polygon Polygon(IReadOnlyList<Uv> ring)
    {
        var corners = new Coordinate[ring.Count + 1];
        for (var i = 0; i < ring.Count; i++)
        {
            corners[i] = new Coordinate(ring[i].U, ring[i].V);
        }

        corners[^1] = corners[0].Copy();
        return Factory.CreatePolygon(corners);
    }

    /// <summary>The parts of the region inside a box, as simple rings without holes in anticlockwise order.</summary>
    public IEnumerable<Uv[]> Within(Span along, Span across)
    {
        var box = Polygon([new(along.Lo, across.Lo), new(along.Hi, across.Lo), new(along.Hi, across.Hi), new(along.Lo, across.Hi)]);
        var part = Overlays.Of(Shape, box, SpatialFunction.Intersection);
        var rings = new List<Uv[]>();
        for (var i = 0; i < part.NumGeometries; i++)
        {
            if (part.GetGeometryN(i) is Polygon { IsEmpty: false } polygon)
            {
                rings.Add(Ring(polygon.ExteriorRing.Coordinates));
            }
        }

        return rings.OrderBy(ring => ring.Min(c => c.U)).ThenBy(ring => ring.Min(c => c.V));
    }

    /// <summary>
    /// Where a line of constant u, thickened by <paramref name="half"/> each way, lies wholly inside the region: stretches
    /// of v, merged, in rising order.
    /// </summary>
    public List<Span> AcrossAt(long u, long half)
    {
        var found = new List<Span>(4);
        foreach (var cell in Cells)
        {
            if (cell.LowU > u - half || cell.HighU < u + half)
            {
                continue;
            }

            var lo = (double)cell.V0;
            var hi = (double)cell.V1;
            Clip(cell, cell.L0 - (u - half), cell.L1 - (u - half), ref lo, ref hi);
            Clip(cell, u + half - cell.R0, u + half - cell.R1, ref lo, ref hi);
            var from = (long)Math.Ceiling(lo);
            var to = (long)Math.Floor(hi);
            if (from < to)
            {
                found.Add(new Span(from, to));
            }
        }

        return Merge(found);
    }

    /// <summary>Joins stretches that touch; the list is sorted in place.</summary>
    public static List<Span> Merge(List<Span> spans)
    {
        if (spans.Count < 2)
        {
            return spans;
        }

        spans.Sort(static (a, b) => a.Lo.CompareTo(b.Lo));
        var kept = 0;
        for (var i = 1; i < spans.Count; i++)
        {
            if (spans[i].Lo <= spans[kept].Hi + 1)
            {
                spans[kept] = new Span(spans[kept].Lo, Math.Max(spans[kept].Hi, spans[i].Hi));
            }
            else
            {
                spans[++kept] = spans[i];
            }
        }

        spans.RemoveRange(kept + 1, spans.Count - kept - 1);
        return spans;
    }

    // keeps the part of [lo, hi] where a quantity that runs linearly from at0 (at V0) to at1 (at V1) is <= 0
    private static void Clip(Cell cell, long at0, long at1, ref double lo, ref double hi)
    {
        if (at0 <= 0 && at1 <= 0)
        {
            return;
        }

        if (at0 > 0 && at1 > 0)
        {
            hi = lo - 1;
            return;
        }

        var cross = cell.V0 + ((double)(cell.V1 - cell.V0) * at0 / (at0 - at1));
        if (at0 > 0)
        {
            lo = Math.Max(lo, cross);
        }
        else
        {
            hi = Math.Min(hi, cross);
        }
    }

    /// <summary>The corners as a ring, anticlockwise, without straight corners.</summary>
    internal static Uv[] Ring(Coordinate[] corners)
    {
        var ring = new Uv[corners.Length - 1];
        for (var i = 0; i < ring.Length; i++)
        {
            ring[i] = new Uv((long)corners[i].X, (long)corners[i].Y);
        }

        if (Rings.TwiceArea(ring) < 0)
        {
            Array.Reverse(ring);
        }

        return Rings.WithoutStraightCorners(ring);
    }

    internal static Cell[] CutCells(Shapes shape)
    {
        var sides = new List<(Coordinate Low, Coordinate High)>();
        var levels = new SortedSet<long>();
        foreach (var ring in RingsOf(shape))
        {
            for (var i = 0; i + 1 < ring.Length; i++)
            {
                levels.Add((long)ring[i].Y);
                if (ring[i].Y != ring[i + 1].Y)
                {
                    sides.Add(ring[i].Y < ring[i + 1].Y ? (ring[i], ring[i + 1]) : (ring[i + 1], ring[i]));
                }
            }
        }

        var cells = new List<Cell>();
        var crossing = new List<(double Middle, long At0, long At1)>();
        var level = new long[levels.Count];
        levels.CopyTo(level);
        for (var s = 0; s + 1 < level.Length; s++)
        {
            var (v0, v1) = (level[s], level[s + 1]);
            crossing.Clear();
            foreach (var (low, high) in sides)
            {
                if (low.Y <= v0 && high.Y >= v1)
                {
                    var at0 = UAt(low, high, v0);
                    var at1 = UAt(low, high, v1);
                    crossing.Add(((at0 + at1) / 2, (long)Math.Round(at0), (long)Math.Round(at1)));
                }
            }

            crossing.Sort(static (a, b) => a.Middle.CompareTo(b.Middle));
            for (var i = 0; i + 1 < crossing.Count; i += 2)
            {
                cells.Add(new Cell(v0, v1, crossing[i].At0, crossing[i].At1, crossing[i + 1].At0, crossing[i + 1].At1));
            }
        }

        return [.. cells];
    }

    private static double UAt(Coordinate low, Coordinate high, long v) =>
        low.X == high.X ? low.X : low.X + ((high.X - low.X) * (v - low.Y) / (high.Y - low.Y));

    private static IEnumerable<(Span Along, Span Across)> HolesOf(Shapes shape)
    {
        for (var i = 0; i < shape.NumGeometries; i++)
        {
            if (shape.GetGeometryN(i) is Polygon { IsEmpty: false } polygon)
            {
                foreach (var hole in polygon.InteriorRings)
                {
                    var box = hole.EnvelopeInternal;
                    yield return (new Span((long)box.MinX, (long)box.MaxX), new Span((long)box.MinY, (long)box.MaxY));
                }
            }
        }
    }

    private static IEnumerable<Coordinate[]> RingsOf(Shapes shape)
    {
        for (var i = 0; i < shape.NumGeometries; i++)
        {
            if (shape.GetGeometryN(i) is Polygon { IsEmpty: false } polygon)
            {
                yield return polygon.ExteriorRing.Coordinates;
                foreach (var hole in polygon.InteriorRings)
                {
                    yield return hole.Coordinates;
                }
            }
        }
    }
}
