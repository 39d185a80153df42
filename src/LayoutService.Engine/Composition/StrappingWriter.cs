using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>Writes the straps in the caller's coordinates, with ids in the caller's order: rows along the joists, pieces across them.</summary>
public sealed class StrappingWriter
{
    private readonly FramedRoom _room;
    private readonly ChosenCeiling _chosen;
    private readonly CutLumber _cut;
    private readonly long _half;
    private readonly int[] _firstRun;
    private readonly int?[] _before;
    private readonly List<(int Run, RunPiece Piece)>[] _pieces;
    private readonly string[] _joistNames;
    private readonly RowReasons _reasons;
    private readonly Dictionary<(int Run, int Piece), CutStick> _sticks = [];

    public StrappingWriter(FramedRoom room, ChosenCeiling chosen, CutLumber cut)
    {
        (_room, _chosen, _cut, _half) = (room, chosen, cut, chosen.Rules.Half);
        var order = Enumerable.Range(0, chosen.Lines.Count)
            .OrderBy(i => AtOut(i))
            .ThenBy(i => chosen.Lines[i].Stretches.Min(s => AcrossOut(s.Across).Lo))
            .ToList();
        RowIds = new string[chosen.Lines.Count];
        var taken = room.Survey.Part?.Taken ?? default;
        for (var n = 0; n < order.Count; n++)
        {
            RowIds[order[n]] = $"R{taken.Rows + n + 1}";
        }

        LinesInOrder = order;
        _reasons = new RowReasons(room, chosen, cut, RowIds);
        _before = Befores();
        _firstRun = FirstRuns();
        _pieces = [.. Enumerable.Range(0, chosen.Lines.Count).Select(PiecesOf)];
        _joistNames = JoistWriter.Names(room);
        PieceIds = NamePieces();
        foreach (var stick in cut.StrapSticks.Concat(cut.LedgerSticks))
        {
            foreach (var (run, piece, _) in stick.Cuts)
            {
                if (run < 0)
                {
                    _sticks.TryAdd((run, piece), stick);
                }
            }
        }

        NailerIds = [.. cut.Nailers.Select((_, i) => $"N{taken.Nailers + i + 1}")];
    }

    public string[] RowIds { get; }

    /// <summary>Indices of lines in the caller's order.</summary>
    public IReadOnlyList<int> LinesInOrder { get; }

    /// <summary>Id of each piece by run and the index of the piece in the run's list of feasible pieces.</summary>
    public IReadOnlyDictionary<(int Run, RunPiece Piece), string> PieceIds { get; }

    public IReadOnlyList<string> NailerIds { get; }

    public long AtOut(int line) => _room.Frame.AlongIn(_chosen.Lines[line].At);

    public Span AcrossOut(Span across) => Turned(_room.Frame.AcrossIn(across.Lo), _room.Frame.AcrossIn(across.Hi));

    public Length AlongLength(long u) => new(_room.Frame.AlongIn(u));

    public StrappingPlan Write(IReadOnlyDictionary<int, List<string>> buttsOnLine, IReadOnlyDictionary<(int, RunPiece), string> stockOf)
    {
        var rows = LinesInOrder.Select(l => Row(l, buttsOnLine, stockOf)).ToList();
        var widest = rows.Where((r, i) => r.SpacingBefore is not null && (_before[LinesInOrder[i]] is not { } b || BulkheadLines.Boarded(_room, _chosen.Lines[LinesInOrder[i]], _chosen.Lines[b]))).MaxBy(r => r.SpacingBefore!.Value.Units);
        return new StrappingPlan
        {
            Rows = rows,
            Direct = _chosen.BoardRoom is not null,
            Nailers = new NailerWriter(_room, _cut, NailerIds, RowIds).Write(_sticks),
            Spacers = [.. RowSpacers.Between(Pairs(), _chosen.Rules.Face)],
            Crossings = [.. LinesInOrder.SelectMany(l => Crossings(l).Concat(BlockCrossings(l)))],
            Scabs = Scabs(),
            Fastening = _chosen.BoardRoom is null ? StrapFastening.Of(_room) : StrapFastening.Direct,
            Plane = Plane(),
            WidestSpacing = widest?.SpacingBefore ?? Length.Zero,
            WidestSpacingRows = widest is null ? [] : [widest.Id],
            WideTrim = TrimSpans.Wide(_room, _chosen.Rules, _chosen.Lines).Select(t => ((Length, IReadOnlyList<string>)?)(new Length(t.Widest), [RowIds[t.Line]])).MaxBy(t => t!.Value.Item1.Units),
        };
    }

