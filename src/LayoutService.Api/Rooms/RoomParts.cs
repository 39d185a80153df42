using System.Text.Json;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Plans.Validation;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Rooms;

/// <summary>A part of a request and where it stands in the body.</summary>
internal sealed record PlacedPart(JsonElement Json, string Pointer);

/// <summary>A whole request made of parts, read and found valid.</summary>
internal sealed record AcceptedRoom(PlanRequest Request, MappedPlan Asked, string RequestDigest, PlacedPart Own);

/// <summary>
/// Requests that share a part: each is laid over the common part (RFC 7396), read and checked like a request of its own, and
/// its faults are told at the place in the body that they come from, those of the common part once.
/// </summary>
internal sealed class RoomParts(RequestRules rules)
{
    private static readonly JsonElement Nothing = JsonElement.Parse("{}"u8);

    /// <summary>All rooms, or the faults of all of them: those that keep one from being read, or else those against rules.</summary>
    public (IReadOnlyList<AcceptedRoom>? Rooms, ProblemResult? Problem) Accept(PlacedPart? common, IReadOnlyList<PlacedPart> parts)
    {
        var readings = parts.Select(part => JsonReading<PlanRequest>.Of(MergePatch.Of(common?.Json ?? Nothing, part.Json))).ToList();
        var unread = Placed(readings, reading => reading.Faults, common, parts);
        if (unread.Count > 0)
        {
            return (null, new(ProblemKind.Unreadable, Count(unread, "body"), unread));
        }

        var invalid = Placed(readings, rules.FaultsOf, common, parts);
        return invalid.Count > 0
            ? (null, new(ProblemKind.Invalid, Count(invalid, "request"), invalid))
            : ([.. readings.Select((r, i) => new AcceptedRoom(r.Value!, SurveyMapping.Of(r.Value!), Plans.RequestDigest.Of(r.Root), parts[i]))], null);
    }

    private static List<Fault> Placed(
        List<JsonReading<PlanRequest>> readings, Func<JsonReading<PlanRequest>, IReadOnlyList<Fault>> faultsOf, PlacedPart? common, IReadOnlyList<PlacedPart> parts)
    {
        var placed = new List<Fault>();
        var told = new HashSet<(string, string)>();
        for (var i = 0; i < readings.Count && placed.Count < Fault.MaxTold; i++)
        {
            foreach (var fault in faultsOf(readings[i]))
            {
                var home = common is not null && !Holds(parts[i].Json, fault.Pointer) && Holds(common.Json, fault.Pointer) ? common : parts[i];
                var at = home.Pointer + fault.Pointer[1..];
                if (told.Add((at, fault.Code)))
                {
                    placed.Add(fault with { Pointer = at });
                }
            }
        }

        return [.. placed.Take(Fault.MaxTold)];
    }

    private static bool Holds(JsonElement json, string pointer)
    {
        foreach (var token in pointer.Split('/').Skip(1))
        {
            if (json.ValueKind == JsonValueKind.Array && int.TryParse(token, out var index) && index < json.GetArrayLength())
            {
                json = json[index];
            }
            else if (json.ValueKind == JsonValueKind.Object && json.EnumerateObject().FirstOrDefault(m => JsonPlace.Escape(m.Name) == token) is { Value.ValueKind: not JsonValueKind.Undefined } member)
            {
                json = member.Value;
            }
            else
            {
                return false;
            }
        }

        return true;
    }

    private static string Count(List<Fault> faults, string of) => faults.Count == 1 ? faults[0].Detail : $"The {of} has {faults.Count} faults.";
}
