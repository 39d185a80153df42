using LayoutService.Engine.Measures;

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
    private readonly BarCase _bars;
    private readonly BarWeights _weights;
    private readonly BarForbidden _forbidden;
    private readonly BarStates _states = new();
    private readonly List<BarStep> _history = [];
    private readonly List<int> _path = [];
    private readonly int _mostNodes = 1;
    private BarPrices? _prices;
    private BarBeamStyle _style;
    // content beyond which nothing more fits a stick
    private long _fullest;
    private int _position;
    private int _firstStick;

    public BarBeam(BarCase bars, BarWeights weights)
    {
        _bars = bars;
        _weights = weights;
        _forbidden = new BarForbidden(bars);
        foreach (BarGraph graph in bars.Graphs)
        {
            _mostNodes = Math.Max(_mostNodes, graph.Nodes);
        }
    }

    /// <summary>Pieces tried on sticks so far.</summary>
    public long Work { get; private set; }

    private BarPrices Prices => _prices!;

    /// <summary>
    /// Pieces the runs in this order on top of the solution, whose other runs stay, and writes the best end into it.
    /// </summary>
    public void Place(BarSolution solution, ReadOnlySpan<int> order, BarPrices prices, BarBeamStyle style)
    {
        _prices = prices;
        _style = style;
        _fullest = _bars.Kinds.Longest - prices.Shortest;
        _states.Reserve(_mostNodes, style.Width);
        _history.Clear();
        long begun = Work;
        Seed(solution);
        for (_position = 0; _position < order.Length; _position++)
        {
            _forbidden.Mark(solution, order, _position, _states, _history);
            Cross(order[_position]);
            WorkMeter.Spend(Work - begun);
            begun = Work;
        }

        Write(solution, order);
    }

    /// <summary>One state: nothing lost; the sticks that can still take a piece are open, those with most to lose first.</summary>
    private void Seed(BarSolution solution)
    {
        _states.Seed();
        _firstStick = solution.Content.Count;
        for (int stick = 0; stick < solution.Content.Count; stick++)
        {
            long content = solution.Content[stick];
            if (content <= 0 || content > _fullest)
            {
                continue;
            }

            Prices.Stick(content, out double least, out double closing);
            int at = _states.OpenCount[0];
            if (at == BarStates.MostOpen)
            {
                at = _states.Cheapest(0, at);
                if (_states.Open[at].Closing >= closing)
                {
                    continue;
                }

                _states.Closing[0] -= _states.Open[at].Closing;
            }
            else
            {
                _states.OpenCount[0]++;
            }

            _states.Open[at] = new OpenStick(content, stick, least, closing);
            _states.Closing[0] += closing;
        }
    }

    private void Cross(int run)
    {
        BarGraph graph = _bars.Graphs[_bars.Runs[run].Graph];
        double[] toEnd = Prices.ToEnd[_bars.Runs[run].Graph];
        Array.Clear(_states.Count, 1, graph.Nodes - 1);
        for (int rank = 0; rank < _states.Count[0]; rank++)
        {
            _states.Start[rank] = rank;
        }

        for (int node = 0; node < graph.Nodes; node++)
        {
            for (int rank = 0; rank < _states.Count[node]; rank++)
            {
                int state = node * _states.Width + rank;
                if (node > 0)
                {
                    Realise(graph, state);
                }

                if (node < graph.Nodes - 1)
                {
                    Expand(graph, toEnd, run, state, node);
                }
            }
        }

        _states.Wrap(graph.Nodes - 1);
    }

    /// <summary>Fills in a kept candidate's open sticks from its parent's.</summary>
    private void Realise(BarGraph graph, int state)
    {
        BarStates states = _states;
        int parent = states.FromOf(state);
        int arc = states.ArcOf(state);
        int slot = states.SlotOf(state);
        int first = state * BarStates.MostOpen;
        int count = states.OpenCount[parent];
        states.Open.AsSpan(parent * BarStates.MostOpen, count).CopyTo(states.Open.AsSpan(first));
        states.Start[state] = states.Start[parent];
        double closing = states.Closing[parent];
        long content = _bars.Lengths[graph.Length[arc]];
        int nextStick = states.Label[parent] < 0 ? _firstStick : _history[states.Label[parent]].NextStick;
        int stick = nextStick;
        if (slot >= 0)
        {
            content += states.Open[first + slot].Content;
            stick = states.Open[first + slot].Stick;
            closing -= states.Open[first + slot].Closing;
            states.Open[first + slot] = states.Open[first + --count];
        }

        if (content <= _fullest)
        {
            if (count == BarStates.MostOpen)
            {
                int close = states.Cheapest(first, count);
                closing -= states.Open[first + close].Closing;
                states.Loss[state] += states.Open[first + close].Closing;
                states.Open[first + close] = states.Open[first + --count];
            }

            Prices.Stick(content, out double least, out double after);
            closing += after;
            states.Open[first + count++] = new OpenStick(content, stick, least, after);
        }

        states.OpenCount[state] = count;
        states.Closing[state] = closing;
        _history.Add(new BarStep(states.Label[parent], _position, arc, stick, Math.Max(stick + 1, nextStick)));
        states.Label[state] = _history.Count - 1;
    }

    private void Expand(BarGraph graph, double[] toEnd, int run, int state, int node)
    {
        double[] nodeCost = _weights.NodeCost[run];
        bool[] poor = _weights.Poor[run];
        double loss = _states.Loss[state] - toEnd[node];
        double closing = _states.Closing[state];
        BarPrices prices = Prices;
        long longest = _bars.Kinds.Longest;
        ulong hash = _states.HashOf(state);
        int rank = _states.Start[state];
        ReadOnlySpan<OpenStick> sticks = _states.Open.AsSpan(state * BarStates.MostOpen, _states.OpenCount[state]);
        for (int a = graph.First[node]; a < graph.First[node + 1]; a++)
        {
            int to = graph.To[a];
            int length = graph.Length[a];
            double price = prices.Price[length];
            double lost = loss + price + toEnd[to] + nodeCost[to];
            lost += poor[to] ? _style.Violation : 0;
            lost += _forbidden.Is(rank, to) ? _style.Violation : 0;
            if (lost >= _states.Worst(to))
            {
                continue;
            }

            long size = _bars.Lengths[length];
            Work += sticks.Length + 1;
            double whole = lost + prices.NewLoss[length];
            double first = whole + _style.Share * (closing + prices.NewClosing[length]);
            if (first < _states.Worst(to))
            {
                _states.Offer(to, first, whole, state, a, -1, unchecked(hash + Mix(size)));
            }

            for (int slot = 0; slot < sticks.Length; slot++)
            {
                ref readonly OpenStick open = ref sticks[slot];
                long content = open.Content + size;
                if (content <= longest)
                {
                    prices.Stick(content, out double least, out double after);
                    double total = lost + least - open.Least - price;
                    double score = total + _style.Share * (closing - open.Closing + after);
                    if (score < _states.Worst(to))
                    {
                        _states.Offer(to, score, total, state, a, slot, unchecked(hash - Mix(open.Content) + Mix(content)));
                    }
                }
            }
        }
    }

    /// <summary>A number for a content, to add up over a state's open sticks; 0 when nothing more fits.</summary>
    private ulong Mix(long content)
    {
        if (content > _fullest)
        {
            return 0;
        }

        ulong x = unchecked((ulong)content * 0x9E3779B97F4A7C15UL);
        x ^= x >> 29;
        return unchecked(x * 0xBF58476D1CE4E5B9UL);
    }

    private void Write(BarSolution solution, ReadOnlySpan<int> order)
    {
        int best = 0;
        double least = double.MaxValue;
        for (int rank = 0; rank < _states.Count[0]; rank++)
        {
            double loss = _states.Loss[rank] + (1 - _style.Hope) * _states.Closing[rank];
            if (loss < least)
            {
                least = loss;
                best = rank;
            }
        }

        _path.Clear();
        for (int at = _states.Label[best]; at >= 0; at = _history[at].Parent)
        {
            _path.Add(at);
        }

        for (int k = _path.Count - 1; k >= 0; k--)
        {
            BarStep step = _history[_path[k]];
            solution.Append(order[step.Position], step.Arc, step.Stick);
        }
    }
}
