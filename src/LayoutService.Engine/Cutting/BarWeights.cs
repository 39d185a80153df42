namespace LayoutService.Engine.Cutting;

/// <summary>
/// The lower goals as small change beside the cost, so that one number ranks states while searching: a violation outweighs
/// a hundred sticks, all joints and grades together weigh less than the least difference in cost. Solutions themselves
/// are compared goal by goal (see BarScore).
/// </summary>
internal sealed class BarWeights
{
    public BarWeights(BarCase bars, int poorGrade)
    {
        long nodes = 1;
        long worst = 1;
        foreach (BarRun run in bars.Runs)
        {
            nodes += run.Nodes.Count;
            foreach (BarNode node in run.Nodes)
            {
                worst = Math.Max(worst, node.Grade);
            }
        }

        Violation = Math.Max(1, bars.Kinds.LargestCost) * 100.0;
        double joint = bars.Kinds.RoundUp(1) / (4.0 * nodes);
        double grade = joint / (nodes * (double)worst);
        Poor = new bool[bars.Runs.Length][];
        NodeCost = new double[bars.Runs.Length][];
        for (int r = 0; r < bars.Runs.Length; r++)
        {
            BarRun run = bars.Runs[r];
            bool same = r > 0 && ReferenceEquals(run.Nodes, bars.Runs[r - 1].Nodes);
            NodeCost[r] = same ? NodeCost[r - 1] : Costs(run, joint, grade);
            Poor[r] = same ? Poor[r - 1] : PoorNodes(run, poorGrade);
        }
    }

    /// <summary>Cost of breaking each run at each node; 0 at its ends.</summary>
    public double[][] NodeCost { get; }

    /// <summary>Whether breaking each run at each node is a violation in itself.</summary>
    public bool[][] Poor { get; }

    /// <summary>Cost of one violation, where it must not be.</summary>
    public double Violation { get; }

    private static double[] Costs(BarRun run, double joint, double grade)
    {
        var cost = new double[run.Nodes.Count];
        for (int node = 1; node < cost.Length - 1; node++)
        {
            int worse = run.Nodes[node].Grade;
            cost[node] = joint + grade * worse;
        }

        return cost;
    }

    private static bool[] PoorNodes(BarRun run, int poorGrade)
    {
        var poor = new bool[run.Nodes.Count];
        for (int node = 1; node < poor.Length - 1; node++)
        {
            poor[node] = run.Nodes[node].Grade >= poorGrade;
        }

        return poor;
    }
}
