namespace LayoutService.Engine.Cutting;

/// <summary>
/// The feasible pieces of bars that are alike: nodes 0 to Nodes − 1 in order along the bar, and for each node the arcs
/// that leave it (pieces that start there), as a compressed list. Kind of length: an index into the case's sorted lengths.
/// </summary>
internal sealed class BarGraph(int nodes, int[] first, int[] to, int[] length)
{
    public int Nodes { get; } = nodes;

    /// <summary>First arc of each node, and one past the last arc at the end.</summary>
    public int[] First { get; } = first;

    /// <summary>Node at which each arc's piece ends; larger than its start.</summary>
    public int[] To { get; } = to;

    /// <summary>Index of each arc's piece length.</summary>
    public int[] Length { get; } = length;

    /// <summary>
    /// Least total price of pieces and of the nodes they end at, from each node to the bar's end (long.MaxValue / 4 where
    /// there is no way), the arc taken in next.
    /// </summary>
    public void Shortest(ReadOnlySpan<long> price, ReadOnlySpan<long> atNode, Span<long> toEnd, Span<int> next)
    {
        toEnd[Nodes - 1] = 0;
        next[Nodes - 1] = -1;
        for (int node = Nodes - 2; node >= 0; node--)
        {
            long best = long.MaxValue / 4;
            int arc = -1;
            for (int a = First[node]; a < First[node + 1]; a++)
            {
                long sum = price[Length[a]] + atNode[To[a]] + toEnd[To[a]];
                if (sum < best)
                {
                    best = sum;
                    arc = a;
                }
            }

            toEnd[node] = best;
            next[node] = arc;
        }
    }
}
