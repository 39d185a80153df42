using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// A place where a run may be joined: across the joists, on which support (or bay, numbered after the supports), how good
/// it is (0 a doubled joist, 1 a joist, 2 in a bay; ten more within reach of a butt), and how it is made.
/// </summary>
public readonly record struct RunNode(long At, int Key, int Grade, JointKind Joint);

/// <summary>A feasible piece between two nodes of a run, with the length to cut.</summary>
public readonly record struct RunPiece(int From, int To, long CutLength);

/// <summary>A support of a run: a joist (or several as one) or a ledger at its end. Index −1 is the ledger at the low end, −2 at the high end.</summary>
public readonly record struct RunSupport(int Index, long Lo, long Hi, long Middle);

/// <summary>One stretch of a row, ready to be pieced: where it may break and which pieces may be cut.</summary>
public sealed record StrapRun(
    int Line, int Stretch, IReadOnlyList<RunNode> Nodes, IReadOnlyList<RunPiece> Pieces, IReadOnlyList<RunSupport> Supports,
    bool LedgerLow, bool LedgerHigh, IReadOnlyList<int> Neighbours);

/// <summary>
/// Turns stretches into runs. A joint on a joist leaves both ends at least 16 mm of bearing; a piece bears on two supports
/// at least 300 mm apart; an end more than 150 mm past the last joist face gets a ledger (all common practice, no source).
/// </summary>
public sealed class StrapRuns(FramedRoom room, RowRules rules)
{
    public const int PoorGrade = 10;
    private const long JointBearing = 16 * Length.PerMillimetre;
    private const long Overhang = 150 * Length.PerMillimetre;
    private const long SupportSpread = 300 * Length.PerMillimetre;
    private const long ClearOfButt = 150 * Length.PerMillimetre;
    private const long ScabLength = 300 * Length.PerMillimetre;

    private readonly StrappingWish _wish = room.Survey.Strapping;

    /// <summary>The longest piece that the stock gives and a person handles.</summary>
    public long LongestPiece => Math.Min(
        _wish.LongestHandled?.Units ?? long.MaxValue,
        _wish.Stock.Max(s => s.Length.Units) - _wish.EndTrim.Units);

    /// <param name="lines">Rows as they lie, rising.</param>
    /// <param name="butts">For each row, the stretches across the joists that back butt ends.</param>
    public List<StrapRun> Of(IReadOnlyList<StrapLine> lines, IReadOnlyList<IReadOnlyList<Span>> butts)
    {
        var runs = new List<StrapRun>();
        var firstOfLine = new int[lines.Count];
        for (var l = 0; l < lines.Count; l++)
        {
            firstOfLine[l] = runs.Count;
            for (var s = 0; s < lines[l].Stretches.Count; s++)
            {
                runs.Add(Run(l, s, lines[l].Stretches[s], butts[l]));
            }
        }

        // a row's neighbours are the stretches of the rows before it that lie beside it, nearest first
        var near = runs.Select(_ => new List<int>()).ToArray();
        for (var r = 0; r < runs.Count; r++)
        {
            var open = new List<Span> { Across(lines, runs[r]) };
            for (var b = firstOfLine[runs[r].Line] - 1; b >= 0 && open.Count > 0; b--)
            {
                var other = Across(lines, runs[b]);
                if (open.Any(o => o.Overlaps(other)))
                {
                    near[r].Add(b);
                    near[b].Add(r);
                    open = Less(open, other);
                }
            }
        }

        return [.. runs.Select((r, i) => r with { Neighbours = near[i] })];
    }

    private static Span Across(IReadOnlyList<StrapLine> lines, StrapRun run) => lines[run.Line].Stretches[run.Stretch].Across;

    private static List<Span> Less(List<Span> open, Span taken) =>
        [.. open.SelectMany(o => new[] { new Span(o.Lo, Math.Min(o.Hi, taken.Lo)), new Span(Math.Max(o.Lo, taken.Hi), o.Hi) }).Where(s => s.Size > 0)];

    private StrapRun Run(int line, int index, Stretch stretch, IReadOnlyList<Span> butts)
    {
        var (lo, hi) = (stretch.Across.Lo, stretch.Across.Hi);
        var supports = new List<RunSupport>();
        for (var i = 0; i < room.Supports.Length; i++)
        {
            var support = room.Supports[i];
            if (Math.Min(hi, support.Hi) - Math.Max(lo, support.Lo) >= JointBearing)
            {
                supports.Add(new RunSupport(i, Math.Max(lo, support.Lo), Math.Min(hi, support.Hi), Math.Clamp(support.Middle, lo, hi)));
            }
        }

        var lone = supports.Count == 0 || supports[^1].Middle - supports[0].Middle < SupportSpread;
        var ledgerLow = stretch.LowEnd != StretchEnd.Joist && (lone || supports[0].Lo - lo > Overhang);
        var ledgerHigh = stretch.HighEnd != StretchEnd.Joist && (lone || hi - supports[^1].Hi > Overhang);
        if (ledgerLow)
        {
            supports.Insert(0, new RunSupport(-1, lo, lo + room.Field.Face.Units, lo));
        }

        if (ledgerHigh)
        {
            supports.Add(new RunSupport(-2, hi - room.Field.Face.Units, hi, hi));
        }

        var nodes = Nodes(stretch, supports, butts);
        var pieces = Pieces(stretch, nodes, supports, _wish.MinPiece.Units);
        if (!Reaches(nodes.Count, pieces))
        {
            pieces = Pieces(stretch, nodes, supports, 0);
        }

        return new StrapRun(line, index, nodes, pieces, supports, ledgerLow, ledgerHigh, []);
    }

