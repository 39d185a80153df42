using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>A rectangle of board that a layout needs: its size and how many of its long edges must keep the factory taper.</summary>
public readonly record struct WantedBoard(long Width, long Length, int FactoryEdges);

/// <summary>What a set of wanted boards costs, in the smallest unit of the objective.</summary>
public delegate long BoardCosting(IReadOnlyList<WantedBoard> boards);

/// <summary>A whole layout of butts over given bearing lines.</summary>
public sealed record SheetLayout(
    CourseDivision Division,
    IReadOnlyList<CourseRun> Runs,
    IReadOnlyList<int[]> Butts,
    IReadOnlyList<BearingLine> Lines,
    long Penalty,
    long Cost,
    int ButtCount);

/// <summary>
/// Problem: choose the butts of every course so that neighbouring courses are staggered and the sheets cost least.
/// Method: dynamic programme over courses (Viterbi) on guessed prices of pieces, and again with the offcuts
/// carried along (see <see cref="OffcutChain"/>); each result costed truly by the cutting that the root hands in, and improved one course at a time where the root asks. Stagger is the
/// first key, as a penalty; cost (sheets and joints) the second; butts the third. Not exact: the true cost couples
/// courses by offcuts. Cost: courses × patterns² per guess, and a bounded number of costings.
/// </summary>
public sealed class SheetSearch
{
    private const long OneRow = 1_000_000;
    /// <summary>What two butts nearer than the stagger weigh; anything less is a matter of preference.</summary>
    public const long NearRow = 10_000;

    private const long Corner = 100;

    private readonly FramedRoom _room;
    private readonly BoardCosting _costing;
    private readonly StockPrices _prices;
    private readonly CourseDivision _division;
    private readonly IReadOnlyList<CourseRun> _runs;
    private readonly IReadOnlyList<BearingLine> _lines;
    private readonly int[] _rowNumber;
    private readonly List<CourseOption>[] _options;
    private readonly long[][,] _between;
    private readonly long[][] _corners;
    private readonly List<WantedBoard> _wanted = [];

    /// <summary>Sets the search up; null when some run cannot be divided on these lines.</summary>
    public static SheetSearch? Over(
        FramedRoom room, BoardCosting costing, StockPrices prices, CourseDivision division,
        IReadOnlyList<CourseRun> runs, CourseOptions over)
    {
        var options = over.Of(division, runs);
        return options is null ? null : new SheetSearch(room, costing, prices, division, runs, over.Lines, options);
    }

    private SheetSearch(
        FramedRoom room, BoardCosting costing, StockPrices prices, CourseDivision division,
        IReadOnlyList<CourseRun> runs, IReadOnlyList<BearingLine> lines, List<CourseOption>[] options)
    {
        (_room, _costing, _prices, _division, _runs, _lines, _options) = (room, costing, prices, division, runs, lines, options);
        _rowNumber = new int[lines.Count];
        for (int i = 0, row = 0; i < lines.Count; i++)
        {
            _rowNumber[i] = lines[i].Through ? ++row : row;
        }

        _between = new long[options.Length][,];
        _corners = new long[options.Length][];
        var known = new Dictionary<(List<CourseOption>?, List<CourseOption>), long[,]>();
        for (var c = 0; c < options.Length; c++)
        {
            var before = c == 0 ? null : options[c - 1];
            if (!known.TryGetValue((before, options[c]), out var table))
            {
                known[(before, options[c])] = table = Staggers(before, options[c]);
            }

            _between[c] = table;
            _corners[c] = [.. options[c].Select(o => CornerPenalty(division.Course(c), o.All))];
        }
    }

    public static bool Better(SheetLayout a, SheetLayout b) =>
        (a.Penalty, a.Cost, a.ButtCount).CompareTo((b.Penalty, b.Cost, b.ButtCount)) < 0;

    /// <summary>The layout that the guess by count gives, costed truly.</summary>
    public (SheetLayout Layout, int[] Choice) Guessed()
    {
        var chain = Chain();
        return (Costed(chain), chain);
    }

    /// <summary>The better of a layout and the one that the chain of offcuts gives, costed truly.</summary>
    public (SheetLayout Layout, int[] Choice) Carried(SheetLayout layout, int[] choice)
    {
        var chain = new OffcutChain(_prices, _division, _runs, _lines).Best(_options, (c, p, o) => _between[c][p, o] + _corners[c][o]);
        return !chain.AsSpan().SequenceEqual(choice) && Costed(chain) is var other && Better(other, layout) ? (other, chain) : (layout, choice);
    }

    /// <summary>Changes one course at a time, while that pays and the costings last.</summary>
    public SheetLayout Improve(SheetLayout start, int[] choice, int costings)
    {
        var best = start;
        for (var again = true; again && costings > 0;)
        {
            again = false;
            for (var c = 0; c < choice.Length; c++)
            {
                var kept = choice[c];
                for (var o = 0; o < _options[c].Count && costings > 0; o++)
                {
                    if (o == kept)
                    {
                        continue;
                    }

                    choice[c] = o;
                    if (PenaltyOf(choice) > best.Penalty)
                    {
                        continue;
                    }

                    costings--;
                    if (Costed(choice) is var layout && Better(layout, best))
                    {
                        best = layout;
                        kept = o;
                        again = true;
                    }
                }

                choice[c] = kept;
            }
        }

        return best;
    }

