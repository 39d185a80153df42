using System.Globalization;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Api.Plans.Mapping;

internal static class ServiceMapping
{
    public static IReadOnlyList<Service>? Of(PlanRequest request, Assumptions assumed)
    {
        var depths = request.JoistFields!.Select(f => JoistMapping.DepthOf(f, assumed)).OfType<Length>().ToList();
        return request.Services is { } services
            ? [.. services.Select((service, i) => Of(service, i, depths.Count > 0 ? depths.MaxBy(d => d.Units) : null, assumed))]
            : null;
    }

    /// <summary>Id of a service: the caller's, or its number in the list.</summary>
    public static string IdOf(ServiceRequest service, int index) =>
        service.Id ?? string.Create(CultureInfo.InvariantCulture, $"service-{index + 1}");

    /// <summary>A sound service. <paramref name="bay"/> is the depth of the joists, 235 mm (9-1/4 in) where that is not known.</summary>
    public static Service Of(ServiceRequest service, int index, Length? bay, Assumptions assumed)
    {
        var at = string.Create(CultureInfo.InvariantCulture, $"#/services/{index}");
        var kind = KindOf(service.Kind!.Value);
        var hot = service.Hot ?? false;
        var bottom = service.Bottom is null
            ? assumed.Length($"{at}/bottom", "The bottom of the service", null, 0, 0)
            : service.Bottom.Value.In(assumed.Imperial);
        return new Service
        {
            Id = IdOf(service, index),
            Kind = kind,
            Path = service.Path is { } path ? [.. path.Select(p => RoomMapping.PointOf(p, assumed.Imperial))] : null,
            Width = service.Width?.In(assumed.Imperial),
            Outline = service.Outline is { } outline ? RoomMapping.OpenRing(outline, assumed.Imperial) : null,
            Top = service.Top?.In(assumed.Imperial) ?? TopOfBay(at, bottom, bay, assumed),
            Bottom = bottom,
            Clearance = service.Clearance?.In(assumed.Imperial) ?? (hot ? assumed.Length($"{at}/clearance", "The distance from the hot service", null, 1, 25) : Length.Zero),
            Hot = hot,
            NeedsReach = service.NeedsReach
                ?? kind is ServiceKind.Box or ServiceKind.Valve or ServiceKind.GasValve or ServiceKind.Damper or ServiceKind.Cleanout,
        };
    }

    private static Length TopOfBay(string at, Length bottom, Length? bay, Assumptions assumed)
    {
        var top = Length.Min(bottom, -(bay ?? assumed.Default(9.25m, 235)));
        assumed.Note($"{at}/top", assumed.Tape(top), "The top of the service was not given; it is taken to reach to the top of the bay.");
        return top;
    }

    private static ServiceKind KindOf(ServiceWord word) => word switch
    {
        ServiceWord.Duct => ServiceKind.Duct,
        ServiceWord.PannedReturn => ServiceKind.PannedReturn,
        ServiceWord.Pipe => ServiceKind.Pipe,
        ServiceWord.Drain => ServiceKind.Drain,
        ServiceWord.Beam => ServiceKind.Beam,
        ServiceWord.Cable => ServiceKind.Cable,
        ServiceWord.Box => ServiceKind.Box,
        ServiceWord.Valve => ServiceKind.Valve,
        ServiceWord.GasValve => ServiceKind.GasValve,
        ServiceWord.Damper => ServiceKind.Damper,
        ServiceWord.Cleanout => ServiceKind.Cleanout,
        _ => ServiceKind.Other,
    };
}
