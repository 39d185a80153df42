using Google.OrTools.Sat;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Tests.Optimum;

/// <summary>
/// The fewest full rows of a room, as an integer program for a general solver (CP-SAT). One yes or no for each place where
/// a full row may stand, one for each wall's own short row. In every cross-section: a tight row at each square wall, no
/// stretch longer than the spacing without a row, neighbours at least a face and 13 mm apart.
/// <para>
/// Places: every corner, wall and tight row, plus whole spacings up, less whole least gaps. That is enough, for a row of
/// some best answer may be moved up until it meets its limit: the row before it plus a spacing, the row after it less the
/// least gap, or a wall.
/// </para>
/// </summary>
internal sealed class RowProgram
{
    private const long ClearGap = 13 * Length.PerMillimetre;

    private readonly long _half;
    private readonly long _spacing;
    private readonly long _gap;
    private readonly List<CrossSection> _sections;
    private readonly List<SquareWall> _walls;
    private readonly CpModel _model = new();
    private readonly List<long> _places;
    private readonly BoolVar[] _full;
    private readonly BoolVar?[] _short;

    private RowProgram(Survey survey)
    {
        (_half, _spacing) = (survey.Strapping.Face.Units / 2, survey.Strapping.MaxSpacing.Units);
        _gap = survey.Strapping.Face.Units + ClearGap;
        _sections = CrossSections.Of(survey);
        _walls = SquareWalls.Of(_sections);
        _places = Places(CrossSections.Rings(survey)[0].Max(c => c.U));
        _full = [.. _places.Select(p => _model.NewBoolVar($"row {p}"))];
        _short = [.. _walls.Select(w => CrossesAll(w) ? null : _model.NewBoolVar($"short {w.At}"))];
    }

    /// <summary>The proved least number of full rows, or null when the solver could not prove one.</summary>
    public static int? FewestFullRows(Survey survey) => Solve(survey)?.Full.Count;

    /// <summary>The places of a best answer's full rows, and of the short rows that it uses.</summary>
    public static (List<long> Full, List<long> Short)? Solve(Survey survey)
    {
        var program = new RowProgram(survey);
        program.TightAtWalls();
        program.WithinSpacing();
        program.Apart();
        // full rows first; a short row is never free, so that none is drawn without need
        program._model.Minimize((LinearExpr.Sum(program._full) * 100) + LinearExpr.Sum(program._short.OfType<BoolVar>()));
        var solver = new CpSolver { StringParameters = "num_workers:1,linearization_level:2,max_deterministic_time:20,random_seed:1" };
        return solver.Solve(program._model) == CpSolverStatus.Optimal
            ? ([.. program._places.Where((_, i) => solver.BooleanValue(program._full[i]))],
                [.. program._walls.Where((_, i) => program._short[i] is { } s && solver.BooleanValue(s)).Select(w => w.Row(program._half))])
            : null;
    }

    private List<long> Places(long end)
    {
        var starts = new SortedSet<long>(_walls.Select(w => w.Row(_half)));
        starts.UnionWith([.. _walls.Select(w => w.Row(_half) - _gap)]);
        foreach (var s in _sections.Where(s => !s.LowSquare))
        {
            starts.Add((long)Math.Min(s.Low0, s.Low1));
            starts.Add((long)Math.Min(s.Low0, s.Low1) + _half);
        }

        var places = new SortedSet<long>(_walls.Select(w => w.Row(_half) + _gap));
        foreach (var start in starts)
        {
            for (var up = start; up <= end; up += _spacing)
            {
                places.Add(up);
            }
        }

        return [.. places.Where(p => _sections.Exists(s => s.Holds(p, _half)))];
    }

    // at its place the room is no wider than the wall: its row is a full one
    private bool CrossesAll(SquareWall wall)
    {
        var row = wall.Row(_half);
        var near = _walls.Where(w => w.RoomAbove == wall.RoomAbove && Math.Abs(w.At - wall.At) <= ClearGap).SelectMany(w => w.Sections).ToHashSet();
        for (var grown = true; grown;)
        {
            grown = false;
            for (var i = 0; i < _sections.Count; i++)
            {
                grown |= !near.Contains(i) && near.Any(n => RunsOn(_sections[n], _sections[i], wall.RoomAbove)) && near.Add(i);
            }
        }

        return Enumerable.Range(0, _sections.Count).All(i => near.Contains(i) || !_sections[i].Holds(row, _half));
    }

    // an oblique wall that starts where this section's end stops: the row runs on to it and ends there
    private static bool RunsOn(CrossSection from, CrossSection to, bool low) =>
        (low ? !to.LowSquare : !to.HighSquare)
        && ((from.V1 == to.V0 && (low ? from.Low1 == to.Low0 : from.High1 == to.High0))
            || (from.V0 == to.V1 && (low ? from.Low0 == to.Low1 : from.High0 == to.High1)));

