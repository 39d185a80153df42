using NetTopologySuite.Geometries;

namespace LayoutService.Engine.Geometry;

/// <summary>The rings of a region, each walked with the region on the left.</summary>
public static class RegionLoops
{
    public static IEnumerable<Uv[]> Of(Region region)
    {
        for (var g = 0; g < region.Shape.NumGeometries; g++)
        {
            if (region.Shape.GetGeometryN(g) is Polygon { IsEmpty: false } polygon)
            {
                yield return Region.Ring(polygon.ExteriorRing.Coordinates);
                foreach (var hole in polygon.InteriorRings)
                {
                    yield return [.. Region.Ring(hole.Coordinates).Reverse()];
                }
            }
        }
    }
}
