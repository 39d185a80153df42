namespace LayoutService.Engine.Cutting;

/// <summary>One piece placed by a beam: what came before, the run's place in the order, the arc, the stick.</summary>
internal readonly record struct BarStep(int Parent, int Position, int Arc, int Stick, int NextStick);

/// <summary>
/// For each state at a run's start, the nodes of the run on whose key a neighbour breaks: neighbours that the solution
/// already holds, and those that the state itself has placed.
/// </summary>
internal sealed class BarForbidden(BarCase bars)
{
    private ulong[] _mask = [];
    private int _words;

    public bool Is(int rank, int node) => (_mask[rank * _words + (node >> 6)] >> (node & 63) & 1) != 0;

    public void Mark(BarSolution solution, ReadOnlySpan<int> order, int position, BarStates states, List<BarStep> history)
    {
        BarRun run = bars.Runs[order[position]];
        _words = (run.Nodes.Count + 63) / 64;
        int ranks = states.Count[0];
        if (_mask.Length < ranks * _words)
        {
            _mask = new ulong[Math.Max(ranks, states.Width) * _words];
        }

        Array.Clear(_mask, 0, ranks * _words);
        foreach (int near in run.Near)
        {
            int placed = order[..position].IndexOf(near);
            for (int rank = 0; rank < ranks; rank++)
            {
                if (placed < 0)
                {
                    foreach (int arc in solution.Arcs[near])
                    {
                        Mark(rank, run, near, arc);
                    }
                }
                else
                {
                    MarkPlaced(rank, run, near, placed, states.Label[rank], history);
                }
            }
        }
    }

    private void MarkPlaced(int rank, BarRun run, int near, int placed, int label, List<BarStep> history)
    {
        while (label >= 0 && history[label].Position > placed)
        {
            label = history[label].Parent;
        }

        for (; label >= 0 && history[label].Position == placed; label = history[label].Parent)
        {
            Mark(rank, run, near, history[label].Arc);
        }
    }

    private void Mark(int rank, BarRun run, int near, int arc)
    {
        BarRun other = bars.Runs[near];
        int node = bars.Graphs[other.Graph].To[arc];
        if (node == other.Nodes.Count - 1)
        {
            return;
        }

        int key = other.Nodes[node].Key;
        for (int own = 1; own < run.Nodes.Count - 1; own++)
        {
            if (run.Nodes[own].Key == key)
            {
                _mask[rank * _words + (own >> 6)] |= 1UL << (own & 63);
            }
        }
    }
}
