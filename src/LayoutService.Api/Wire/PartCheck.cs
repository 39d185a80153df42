using System.Text.Json;

namespace LayoutService.Api.Wire;

/// <summary>
/// What can be wrong with a part of a request before the other parts are known: members that stand twice, which a merge would
/// hide, and texts that are no Unicode, which could not be written again.
/// </summary>
internal static class PartCheck
{
    public static List<Fault> FaultsOf(JsonElement part, JsonPlace place)
    {
        var faults = new List<Fault>();
        Check(part, place, faults);
        return faults;
    }

    private static void Check(JsonElement value, JsonPlace place, List<Fault> faults)
    {
        if (faults.Count >= Fault.MaxTold)
        {
            return;
        }

        try
        {
            if (value.ValueKind == JsonValueKind.String)
            {
                _ = value.GetString();
            }
            else if (value.ValueKind == JsonValueKind.Array)
            {
                var index = 0;
                foreach (var item in value.EnumerateArray())
                {
                    Check(item, place.Item(index++), faults);
                }
            }
            else if (value.ValueKind == JsonValueKind.Object)
            {
                CheckMembers(value, place, faults);
            }
        }
        catch (InvalidOperationException)
        {
            faults.Add(Fault.At(place.ToString(), "text_not_unicode", "A text here holds half a surrogate pair, which is no character."));
        }
    }

    private static void CheckMembers(JsonElement value, JsonPlace place, List<Fault> faults)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var member in value.EnumerateObject())
        {
            if (!seen.Add(member.Name))
            {
                faults.Add(Fault.At(place.Member(member.Name).ToString(), "duplicate_member", "This member stands here more than once."));
            }

            Check(member.Value, place.Member(member.Name), faults);
        }
    }
}
