using LayoutService.Api.Plans.Requests;

namespace LayoutService.Api.Plans.Validation;

/// <summary>An old ceiling that stays closes the bays: nothing that fills them, and no scab over a strap, finds room.</summary>
internal static class ExistingRules
{
    public static void Check(PlanRequest request, FaultList faults)
    {
        if (!ExistingRequest.IsThere(request.Room?.Existing))
        {
            return;
        }

        if (request.Insulation is { Purpose: not InsulationWord.None })
        {
            faults.Add("#/insulation", "bays_closed",
                "An old ceiling that stays closes the bays: no batt can be laid above it, and the gap that the straps make below it is no place for one. "
                + "Take it down (stays: false), or have insulation blown in above it and leave it out here.");
        }

        if (request.Strapping is { Method: not StrappingMethodWord.Direct, JointsAllowed: { Count: > 0 } joints } && joints.All(j => j == JointWord.Scab))
        {
            faults.Add("#/strapping/jointsAllowed", "no_room_for_scab",
                "A scab lies on the strap's upper face, where an old ceiling that stays leaves no room; allow another joint as well.");
        }
    }
}