    private static Span Turned(long a, long b) => new(Math.Min(a, b), Math.Max(a, b));

    private Dictionary<(int, RunPiece), string> NamePieces()
    {
        var names = new Dictionary<(int, RunPiece), string>(2 * _cut.Runs.Count);
        for (var line = 0; line < _pieces.Length; line++)
        {
            for (var i = 0; i < _pieces[line].Count; i++)
            {
                names[_pieces[line][i]] = $"{RowIds[line]}-{i + 1}";
            }
        }

        return names;
    }

    // runs lie line by line
    private int[] FirstRuns()
    {
        var first = new int[_chosen.Lines.Count + 1];
        foreach (var run in _cut.Runs)
        {
            first[run.Line + 1]++;
        }

        for (var line = 1; line < first.Length; line++)
        {
            first[line] += first[line - 1];
        }

        return first;
    }

    // pieces of a row in the caller's order across the joists
    private List<(int Run, RunPiece Piece)> PiecesOf(int line)
    {
        var found = new List<(int Run, RunPiece Piece)>(4);
        for (var run = _firstRun[line]; run < _firstRun[line + 1]; run++)
        {
            foreach (var piece in _cut.Ways[run])
            {
                found.Add((run, piece));
            }
        }

        if (_room.Frame.MirrorV)
        {
            found.Reverse();
        }

        return found;
    }

    private StrapRow Row(int line, IReadOnlyDictionary<int, List<string>> buttsOnLine, IReadOnlyDictionary<(int, RunPiece), string> stockOf)
    {
        var pieces = _pieces[line].ConvertAll(p => Piece(line, p.Run, p.Piece, PieceIds[p], stockOf));
        var before = _before[line];
        return new StrapRow
        {
            Id = RowIds[line],
            At = new Length(AtOut(line)),
            Short = !_chosen.Lines[line].Through,
            Marks = Marks(line, pieces),
            SpacingBefore = before is { } b ? new Length(AtOut(line) - AtOut(b)) : null,
            Reasons = _reasons.Of(line, before, buttsOnLine.GetValueOrDefault(line)),
            Pieces = pieces,
        };
    }

    // one tape from the outline's lowest coordinate: the strap always lies beyond its mark
    private List<TapeMark> Marks(int line, List<RowPiece> pieces)
    {
        var edge = new Length(AtOut(line) - _half);
        return [new TapeMark("start", pieces[0].From, edge, "far"), new TapeMark("end", pieces[^1].To, edge, "far")];
    }

    // for each line the nearest before it, in the caller's order, that lies beside it
    private int?[] Befores()
    {
        var found = new int?[LinesInOrder.Count];
        for (var place = 0; place < found.Length; place++)
        {
            var line = LinesInOrder[place];
            for (var p = place - 1; p >= 0 && found[line] is null; p--)
            {
                var other = LinesInOrder[p];
                if (AtOut(other) < AtOut(line) && _chosen.Lines[other].IsBeside(_chosen.Lines[line]))
                {
                    found[line] = other;
                }
            }
        }

        return found;
    }

    private RowPiece Piece(int line, int run, RunPiece piece, string id, IReadOnlyDictionary<(int, RunPiece), string> stockOf)
    {
        var stretch = _chosen.Lines[line].Stretches[_cut.Runs[run].Stretch];
        var nodes = _cut.Runs[run].Nodes;
        var (from, to) = (nodes[piece.From], nodes[piece.To]);
        var lowBevel = piece.From == 0 ? Bevel(stretch, false) : null;
        var highBevel = piece.To == nodes.Count - 1 ? Bevel(stretch, true) : null;
        var flip = _room.Frame.MirrorV;
        var at = _chosen.Lines[line].At;
        return new RowPiece
        {
            Id = id,
            From = _room.Frame.Out(new Uv(at, flip ? to.At : from.At)),
            To = _room.Frame.Out(new Uv(at, flip ? from.At : to.At)),
            Length = new Length(to.At - from.At),
            CutLength = new Length(piece.CutLength),
            StockId = stockOf[(run, piece)],
            StartJoint = flip ? to.Joint : from.Joint,
            EndJoint = flip ? from.Joint : to.Joint,
            StartBevel = flip ? highBevel : lowBevel,
            EndBevel = flip ? lowBevel : highBevel,
        };
    }

