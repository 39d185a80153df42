namespace LayoutService.Engine.Cutting;

/// <summary>One run to be pieced: a bar, or an extra (Bar −1) as a run of a single arc.</summary>
internal sealed class BarRun(int graph, int bar, IReadOnlyList<BarNode> nodes)
{
    /// <summary>The nodes of an extra: two ends that nothing else lies on.</summary>
    public static readonly BarNode[] Ends = [new(-1, 0), new(-1, 0)];

    public int Graph { get; } = graph;

    public int Bar { get; } = bar;

    public IReadOnlyList<BarNode> Nodes { get; } = nodes;

    /// <summary>Neighbouring runs.</summary>
    public int[] Near { get; set; } = [];
}
