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
    /// <summary>How far two rows must run side by side for two spacer blocks between them. Common practice, no source.</summary>
    private const long LeastBeside = 600 * Length.PerMillimetre;

    private readonly int?[] _before;
    private readonly List<(int Run, RunPiece Piece)>[] _pieces;
    private readonly string[] _joistNames;
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
            Spacers = Spacers(),
            Crossings = [.. LinesInOrder.SelectMany(l => Crossings(l).Concat(BlockCrossings(l)))],
            Scabs = Scabs(),
            Fastening = _chosen.BoardRoom is null ? StrapFastening.Usual : StrapFastening.Direct,
            Plane = Plane(),
            WidestSpacing = widest?.SpacingBefore ?? Length.Zero,
            WidestSpacingRows = widest is null ? [] : [widest.Id],
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
            Reasons = Reasons(line, before, buttsOnLine),
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

    private List<Reason> Reasons(int line, int? before, IReadOnlyDictionary<int, List<string>> buttsOnLine)
    {
        var reasons = new List<Reason>();
        var at = _chosen.Lines[line].At;
        var walls = _chosen.WallRows.Where(w => w.At == at && (_chosen.Lines[line].Serves is null || _chosen.Lines[line].Serves == w)).SelectMany(w => w.Sources).Distinct().ToList();
        if (walls.Any(s => s >= 0))
        {
            reasons.AddRange(EdgeReasons.Of(_room, walls));
        }

        var faces = walls.Select(_room.BulkheadAt).OfType<BulkheadSolid>().Where(b => !b.Wish.BoardedAbove).Select(b => b.Id).Distinct().ToList();
        if (faces.Count > 0)
        {
            reasons.Add(new Reason("bulkhead", faces, "tight_to_bulkhead", "Carries the board's edge along the bulkhead's face."));
        }

        var beside = walls.Select(_room.PartitionAt).OfType<FramedPartition>().Distinct().ToLookup(p => p.Stands, p => p.Wish.Id);
        if (beside[false].Any())
        {
            reasons.Add(new Reason("partition", [.. beside[false]], "over_partition", "Half over the partition's plate, which is screwed up into it, and half beside it for the board's edge."));
        }

        faces = [.. beside[true]];
        if (faces.Count > 0)
        {
            reasons.Add(new Reason("partition", faces, "tight_to_partition", "Tight to the partition, which stands before the straps."));
        }

        faces = [.. _room.Solids.Where(b => BulkheadLines.Under(b, _chosen.Lines[line], _half)).Select(b => b.Id)];
        if (faces.Count > 0)
        {
            reasons.Add(new Reason("bulkhead", faces, "carries_bulkhead", "The bulkhead below the board is screwed to it."));
        }

        if (walls.Any(IsOpening))
        {
            reasons.Add(new Reason("opening", [.. walls.Where(IsOpening).Select(s => _room.Survey.Room.Openings[-s - 1].Id)], "tight_to_opening", "Carries the board's edge at the opening."));
        }

        var met = _chosen.Lines[line].Stretches
            .SelectMany(s => new[] { s.LowEnd == StretchEnd.Opening ? s.LowSource : 0, s.HighEnd == StretchEnd.Opening ? s.HighSource : 0 })
            .Where(s => s < 0)
            .Distinct()
            .Select(s => _room.Survey.Room.Openings[-s - 1].Id)
            .ToList();
        if (met.Count > 0)
        {
            reasons.Add(new Reason("opening", met, "cut_at_opening", "Cut in two by this opening; moving clear of it would cost a row or leave the board unsupported."));
        }

        if (_chosen.Lines[line].Stretches.Any(s => s.LowEnd == StretchEnd.Fixture))
        {
            var holes = _cut.Nailers.Where(n => n.Role == NailerRole.Header && n.Lines.Contains(line)).SelectMany(n => n.For!).Distinct().ToList();
            reasons.Add(new Reason("fixture", holes, "trimmed_at_hole", "Trimmed round this hole, with headers; moving clear of it would cost a row or leave the board unsupported."));
        }

        if (buttsOnLine.TryGetValue(line, out var butts))
        {
            reasons.Add(new Reason("butt", butts, "backs_butt", "Backs the butt ends of these sheets."));
        }

        if (reasons.Count == 0 || (reasons.All(r => r.Code is "backs_butt" or "cut_at_opening" or "trimmed_at_hole") && _chosen.Lines[line].Through))
        {
            reasons.Add(new Reason("spacing", before is { } b ? [RowIds[b]] : [], "within_spacing", "Keeps the distance between rows within the limit."));
        }

        return reasons;
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

    private bool IsOpening(int source) => _room.IsOpening(source);

    private List<Spacer> Spacers()
    {
        var gaps = new SortedDictionary<long, List<string>>();
        foreach (var line in LinesInOrder)
        {
            if (_before[line] is { } before && SideBySide(line, before))
            {
                var gap = AtOut(line) - AtOut(before) - _chosen.Rules.Face;
                if (!gaps.TryGetValue(gap, out var between))
                {
                    gaps[gap] = between = [];
                }

                between.Add(RowIds[before]);
                between.Add(RowIds[line]);
            }
        }

        return [.. gaps.OrderByDescending(g => g.Value.Count).ThenByDescending(g => g.Key).Select(g => new Spacer(new Length(g.Key), [.. g.Value.Distinct()]))];
    }

    // two blocks bear on both rows: side by side for 600 mm at least, else marks alone must do
    private bool SideBySide(int line, int before) => _chosen.Lines[line].Stretches
        .Sum(a => _chosen.Lines[before].Stretches.Sum(b => Math.Max(0, Math.Min(a.Across.Hi, b.Across.Hi) - Math.Max(a.Across.Lo, b.Across.Lo)))) >= LeastBeside;

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
