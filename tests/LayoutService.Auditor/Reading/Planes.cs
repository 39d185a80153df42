using NetTopologySuite.Geometries;
using NetTopologySuite.Noding.Snap;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace LayoutService.Auditor.Reading;

/// <summary>Areas in the frame of the joists, by a published geometry library; corners nearer than 5 µm count as one.</summary>
internal static class Planes
{
    public static GeometryFactory Factory { get; } = new();

    public static Polygon Polygon(IReadOnlyList<IReadOnlyList<Uv>> rings) =>
        Factory.CreatePolygon(Ring(rings[0]), [.. rings.Skip(1).Select(Ring)]);

    public static Geometry Minus(this Geometry a, Geometry b) => Of(a, b, SpatialFunction.Difference);

    public static Geometry Meet(this Geometry a, Geometry b) => Of(a, b, SpatialFunction.Intersection);

    public static Geometry Plus(this Geometry a, Geometry b) => Of(a, b, SpatialFunction.Union);

    public static Geometry Union(IEnumerable<Geometry> all) => all.Aggregate((Geometry)Factory.CreatePolygon(), Plus);

    /// <summary>Grown, with square corners.</summary>
    public static Geometry Grown(this Geometry area, double by) =>
        BufferOp.Buffer(area, by, new BufferParameters(4, EndCapStyle.Square, JoinStyle.Mitre, 10));

    /// <summary>A line with width, ending square at its ends.</summary>
    public static Geometry Strip(IEnumerable<Uv> line, double half) => BufferOp.Buffer(
        Factory.CreateLineString([.. line.Select(p => new Coordinate(p.U, p.V))]), half, new BufferParameters(4, EndCapStyle.Flat, JoinStyle.Mitre, 10));

    public static IEnumerable<Wall> Edges(Geometry area)
    {
        for (var g = 0; g < area.NumGeometries; g++)
        {
            if (area.GetGeometryN(g) is Polygon polygon && !polygon.IsEmpty)
            {
                foreach (var ring in polygon.InteriorRings.Prepend(polygon.ExteriorRing))
                {
                    var corners = ring.Coordinates;
                    for (var i = 0; i + 1 < corners.Length; i++)
                    {
                        yield return new Wall(0, new(corners[i].X, corners[i].Y), new(corners[i + 1].X, corners[i + 1].Y));
                    }
                }
            }
        }
    }

    public static Point Point(Uv at) => Factory.CreatePoint(new Coordinate(at.U, at.V));

    public static double Apart(Uv a, Uv b) => Math.Sqrt(((a.U - b.U) * (a.U - b.U)) + ((a.V - b.V) * (a.V - b.V)));

    public static Uv Middle(this Wall wall) => new((wall.A.U + wall.B.U) / 2, (wall.A.V + wall.B.V) / 2);

    public static double Length(this Wall wall) => Apart(wall.A, wall.B);

    private static Geometry Of(Geometry a, Geometry b, SpatialFunction what)
    {
        if (a.IsEmpty || b.IsEmpty)
        {
            return what switch
            {
                SpatialFunction.Union => a.IsEmpty ? b : a,
                SpatialFunction.Difference => a,
                _ => Factory.CreatePolygon(),
            };
        }

        return Areas(OverlayNG.Overlay(a, b, what, null, new SnappingNoder(0.005)));
    }

    // areas that touch along a line share the line as well: it has no area
    private static Geometry Areas(Geometry made) => made.GetType() == typeof(GeometryCollection)
        ? Factory.CreateMultiPolygon([.. Enumerable.Range(0, made.NumGeometries).Select(made.GetGeometryN).OfType<Polygon>()])
        : made;

    private static LinearRing Ring(IReadOnlyList<Uv> ring) => Factory.CreateLinearRing([.. ring.Append(ring[0]).Select(p => new Coordinate(p.U, p.V))]);
}
