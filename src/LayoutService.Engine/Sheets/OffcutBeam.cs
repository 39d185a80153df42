using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>
/// Problem: butts of every run, on rows or anywhere between, so that the sheets cost least when any offcut may serve any
/// piece. Method: a beam search over the runs, one after the other; what is kept of a beginning is its price and the
/// offcuts at hand, and each run may be broken by patterns of its own or by laying an offcut whole. Stagger is the first
/// key, price less what the offcuts are worth the second. Not exact: the beam is narrow. Cost: runs × beam × patterns ×
/// pieces × offcuts.
/// </summary>
public sealed class OffcutBeam
{
    private const int DynamicOffcuts = 3;
    private const int MostLike = 3;

    private readonly IReadOnlyList<CourseRun> _runs;
    private readonly IReadOnlyList<ButtStand> _stands;
    private readonly List<RunPattern>[] _patterns;
    private readonly OffcutStore _store;
    private readonly RunPatterns _maker;
    private readonly RunBoards _boards;
    private readonly List<WantedBoard> _wanted = new(8);
    private readonly (long Width, int Edges)[] _size;
    private readonly long? _stagger;
    private readonly int _staggerRows;
    private readonly int _width;

    /// <param name="room">The framed room.</param>
    /// <param name="prices">What sheets cost.</param>
    /// <param name="weights">What joints weigh.</param>
    /// <param name="division">The courses.</param>
    /// <param name="runs">Their runs.</param>
    /// <param name="stands">Where the butts of each run may stand.</param>
    /// <param name="known">Ways to break each run on the rows alone, as places.</param>
    /// <param name="beam">Beginnings kept after each run, and five times as many patterns of each run.</param>
    public OffcutBeam(
        FramedRoom room, StockPrices prices, JointWeights weights, CourseDivision division, IReadOnlyList<CourseRun> runs,
        IReadOnlyList<ButtStand> stands, IReadOnlyList<IReadOnlyList<long[]>> known, int beam)
    {
        (_runs, _stands, _width) = (runs, stands, beam);
        _stagger = room.Survey.Sheets.MinStagger?.Units;
        _staggerRows = room.Survey.Sheets.StaggerRows;
        _boards = new RunBoards(room, division);
        var sizes = new BoardSizes(room, division);
        _size = [.. runs.Select(r => (sizes.Width(r, r.Across), SheetSearch.FactoryEdges(room, division, r, r.Across)))];
        _store = new OffcutStore(prices, division.SheetWidth, _size, room.Survey.Sheets.CutAllowance.Units);
        _maker = new RunPatterns(prices, division.SheetWidth, weights, beam <= 8 ? 2 : 4);
        _patterns = new List<RunPattern>[runs.Count];
        for (var r = 0; r < runs.Count; r++)
        {
            var (run, stand) = (runs[r], stands[r]);
            var like = Enumerable.Range(0, r).FirstOrDefault(k => Alike(runs[k], run) && known[k].Count == known[r].Count && known[k].Zip(known[r]).All(p => p.First.AsSpan().SequenceEqual(p.Second)), -1);
            if (like >= 0)
            {
                _patterns[r] = _patterns[like];
                continue;
            }

            // an opening wholly inside a run asks for a butt through it: rows and straps there are known already
            _patterns[r] = [.. known[r].Select(b => new RunPattern([.. b.Select(stand.At)], weights.Of(run, [.. b], stand)))];
            _patterns[r].AddRange(_maker.Of(run, stand, 5 * beam));
        }
    }

    private sealed record Beginning(Beginning? Before, int Run, RunPattern? Pattern, long Penalty, double Price, double Value, Offcut[] Offcuts);

    // the patterns of the run that is being broken, what they weigh, and their boards when they are first wanted
    private sealed class Choices(List<RunPattern> patterns)
    {
        public List<RunPattern> Patterns => patterns;

        public long[] Stagger { get; } = new long[patterns.Count];

        public double[] Extras { get; } = [.. patterns.Select(p => (double)p.Extras)];

        public Dictionary<RunPattern, long[]> Beside { get; } = new(ReferenceEqualityComparer.Instance);

        public WantedBoard[]?[] Boards { get; } = new WantedBoard[]?[patterns.Count];
    }

    /// <summary>The best endings: for each run in order the places of its butts.</summary>
    public List<long[][]> Best(int most)
    {
        var kept = new List<Beginning> { new(null, -1, null, 0, 0, 0, []) };
        var laid = new Dictionary<long, Choices>();
        for (var r = 0; r < _runs.Count && kept.Count > 0; r++)
        {
            var next = new List<Beginning>(_width + 1);
            laid.Clear();
            var choices = new Choices(_patterns[r]);
            foreach (var before in kept)
            {
                Consider(before, r, choices, next);

                if (_runs[r].Enclosed.Count > 0)
                {
                    continue;
                }

                long last = -1;
                for (int i = 0, used = 0; i < before.Offcuts.Length && used < DynamicOffcuts; i++)
                {
                    var offcut = before.Offcuts[i];
                    if (offcut.Serves(_size[r].Width, _size[r].Edges) && offcut.Length != last)
                    {
                        if (!laid.TryGetValue(offcut.Length, out var patterns))
                        {
                            laid[offcut.Length] = patterns = new Choices(_maker.With(_runs[r], _stands[r], offcut.Length));
                        }

                        Consider(before, r, patterns, next);

                        last = offcut.Length;
                        used++;
                    }
                }
            }

            kept = next;
        }

        return [.. kept.Take(most).Select(Places)];
    }

