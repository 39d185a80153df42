using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;

using SheetLayout = LayoutService.Engine.Sheets.SheetLayout;

namespace LayoutService.Engine.Composition;

/// <summary>Writes the board in the caller's coordinates: courses across the joists, sheets along each course.</summary>
public sealed class SheetWriter
{
    private readonly FramedRoom _room;
    private readonly ChosenCeiling _chosen;
    private readonly IReadOnlyList<BoardPart> _parts;
    private readonly List<string[]> _courseIds = [];
    private readonly SheetLayout[] _layers;

    private readonly IReadOnlyList<BearingLine> _screwed;

    /// <param name="room">The room, turned over where the board is screwed to the joists.</param>
    /// <param name="chosen">The layout.</param>
    /// <param name="parts">Its parts.</param>
    /// <param name="besides">What the board is screwed to besides the lines of its layout.</param>
    public SheetWriter(FramedRoom room, ChosenCeiling chosen, IReadOnlyList<BoardPart> parts, IReadOnlyList<BearingLine> besides)
    {
        (_room, _chosen, _parts) = (room, chosen, parts);
        _screwed = besides.Count == 0 ? chosen.Layout.Lines : [.. chosen.Layout.Lines.Concat(besides).OrderBy(l => l.At)];
        _layers = [.. chosen.Layers];
        var before = room.Survey.Part?.Taken.Courses ?? 0;
        foreach (var courses in _layers.Select(l => l.Division.Courses))
        {
            var first = before;
            _courseIds.Add([.. Enumerable.Range(0, courses).Select(c => $"C{first + (room.Frame.MirrorV ? courses - c : c + 1)}")]);
            before += courses;
        }

        Order = [.. Enumerable.Range(0, parts.Count)
            .OrderBy(p => parts[p].Layer)
            .ThenBy(p => room.Frame.MirrorV ? -parts[p].Course : parts[p].Course)
            .ThenBy(p => room.Frame.MirrorU ? -parts[p].Along.Hi : parts[p].Along.Lo)
            .ThenBy(p => room.Frame.MirrorV ? -parts[p].Across.Hi : parts[p].Across.Lo)];
        PieceIds = new string[parts.Count];
        for (var n = 0; n < Order.Count; n++)
        {
            PieceIds[Order[n]] = $"S{(room.Survey.Part?.Taken.Sheets ?? 0) + n + 1}";
        }
    }

    /// <summary>Indices of parts in the caller's order.</summary>
    public IReadOnlyList<int> Order { get; }

    public string[] PieceIds { get; }

    /// <summary>How many long edges of a part must be the factory's.</summary>
    public int FactoryEdges(int part) => (int)_parts[part].FactoryEdges;

    /// <summary>For each bearing line, the ids of the pieces whose butts stand on it.</summary>
    public Dictionary<int, List<string>> ButtsOnLine()
    {
        var found = new Dictionary<int, List<string>>();
        foreach (var p in Order)
        {
            foreach (var line in new[] { _parts[p].LowLine, _parts[p].HighLine }.Where(l => l >= 0))
            {
                if (!found.TryGetValue(line, out var ids))
                {
                    found[line] = ids = [];
                }

                ids.Add(PieceIds[p]);
            }
        }

        return found;
    }

    public SheetPlan Write(IReadOnlyList<IReadOnlyList<string>> backing, IReadOnlyList<BoardSeam> seams, IReadOnlyDictionary<int, SheetStock> stockOf, CutoutMarks marks)
    {
        // the layer that shows is the one that is finished
        long Sum(BoardJointKind kind) => seams.Where(s => s.Kind == kind && _parts[s.PartA].Layer == _layers.Length).Sum(s => s.Length);
        return new SheetPlan
        {
            Courses = [.. Courses()],
            Pieces = [.. Order.Select(p => Piece(p, backing, stockOf, marks))],
            Joints = [.. seams.Select(Joint)],
            ButtJointLength = new Length(Sum(BoardJointKind.Butt)),
            TaperedJointLength = new Length(Sum(BoardJointKind.Tapered)),
            CutEdgeJointLength = new Length(Sum(BoardJointKind.CutEdge)),
            PerimeterLength = new Length(_room.Board.Edges.Sum(e => (long)Math.Round(Rings.DistanceBetween(e.From, e.To)))),
            StartWalls = [],
            WellBeads = WellBeads(),
            EdgeBeads = OpenEdges.Beads(_room),
        };
    }

    // in the caller's order of openings, then along each as its region's edges lie
    private IReadOnlyList<WellBead> WellBeads() => [.. _room.Board.Edges
        .Where(e => _room.IsWell(e.Source))
        .Select(e => (Opening: -e.Source - 1, From: _room.Frame.Out(e.From), To: _room.Frame.Out(e.To), Length: (long)Math.Round(Rings.DistanceBetween(e.From, e.To))))
        .OrderBy(e => e.Opening).ThenBy(e => e.From.X.Units).ThenBy(e => e.From.Y.Units).ThenBy(e => e.To.X.Units).ThenBy(e => e.To.Y.Units)
        .Select(e => new WellBead(_room.Survey.Room.Openings[e.Opening].Id, e.From, e.To, new Length(e.Length)))];

