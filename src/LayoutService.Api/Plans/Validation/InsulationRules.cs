using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Geometry;

namespace LayoutService.Api.Plans.Validation;

/// <summary>Rules of the batts: ids of their own, and a region exactly where one is asked for, over the room.</summary>
internal static class InsulationRules
{
    private const string Region = "#/insulation/region";

    public static void Check(PlanRequest request, bool imperial, FaultList faults)
    {
        if (request.Insulation is not { } wish)
        {
            return;
        }

        IdRules.CheckUnique((wish.Batts ?? []).Select(InsulationMapping.IdOf), "#/insulation/batts", faults);
        if (wish.Bays == BaysWord.Region && wish.Region is null)
        {
            faults.Add(Region, "required", "Bays of a region need the region.");
        }
        else if (wish.Region is { } ring && faults.Sound(Region))
        {
            CheckRegion(request, wish, RoomMapping.OpenRing(ring, imperial), imperial, faults);
        }
    }

    private static void CheckRegion(PlanRequest request, InsulationRequest wish, IReadOnlyList<Point> ring, bool imperial, FaultList faults)
    {
        if (wish.Bays != BaysWord.Region)
        {
            faults.Add(Region, "region_without_bays", "A region goes with bays: region.");
            return;
        }

        RingRules.Check(ring, Region, 3, ServiceLimits.MaxOpeningCorners, faults);
        if (faults.Sound(Region) && faults.Sound("#/room/outline") && request.Room?.Outline is { } outline
            && !RingFaults.Overlap(ring, RoomMapping.OpenRing(outline, imperial)))
        {
            faults.Add(Region, "region_outside_room", "This region does not lie over the room.");
        }
    }
}
