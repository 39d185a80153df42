using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// Every service that must be reached has a door, or a failed check names it. A door that the plan added is one of its fixtures,
/// of a size that is documented, within an arm's reach of its service (its shift from a place on it), not in conflict unless the
/// check says that the service is covered; and it is bought.
/// </summary>
internal static class AccessReach
{
    private const double Close = 0.06;
    private static readonly string[] Reachable = ["box", "valve", "gas-valve", "damper", "cleanout"];

    public static void Check(GivenPlan plan, AuditReport report)
    {
        if (plan.Json.Member("accessPanels") is null || plan.Json.Member("fixtures") is null || plan.Json.Member("checks") is null)
        {
            return;
        }

        var room = plan.Room;
        var panels = plan.Json.Member("accessPanels").Items().ToList();
        var asked = room.Json.Member("fixtures").Items().Select((f, i) => f.Member("id").Text() ?? $"fixture-{i + 1}").ToHashSet();
        var fixtures = plan.Json.Member("fixtures").Items().ToDictionary(f => f.Member("id").Text() ?? "");
        var covered = plan.Json.Member("checks").Items().Where(c => c.Member("rule").Text() == "covered-access" && c.Member("status").Text() == "fail")
            .SelectMany(c => c.Member("where").Items()).Select(w => w.GetString()).ToHashSet();
        var services = room.Json.Member("services").Items().Select((s, i) => (Id: s.Member("id").Text() ?? $"service-{i + 1}", Json: s)).Where(s => NeedsReach(s.Json)).ToList();
        foreach (var (id, service) in services)
        {
            var door = panels.Find(p => p.Member("serviceId").Text() == id);
            if (door.ValueKind == JsonValueKind.Undefined)
            {
                Must(covered.Contains(id), id, "has no door, and no check says so");
                continue;
            }

            var name = door.Member("id").Text() ?? "";
            if (!fixtures.TryGetValue(name, out var fixture))
            {
                Must(false, name, "is no fixture of the plan");
                continue;
            }

            var conflict = fixture.Member("status").Text() == "conflict";
            Must(conflict == covered.Contains(id), id, conflict ? "its door is in conflict, and no check says that it is covered" : "has a door, and a check says that it is covered");
            if (asked.Contains(name))
            {
                continue;
            }

            var side = door.Member("size").Length(room.Unit) ?? 0;
            Must((room.Imperial ? new[] { 304.8, 203.2, 152.4 } : [300, 200, 150]).Any(s => Math.Abs(s - side) < Close), name, "is of no size that panels have");
            var (x, y) = fixture.GetProperty("at").Point(room.Unit);
            var off = ServiceReach.From(service, room.Frame.At(x, y), room);
            Must(off <= (room.Imperial ? 254 : 250) + (side / 2) + Close, name, FormattableString.Invariant($"is {off:F0} mm from {id}"));
        }

        Must(panels.All(p => services.Exists(s => s.Id == p.Member("serviceId").Text())), "accessPanels", "a door is for nothing that must be reached");
        var added = panels.Select(p => p.Member("id").Text()).Where(id => !asked.Contains(id ?? "")).Distinct().Count();
        if (plan.Json.Member("takeoff") is not null)
        {
            var bought = plan.Json.Member("takeoff").Member("lines").Items().Where(l => l.Member("code").Text() == "access-panel").Sum(l => l.Member("counted").Double() ?? 0);
            Must(Math.Abs(bought - added) < 0.01, "takeoff", FormattableString.Invariant($"{bought} access panels bought, {added} planned"));
        }

        void Must(bool so, string where, string what)
        {
            if (!so)
            {
                report.Fault("access.reached", where, $"{what}");
            }
        }
    }

    /// <summary>True for what someone must be able to reach later: as the request says, else by its kind.</summary>
    public static bool NeedsReach(JsonElement service) => service.Member("needsReach") is { } said
        ? said.ValueKind == JsonValueKind.True
        : Reachable.Contains(service.Member("kind").Text());
}
