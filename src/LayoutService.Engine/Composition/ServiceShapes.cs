using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>Places on services.</summary>
public static class ServiceShapes
{
    /// <summary>Places on it: halfway along the middle leg of its path and then of the legs beside that, or the middle of its outline's corners.</summary>
    public static IEnumerable<Point> Places(Service service)
    {
        if (service.Path is { } path)
        {
            var middle = (path.Count - 1) / 2;
            return Enumerable.Range(0, path.Count - 1).OrderBy(k => Math.Abs(k - middle)).Select(k => new Point(
                new Length((path[k].X.Units + path[k + 1].X.Units) / 2), new Length((path[k].Y.Units + path[k + 1].Y.Units) / 2)));
        }

        var ring = service.Outline!;
        return [new Point(new Length(ring.Sum(p => p.X.Units) / ring.Count), new Length(ring.Sum(p => p.Y.Units) / ring.Count))];
    }
}
