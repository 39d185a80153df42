namespace LayoutService.Engine.Cutting;

/// <summary>
/// Every set of whole-width pieces whose lengths fit the longest sheet of one width, ordered by total length.
/// Time: the number of sets, which is small because few ceiling pieces make up one sheet.
/// </summary>
internal sealed class SheetFullPatterns
{
    public readonly int[] FullTypes;
    public readonly int Sets;

    public readonly long[] Length;

    /// <summary>Set s is set <c>Parent[s]</c> (before it) with one more piece, number <c>Added[s]</c> of the types.</summary>
    public readonly int[] Parent;
    public readonly int[] Added;

    /// <summary>How many of that type the set holds.</summary>
    public readonly int[] AddedCount;

    /// <summary>No set that fits was left out.</summary>
    public readonly bool Complete = true;

    public SheetFullPatterns(SheetTypes types, int[] fullTypes, long longest, int limit)
    {
        FullTypes = fullTypes;
        var n = fullTypes.Length;
        var found = new List<long> { 0 };
        var added = new List<int> { 0 };
        var addedCount = new List<int> { 0 };
        var parents = new List<int> { 0 };

        // By number of pieces, so that cutting the work short leaves out the large sets only.
        for (var from = 0; from < found.Count && Complete; from++)
        {
            for (var j = added[from]; j < n; j++)
            {
                var t = fullTypes[j];
                var count = 1 + (j == added[from] ? addedCount[from] : 0);
                if (count > types.Demand[t] || found[from] + types.Length[t] > longest)
                {
                    continue;
                }

                if (found.Count >= limit)
                {
                    Complete = false;
                    break;
                }

                found.Add(found[from] + types.Length[t]);
                added.Add(j);
                addedCount.Add(count);
                parents.Add(from);
            }
        }

        Sets = found.Count;
        Length = new long[Sets];
        Parent = new int[Sets];
        Added = new int[Sets];
        AddedCount = new int[Sets];
        var place = new int[Sets];
        var order = new int[Sets];
        for (var i = 0; i < Sets; i++)
        {
            order[i] = i;
        }

        Array.Sort(order, (a, b) => found[a] != found[b] ? found[a].CompareTo(found[b]) : a.CompareTo(b));
        for (var i = 0; i < Sets; i++)
        {
            Length[i] = found[order[i]];
            place[order[i]] = i;
            Added[i] = added[order[i]];
            AddedCount[i] = addedCount[order[i]];
            Parent[i] = place[parents[order[i]]];
        }
    }
}
