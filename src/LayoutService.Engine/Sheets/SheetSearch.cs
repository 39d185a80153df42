using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>A rectangle of board that a layout needs: its size and how many of its long edges must keep the factory taper.</summary>
public readonly record struct WantedBoard(long Width, long Length, int FactoryEdges);

/// <summary>What a set of wanted boards costs, in the smallest unit of the objective.</summary>
public delegate long BoardCosting(IReadOnlyList<WantedBoard> boards);

/// <summary>
/// Problem: choose the butts of every course so that neighbouring courses are staggered and the sheets cost least.
/// Method: dynamic programme over courses (Viterbi) on guessed prices of pieces, and again with the offcuts
/// carried along (see <see cref="OffcutChain"/>); each result costed truly by the cutting that the root hands in, and improved one course at a time where the root asks. Stagger is the
/// first key, as a penalty; cost (sheets and joints) the second; butts the third. Not exact: the true cost couples
/// courses by offcuts. Cost: courses × patterns² per guess, and a bounded number of costings.
/// </summary>
public sealed class SheetSearch
{
    private readonly FramedRoom _room;
    private readonly LayoutCosting _costing;
    private readonly StockPrices _prices;
    private readonly CourseDivision _division;
    private readonly IReadOnlyList<CourseRun> _runs;
    private readonly IReadOnlyList<BearingLine> _lines;
    private readonly Butt[] _places;
    private readonly List<CourseOption>[] _options;
    private readonly long[][,] _between;
    private readonly long[][] _corners;

    /// <summary>Sets the search up; null when some run cannot be divided on these lines.</summary>
    public static SheetSearch? Over(
        FramedRoom room, LayoutCosting costing, StockPrices prices, CourseDivision division,
        IReadOnlyList<CourseRun> runs, CourseOptions over)
    {
        var options = over.Of(division, runs);
        return options is null ? null : new SheetSearch(room, costing, prices, division, runs, over.Lines, options);
    }

    private SheetSearch(
        FramedRoom room, LayoutCosting costing, StockPrices prices, CourseDivision division,
        IReadOnlyList<CourseRun> runs, IReadOnlyList<BearingLine> lines, List<CourseOption>[] options)
    {
        (_room, _costing, _prices, _division, _runs, _lines, _options) = (room, costing, prices, division, runs, lines, options);
        _places = Butt.Places(lines);

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
            _corners[c] = [.. options[c].Select(o => CornerWeight(division.Course(c), o.All))];
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
        var chain = new OffcutChain(_prices, _division, _runs, _lines).Best(_options, (c, p, o) => _between[c][p, o], (c, o) => _corners[c][o]);
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
                    var penalty = before[p].Penalty + _between[c][p, o];
                    var guess = before[p].Guess + options[o].Guess(1) + _corners[c][o];
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
            penalty += _between[c][c == 0 ? 0 : choice[c - 1], choice[c]];
        }

        return penalty;
    }

    // penalty of each option of a course after each option of the course before
    private long[,] Staggers(List<CourseOption>? before, List<CourseOption> here)
    {
        var table = new long[before?.Count ?? 1, here.Count];
        WorkMeter.Spend(table.Length * (4L + ((before?[0].All.Length ?? 0) * (long)here[0].All.Length)));
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
                penalty += Butt.Penalty(_places[a], _places[b], _room.Survey.Sheets.MinStagger?.Units, _room.Survey.Sheets.StaggerRows);
            }
        }

        return penalty;
    }

    // butts stay 300 mm off the line of an inside corner when there is a choice (common practice, no source)
    private long CornerWeight(Span strip, int[] butts)
    {
        long weight = 0;
        foreach (var line in butts)
        {
            weight += _costing.Weights.Corner * _costing.Weights.Corners(strip, _lines[line].At);
        }

        return weight;
    }

    private SheetLayout Costed(int[] choice)
    {
        var butts = new List<int[]>(_runs.Count);
        for (var c = 0; c < choice.Length; c++)
        {
            butts.AddRange(_options[c][choice[c]].Butts);
        }

        return _costing.Of(_lines, butts, PenaltyOf(choice));
    }

    /// <summary>How many long edges of a piece meet a neighbouring course and should keep their taper.</summary>
    public static int FactoryEdges(FramedRoom room, CourseDivision division, CourseRun run, Span across) =>
        across.Size == division.SheetWidth
            ? 2
            : Math.Min(1, (across.Lo == run.Strip.Lo && across.Lo > room.Board.LowV ? 1 : 0) + (across.Hi == run.Strip.Hi && across.Hi < room.Board.HighV ? 1 : 0));
}
