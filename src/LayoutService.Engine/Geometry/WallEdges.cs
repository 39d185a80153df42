using NetTopologySuite.Geometries;
using Shapes = NetTopologySuite.Geometries.Geometry;

namespace LayoutService.Engine.Geometry;

/// <summary>Finds the straight edges of a region and whose they are. Cost: edges × corners.</summary>
internal static class WallEdges
{
    public static WallEdge[] Find(
        Shapes shape, IReadOnlyList<Uv> outline, IReadOnlyList<(IReadOnlyList<Uv> Ring, long Clearance)> openings, IReadOnlyList<Footprint> footprints)
    {
        var edges = new List<WallEdge>();
        for (var g = 0; g < shape.NumGeometries; g++)
        {
            if (shape.GetGeometryN(g) is not Polygon { IsEmpty: false } polygon)
            {
                continue;
            }

            AddRing(edges, Region.Ring(polygon.ExteriorRing.Coordinates), outline, openings, footprints);
            foreach (var hole in polygon.InteriorRings)
            {
                var ring = Region.Ring(hole.Coordinates);
                Array.Reverse(ring);
                AddRing(edges, ring, outline, openings, footprints);
            }
        }

        // in one order whatever corner the caller began with
        edges.Sort(static (a, b) => (a.From.U, a.From.V, a.To.U, a.To.V).CompareTo((b.From.U, b.From.V, b.To.U, b.To.V)));
        return [.. edges];
    }

    // the ring is walked with the region on its left
    private static void AddRing(
        List<WallEdge> edges, Uv[] ring, IReadOnlyList<Uv> outline, IReadOnlyList<(IReadOnlyList<Uv> Ring, long Clearance)> openings, IReadOnlyList<Footprint> footprints)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            var from = ring[i];
            var to = ring[(i + 1) % ring.Length];
            if (footprints.Count == 0)
            {
                edges.Add(new WallEdge(from, to, SourceOf(from, to, outline, openings, footprints), to.V < from.V));
                continue;
            }

            // in line with a bulkhead's side may lie a wall's or an opening's
            var at = from;
            var source = int.MinValue;
            foreach (var stop in CornersOn(from, to, outline, openings, footprints))
            {
                var next = SourceOf(at, stop, outline, openings, footprints);
                var (start, joined) = next == source ? (edges[^1].From, true) : (at, false);
                if (joined)
                {
                    edges.RemoveAt(edges.Count - 1);
                }

                edges.Add(new WallEdge(start, stop, next, to.V < from.V));
                (at, source) = (stop, next);
            }
        }
    }

    private static IEnumerable<Uv> CornersOn(
        Uv from, Uv to, IReadOnlyList<Uv> outline, IReadOnlyList<(IReadOnlyList<Uv> Ring, long Clearance)> openings, IReadOnlyList<Footprint> footprints)
    {
        const double near = 0.01 * Measures.Length.PerMillimetre;
        return outline.Concat(openings.SelectMany(o => o.Ring)).Concat(footprints.SelectMany(f => f.Corners))
            .Where(c => Rings.Distance(c, from, to) < near && Rings.DistanceBetween(c, from) > near && Rings.DistanceBetween(c, to) > near)
            .OrderBy(c => Rings.DistanceBetween(c, from))
            .Append(to);
    }

    private static int SourceOf(
        Uv from, Uv to, IReadOnlyList<Uv> outline, IReadOnlyList<(IReadOnlyList<Uv> Ring, long Clearance)> openings, IReadOnlyList<Footprint> footprints)
    {
        var middle = new Uv((from.U + to.U) / 2, (from.V + to.V) / 2);
        var best = double.MaxValue;
        var source = 0;
        for (var i = 0; i < outline.Count; i++)
        {
            Consider(Rings.Distance(middle, outline[i], outline[(i + 1) % outline.Count]), i);
        }

        for (var k = 0; k < openings.Count; k++)
        {
            var (ring, clearance) = openings[k];
            for (var i = 0; i < ring.Count; i++)
            {
                Consider(Math.Abs(Rings.Distance(middle, ring[i], ring[(i + 1) % ring.Count]) - clearance), -(k + 1));
            }
        }

        // the wall that a bulkhead runs along is nearer to the outline; its own faces are not
        for (var k = 0; k < footprints.Count; k++)
        {
            foreach (var ring in footprints[k].Patches.SelectMany(p => p.Loops))
            {
                for (var i = 0; i < ring.Count; i++)
                {
                    Consider(Rings.Distance(middle, ring[i], ring[(i + 1) % ring.Count]), -(openings.Count + k + 1));
                }
            }
        }

        return source;

        void Consider(double distance, int of)
        {
            if (distance < best - 2)
            {
                best = distance;
                source = of;
            }
        }
    }
}
