namespace LayoutService.Engine.Cutting;

/// <summary>
/// Every set of whole-width pieces whose lengths fit the longest sheet of one width, ordered by total length.
/// Time: the number of sets, which is small because few ceiling pieces make up one sheet.
/// </summary>
internal sealed class SheetFullPatterns
{
    public readonly int[] FullTypes;
    public readonly int Sets;

    /// <summary>Counts of set s are <c>Counts[s * FullTypes.Length ..]</c>.</summary>
    public readonly int[] Counts;

    public readonly long[] Length;

    /// <summary>No set that fits was left out.</summary>
    public readonly bool Complete;

    public SheetFullPatterns(SheetTypes types, int[] fullTypes, long longest, int limit)
    {
        FullTypes = fullTypes;
        var n = fullTypes.Length;
        var found = new List<long> { 0 };
        var counts = new List<int>();
        var current = new int[n];
        counts.AddRange(current);
        Complete = Extend(0, 0);
        Sets = found.Count;
        Length = [.. found];
        var order = new int[Sets];
        for (var i = 0; i < Sets; i++)
        {
            order[i] = i;
        }

        // Ties keep the order of finding: Array.Sort is not stable, so the key pairs length with place.
        Array.Sort(order, (a, b) => found[a] != found[b] ? found[a].CompareTo(found[b]) : a.CompareTo(b));
        Counts = new int[Sets * n];
        for (var i = 0; i < Sets; i++)
        {
            Length[i] = found[order[i]];
            counts.CopyTo(order[i] * n, Counts, i * n, n);
        }

        bool Extend(int from, long used)
        {
            for (var j = from; j < n; j++)
            {
                var t = fullTypes[j];
                if (current[j] >= types.Demand[t] || used + types.Length[t] > longest)
                {
                    continue;
                }

                if (found.Count >= limit)
                {
                    return false;
                }

                current[j]++;
                found.Add(used + types.Length[t]);
                counts.AddRange(current);
                if (!Extend(j, used + types.Length[t]))
                {
                    return false;
                }

                current[j]--;
            }

            return true;
        }
    }
}