    private Bevel? Bevel(Stretch stretch, bool high)
    {
        var degrees = high ? stretch.HighBevel : stretch.LowBevel;
        if (degrees == 0)
        {
            return null;
        }

        var longUp = (high ? stretch.HighLongUp : stretch.LowLongUp) != _room.Frame.MirrorU;
        return new Bevel(decimal.Round((decimal)degrees, 1), new Length(stretch.LongPoint(high, _half)), longUp ? "far" : "near");
    }

    // rows with the nearest before each that lies beside it
    private IEnumerable<SpacedRows> Pairs() => LinesInOrder.Where(line => _before[line] is not null).Select(line => (Line: line, Before: _before[line]!.Value))
        .Select(p => new SpacedRows(_chosen.Lines[p.Before], _chosen.Lines[p.Line], RowIds[p.Before], RowIds[p.Line], AtOut(p.Line) - AtOut(p.Before)));

    private IEnumerable<Crossing> Crossings(int line)
    {
        var joints = new HashSet<int>();
        for (var r = _firstRun[line]; r < _firstRun[line + 1]; r++)
        {
            var run = _cut.Runs[r];
            joints.Clear();
            WorkMeter.Spend(run.Supports.Count * (1L + _cut.Nailers.Count));
            joints.UnionWith(_cut.Ways[r].Skip(1).Select(p => run.Nodes[p.From]).Where(n => n.Joint == JointKind.Joist).Select(n => n.Key));
            foreach (var support in _room.Frame.MirrorV ? run.Supports.OrderBy(s => _room.Frame.AcrossIn(s.Middle)) : run.Supports.AsEnumerable())
            {
                var joint = joints.Contains(support.Index);
                var packed = _cut.Levels?.Packing.GetValueOrDefault((r, support.Index)) ?? default;
                yield return new Crossing(
                    RowIds[line],
                    support.Index >= 0 ? _joistNames[_room.Joists.Supports[support.Index].FirstMember] : LedgerOf(line, support.Middle),
                    _room.Frame.Out(new Uv(_chosen.Lines[line].At, support.Middle)),
                    joint ? CrossingKind.Joint : CrossingKind.Plain,
                    joint ? 4 : 2)
                {
                    Packing = new Length(packed.Thickness),
                    Gap = new Length(packed.Gap),
                };
            }
        }
    }

    // two in each end, into the block over it
    private IEnumerable<Crossing> BlockCrossings(int line) => Enumerable.Range(0, _cut.Nailers.Count)
        .Where(n => _cut.Nailers[n].CarriesJoint && _cut.Nailers[n].Lines[0] == line)
        .Select(n => new Crossing(
            RowIds[line], NailerIds[n], _room.Frame.Out(new Uv(_chosen.Lines[line].At, new Span(_cut.Nailers[n].From.V, _cut.Nailers[n].To.V).Middle)), CrossingKind.Joint, 4));

    private StrapPlane? Plane() => _cut.Levels?.Plan is { } plan
        ? new StrapPlane(
            RowIds[plan.Lowest.Row], _joistNames[plan.Lowest.Joist], _room.Frame.Out(plan.Lowest.At), new Length(plan.Plane),
            new Length(plan.StepFound), new Length(plan.StepLeft), [.. plan.StepRows.Select(r => RowIds[r])], plan.Estimated)
        : null;

    private string LedgerOf(int line, long v)
    {
        var place = new Uv(_chosen.Lines[line].At, v);
        var nearest = Enumerable.Range(0, _cut.Nailers.Count)
            .Where(i => !_cut.Nailers[i].OfStrap && _cut.Nailers[i] is { For: null, CarriesJoint: false })
            .MinBy(i => Rings.Distance(place, _cut.Nailers[i].From, _cut.Nailers[i].To));
        return NailerIds[nearest];
    }

    private List<Scab> Scabs()
    {
        var found = new List<Scab>();
        for (var r = 0; r < _cut.Runs.Count; r++)
        {
            var run = _cut.Runs[r];
            foreach (var node in _cut.Ways[r].Skip(1).Select(p => run.Nodes[p.From]).Where(n => n.Joint == JointKind.Scab))
            {
                var stick = _sticks[(-2, found.Count)];
                found.Add(new Scab(
                    ScabId(found.Count), RowIds[run.Line], _room.Frame.Out(new Uv(_chosen.Lines[run.Line].At, node.At)), new Length(LumberCut.ScabLength), stick.Stock.Id));
            }
        }

        return found;
    }

    public string ScabId(int index) => $"SC{(_room.Survey.Part?.Taken.Scabs ?? 0) + index + 1}";
}
