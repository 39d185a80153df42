using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>One choice for a whole course: the butts of each of its runs.</summary>
public sealed record CourseOption(int[][] Butts, int[] All, long ByShare, long ByCount)
{
    public long Guess(int model) => model == 0 ? ByShare : ByCount;
}

/// <summary>Lists the choices of every course over given lines; runs that look alike are worked out once, whatever the division.</summary>
public sealed class CourseOptions(FramedRoom room, StockPrices prices, JointWeights weights, long sheetWidth, IReadOnlyList<BearingLine> lines, int most)
{
    private readonly List<(CourseRun Run, bool[] Backed, List<ButtPattern> Patterns, List<CourseOption> Alone)> _known = [];
    private readonly bool[] _backed = new bool[lines.Count];
    private readonly List<Span>[] _board = [.. lines.Select(l => room.Board.AcrossAt(l.At, 0))];
    private readonly ButtPatterns _patterns = new(lines, prices, weights, sheetWidth);

    /// <summary>Wood may end this far from a butt's end and still back it: what rounding may lose.</summary>
    private const long LeastSlack = 2;

    // straps keep an opening's clearance, and end square where it lies askew; the board's edge runs on to the opening
    private readonly long _tolerance = LeastSlack + room.OpeningRings
        .Select((ring, i) => Askew(ring) ? (2 * room.Survey.Room.Openings[i].Clearance.Units) + room.Survey.Strapping.Face.Units : room.Survey.Room.Openings[i].Clearance.Units)
        .DefaultIfEmpty(0)
        .Max();

    private long MostSlack => Math.Max(_tolerance, room.Survey.Strapping.Face.Units / 2);

    public IReadOnlyList<BearingLine> Lines => lines;

    /// <summary>Options of each course in order; null when some run cannot be divided.</summary>
    public List<CourseOption>[]? Of(CourseDivision division, IReadOnlyList<CourseRun> runs)
    {
        var courses = new List<CourseOption>[division.Courses];
        for (int c = 0, r = 0; c < courses.Length; c++)
        {
            List<CourseOption>? combined = null;
            for (; r < runs.Count && runs[r].Course == c; r++)
            {
                var (patterns, alone) = Patterns(runs[r]);
                if (patterns.Count == 0)
                {
                    return null;
                }

                combined = combined is null ? alone : Combine(combined, patterns);
            }

            courses[c] = combined ?? [new CourseOption([], [], 0, 0)];
        }

        return courses;
    }

    private List<CourseOption> Combine(List<CourseOption> heads, List<ButtPattern> patterns)
    {
        var made = new List<CourseOption>();
        WorkMeter.Spend((5L + heads[0].All.Length) * patterns.Count * heads.Count);
        foreach (var pattern in patterns)
        {
            foreach (var head in heads)
            {
                made.Add(new CourseOption(
                    [.. head.Butts, pattern.Lines], [.. head.All, .. pattern.Lines], head.ByShare + pattern.ByShare, head.ByCount + pattern.ByCount));
            }
        }

        return [.. made.OrderBy(o => o.ByShare + o.ByCount).Take(most)];
    }

    // the patterns of a run, and the same as the options of a course that has no other run
    private (List<ButtPattern> Patterns, List<CourseOption> Alone) Patterns(CourseRun run)
    {
        for (var i = 0; i < _backed.Length; i++)
        {
            _backed[i] = Backs(run, i);
        }

        foreach (var (known, knownBacked, patterns, options) in _known)
        {
            if (known.Along == run.Along && known.Across.Size == run.Across.Size && run.Enclosed.Count == 0 && known.Enclosed.Count == 0
                && _backed.AsSpan().SequenceEqual(knownBacked))
            {
                return (patterns, options);
            }
        }

        var found = _patterns.Of(run, _backed, most);
        var alone = found.ConvertAll(p => new CourseOption([p.Lines], p.Lines, p.ByShare, p.ByCount));
        _known.Add((run, [.. _backed], found, alone));
        return (found, alone);
    }

    /// <summary>The ways known to break a run on these lines, as places; and where else its butts may stand.</summary>
    public (List<long[]> Known, ButtStand Stand) Free(CourseRun run, long gap)
    {
        var known = Patterns(run).Patterns.ConvertAll(p => Array.ConvertAll(p.Lines, l => lines[l].At));
        return (known, new ButtStand(room, lines, run.Strip, _backed, gap));
    }

    private static bool Askew(IReadOnlyList<Uv> ring) =>
        ring.Where((corner, i) => corner.U != ring[(i + 1) % ring.Count].U && corner.V != ring[(i + 1) % ring.Count].V).Any();

    /// <summary>True when wood lies behind the whole width of a butt on this line in this run.</summary>
    private bool Backs(CourseRun run, int line)
    {
        if (!run.Along.Holds(lines[line].At) || !room.KeepOuts.ButtMayStand(lines[line].At, run.Strip))
        {
            return false;
        }

        foreach (var span in _board[line])
        {
            var butt = span.Meet(run.Strip);
            if (butt.Size > 0 && !Covered(lines[line], butt))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The same for any line, known here or not.</summary>
    public bool Backs(CourseRun run, BearingLine line)
    {
        if (!run.Along.Holds(line.At) || !room.KeepOuts.ButtMayStand(line.At, run.Strip))
        {
            return false;
        }

        foreach (var span in room.Board.AcrossAt(line.At, 0))
        {
            var butt = span.Meet(run.Strip);
            if (butt.Size > 0 && !Covered(line, butt))
            {
                return false;
            }
        }

        return true;
    }

    private bool Covered(BearingLine line, Span butt)
    {
        for (var i = 0; i < line.Stretches.Count; i++)
        {
            var wood = line.Stretches[i];
            WorkMeter.Spend(1);
            if (wood.Lo - LeastSlack <= butt.Lo && butt.Hi <= wood.Hi + LeastSlack)
            {
                return true;
            }

            // how much is allowed depends on what lies beside it, which takes long to find: asked only where it decides
            if (butt.Lo < wood.Lo - MostSlack || butt.Hi > wood.Hi + MostSlack)
            {
                continue;
            }

            WorkMeter.Spend(20);
            if (wood.Lo - Slack(line.At, butt.Lo) <= butt.Lo && butt.Hi <= wood.Hi + Slack(line.At, butt.Hi))
            {
                return true;
            }
        }

        return false;
    }

    private long Slack(long along, long across)
    {
        foreach (var ring in room.OpeningRings)
        {
            for (var i = 0; i < ring.Count; i++)
            {
                if (Rings.Distance(new Uv(along, across), ring[i], ring[(i + 1) % ring.Count]) < 10)
                {
                    return _tolerance;
                }
            }
        }

        // at a bulkhead's slanting face a strap is cut back like at a slanting wall
        return room.Solids.Count > 0 && room.Straps.Edges.Any(e => room.BulkheadAt(e.Source) is not null && !e.Square && !e.Parallel && Rings.Distance(new Uv(along, across), e.From, e.To) < 10)
            ? MostSlack
            : LeastSlack;
    }
}
