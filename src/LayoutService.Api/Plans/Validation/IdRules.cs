using System.Globalization;

namespace LayoutService.Api.Plans.Validation;

/// <summary>No two things of one list have the same id.</summary>
internal static class IdRules
{
    /// <summary>Ids in the order of the list, given or made from the number in it.</summary>
    public static void CheckUnique(IEnumerable<string> ids, string list, FaultList faults)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var i = 0;
        foreach (var id in ids)
        {
            if (!seen.Add(id))
            {
                faults.Add($"{list}/{i.ToString(CultureInfo.InvariantCulture)}/id", "id_repeated", $"Another item of this list has the id \"{id}\" already.", ("id", id));
            }

            i++;
        }
    }
}
