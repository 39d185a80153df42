namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: piece some runs, one after the other, from new sticks and from sticks that are still open, at least loss.
/// Method: beam search, node by node along each run; a state is what was lost so far and the open sticks' contents, ranked
/// by loss plus a share of what closing its open sticks now would lose; equal contents are merged. Cost: runs × nodes ×
/// width × arcs a node × (open sticks + 1). Why this one: states at one node are comparable, as they have pieced the same
/// stretch, and measured in loss against the relaxation's prices only real mistakes cost anything.
/// </summary>
internal sealed class BarBeam
{
    public const int MaxOpen = 8;
    private readonly BarCase _bars;
    private readonly BarWeights _weights;
    private readonly int _maxNodes;
    private BarPrices _prices;
    private int _width;
    private double _share;
    private double _violation;

    // Candidates and live states, by node × width + rank.
    private int[] _counts = [];
    private double[] _score = [];
    private double[] _loss = [];
    private int[] _from = [];
    private int[] _arc = [];
    private int[] _slot = [];
    private ulong[] _hash = [];
    private int[] _label = [];
    private int[] _start = [];
    private int[] _openCount = [];
    private double[] _closing = [];
    private OpenStick[] _open = [];
    private ulong[] _forbidden = [];

    // History, one entry a state that was ever expanded.
    private readonly List<BarStep> _history = [];

    public BarBeam(BarCase bars, BarWeights weights, BarPrices prices)
    {
        _bars = bars;
        _weights = weights;
        _prices = prices;
        foreach (BarGraph graph in bars.Graphs)
        {
            _maxNodes = Math.Max(_maxNodes, graph.Nodes);
        }
    }

    /// <summary>Expansions so far.</summary>
    public long Work { get; private set; }

    /// <summary>
    /// Pieces the runs in this order on top of the solution (whose other runs stay) and writes the best end into it: the one
    /// of least loss, where the hope (0 to 1) is the part of the open sticks' closing that is not counted.
    /// </summary>
    public void Place(BarSolution solution, ReadOnlySpan<int> order, BarPrices prices, int width, double share, double violation, double hope = 0)
    {
        _prices = prices;
        _share = share;
        _violation = violation;
        Reserve(width);
        _history.Clear();
        Seed(solution);
        for (int k = 0; k < order.Length; k++)
        {
            Forbid(solution, order, k);
            Cross(order[k]);
        }

        Write(solution, order, 1 - hope);
    }

    private void Reserve(int width)
    {
        _width = width;
        int size = _maxNodes * width;
        if (_score.Length < size)
        {
            _counts = new int[_maxNodes];
            _score = new double[size];
            _loss = new double[size];
            _from = new int[size];
            _arc = new int[size];
            _slot = new int[size];
            _hash = new ulong[size];
            _label = new int[size];
            _start = new int[size];
            _openCount = new int[size];
            _closing = new double[size];
            _open = new OpenStick[size * MaxOpen];
            _forbidden = new ulong[width * Words(_maxNodes)];
        }
    }

    private static int Words(int nodes) => (nodes + 63) / 64;

    /// <summary>One state: nothing lost; the sticks that can still take a piece are open, the emptiest first.</summary>
    private void Seed(BarSolution solution)
    {
        _counts[0] = 1;
        _loss[0] = 0;
        _hash[0] = 0;
        _label[0] = -1;
        _closing[0] = 0;
        int count = 0;
        for (int stick = 0; stick < solution.Content.Count; stick++)
        {
            long content = solution.Content[stick];
            if (content <= 0 || content + _prices.Shortest > _bars.Kinds.Longest)
            {
                continue;
            }

            _prices.Stick(content, out double least, out double closing);
            var open = new OpenStick(content, stick, least, closing);
            if (count < MaxOpen)
            {
                _open[count++] = open;
                _closing[0] += closing;
                continue;
            }

            int smallest = Smallest(0, count);
            if (_open[smallest].Closing < closing)
            {
                _closing[0] += closing - _open[smallest].Closing;
                _open[smallest] = open;
            }
        }

        _openCount[0] = count;
        _nextStick = solution.Content.Count;
    }

    private int _nextStick;

    private int Smallest(int offset, int count)
    {
        int smallest = 0;
        for (int k = 1; k < count; k++)
        {
            if (_open[offset + k].Closing < _open[offset + smallest].Closing)
            {
                smallest = k;
            }
        }

        return smallest;
    }