    // the row's face within 13 mm of the wall; a wall behind a jog smaller than the least gap may use the row of the wall
    // that stands further into the room
    private void TightAtWalls()
    {
        for (var w = 0; w < _walls.Count; w++)
        {
            var wall = _walls[w];
            var serving = new List<ILiteral>();
            for (var o = 0; o < _walls.Count; o++)
            {
                var other = _walls[o];
                var further = wall.RoomAbove ? other.At - wall.At : wall.At - other.At;
                var jog = further >= 0 && further < _gap && other.Sections.Exists(a => wall.Sections.Exists(b => _sections[a].Touches(_sections[b])));
                if (other.RoomAbove == wall.RoomAbove && further >= 0 && (further <= ClearGap || jog))
                {
                    serving.Add(_full[_places.IndexOf(other.Row(_half))]);
                    if (_short[o] is { } own)
                    {
                        serving.Add(own);
                    }
                }
            }

            _model.AddBoolOr(serving);
        }
    }

    private void WithinSpacing()
    {
        for (var s = 0; s < _sections.Count; s++)
        {
            var (section, index) = (_sections[s], s);
            if (Windows(section) is not var (low, high))
            {
                continue;
            }

            var rows = new List<(long At, BoolVar Is)>();
            rows.AddRange(_places.Select((p, i) => (p, _full[i])).Where(r => section.Holds(r.p, _half)));
            rows.AddRange(_walls.Select((w, i) => (w.Row(_half), w, _short[i])).Where(r => r.Item3 is not null && Serves(r.w, index)).Select(r => (r.Item1, r.Item3!)));
            foreach (var from in rows.Select(r => r.At).Append(low).Distinct().Where(f => f >= low && f <= high))
            {
                _model.Add(LinearExpr.Sum(rows.Where(r => r.At > from && r.At <= from + _spacing).Select(r => r.Is)) >= 1);
            }
        }
    }

    // a short row lies in the sections of its own wall, and of a jog behind it
    private bool Serves(SquareWall wall, int section) => wall.Sections.Contains(section);

    /// <summary>Least and greatest start of a stretch of one spacing that lies wholly between the section's ends; null when there is none.</summary>
    private (long Low, long High)? Windows(CrossSection s)
    {
        double width0 = s.High0 - s.Low0 - Ends(s), width1 = s.High1 - s.Low1 - Ends(s);
        if (Math.Max(width0, width1) < _spacing)
        {
            return null;
        }

        // the part of the section, level by level, that is at least one spacing wide
        double from = 0, to = 1;
        if (width0 < _spacing)
        {
            from = (_spacing - width0) / (width1 - width0);
        }

        if (width1 < _spacing)
        {
            to = (_spacing - width0) / (width1 - width0);
        }

        double Mix(double a, double b, double t) => a + ((b - a) * t);
        var low = Math.Min(Mix(s.Low0, s.Low1, from), Mix(s.Low0, s.Low1, to)) + Inset(s, true);
        var high = Math.Max(Mix(s.High0, s.High1, from), Mix(s.High0, s.High1, to)) - Inset(s, false) - _spacing;
        // the row at a square wall ends the last stretch; one unit less keeps a stretch of exactly one spacing allowed
        return low > high - 1 ? null : ((long)Math.Ceiling(low), (long)Math.Floor(high) - 1);
    }

    private double Ends(CrossSection s) => Inset(s, true) + Inset(s, false);

    // from where a stretch is counted: the centre of a tight row, or half a face in from a wall so oblique that the strap is
    // cut square (more than 75 degrees off), or an oblique wall itself
    private long Inset(CrossSection s, bool low)
    {
        var run = Math.Abs(low ? s.Low1 - s.Low0 : s.High1 - s.High0);
        return run == 0 || Math.Atan((s.V1 - s.V0) / run) * 180 / Math.PI > 75 ? _half : 0;
    }

    private void Apart()
    {
        foreach (var section in _sections)
        {
            var held = Enumerable.Range(0, _places.Count).Where(i => section.Holds(_places[i], _half)).ToList();
            foreach (var first in held)
            {
                _model.AddAtMostOne(held.Where(i => i >= first && _places[i] - _places[first] < _gap).Select(i => _full[i]));
            }
        }

        for (var w = 0; w < _walls.Count; w++)
        {
            if (_short[w] is not { } own)
            {
                continue;
            }

            // a short row runs on to the next joist, so rows in touching sections keep clear of it too
            var at = _walls[w].Row(_half);
            var beside = _sections.Where(s => _walls[w].Sections.Exists(o => _sections[o].Touches(s))).ToList();
            for (var i = 0; i < _places.Count; i++)
            {
                if (_places[i] != at && Math.Abs(_places[i] - at) < _gap && beside.Exists(s => s.Holds(_places[i], _half)))
                {
                    _model.AddBoolOr([own.Not(), _full[i].Not()]);
                }
            }

            for (var o = w + 1; o < _walls.Count; o++)
            {
                if (_short[o] is { } other && Math.Abs(_walls[o].Row(_half) - at) < _gap && _walls[o].Row(_half) != at
                    && _walls[o].Sections.Exists(s => beside.Contains(_sections[s])))
                {
                    _model.AddBoolOr([own.Not(), other.Not()]);
                }
            }
        }
    }
}
