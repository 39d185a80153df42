using System.Globalization;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Geometry;

namespace LayoutService.Api.Plans.Validation;

/// <summary>Rules of the services: a path with a width or an outline, over the room, and not upside down.</summary>
internal static class ServiceRules
{
    public static void Check(PlanRequest request, bool imperial, FaultList faults)
    {
        var services = request.Services ?? [];
        IdRules.CheckUnique(services.Select(ServiceMapping.IdOf), "#/services", faults);
        var room = request.Room?.Outline is { } outline && faults.Sound("#/room/outline") ? RoomMapping.OpenRing(outline, imperial) : null;
        for (var i = 0; i < services.Count; i++)
        {
            var at = $"#/services/{i.ToString(CultureInfo.InvariantCulture)}";
            CheckShape(services[i], at, imperial, faults);
            if (!faults.Sound(at))
            {
                continue;
            }

            var service = ServiceMapping.Of(services[i], i, null, new Assumptions(imperial));
            if (service.Bottom < service.Top)
            {
                faults.Add($"{at}/bottom", "service_upside_down", "The bottom of a service does not lie above its top; both run down from the underside of the joists.");
            }

            if (room is not null && !service.Rings().Any(ring => RingFaults.Overlap(ring, room)))
            {
                faults.Add(Place(services[i], at), "service_outside_room", "This service does not run over the room.");
            }
        }
    }

    private static string Place(ServiceRequest service, string at) => service.Path is null ? $"{at}/outline" : $"{at}/path";

    private static void CheckShape(ServiceRequest service, string at, bool imperial, FaultList faults)
    {
        if (!faults.Sound(at))
        {
            return;
        }

        if (service.Path is null == service.Outline is null)
        {
            faults.Add(at, "service_shape", "A service has either a path with a width, or an outline.");
        }
        else if (service.Path is null != service.Width is null)
        {
            faults.Add($"{at}/width", service.Width is null ? "required" : "service_shape",
                service.Width is null ? "A path needs a width." : "A width goes with a path; an outline has none.");
        }
        else if (service.Path is { } path)
        {
            CheckPath(path, $"{at}/path", imperial, faults);
        }
        else
        {
            RingRules.Check(RoomMapping.OpenRing(service.Outline!, imperial), $"{at}/outline", 3, ServiceLimits.MaxOpeningCorners, faults);
        }
    }

    private static void CheckPath(IReadOnlyList<Wire.WirePoint> path, string at, bool imperial, FaultList faults)
    {
        for (var i = 1; i < path.Count; i++)
        {
            if (RoomMapping.PointOf(path[i], imperial) == RoomMapping.PointOf(path[i - 1], imperial))
            {
                faults.Add($"{at}/{i.ToString(CultureInfo.InvariantCulture)}", "path_corner_repeated", "This corner is the same place as the one before it.");
            }
        }
    }
}
