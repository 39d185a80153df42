using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>A rectangle of board that a layout needs: its size and how many of its long edges must keep the factory taper.</summary>
public readonly record struct WantedBoard(long Width, long Length, int FactoryEdges);

/// <summary>What a set of wanted boards costs, in the smallest unit of the objective.</summary>
public delegate long BoardCosting(IReadOnlyList<WantedBoard> boards);

/// <summary>What the search may do: patterns kept for a run, and how many whole layouts are costed.</summary>
public sealed record SheetEffort(int Patterns, int Costings);

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
/// Method: dynamic programme over courses (Viterbi) on guessed prices of pieces, under several guesses; each result costed
/// truly by the cutting that the root hands in, then improved one course at a time. Stagger is the first key, as a
/// penalty; cost (sheets and joints) the second; butts the third. Not exact: the true cost couples courses by offcuts.
/// Cost: courses × patterns² per guess, and a bounded number of costings.
/// </summary>
public sealed class SheetSearch(FramedRoom room, BoardCosting costing, SheetEffort effort, StockPrices prices)
{
    private const long OneRow = 1_000_000;
    private const long NearRow = 10_000;
    private const long Corner = 100;

    public SheetLayout? Best(CourseDivision division, IReadOnlyList<CourseRun> runs, IReadOnlyList<BearingLine> lines)
    {
        var lengths = prices.Lengths(division.SheetWidth);
        SheetLayout? best = null;
        var spent = 0;
        for (var model = 0; model < 2; model++)
        {
            var options = Options(division, runs, lines, lengths, model);
            if (options is null)
            {
                return null;
            }

            var (choice, penalty) = Chain(division, options, lines);
            var layout = Costed(division, runs, lines, options, choice, penalty, ref spent);
            layout = Improve(division, runs, lines, options, choice, layout, ref spent);
            if (best is null || Better(layout, best))
            {
                best = layout;
            }
        }

        return best;
    }

    public static bool Better(SheetLayout a, SheetLayout b) =>
        (a.Penalty, a.Cost, a.ButtCount).CompareTo((b.Penalty, b.Cost, b.ButtCount)) < 0;

    // for each course, combinations of its runs' patterns
    private List<List<(int[][] Butts, long Guess)>>? Options(
        CourseDivision division, IReadOnlyList<CourseRun> runs, IReadOnlyList<BearingLine> lines, long[] lengths, int model)
    {
        var courses = new List<List<(int[][], long)>>();
        for (var c = 0; c < division.Courses; c++)
        {
            var combined = new List<(int[][] Butts, long Guess)> { ([], 0) };
            foreach (var run in runs.Where(r => r.Course == c))
            {
                var share = prices.Share(run.Across.Size, division.SheetWidth);
                var patterns = new ButtPatterns(
                    lines,
                    lengths,
                    l => (long)(prices.Guess(l, division.SheetWidth, model) * share),
                    prices.ButtCost(run.Across.Size) + 1)
                    .Of(run, i => Backs(room, run, lines[i]), effort.Patterns);
                if (patterns.Count == 0)
                {
                    return null;
                }

                combined = [.. combined
                    .SelectMany(head => patterns.Select(p => (Butts: (int[][])[.. head.Butts, p.Lines], Guess: head.Guess + p.Guess)))
                    .OrderBy(x => x.Guess)
                    .Take(effort.Patterns)];
            }

            courses.Add(combined);
        }

        return courses;
    }

    /// <summary>True when wood lies behind the whole width of a butt on this line in this run.</summary>
    public static bool Backs(FramedRoom room, CourseRun run, BearingLine line)
    {
        if (!run.Along.Holds(line.At))
        {
            return false;
        }

        foreach (var span in room.Board.AcrossAt(line.At, 0))
        {
            var butt = span.Meet(run.Strip);
            if (butt.Size > 0 && !line.Stretches.Any(s => s.Lo - Tolerance(room) <= butt.Lo && butt.Hi <= s.Hi + Tolerance(room)))
            {
                return false;
            }
        }

        return true;
    }

    // straps keep an opening's clearance; the board's edge runs on to the opening
    private static long Tolerance(FramedRoom room) =>
        2 + room.Survey.Room.Openings.Select(o => o.Clearance.Units).DefaultIfEmpty(0).Max();

    private (int[] Choice, long Penalty) Chain(
        CourseDivision division, List<List<(int[][] Butts, long Guess)>> options, IReadOnlyList<BearingLine> lines)
    {
        var count = options.Count;
        var cost = new (long Penalty, long Guess)[count][];
        var from = new int[count][];
        for (var c = 0; c < count; c++)
        {
            cost[c] = new (long, long)[options[c].Count];
            from[c] = new int[options[c].Count];
            for (var o = 0; o < options[c].Count; o++)
            {
                var own = CornerPenalty(division.Course(c), options[c][o].Butts, lines);
                if (c == 0)
                {
                    cost[c][o] = (own, options[c][o].Guess);
                    continue;
                }

                var best = (Penalty: long.MaxValue, Guess: long.MaxValue);
                for (var p = 0; p < options[c - 1].Count; p++)
                {
                    var penalty = cost[c - 1][p].Penalty + own + StaggerPenalty(options[c - 1][p].Butts, options[c][o].Butts, lines);
                    var guess = cost[c - 1][p].Guess + options[c][o].Guess;
                    if ((penalty, guess).CompareTo(best) < 0)
                    {
                        best = (penalty, guess);
                        from[c][o] = p;
                    }
                }

                cost[c][o] = best;
            }
        }

        var choice = new int[count];
        choice[^1] = Enumerable.Range(0, cost[^1].Length).MinBy(o => cost[^1][o]);
        for (var c = count - 1; c > 0; c--)
        {
            choice[c - 1] = from[c][choice[c]];
        }

        return (choice, cost[^1][choice[^1]].Penalty);
    }