    /// <summary>Marks, for each state at the start of run k, the nodes on which a neighbour already breaks.</summary>
    private void Forbid(BarSolution solution, ReadOnlySpan<int> order, int k)
    {
        BarRun run = _bars.Runs[order[k]];
        int words = Words(run.Nodes.Count);
        for (int rank = 0; rank < _counts[0]; rank++)
        {
            Span<ulong> mask = _forbidden.AsSpan(rank * words, words);
            mask.Clear();
            foreach (int near in run.Near)
            {
                int position = order[..k].IndexOf(near);
                BarRun other = _bars.Runs[near];
                BarGraph graph = _bars.Graphs[other.Graph];
                if (position < 0)
                {
                    foreach (int arc in solution.Arcs[near])
                    {
                        Mark(mask, run, other, graph.To[arc]);
                    }

                    continue;
                }

                int at = _label[rank];
                while (at >= 0 && _history[at].Position > position)
                {
                    at = _history[at].Parent;
                }

                for (; at >= 0 && _history[at].Position == position; at = _history[at].Parent)
                {
                    Mark(mask, run, other, graph.To[_history[at].Arc]);
                }
            }
        }

        _position = k;
    }

    private int _position;

    private static void Mark(Span<ulong> mask, BarRun run, BarRun other, int node)
    {
        if (node == other.Nodes.Count - 1)
        {
            return;
        }

        int key = other.Nodes[node].Key;
        for (int own = 1; own < run.Nodes.Count - 1; own++)
        {
            if (run.Nodes[own].Key == key)
            {
                mask[own >> 6] |= 1UL << (own & 63);
            }
        }
    }

    private void Cross(int run)
    {
        BarGraph graph = _bars.Graphs[_bars.Runs[run].Graph];
        double[] toEnd = _prices.ToEnd[_bars.Runs[run].Graph];
        double[] nodeCost = _weights.NodeCost[run];
        Array.Clear(_counts, 1, graph.Nodes - 1);
        for (int rank = 0; rank < _counts[0]; rank++)
        {
            _start[rank] = rank;
        }

        for (int node = 0; node < graph.Nodes - 1; node++)
        {
            for (int rank = 0; rank < _counts[node]; rank++)
            {
                int state = node * _width + rank;
                if (node > 0)
                {
                    Realise(graph, state);
                }

                Expand(graph, toEnd, nodeCost, _weights.Poor[run], state, node);
            }
        }

        MoveEnds(graph);
    }

    /// <summary>Builds a kept candidate's open sticks from its parent's.</summary>
    private void Realise(BarGraph graph, int state)
    {
        int parent = _from[state];
        long length = _bars.Lengths[graph.Length[_arc[state]]];
        int offset = state * MaxOpen;
        int count = _openCount[parent];
        _open.AsSpan(parent * MaxOpen, count).CopyTo(_open.AsSpan(offset));
        _start[state] = _start[parent];
        _closing[state] = _closing[parent];
        int slot = _slot[state];
        long content = length;
        int stick = NextStick(_label[parent]);
        if (slot >= 0)
        {
            content += _open[offset + slot].Content;
            stick = _open[offset + slot].Stick;
            _closing[state] -= _open[offset + slot].Closing;
            _open[offset + slot] = _open[offset + --count];
        }

        if (content + _prices.Shortest <= _bars.Kinds.Longest)
        {
            _prices.Stick(content, out double least, out double closing);
            _closing[state] += closing;
            if (count == MaxOpen)
            {
                int smallest = Smallest(offset, count);
                _closing[state] -= _open[offset + smallest].Closing;
                _loss[state] += _open[offset + smallest].Closing;
                _open[offset + smallest] = _open[offset + --count];
            }

            _open[offset + count++] = new OpenStick(content, stick, least, closing);
        }

        _openCount[state] = count;
        _history.Add(new BarStep(_label[parent], _position, _arc[state], stick, Math.Max(stick + 1, NextStick(_label[parent]))));
        _label[state] = _history.Count - 1;
    }

    private int NextStick(int label) => label < 0 ? _nextStick : _history[label].NextStick;

