using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;

namespace LayoutService.Engine.Geometry;

/// <summary>Parts of a region: what lies inside another ring, and what a strip of it is made of.</summary>
public static class RegionParts
{
    /// <summary>The part of a region inside a ring; it has no wall edges of its own.</summary>
    public static Region Meet(this Region region, IReadOnlyList<Uv> ring)
    {
        var other = Region.Polygon(ring);
        var met = Overlays.Of(region.Shape, other, SpatialFunction.Intersection);

        // a wall that the ring only runs along is no part
        var shape = other.Factory.BuildGeometry(Enumerable.Range(0, met.NumGeometries).Select(met.GetGeometryN).Where(g => g.Dimension == Dimension.Surface));
        return new Region(shape, Region.CutCells(shape), []);
    }

    /// <summary>True when a box lies wholly inside the region. Cost: one walk over its cells.</summary>
    public static bool Holds(this Region region, Span along, Span across)
    {
        long covered = 0;
        foreach (var cell in region.Cells)
        {
            var levels = new Span(cell.V0, cell.V1).Meet(across);
            if (levels.Size <= 0)
            {
                continue;
            }

            if (Math.Max(At(cell.L0, cell.L1, cell, levels.Lo), At(cell.L0, cell.L1, cell, levels.Hi)) <= along.Lo
                && Math.Min(At(cell.R0, cell.R1, cell, levels.Lo), At(cell.R0, cell.R1, cell, levels.Hi)) >= along.Hi)
            {
                covered += levels.Size;
            }
        }

        return covered == across.Size;
    }

    /// <summary>The parts of the region inside a box; quick where the box lies inside the region.</summary>
    public static IEnumerable<Uv[]> Inside(this Region region, Span along, Span across) => region.Holds(along, across)
        ? [[new(along.Lo, across.Lo), new(along.Hi, across.Lo), new(along.Hi, across.Hi), new(along.Lo, across.Hi)]]
        : region.Within(along, across);

    /// <summary>How far the region reaches along u between two levels of v; null when it is not there.</summary>
    public static Span? AlongIn(this Region region, Span across)
    {
        double lo = double.MaxValue, hi = double.MinValue;
        foreach (var cell in region.Cells)
        {
            var levels = new Span(cell.V0, cell.V1).Meet(across);
            if (levels.Size > 0)
            {
                lo = Math.Min(lo, Math.Min(At(cell.L0, cell.L1, cell, levels.Lo), At(cell.L0, cell.L1, cell, levels.Hi)));
                hi = Math.Max(hi, Math.Max(At(cell.R0, cell.R1, cell, levels.Lo), At(cell.R0, cell.R1, cell, levels.Hi)));
            }
        }

        return lo > hi ? null : new Span((long)Math.Floor(lo), (long)Math.Ceiling(hi));
    }

    /// <summary>
    /// Places along u where the region's width changes at once inside a strip: the ends of walls that run along it, and
    /// the points of openings. Cut there, no part of the strip has a hole in it.
    /// </summary>
    public static IEnumerable<long> Breaks(this Region region, Span across)
    {
        var ends = new Dictionary<(long Level, long At), int>();
        foreach (var cell in region.Cells)
        {
            Count(cell.V1, cell.L1, 1);
            Count(cell.V1, cell.R1, 1);
            Count(cell.V0, cell.L0, -1);
            Count(cell.V0, cell.R0, -1);
        }

        return ends.Where(e => e.Value != 0).Select(e => e.Key.At);

        void Count(long level, long at, int by)
        {
            if (across.Lo < level && level < across.Hi)
            {
                ends[(level, at)] = ends.GetValueOrDefault((level, at)) + by;
            }
        }
    }

    private static double At(long at0, long at1, Cell cell, long level) =>
        at0 == at1 ? at0 : at0 + ((double)(at1 - at0) * (level - cell.V0) / (cell.V1 - cell.V0));
}
