using LayoutService.Api.Plans.Requests;

namespace LayoutService.Api.Plans.Validation;

/// <summary>An old ceiling that stays closes the bays: what is let into them is not planned with it yet.</summary>
internal static class ExistingRules
{
    public static void Check(PlanRequest request, FaultList faults)
    {
        if (request.Room?.Existing is not { Stays: not false } existing || (existing.Thickness is null && existing.Material is null && existing.Stays is null))
        {
            return;
        }

        var beside = new (string Name, bool There)[]
        {
            ("insulation", request.Insulation is { Purpose: not InsulationWord.None }), ("fixtures", request.Fixtures is { Count: > 0 }), ("lightGrid", request.LightGrid is not null),
            ("mounts", request.Mounts is { Count: > 0 }), ("services", request.Services is { Count: > 0 }), ("bulkheads", request.Bulkheads is { Count: > 0 }),
        }.Where(b => b.There).Select(b => b.Name).ToList();
        if (beside.Count > 0)
        {
            faults.Add("#/room/existing", "not_planned_yet",
                $"An old ceiling that stays is not planned together with {string.Join(", ", beside)} so far; take it down (stays: false), or leave those out.",
                ("beside", string.Join(", ", beside)));
        }
    }
}
