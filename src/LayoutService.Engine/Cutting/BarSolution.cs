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

    // what was taken away or exchanged since the mark: a run and its old pieces from First on, or two runs
    private readonly List<(int Run, int Other, int First)> _changes = [];
    private readonly List<(int Arc, int Stick)> _taken = [];
    private readonly List<long> _before = [];
    private bool _marked;

    /// <summary>From here on changes can be undone.</summary>
    public void Mark()
    {
        _marked = true;
        _changes.Clear();
        _taken.Clear();
        _before.Clear();
        _before.AddRange(Content);
    }

    /// <summary>Back to the mark. Only runs that were removed since may have been appended to.</summary>
    public void Undo()
    {
        for (int c = _changes.Count - 1; c >= 0; c--)
        {
            (int run, int other, int first) = _changes[c];
            if (other >= 0)
            {
                Swap(run, other);
                continue;
            }

            Arcs[run].Clear();
            Sticks[run].Clear();
            for (int k = first; k < _taken.Count; k++)
            {
                Arcs[run].Add(_taken[k].Arc);
                Sticks[run].Add(_taken[k].Stick);
            }

            _taken.RemoveRange(first, _taken.Count - first);
        }

        _changes.Clear();
        Content.Clear();
        Content.AddRange(_before);
    }

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
        if (_marked)
        {
            _changes.Add((run, -1, _taken.Count));
        }

        for (int k = 0; k < Arcs[run].Count; k++)
        {
            if (_marked)
            {
                _taken.Add((Arcs[run][k], Sticks[run][k]));
            }

            Content[Sticks[run][k]] -= bars.Lengths[graph.Length[Arcs[run][k]]];
        }

        Arcs[run].Clear();
        Sticks[run].Clear();
    }

    /// <summary>Two runs of the same graph take each other's way, with the sticks it is cut from.</summary>
    public void Exchange(int a, int b)
    {
        if (_marked)
        {
            _changes.Add((a, b, 0));
        }

        Swap(a, b);
    }

    private void Swap(int a, int b)
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