    private int[] Chain()
    {
        var count = _options.Length;
        var from = new int[count][];
        var before = new (long Penalty, long Guess)[1];
        for (var c = 0; c < count; c++)
        {
            var options = _options[c];
            var here = new (long Penalty, long Guess)[options.Count];
            from[c] = new int[options.Count];
            for (var o = 0; o < options.Count; o++)
            {
                var best = (Penalty: long.MaxValue, Guess: long.MaxValue);
                for (var p = 0; p < before.Length; p++)
                {
                    var penalty = before[p].Penalty + _between[c][p, o] + _corners[c][o];
                    var guess = before[p].Guess + options[o].Guess(1);
                    if (penalty < best.Penalty || (penalty == best.Penalty && guess < best.Guess))
                    {
                        best = (penalty, guess);
                        from[c][o] = p;
                    }
                }

                here[o] = best;
            }

            before = here;
        }

        var choice = new int[count];
        for (var o = 1; o < before.Length; o++)
        {
            if (before[o].CompareTo(before[choice[^1]]) < 0)
            {
                choice[^1] = o;
            }
        }

        for (var c = count - 1; c > 0; c--)
        {
            choice[c - 1] = from[c][choice[c]];
        }

        return choice;
    }

    private long PenaltyOf(int[] choice)
    {
        long penalty = 0;
        for (var c = 0; c < choice.Length; c++)
        {
            penalty += _between[c][c == 0 ? 0 : choice[c - 1], choice[c]] + _corners[c][choice[c]];
        }

        return penalty;
    }

    // penalty of each option of a course after each option of the course before
    private long[,] Staggers(List<CourseOption>? before, List<CourseOption> here)
    {
        var table = new long[before?.Count ?? 1, here.Count];
        for (var o = 0; o < here.Count; o++)
        {
            for (var p = 0; p < table.GetLength(0); p++)
            {
                table[p, o] = before is null ? 0 : StaggerPenalty(before[p].All, here[o].All);
            }
        }

        return table;
    }

    private long StaggerPenalty(int[] before, int[] here)
    {
        long penalty = 0;
        foreach (var a in before)
        {
            foreach (var b in here)
            {
                var apart = Math.Abs(_lines[a].At - _lines[b].At);
                if (apart == 0)
                {
                    penalty += OneRow;
                }
                else if (_room.Survey.Sheets.MinStagger is { } least ? apart < least.Units : RowsApart(a, b) < _room.Survey.Sheets.StaggerRows)
                {
                    penalty += NearRow;
                }
            }
        }

        return penalty;
    }

    // counted in row spaces of the rows that run through; a short strap lies part of a space from either
    private int RowsApart(int a, int b)
    {
        var (low, high) = a < b ? (a, b) : (b, a);
        return _rowNumber[high] - _rowNumber[low] + (_lines[high].Through ? 0 : 1) - (_lines[low].Through ? 0 : 1);
    }

    // butts stay 300 mm off the line of an inside corner when there is a choice (common practice, no source)
    private long CornerPenalty(Span strip, int[] butts)
    {
        long penalty = 0;
        foreach (var line in butts)
        {
            foreach (var corner in _room.InsideCorners)
            {
                if (Math.Abs(_lines[line].At - corner.U) < 300 * Length.PerMillimetre && strip.Holds(corner.V))
                {
                    penalty += Corner;
                }
            }
        }

        return penalty;
    }

    private SheetLayout Costed(int[] choice)
    {
        var butts = new List<int[]>(_runs.Count);
        for (var c = 0; c < choice.Length; c++)
        {
            butts.AddRange(_options[c][choice[c]].Butts);
        }

        long joints = 0;
        var count = 0;
        for (var r = 0; r < _runs.Count; r++)
        {
            joints += _prices.ButtCost(_runs[r].Across.Size) * butts[r].Length;
            count += butts[r].Length;
        }

        return new SheetLayout(_division, _runs, butts, _lines, PenaltyOf(choice), _costing(Wanted(butts)) + joints, count);
    }

    private List<WantedBoard> Wanted(List<int[]> butts)
    {
        var wanted = _wanted;
        wanted.Clear();
        for (var r = 0; r < _runs.Count; r++)
        {
            var run = _runs[r];
            var edges = FactoryEdges(_room, _division, run, run.Across);
            var at = run.Along.Lo;
            foreach (var line in butts[r])
            {
                wanted.Add(new WantedBoard(run.Across.Size, _lines[line].At - at, edges));
                at = _lines[line].At;
            }

            wanted.Add(new WantedBoard(run.Across.Size, run.Along.Hi - at, edges));
        }

        return wanted;
    }

    /// <summary>How many long edges of a piece meet a neighbouring course and should keep their taper.</summary>
    public static int FactoryEdges(FramedRoom room, CourseDivision division, CourseRun run, Span across) =>
        across.Size == division.SheetWidth
            ? 2
            : Math.Min(1, (across.Lo == run.Strip.Lo && across.Lo > room.Board.LowV ? 1 : 0) + (across.Hi == run.Strip.Hi && across.Hi < room.Board.HighV ? 1 : 0));
}
