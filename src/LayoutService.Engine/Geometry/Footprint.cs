using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Overlay;
using Shapes = NetTopologySuite.Geometries.Geometry;

namespace LayoutService.Engine.Geometry;

/// <summary>One connected piece of floor: its outer ring anticlockwise and its holes clockwise, so that the piece is on the left.</summary>
public sealed record Patch(IReadOnlyList<Uv> Outer, IReadOnlyList<IReadOnlyList<Uv>> Holes)
{
    public IEnumerable<IReadOnlyList<Uv>> Loops => Holes.Prepend(Outer);
}

/// <summary>
/// A piece of floor seen from above, or several, in the working frame: what a bulkhead takes of the ceiling. Corners fall on
/// whole units. Offsets keep their corners square (mitred, up to five times the distance).
/// </summary>
public sealed class Footprint
{
    /// <summary>Pieces smaller than a square of this side are what rounding leaves: 2 mm.</summary>
    private const double Crumb = 2.0 * Measures.Length.PerMillimetre * 2.0 * Measures.Length.PerMillimetre;

    private static readonly PrecisionModel Whole = new(1);
    private static readonly GeometryFactory Factory = new(Whole);
    private static readonly BufferParameters Square = new(8, EndCapStyle.Flat, JoinStyle.Mitre, 5.0);

    private Footprint(Shapes shape)
    {
        Shape = Clean(shape);
        Patches = [.. Polygons(Shape).Select(Read).OrderBy(p => p.Outer.Min(c => c.U)).ThenBy(p => p.Outer.Min(c => c.V))];
    }

    public IReadOnlyList<Patch> Patches { get; }

    public bool Empty => Patches.Count == 0;

    public IEnumerable<Uv> Corners => Patches.SelectMany(p => p.Loops).SelectMany(l => l);

    /// <summary>Square units.</summary>
    public double Area => Shape.Area;

    internal Shapes Shape { get; }

    public static Footprint Of(params IEnumerable<IReadOnlyList<Uv>> rings) =>
        new(rings.Select(r => (Shapes)Region.Polygon(r)).Aggregate((Shapes)Factory.CreatePolygon(), Overlays.Join));

    /// <summary>The strips of a width along lines of a ring's edges, mitred where one edge follows another.</summary>
    /// <param name="chains">Corners of each run of edges; a closed run repeats its first corner.</param>
    /// <param name="width">How far the strip reaches to either side.</param>
    public static Footprint Along(IEnumerable<IReadOnlyList<Uv>> chains, long width)
    {
        Shapes all = Factory.CreatePolygon();
        foreach (var chain in chains)
        {
            var corners = chain.Select(c => new Coordinate(c.U, c.V)).ToArray();
            Shapes line = chain[0] == chain[^1] ? Factory.CreateLinearRing(corners) : Factory.CreateLineString(corners);
            all = Overlays.Join(all, line.Buffer(width, Square));
            // beside an edge shorter than the width the offset leaves a wedge out
            for (var i = 0; chain.Count > 2 && i + 1 < corners.Length; i++)
            {
                all = Overlays.Join(all, Factory.CreateLineString([corners[i], corners[i + 1]]).Buffer(width, Square));
            }
        }

        return new Footprint(all);
    }

    public Footprint Grown(long by) => by == 0 || Empty ? this : new(SquareOverlay.Grown(Shape, by) ?? Shape.Buffer(by, Square));

    public Footprint Plus(Footprint other) => Empty ? other : other.Empty ? this : new(Overlays.Join(Shape, other.Shape));

    public Footprint Minus(Footprint other) =>
        Empty || other.Empty ? this : new(Overlays.Of(Shape, other.Shape, SpatialFunction.Difference));

    public Footprint Meet(Footprint other) =>
        Empty || other.Empty ? Of([]) : new(Overlays.Of(Shape, other.Shape, SpatialFunction.Intersection));

    /// <summary>What footprints leave of a floor; without the hairs that whole units leave where one lies along an oblique wall.</summary>
    internal static Shapes Left(Shapes floor, IReadOnlyList<Footprint> taken)
    {
        var left = floor;
        foreach (var footprint in taken.Where(f => !f.Empty))
        {
            left = Overlays.Of(left, footprint.Shape, SpatialFunction.Difference);
        }

        return left == floor ? floor : new Footprint(left).Tidied([]).Shape;
    }

    /// <summary>Only the pieces that have some of these edges for a side.</summary>
    public Footprint Beside(IReadOnlyList<(Uv From, Uv To)> edges)
    {
        Shapes kept = Factory.CreatePolygon();
        foreach (var polygon in Polygons(Shape))
        {
            if (edges.Any(e => polygon.Distance(Factory.CreatePoint(new Coordinate((e.From.U + e.To.U) / 2.0, (e.From.V + e.To.V) / 2.0))) <= 2))
            {
                kept = Overlays.Join(kept, polygon);
            }
        }

        return new Footprint(kept);
    }