    private void Consider(Beginning before, int r, Choices choices, List<Beginning> next)
    {
        var stagger = Stagger(before, r, choices);
        WorkMeter.Spend(4L * stagger.Length);
        var rest = before.Value + _store.Least(before.Offcuts, _size[r], _runs[r]);
        for (var c = 0; c < stagger.Length; c++)
        {
            var penalty = before.Penalty + stagger[c];
            if (next.Count < _width || !NoBetter(penalty, rest + choices.Extras[c], next[^1]))
            {
                Consider(before, r, choices, c, penalty, next);
            }
        }
    }

    private void Consider(Beginning before, int r, Choices choices, int choice, long penalty, List<Beginning> next)
    {
        var pattern = choices.Patterns[choice];
        WorkMeter.Spend(20L * (pattern.Butts.Length + 1));
        _store.Load(before.Offcuts, before.Price + pattern.Extras);
        foreach (ref readonly var board in (choices.Boards[choice] ??= Boards(_runs[r], pattern)).AsSpan())
        {
            _store.Take(board.Width, board.Length, board.FactoryEdges);
        }

        var value = _store.Value(r + 1);
        var place = Place(next, penalty, value);
        if (place >= _width)
        {
            return;
        }

        // beginnings of one price are mostly the same but for their order
        for (var like = place; like > 0 && next[like - 1].Penalty == penalty && next[like - 1].Value == value; like--)
        {
            if (place - like + 1 >= MostLike || Same(next[like - 1].Pattern!, pattern))
            {
                return;
            }
        }

        next.Insert(place, new Beginning(before, r, pattern, penalty, _store.Price, value, _store.Save()));
        if (next.Count > _width)
        {
            next.RemoveAt(_width);
        }
    }

    private static bool Same(RunPattern a, RunPattern b) => a.Butts.AsSpan().SequenceEqual(b.Butts);

    // behind all that it is no better than
    private static int Place(List<Beginning> next, long penalty, double value)
    {
        var (low, high) = (0, next.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (NoBetter(penalty, value, next[middle]))
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }

    private static bool NoBetter(long penalty, double value, Beginning than) =>
        penalty > than.Penalty || (penalty == than.Penalty && value >= than.Value);

    private WantedBoard[] Boards(CourseRun run, RunPattern pattern)
    {
        _wanted.Clear();
        var at = run.Along.Lo;
        for (var i = 0; i <= pattern.Butts.Length; i++)
        {
            var end = i < pattern.Butts.Length ? pattern.Butts[i].At : run.Along.Hi;
            _boards.Add(run, at, end, _wanted);
            at = end;
        }

        return [.. _wanted];
    }

    // what each choice weighs beside the butts of the course before, over runs that lie side by side
    private ReadOnlySpan<long> Stagger(Beginning before, int r, Choices choices)
    {
        Span<long> sum = choices.Stagger;
        sum.Clear();
        for (var at = before; at is { Pattern: not null } && _runs[at.Run].Course >= _runs[r].Course - 1; at = at.Before)
        {
            if (_runs[at.Run].Course == _runs[r].Course - 1)
            {
                ReadOnlySpan<long> beside = Beside(at.Pattern, choices);
                for (var c = 0; c < beside.Length; c++)
                {
                    sum[c] += beside[c];
                }
            }
        }

        return sum;
    }

    // the same for all beginnings that break the run beside it alike
    private long[] Beside(RunPattern pattern, Choices choices)
    {
        if (choices.Beside.TryGetValue(pattern, out var known))
        {
            return known;
        }

        var beside = new long[choices.Patterns.Count];
        for (var c = 0; c < beside.Length && pattern.Butts.Length > 0; c++)
        {
            var butts = choices.Patterns[c].Butts;
            WorkMeter.Spend(2L * (pattern.Butts.Length + butts.Length));
            beside[c] = Butt.Penalty(pattern.Butts, butts, _stagger, _staggerRows);
        }

        return choices.Beside[pattern] = beside;
    }

    private static bool Alike(CourseRun a, CourseRun b) =>
        a.Along == b.Along && a.Across.Size == b.Across.Size && a.Enclosed.Count == 0 && b.Enclosed.Count == 0;

    private long[][] Places(Beginning end)
    {
        var places = new long[_runs.Count][];
        for (var at = end; at.Pattern is not null; at = at.Before!)
        {
            places[at.Run] = Array.ConvertAll(at.Pattern.Butts, b => b.At);
        }

        return places;
    }
}
