using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Composition;

/// <summary>Where services lie in the working frame, and what of them a bulkhead covers.</summary>
public static class ServiceShapes
{
    public static Footprint Of(FramedRoom room, Service service) =>
        Footprint.Of(service.Rings().Select(r => (IReadOnlyList<Uv>)[.. r.Select(room.Frame.In)]));

    /// <summary>A place on it: halfway along its path, or the middle of its outline's corners.</summary>
    public static Point Middle(Service service)
    {
        if (service.Path is { } path)
        {
            var k = (path.Count - 1) / 2;
            return new Point(
                new Length((path[k].X.Units + path[k + 1].X.Units) / 2), new Length((path[k].Y.Units + path[k + 1].Y.Units) / 2));
        }

        var ring = service.Outline!;
        return new Point(new Length(ring.Sum(p => p.X.Units) / ring.Count), new Length(ring.Sum(p => p.Y.Units) / ring.Count));
    }
}
