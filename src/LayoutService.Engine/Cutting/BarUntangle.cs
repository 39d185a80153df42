using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Cutting;

/// <summary>
/// Problem: the least breaks at poor places and on keys that a neighbour breaks on, whatever it costs. Method: min-conflicts (Minton
/// and others 1992): a run that takes part in a violation gets the way with the fewest beside its neighbours, exactly, by a shortest
/// path; of ways that are as good one by a fixed chance, so that it does not go round in a circle. The pieces of runs that changed are
/// then laid on the sticks where they add least. Cost: changes × arcs of a run. Why this one: a search for cost alone meets rooms with
/// few joists and short stock in which nearly every way is in some neighbour's way, and there are many that are not.
/// </summary>
internal sealed class BarUntangle(BarCase bars, BarJudge judge, BarStagger stagger, int poorGrade)
{
    private const int Changes = 600;
    private const long Violation = 1_000_000;
    private const long Joint = 2_000;
    private const int Spread = 1_000;

    private readonly BarChance _chance = new();
    private readonly List<int> _wrong = [];
    private readonly Dictionary<int, int> _near = [];

    /// <summary>The solution with fewer violations, laid on sticks; null where none was found.</summary>
    public BarSolution? Of(BarSolution start)
    {
        var now = new BarSolution(bars);
        now.CopyFrom(start);
        var best = new List<int>?[bars.Runs.Length];
        var (least, found) = (judge.Of(now).Violations, false);
        for (int change = 0; change < Changes && least > 0 && Wrong(now) is { Count: > 0 } wrong; change++)
        {
            int run = wrong[_chance.Next(wrong.Count)];
            if (bars.Runs[run].Near.Length > 0 && _chance.Next(6) == 0)
            {
                run = bars.Runs[run].Near[_chance.Next(bars.Runs[run].Near.Length)];
            }

            Change(now, run);
            if (judge.Of(now).Violations is var total && total < least)
            {
                (least, found) = (total, true);
                for (int r = 0; r < best.Length; r++)
                {
                    best[r] = [.. now.Arcs[r]];
                }
            }
        }

        return found ? Laid(start, best) : null;
    }

    private List<int> Wrong(BarSolution now)
    {
        _wrong.Clear();
        for (int r = 0; r < bars.Runs.Length; r++)
        {
            if (stagger.Of(now, r) > 0)
            {
                _wrong.Add(r);
            }
        }

        return _wrong;
    }

    private void Change(BarSolution now, int r)
    {
        BarRun run = bars.Runs[r];
        BarGraph graph = bars.Graphs[run.Graph];
        WorkMeter.Spend(4L * graph.To.Length + bars.Runs.Length);
        _near.Clear();
        foreach (int near in run.Near)
        {
            int[] to = bars.Graphs[bars.Runs[near].Graph].To;
            for (int k = 0; k < now.Arcs[near].Count - 1; k++)
            {
                int key = bars.Runs[near].Nodes[to[now.Arcs[near][k]]].Key;
                _near[key] = _near.GetValueOrDefault(key) + 1;
            }
        }

        var price = new long[bars.Lengths.Length];
        Array.Fill(price, Joint);
        var atNode = new long[graph.Nodes];
        for (int node = 1; node < graph.Nodes - 1; node++)
        {
            atNode[node] = (Violation * ((run.Nodes[node].Grade >= poorGrade ? 1 : 0) + _near.GetValueOrDefault(run.Nodes[node].Key))) + _chance.Next(Spread);
        }

        var toEnd = new long[graph.Nodes];
        var next = new int[graph.Nodes];
        graph.Shortest(price, atNode, toEnd, next);
        now.Arcs[r].Clear();
        for (int node = 0; next[node] >= 0; node = graph.To[next[node]])
        {
            now.Arcs[r].Add(next[node]);
        }
    }

    private BarSolution Laid(BarSolution start, List<int>?[] ways)
    {
        var made = new BarSolution(bars);
        made.CopyFrom(start);
        var pieces = new List<(long Length, int Run, int Arc)>();
        for (int r = 0; r < ways.Length; r++)
        {
            if (made.Arcs[r].SequenceEqual(ways[r]!))
            {
                continue;
            }

            made.Remove(r);
            int[] length = bars.Graphs[bars.Runs[r].Graph].Length;
            pieces.AddRange(ways[r]!.Select(arc => (bars.Lengths[length[arc]], r, arc)));
        }

        var sticks = new Dictionary<(int Run, int Arc), int>();
        foreach ((long length, int run, int arc) in pieces.OrderByDescending(p => p.Length).ThenBy(p => p.Run).ThenBy(p => p.Arc))
        {
            int stick = Cheapest(made, length);
            while (stick >= made.Content.Count)
            {
                made.Content.Add(0);
            }

            made.Content[stick] += length;
            sticks[(run, arc)] = stick;
        }

        // pieces stand in a run in their order along it
        foreach ((long length, int run, int arc) in pieces)
        {
            made.Arcs[run].Add(arc);
            made.Sticks[run].Add(sticks[(run, arc)]);
        }

        return made;
    }

    // the stick whose cost grows least, of those the fullest
    private int Cheapest(BarSolution made, long length)
    {
        (long Cost, long Emptiness, int Stick) best = (Cost(length), long.MaxValue, made.Content.Count);
        for (int stick = 0; stick < made.Content.Count; stick++)
        {
            long content = made.Content[stick];
            if (content > 0 && content + length <= bars.Kinds.Longest
                && (Cost(content + length) - Cost(content), -content, stick) is var grown && grown.CompareTo(best) < 0)
            {
                best = grown;
            }
        }

        return best.Stick;

        long Cost(long filled) => bars.Kinds.Cheapest(filled) is >= 0 and var kind ? bars.Kinds.Cost[kind] : long.MaxValue / 4;
    }
}