    private SheetLayout Improve(
        CourseDivision division, IReadOnlyList<CourseRun> runs, IReadOnlyList<BearingLine> lines,
        List<List<(int[][] Butts, long Guess)>> options, int[] choice, SheetLayout start, ref int spent)
    {
        var best = start;
        for (var again = true; again && spent < effort.Costings;)
        {
            again = false;
            for (var c = 0; c < options.Count && spent < effort.Costings; c++)
            {
                var kept = choice[c];
                for (var o = 0; o < options[c].Count && spent < effort.Costings; o++)
                {
                    if (o == kept)
                    {
                        continue;
                    }

                    choice[c] = o;
                    var penalty = PenaltyOf(division, options, choice, lines);
                    if (penalty <= best.Penalty)
                    {
                        var layout = Costed(division, runs, lines, options, choice, penalty, ref spent);
                        if (Better(layout, best))
                        {
                            best = layout;
                            kept = o;
                            again = true;
                        }
                    }
                }

                choice[c] = kept;
            }
        }

        return best;
    }

    private long PenaltyOf(CourseDivision division, List<List<(int[][] Butts, long Guess)>> options, int[] choice, IReadOnlyList<BearingLine> lines)
    {
        long penalty = 0;
        for (var c = 0; c < choice.Length; c++)
        {
            penalty += CornerPenalty(division.Course(c), options[c][choice[c]].Butts, lines);
            if (c > 0)
            {
                penalty += StaggerPenalty(options[c - 1][choice[c - 1]].Butts, options[c][choice[c]].Butts, lines);
            }
        }

        return penalty;
    }

    private long StaggerPenalty(int[][] before, int[][] here, IReadOnlyList<BearingLine> lines)
    {
        long penalty = 0;
        foreach (var a in before.SelectMany(x => x))
        {
            foreach (var b in here.SelectMany(x => x))
            {
                var apart = Math.Abs(lines[a].At - lines[b].At);
                if (a == b || apart == 0)
                {
                    penalty += OneRow;
                }
                else if (room.Survey.Sheets.MinStagger is { } least ? apart < least.Units : RowsApart(a, b, lines) < 2)
                {
                    penalty += NearRow;
                }
            }
        }

        return penalty;
    }

    // counted in row spaces of the rows that run through
    private static int RowsApart(int a, int b, IReadOnlyList<BearingLine> lines)
    {
        var rows = 1;
        for (var i = Math.Min(a, b) + 1; i < Math.Max(a, b); i++)
        {
            rows += lines[i].Through ? 1 : 0;
        }

        return rows;
    }

    // butts stay 300 mm off the line of an inside corner when there is a choice (common practice, no source)
    private long CornerPenalty(Span strip, int[][] butts, IReadOnlyList<BearingLine> lines)
    {
        long penalty = 0;
        foreach (var line in butts.SelectMany(b => b))
        {
            foreach (var corner in room.InsideCorners)
            {
                if (Math.Abs(lines[line].At - corner.U) < 300 * Length.PerMillimetre && strip.Lo <= corner.V && corner.V <= strip.Hi)
                {
                    penalty += Corner;
                }
            }
        }

        return penalty;
    }

    private SheetLayout Costed(
        CourseDivision division, IReadOnlyList<CourseRun> runs, IReadOnlyList<BearingLine> lines,
        List<List<(int[][] Butts, long Guess)>> options, int[] choice, long penalty, ref int spent)
    {
        spent++;
        var butts = new List<int[]>(runs.Count);
        for (var c = 0; c < choice.Length; c++)
        {
            butts.AddRange(options[c][choice[c]].Butts);
        }

        var wanted = Wanted(room, division, runs, butts, lines);
        long joints = 0;
        var count = 0;
        for (var r = 0; r < runs.Count; r++)
        {
            joints += prices.ButtCost(runs[r].Across.Size) * butts[r].Length;
            count += butts[r].Length;
        }

        return new SheetLayout(division, runs, butts, lines, penalty, costing(wanted) + joints, count);
    }

    /// <summary>The rectangles of board that a layout needs, run by run and piece by piece.</summary>
    public static List<WantedBoard> Wanted(
        FramedRoom room, CourseDivision division, IReadOnlyList<CourseRun> runs, IReadOnlyList<int[]> butts, IReadOnlyList<BearingLine> lines)
    {
        var wanted = new List<WantedBoard>();
        for (var r = 0; r < runs.Count; r++)
        {
            var run = runs[r];
            var at = run.Along.Lo;
            foreach (var end in butts[r].Select(b => lines[b].At).Append(run.Along.Hi))
            {
                wanted.Add(new WantedBoard(run.Across.Size, end - at, FactoryEdges(room, division, run, run.Across)));
                at = end;
            }
        }

        return wanted;
    }

    /// <summary>How many long edges of a piece meet a neighbouring course and should keep their taper.</summary>
    public static int FactoryEdges(FramedRoom room, CourseDivision division, CourseRun run, Span across) =>
        across.Size == division.SheetWidth
            ? 2
            : Math.Min(1, (across.Lo == run.Strip.Lo && across.Lo > room.Board.LowV ? 1 : 0) + (across.Hi == run.Strip.Hi && across.Hi < room.Board.HighV ? 1 : 0));
}
