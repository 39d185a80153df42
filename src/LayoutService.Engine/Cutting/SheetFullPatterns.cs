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
    public readonly bool Complete = true;

    public SheetFullPatterns(SheetTypes types, int[] fullTypes, long longest, int limit)
    {
        FullTypes = fullTypes;
        var n = fullTypes.Length;
        var found = new List<long> { 0 };
        var last = new List<int> { 0 };
        var counts = new List<int>();
        var current = new int[n];
        counts.AddRange(current);

        // By number of pieces, so that cutting the work short leaves out the large sets only.
        for (var from = 0; from < found.Count && Complete; from++)
        {
            for (var j = last[from]; j < n; j++)
            {
                var t = fullTypes[j];
                if (counts[from * n + j] >= types.Demand[t] || found[from] + types.Length[t] > longest)
                {
                    continue;
                }

                if (found.Count >= limit)
                {
                    Complete = false;
                    break;
                }

                counts.CopyTo(from * n, current, 0, n);
                current[j]++;
                found.Add(found[from] + types.Length[t]);
                last.Add(j);
                counts.AddRange(current);
            }
        }

        Sets = found.Count;
        Length = new long[Sets];
        var order = new int[Sets];
        for (var i = 0; i < Sets; i++)
        {
            order[i] = i;
        }

        Array.Sort(order, (a, b) => found[a] != found[b] ? found[a].CompareTo(found[b]) : a.CompareTo(b));
        Counts = new int[Sets * n];
        for (var i = 0; i < Sets; i++)
        {
            Length[i] = found[order[i]];
            counts.CopyTo(order[i] * n, Counts, i * n, n);
        }
    }
}
