namespace LayoutService.Engine.Cutting;

/// <summary>The plainest lower bound: all of the length that must be cut, at the best rate that any kind offers.</summary>
internal static class BarBound
{
    public static long ByRate(BarCase bars)
    {
        Int128 total = 0;
        var least = new long[bars.Graphs.Length];
        for (int g = 0; g < least.Length; g++)
        {
            BarGraph graph = bars.Graphs[g];
            var toEnd = new long[graph.Nodes];
            var next = new int[graph.Nodes];
            graph.Shortest(bars.Lengths, new long[graph.Nodes], toEnd, next);
            least[g] = toEnd[0];
        }

        foreach (BarRun run in bars.Runs)
        {
            total += least[run.Graph];
        }

        return LengthBound.ByRate(total, bars.Kinds);
    }
}