    /// <summary>
    /// With what is left of a floor between this and its edges, or between two sides of this, where that is narrower than a gap: a
    /// strip too narrow to board is boxed in with it.
    /// </summary>
    public Footprint WithoutSlivers(Footprint floor, long gap)
    {
        var left = floor.Minus(this);
        var kept = left.Grown(-(gap / 2)).Grown(gap / 2);
        Shapes all = Shape;
        foreach (var sliver in Polygons(left.Minus(kept.Grown(2)).Shape))
        {
            var shared = Overlays.Shared(sliver, Shape.Buffer(2));
            var border = Overlays.Shared(sliver, floor.Shape.Boundary.Buffer(2));
            var between = border.Area > 2.0 * 40 * Measures.Length.PerMillimetre || shared.Area > 2 * 0.75 * sliver.Length;
            if (sliver.Area > 25 * Crumb && shared.Area > 2.0 * 40 * Measures.Length.PerMillimetre && between)
            {
                all = Overlays.Join(all, sliver.Buffer(4, Square));
            }
        }

        return new Footprint(all).Meet(floor);
    }

    /// <summary>The pieces of it that are narrower than a width, tips of sharp corners among them.</summary>
    public IReadOnlyList<Footprint> Narrower(long width)
    {
        var wide = Grown(-(width / 2)).Grown(width / 2);
        return Empty ? [] : [.. Polygons(Minus(wide.Grown(2)).Shape).Where(p => p.Area > 25 * Crumb).Select(p => new Footprint(p.Buffer(4, Square)).Meet(this))];
    }

    /// <summary>How much of another's edge lies along this one.</summary>
    public double Shared(Footprint other) => Empty || other.Empty ? 0 : Overlays.Shared(other.Shape, Shape.Buffer(2)).Area / 2;

    /// <summary>
    /// Without the jogs and spikes of less than 0.01 mm that offsets and overlays leave on whole units; a corner at nearly the same
    /// level as one of these places, along or across, is put on that level.
    /// </summary>
    public Footprint Tidied(IReadOnlyList<Uv> places)
    {
        const double jog = 0.01 * Measures.Length.PerMillimetre;
        var tidy = Patches.Select(p => p.Loops.Select(l => Rings.WithoutJogs(l, places, jog)).ToList()).ToList();
        return Patches.Zip(tidy).All(x => x.First.Loops.Zip(x.Second).All(l => l.First.SequenceEqual(l.Second)))
            ? this
            : new(Factory.CreateMultiPolygon([.. tidy.Select(loops => Factory.CreatePolygon(
                Factory.CreateLinearRing(Closed(loops[0])), [.. loops.Skip(1).Select(h => Factory.CreateLinearRing(Closed(h)))]))]));
    }

    /// <summary>The pieces that straight cuts divide this into. Cuts reach from side to side.</summary>
    public IReadOnlyList<Uv[]> Divided(IReadOnlyList<(Uv From, Uv To)> cuts)
    {
        var lines = Shape.Boundary;
        foreach (var (from, to) in cuts)
        {
            lines = Overlays.Of(
                lines, Factory.CreateLineString([new Coordinate(from.U, from.V), new Coordinate(to.U, to.V)]), SpatialFunction.Union);
        }

        var polygonizer = new NetTopologySuite.Operation.Polygonize.Polygonizer();
        polygonizer.Add(lines);
        return [.. polygonizer.GetPolygons().OfType<Polygon>()
            .Where(p => p.Area > Crumb && SimplePointInAreaLocator.Locate(p.InteriorPoint.Coordinate, Shape) == Location.Interior)
            .Select(p => Rings.FromLeast(Region.Ring(p.ExteriorRing.Coordinates)))
            .OrderBy(r => r.Min(c => c.U)).ThenBy(r => r.Min(c => c.V))];
    }

    /// <summary>True when a place lies in it or on its edge.</summary>
    public bool Holds(Uv place) => !Empty && Shape.Distance(Factory.CreatePoint(new Coordinate(place.U, place.V))) <= 1;

    private static IEnumerable<Polygon> Polygons(Shapes shape)
    {
        for (var i = 0; i < shape.NumGeometries; i++)
        {
            if (shape.GetGeometryN(i) is Polygon { IsEmpty: false } polygon)
            {
                yield return polygon;
            }
        }
    }

    // whole units, no crumbs, no lines
    private static Shapes Clean(Shapes shape)
    {
        var polygons = Polygons(Overlays.Of(Areas(shape), Factory.CreatePolygon(), SpatialFunction.Union))
            .Where(p => p.Area > Crumb)
            .Select(p => Factory.CreatePolygon(
                Factory.CreateLinearRing(Closed(Region.Ring(p.ExteriorRing.Coordinates))),
                [.. p.InteriorRings.Where(h => new Polygon((LinearRing)h).Area > Crumb).Select(h => Factory.CreateLinearRing(Closed(Region.Ring(h.Coordinates))))]))
            .ToArray();
        return polygons.Length == 1 ? polygons[0] : Factory.CreateMultiPolygon(polygons);
    }

    // where two shapes touch along a line an overlay has the line in it as well
    private static Shapes Areas(Shapes shape) =>
        shape is Polygon or MultiPolygon ? shape : Factory.CreateMultiPolygon([.. Polygons(shape)]);

    private static Coordinate[] Closed(Uv[] ring) => [.. ring.Append(ring[0]).Select(c => new Coordinate(c.U, c.V))];

    private static Patch Read(Polygon polygon)
    {
        var holes = polygon.InteriorRings.Select(h =>
        {
            var ring = Region.Ring(h.Coordinates);
            Array.Reverse(ring);
            return (IReadOnlyList<Uv>)Rings.FromLeast(ring);
        });
        return new Patch(Rings.FromLeast(Region.Ring(polygon.ExteriorRing.Coordinates)), [.. holes.OrderBy(h => h.Min(c => c.U)).ThenBy(h => h.Min(c => c.V))]);
    }
}