    private IEnumerable<Course> Courses() => _layers.SelectMany((layout, layer) => Enumerable.Range(0, layout.Division.Courses)
        .Select(c => (Id: _courseIds[layer][c], A: _room.Frame.AcrossIn(layout.Division.Course(c).Lo), B: _room.Frame.AcrossIn(layout.Division.Course(c).Hi)))
        .OrderBy(c => Math.Min(c.A, c.B))
        .Select(c => new Course(c.Id, layer + 1, new Length(Math.Min(c.A, c.B)), new Length(Math.Max(c.A, c.B)))));

    private BoardPiece Piece(int index, IReadOnlyList<IReadOnlyList<string>> backing, IReadOnlyDictionary<int, SheetStock> stockOf, CutoutMarks marks)
    {
        var part = _parts[index];
        var ring = part.Ring.Select(_room.Frame.Out).ToList();
        var last = part.LowLine < 0 != part.HighLine < 0;
        return new BoardPiece
        {
            Id = PieceIds[index],
            Course = _courseIds[part.Layer - 1][part.Course],
            Layer = part.Layer,
            Outline = ring,
            Width = new Length(part.Across.Size),
            Length = new Length(part.Along.Size),
            AreaSquareMetres = part.Area / Math.Pow(1000.0 * Length.PerMillimetre, 2),
            StockId = stockOf[index].Id,
            Ends = [.. Ends(part, backing)],
            Cutouts = marks.Of(part),
            MeasureInPlace = !part.Rectangle || last,
            Notes = part.Rectangle ? [] : [Sentence.Of("measure_shape", "Measure this shape in place before cutting; keep the factory edge to the field.")],
            Screws = BoardScrews.On(part, _screwed),
        };
    }

    private IEnumerable<ButtEnd> Ends(BoardPart part, IReadOnlyList<IReadOnlyList<string>> backing)
    {
        var ends = new List<ButtEnd>();
        foreach (var line in new[] { part.LowLine, part.HighLine }.Where(l => l >= 0))
        {
            var u = _chosen.Layout.Lines[line].At;
            foreach (var edge in BoardSeams.EdgesAlong(part.Ring, u, true))
            {
                var (a, b) = (_room.Frame.AcrossIn(edge.Lo), _room.Frame.AcrossIn(edge.Hi));
                ends.Add(new ButtEnd(new Length(_room.Frame.AlongIn(u)), new Length(Math.Min(a, b)), new Length(Math.Max(a, b)), backing[line]));
            }
        }

        return ends.OrderBy(e => e.At.Units).ThenBy(e => e.From.Units);
    }

    private BoardJoint Joint(BoardSeam seam)
    {
        var flip = seam.Kind == BoardJointKind.Butt ? _room.Frame.MirrorV : _room.Frame.MirrorU;
        return new BoardJoint(
            seam.Kind,
            PieceIds[seam.PartA],
            PieceIds[seam.PartB],
            _room.Frame.Out(flip ? seam.To : seam.From),
            _room.Frame.Out(flip ? seam.From : seam.To),
            new Length(seam.Length));
    }
}

/// <summary>Counts screws where they are driven: along every strap behind a piece, 300 mm apart at most, 10 mm in from its edges.</summary>
public static class BoardScrews
{
    public const long Apart = 300 * Length.PerMillimetre;
    public const long EdgeDistance = 10 * Length.PerMillimetre;

    public static int On(BoardPart part, IReadOnlyList<BearingLine> lines)
    {
        var count = 0;
        for (var l = FirstFrom(lines, part.Along.Lo); l < lines.Count && lines[l].At <= part.Along.Hi; l++)
        {
            var line = lines[l];
            foreach (var stretch in line.Stretches)
            {
                foreach (var span in Across(part, line.At))
                {
                    var length = span.Meet(stretch).Size - (2 * EdgeDistance);
                    if (length > 0)
                    {
                        count += (int)((length + Apart - 1) / Apart) + 1;
                    }
                }
            }
        }

        return count;
    }

    // lines rise: the first at or beyond a place
    private static int FirstFrom(IReadOnlyList<BearingLine> lines, long place)
    {
        var (low, high) = (0, lines.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = lines[middle].At < place ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    // where a line crosses the ring, or runs along one of its edges
    private static List<Span> Across(BoardPart part, long u)
    {
        if (part.Rectangle)
        {
            return [part.Across];
        }

        var along = BoardSeams.EdgesAlong(part.Ring, u, true);
        if (along.Count > 0)
        {
            return along;
        }

        var cuts = new List<long>();
        for (var i = 0; i < part.Ring.Length; i++)
        {
            var (a, b) = (part.Ring[i], part.Ring[(i + 1) % part.Ring.Length]);
            if (a.U < u != b.U < u)
            {
                cuts.Add(a.V + (long)Math.Round((double)(b.V - a.V) * (u - a.U) / (b.U - a.U)));
            }
        }

        cuts.Sort();
        var spans = new List<Span>();
        for (var i = 0; i + 1 < cuts.Count; i += 2)
        {
            spans.Add(new Span(cuts[i], cuts[i + 1]));
        }

        return spans;
    }
}