    private List<RunNode> Nodes(Stretch stretch, List<RunSupport> supports, IReadOnlyList<Span> butts)
    {
        var nodes = new List<RunNode> { new(stretch.Across.Lo, -1, 0, End(stretch.LowEnd)) };
        for (var i = 0; i < supports.Count; i++)
        {
            var support = supports[i];
            var inside = support.Middle - JointBearing >= support.Lo && support.Middle + JointBearing <= support.Hi;
            if ((_wish.JointsAllowed & JointStyles.OnJoist) != 0 && support.Index >= 0 && inside && support.Middle > stretch.Across.Lo && support.Middle < stretch.Across.Hi)
            {
                nodes.Add(new RunNode(
                    support.Middle, support.Index, Grade(support.Middle, room.Supports[support.Index].Doubled ? 0 : 1, butts), JointKind.Joist));
            }

            if (i + 1 < supports.Count && (_wish.JointsAllowed & JointStyles.Scab) != 0
                && new Span(support.Hi, supports[i + 1].Lo) is { Size: >= ScabLength } bay)
            {
                nodes.Add(new RunNode(
                    bay.Middle, room.Supports.Length + Math.Max(0, support.Index), Grade(bay.Middle, 2, butts), JointKind.Scab));
            }
        }

        nodes.Add(new RunNode(stretch.Across.Hi, -1, 0, End(stretch.HighEnd)));
        return nodes;
    }

    private static int Grade(long at, int grade, IReadOnlyList<Span> butts) =>
        grade + (butts.Any(b => b.Lo - ClearOfButt < at && at < b.Hi + ClearOfButt) ? PoorGrade : 0);

    private static JointKind End(StretchEnd end) => end switch
    {
        StretchEnd.Opening => JointKind.Opening,
        StretchEnd.Joist => JointKind.Joist,
        _ => JointKind.Wall,
    };

    private List<RunPiece> Pieces(Stretch stretch, List<RunNode> nodes, List<RunSupport> supports, long least)
    {
        var pieces = new List<RunPiece>();
        var last = nodes.Count - 1;
        for (var i = 0; i < last; i++)
        {
            for (var j = i + 1; j <= last; j++)
            {
                var cut = CutLength(stretch, nodes, i, j);
                if (cut > LongestPiece)
                {
                    break;
                }

                var whole = i == 0 && j == last;
                if (cut > 0 && (whole || (nodes[j].At - nodes[i].At >= least && Bears(supports, nodes[i].At, nodes[j].At))))
                {
                    pieces.Add(new RunPiece(i, j, cut));
                }
            }
        }

        return pieces;
    }

    /// <summary>Drawn length less the end clearance at each wall or opening, plus the long point of a bevel.</summary>
    private long CutLength(Stretch stretch, List<RunNode> nodes, int from, int to)
    {
        var cut = nodes[to].At - nodes[from].At;
        if (from == 0)
        {
            cut += stretch.LongPoint(false, rules.Half) - (stretch.LowEnd == StretchEnd.Joist ? 0 : _wish.EndClearance.Units);
        }

        if (to == nodes.Count - 1)
        {
            cut += stretch.LongPoint(true, rules.Half) - (stretch.HighEnd == StretchEnd.Joist ? 0 : _wish.EndClearance.Units);
        }

        return cut;
    }

    private static bool Bears(List<RunSupport> supports, long from, long to)
    {
        long first = long.MaxValue, last = long.MinValue;
        foreach (var support in supports)
        {
            if (Math.Min(to, support.Hi) - Math.Max(from, support.Lo) >= JointBearing)
            {
                first = Math.Min(first, support.Middle);
                last = Math.Max(last, support.Middle);
            }
        }

        return first < last && last - first >= SupportSpread;
    }

    private static bool Reaches(int nodes, List<RunPiece> pieces)
    {
        var reached = new bool[nodes];
        reached[0] = true;
        foreach (var piece in pieces)
        {
            reached[piece.To] |= reached[piece.From];
        }

        return reached[^1];
    }
}