    private void Expand(BarGraph graph, double[] toEnd, double[] nodeCost, bool[] poor, int state, int node)
    {
        double loss = _loss[state] - toEnd[node];
        double closing = _closing[state];
        int offset = state * MaxOpen;
        int count = _openCount[state];
        ulong hash = _hash[state];
        int mask = _start[state] * Words(graph.Nodes);
        for (int a = graph.First[node]; a < graph.First[node + 1]; a++)
        {
            int to = graph.To[a];
            int length = graph.Length[a];
            double price = _prices.Price[length];
            double lost = loss + price + toEnd[to] + nodeCost[to];
            if (poor[to])
            {
                lost += _violation;
            }

            if ((_forbidden[mask + (to >> 6)] >> (to & 63) & 1) != 0)
            {
                lost += _violation;
            }

            int full = to * _width + _width - 1;
            double worst = _counts[to] == _width ? _score[full] : double.MaxValue;
            if (lost >= worst)
            {
                continue;
            }

            long size = _bars.Lengths[length];
            Work += count + 1;
            double whole = lost + _prices.NewLoss[length];
            Offer(to, whole + _share * (closing + _prices.NewClosing[length]), whole, state, a, -1, unchecked(hash + Mix(size)));
            for (int slot = 0; slot < count; slot++)
            {
                ref OpenStick open = ref _open[offset + slot];
                long content = open.Content + size;
                if (content > _bars.Kinds.Longest)
                {
                    continue;
                }

                _prices.Stick(content, out double least, out double after);
                double total = lost + least - open.Least - price;
                Offer(to, total + _share * (closing - open.Closing + after), total, state, a, slot, unchecked(hash - Mix(open.Content) + Mix(content)));
            }
        }
    }

    private ulong Mix(long content)
    {
        if (content + _prices.Shortest > _bars.Kinds.Longest)
        {
            return 0;
        }

        ulong x = unchecked((ulong)content * 0x9E3779B97F4A7C15UL);
        x ^= x >> 29;
        return unchecked(x * 0xBF58476D1CE4E5B9UL);
    }

    private void Offer(int node, double score, double loss, int from, int arc, int slot, ulong hash)
    {
        int begin = node * _width;
        int count = _counts[node];
        if (count == _width && score >= _score[begin + count - 1])
        {
            return;
        }

        int end = begin + count;
        for (int k = begin; k < end; k++)
        {
            if (_hash[k] == hash)
            {
                if (_score[k] <= score)
                {
                    return;
                }

                Shift(k, end - 1);
                end--;
                break;
            }
        }

        if (end == begin + _width)
        {
            end--;
        }

        int at = end;
        while (at > begin && _score[at - 1] > score)
        {
            _score[at] = _score[at - 1];
            _loss[at] = _loss[at - 1];
            _from[at] = _from[at - 1];
            _arc[at] = _arc[at - 1];
            _slot[at] = _slot[at - 1];
            _hash[at] = _hash[at - 1];
            at--;
        }

        _score[at] = score;
        _loss[at] = loss;
        _from[at] = from;
        _arc[at] = arc;
        _slot[at] = slot;
        _hash[at] = hash;
        _counts[node] = end + 1 - begin;
    }

    /// <summary>Closes the gap at k by moving the entries up to last one place down.</summary>
    private void Shift(int k, int last)
    {
        for (; k < last; k++)
        {
            _score[k] = _score[k + 1];
            _loss[k] = _loss[k + 1];
            _from[k] = _from[k + 1];
            _arc[k] = _arc[k + 1];
            _slot[k] = _slot[k + 1];
            _hash[k] = _hash[k + 1];
        }
    }

    /// <summary>States at the run's end become the states at the next run's start.</summary>
    private void MoveEnds(BarGraph graph)
    {
        int node = graph.Nodes - 1;
        for (int rank = 0; rank < _counts[node]; rank++)
        {
            Realise(graph, node * _width + rank);
        }

        for (int rank = 0; rank < _counts[node]; rank++)
        {
            int state = node * _width + rank;
            _loss[rank] = _loss[state];
            _hash[rank] = _hash[state];
            _label[rank] = _label[state];
            _closing[rank] = _closing[state];
            _openCount[rank] = _openCount[state];
            _open.AsSpan(state * MaxOpen, _openCount[state]).CopyTo(_open.AsSpan(rank * MaxOpen));
        }

        _counts[0] = _counts[node];
    }

    private void Write(BarSolution solution, ReadOnlySpan<int> order, double close)
    {
        int best = 0;
        for (int rank = 1; rank < _counts[0]; rank++)
        {
            if (_loss[rank] + close * _closing[rank] < _loss[best] + close * _closing[best])
            {
                best = rank;
            }
        }

        _path.Clear();
        for (int at = _label[best]; at >= 0; at = _history[at].Parent)
        {
            _path.Add(at);
        }

        for (int k = _path.Count - 1; k >= 0; k--)
        {
            BarStep step = _history[_path[k]];
            solution.Append(order[step.Position], step.Arc, step.Stick);
        }
    }

    private readonly List<int> _path = [];

    private readonly record struct OpenStick(long Content, int Stick, double Least, double Closing);

    private readonly record struct BarStep(int Parent, int Position, int Arc, int Stick, int NextStick);
}
