namespace LayoutService.Engine.Cutting;

/// <summary>Scores whole solutions, exactly.</summary>
internal sealed class BarJudge(BarCase bars, int poorGrade)
{
    private readonly BarStagger _stagger = new(bars, poorGrade);
    private readonly bool _neighbours = Array.Exists(bars.Runs, run => run.Near.Length > 0);
    private readonly BarStock _stock = new(bars.Kinds);
    private readonly bool[] _used = new bool[bars.Lengths.Length];

    public BarScore Of(BarSolution solution)
    {
        Array.Clear(_used);
        long grades = 0;
        long joints = 0;
        long poor = 0;
        long lengths = 0;
        for (int r = 0; r < bars.Runs.Length; r++)
        {
            BarRun run = bars.Runs[r];
            BarGraph graph = bars.Graphs[run.Graph];
            foreach (int arc in solution.Arcs[r])
            {
                int node = graph.To[arc];
                lengths += _used[graph.Length[arc]] ? 0 : 1;
                _used[graph.Length[arc]] = true;
                if (node < graph.Nodes - 1)
                {
                    joints++;
                    grades += run.Nodes[node].Grade;
                    poor += run.Nodes[node].Grade >= poorGrade ? 1 : 0;
                }
            }
        }

        return new BarScore(poor + Shared(solution), _stock.Assign(solution.Content), joints, grades, lengths);
    }

    /// <summary>Pairs of neighbours' breaks on one key.</summary>
    public int Shared(BarSolution solution)
    {
        int shared = 0;
        for (int r = 0; r < bars.Runs.Length && _neighbours; r++)
        {
            foreach (int near in bars.Runs[r].Near)
            {
                shared += near > r ? _stagger.Shared(solution, r, near) : 0;
            }
        }

        return shared;
    }
}
