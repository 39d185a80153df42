using System.Text.Json;

namespace LayoutService.Api.Wire;

/// <summary>Puts faults in the order in which their places stand in the document; a missing member comes after its siblings.</summary>
internal static class DocumentOrder
{
    public static IReadOnlyList<Fault> Of(IReadOnlyList<Fault> faults, JsonElement root)
    {
        var placed = faults.Select(fault => (Fault: fault, Place: PlaceOf(fault.Pointer, root)));
        var inOrder = placed.OrderBy(entry => entry.Place, Comparer<List<int>>.Create(Compare));
        return [.. inOrder.Select(entry => entry.Fault).Take(Fault.MaxTold)];
    }

    private static int Compare(List<int> a, List<int> b)
    {
        for (var i = 0; i < Math.Min(a.Count, b.Count); i++)
        {
            if (a[i] != b[i])
            {
                return a[i].CompareTo(b[i]);
            }
        }

        return a.Count.CompareTo(b.Count);
    }

    /// <summary>For each step of the pointer, the number of the member or item at that level.</summary>
    private static List<int> PlaceOf(string pointer, JsonElement value)
    {
        var place = new List<int>();
        foreach (var token in pointer.Split('/').Skip(1))
        {
            var (number, inner) = Step(token, value);
            place.Add(number);
            if (inner is not { } next)
            {
                break;
            }

            value = next;
        }

        return place;
    }

    private static (int Number, JsonElement? Inner) Step(string token, JsonElement value)
    {
        if (value.ValueKind == JsonValueKind.Array)
        {
            return int.TryParse(token, out var index) && index < value.GetArrayLength() ? (index, value[index]) : (int.MaxValue, null);
        }

        if (value.ValueKind == JsonValueKind.Object)
        {
            var number = 0;
            foreach (var member in value.EnumerateObject())
            {
                if (JsonPlace.Escape(member.Name) == token)
                {
                    return (number, member.Value);
                }

                number++;
            }
        }

        return (int.MaxValue, null);
    }
}
