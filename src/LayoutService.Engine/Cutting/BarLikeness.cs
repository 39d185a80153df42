namespace LayoutService.Engine.Cutting;

/// <summary>Groups bars whose feasible pieces are the same, node for node and length for length.</summary>
internal static class BarLikeness
{
    /// <summary>Returns the first bar of each group, and each bar's group. Cost: pieces × groups at worst.</summary>
    public static List<int> Group(IReadOnlyList<Bar> bars, out int[] groupOf)
    {
        var first = new List<int>();
        groupOf = new int[bars.Count];
        for (int bar = 0; bar < bars.Count; bar++)
        {
            int found = -1;
            for (int g = first.Count - 1; g >= 0 && found < 0; g--)
            {
                found = Alike(bars[first[g]], bars[bar]) ? g : -1;
            }

            if (found < 0)
            {
                found = first.Count;
                first.Add(bar);
            }

            groupOf[bar] = found;
        }

        return first;
    }

    private static bool Alike(Bar a, Bar b)
    {
        if (a.Nodes.Count != b.Nodes.Count || a.Pieces.Count != b.Pieces.Count)
        {
            return false;
        }

        if (ReferenceEquals(a.Pieces, b.Pieces))
        {
            return true;
        }

        for (int p = 0; p < a.Pieces.Count; p++)
        {
            if (a.Pieces[p] != b.Pieces[p])
            {
                return false;
            }
        }

        return true;
    }
}
