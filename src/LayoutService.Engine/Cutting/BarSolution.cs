namespace LayoutService.Engine.Cutting;

/// <summary>A whole solution: each run's arcs and the stick each arc's piece is cut from; each stick's content.</summary>
internal sealed class BarSolution(BarCase bars)
{
    /// <summary>For each run its arcs in order; empty while the run is not placed.</summary>
    public List<int>[] Arcs { get; } = MakeLists(bars.Runs.Length);

    /// <summary>For each run the stick of each arc.</summary>
    public List<int>[] Sticks { get; } = MakeLists(bars.Runs.Length);

    /// <summary>Total of the pieces (each with its kerf) on each stick; 0 for a stick given up.</summary>
    public List<long> Content { get; } = [];

    public void CopyFrom(BarSolution other)
    {
        for (int run = 0; run < Arcs.Length; run++)
        {
            Arcs[run].Clear();
            Arcs[run].AddRange(other.Arcs[run]);
            Sticks[run].Clear();
            Sticks[run].AddRange(other.Sticks[run]);
        }

        Content.Clear();
        Content.AddRange(other.Content);
    }

    /// <summary>Takes a run's pieces off their sticks.</summary>
    public void Remove(int run)
    {
        BarGraph graph = bars.Graphs[bars.Runs[run].Graph];
        for (int k = 0; k < Arcs[run].Count; k++)
        {
            Content[Sticks[run][k]] -= bars.Lengths[graph.Length[Arcs[run][k]]];
        }

        Arcs[run].Clear();
        Sticks[run].Clear();
    }

    /// <summary>Two runs of the same graph take each other's way, with the sticks it is cut from.</summary>
    public void Exchange(int a, int b)
    {
        (Arcs[a], Arcs[b]) = (Arcs[b], Arcs[a]);
        (Sticks[a], Sticks[b]) = (Sticks[b], Sticks[a]);
    }

    /// <summary>Appends a piece to a run; a stick index one past the last opens a new stick.</summary>
    public void Append(int run, int arc, int stick)
    {
        while (stick >= Content.Count)
        {
            Content.Add(0);
        }

        Content[stick] += bars.Lengths[bars.Graphs[bars.Runs[run].Graph].Length[arc]];
        Arcs[run].Add(arc);
        Sticks[run].Add(stick);
    }

    /// <summary>Renumbers the sticks so that none is empty, when too many are.</summary>
    public void Tidy()
    {
        int empty = 0;
        foreach (long content in Content)
        {
            empty += content == 0 ? 1 : 0;
        }

        if (empty < 16)
        {
            return;
        }

        var number = new int[Content.Count];
        int kept = 0;
        for (int stick = 0; stick < number.Length; stick++)
        {
            number[stick] = kept;
            if (Content[stick] > 0)
            {
                Content[kept++] = Content[stick];
            }
        }

        Content.RemoveRange(kept, Content.Count - kept);
        foreach (List<int> sticks in Sticks)
        {
            for (int k = 0; k < sticks.Count; k++)
            {
                sticks[k] = number[sticks[k]];
            }
        }
    }

    private static List<int>[] MakeLists(int count)
    {
        var lists = new List<int>[count];
        for (int k = 0; k < count; k++)
        {
            lists[k] = new List<int>(4);
        }

        return lists;
    }
}
