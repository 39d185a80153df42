namespace LayoutService.Engine.Cutting;

/// <summary>A stick that can still take a piece, with what BarPrices says of its content.</summary>
internal readonly record struct OpenStick(long Content, int Stick, double Least, double Closing);

/// <summary>
/// The states of a beam at every node of one run: at most so many a node, best score first, no two of a node with the same
/// contents. A state first is a candidate (what it came from and what was placed); its open sticks are filled in when it
/// is expanded. Place node × width + rank holds a state.
/// </summary>
internal sealed class BarStates
{
    public const int MostOpen = 8;
    private double[] _score = [];
    private ulong[] _hash = [];
    private int[] _from = [];
    private int[] _arc = [];
    private int[] _slot = [];

    /// <summary>States kept at a node.</summary>
    public int Width { get; private set; }

    /// <summary>Number of states at each node.</summary>
    public int[] Count { get; private set; } = [];

    /// <summary>What each state has lost so far.</summary>
    public double[] Loss { get; private set; } = [];

    /// <summary>What closing all its open sticks would lose more.</summary>
    public double[] Closing { get; private set; } = [];

    /// <summary>Its step in the history; −1 before the first.</summary>
    public int[] Label { get; private set; } = [];

    /// <summary>Rank of the state at the run's start from which it comes.</summary>
    public int[] Start { get; private set; } = [];

    public int[] OpenCount { get; private set; } = [];

    public OpenStick[] Open { get; private set; } = [];

    public void Reserve(int nodes, int width)
    {
        Width = width;
        if (Loss.Length >= nodes * width)
        {
            return;
        }

        int size = nodes * width;
        Count = new int[nodes];
        _score = new double[size];
        _hash = new ulong[size];
        _from = new int[size];
        _arc = new int[size];
        _slot = new int[size];
        Loss = new double[size];
        Closing = new double[size];
        Label = new int[size];
        Start = new int[size];
        OpenCount = new int[size];
        Open = new OpenStick[size * MostOpen];
    }

    /// <summary>One state at node 0, with no open sticks yet.</summary>
    public void Seed()
    {
        Count[0] = 1;
        Loss[0] = 0;
        Closing[0] = 0;
        Label[0] = -1;
        OpenCount[0] = 0;
        _hash[0] = 0;
    }

    public ulong HashOf(int state) => _hash[state];

    public int FromOf(int state) => _from[state];

    public int ArcOf(int state) => _arc[state];

    /// <summary>Open stick of the parent on which the piece went; −1 for a new stick.</summary>
    public int SlotOf(int state) => _slot[state];

    /// <summary>The score that a candidate at the node must beat.</summary>
    public double Worst(int node) => Count[node] == Width ? _score[node * Width + Width - 1] : double.MaxValue;

    /// <summary>The open stick whose closing costs least, as an offset from the first.</summary>
    public int Cheapest(int first, int count)
    {
        int cheapest = 0;
        for (int k = 1; k < count; k++)
        {
            if (Open[first + k].Closing < Open[first + cheapest].Closing)
            {
                cheapest = k;
            }
        }

        return cheapest;
    }

    /// <summary>Keeps the candidate when it is among the best of its node and better than its like.</summary>
    public void Offer(int node, double score, double loss, int from, int arc, int slot, ulong hash)
    {
        int begin = node * Width;
        int end = begin + Count[node];
        if (end == begin + Width && score >= _score[end - 1])
        {
            return;
        }

        for (int k = begin; k < end; k++)
        {
            if (_hash[k] == hash)
            {
                if (_score[k] <= score)
                {
                    return;
                }

                end--;
                for (; k < end; k++)
                {
                    Move(k + 1, k);
                }
            }
        }

        int at = end == begin + Width ? end - 1 : end;
        Count[node] = at + 1 - begin;
        for (; at > begin && _score[at - 1] > score; at--)
        {
            Move(at - 1, at);
        }

        _score[at] = score;
        Loss[at] = loss;
        _from[at] = from;
        _arc[at] = arc;
        _slot[at] = slot;
        _hash[at] = hash;
    }

    /// <summary>The states at the last node become those at node 0.</summary>
    public void Wrap(int lastNode)
    {
        Count[0] = Count[lastNode];
        for (int rank = 0; rank < Count[0]; rank++)
        {
            int state = lastNode * Width + rank;
            Loss[rank] = Loss[state];
            _hash[rank] = _hash[state];
            Label[rank] = Label[state];
            Closing[rank] = Closing[state];
            OpenCount[rank] = OpenCount[state];
            Open.AsSpan(state * MostOpen, OpenCount[state]).CopyTo(Open.AsSpan(rank * MostOpen));
        }
    }

    private void Move(int from, int to)
    {
        _score[to] = _score[from];
        Loss[to] = Loss[from];
        _from[to] = _from[from];
        _arc[to] = _arc[from];
        _slot[to] = _slot[from];
        _hash[to] = _hash[from];
    }
}
