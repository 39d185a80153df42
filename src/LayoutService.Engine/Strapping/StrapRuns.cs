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
    private const long JointBearing = PieceSupports.Least;

    /// <summary>An end that passes its last joist's face by more gets a ledger: 150 mm. Common practice, no source.</summary>
    public const long Overhang = 150 * Length.PerMillimetre;
    private const long SupportSpread = PieceSupports.Spread;
    private const long ClearOfButt = 150 * Length.PerMillimetre;
    private const long ScabLength = 300 * Length.PerMillimetre;

    private readonly StrappingWish _wish = room.Survey.Strapping;
    private readonly Dictionary<(Stretch, int), StrapRun> _framed = [];

    /// <summary>The longest piece that the stock gives and a person handles.</summary>
    public long LongestPiece => Math.Min(
        _wish.LongestHandled?.Units ?? long.MaxValue,
        _wish.Stock.Max(s => s.Length.Units) - _wish.EndTrim.Units);

    /// <param name="lines">Rows as they lie, rising.</param>
    /// <param name="butts">For each row, the stretches across the joists that back butt ends.</param>
    public List<StrapRun> Of(IReadOnlyList<StrapLine> lines, IReadOnlyList<IReadOnlyList<Span>> butts)
    {
        var runs = new List<StrapRun>();
        var near = new List<List<int>>();
        var firstOfLine = new int[lines.Count];
        for (var l = 0; l < lines.Count; l++)
        {
            firstOfLine[l] = runs.Count;
            for (var s = 0; s < lines[l].Stretches.Count; s++)
            {
                near.Add(new List<int>(2));
                runs.Add(Run(l, s, lines[l].At, lines[l].Stretches[s], butts[l], near[^1]));
            }
        }

        // a row's neighbours are the stretches of the rows before it that lie beside it, nearest first
        var (open, left) = (new List<Span>(), new List<Span>());
        for (var r = 0; r < runs.Count; r++)
        {
            open.Clear();
            open.Add(Across(lines, runs[r]));
            for (var b = firstOfLine[runs[r].Line] - 1; b >= 0 && open.Count > 0; b--)
            {
                if (Take(open, Across(lines, runs[b]), left))
                {
                    near[r].Add(b);
                    near[b].Add(r);
                    (open, left) = (left, open);
                }
            }
        }

        return runs;
    }

    private static Span Across(IReadOnlyList<StrapLine> lines, StrapRun run) => lines[run.Line].Stretches[run.Stretch].Across;

    // what is left of the open stretches beside another; false when none of them lies beside it
    private static bool Take(List<Span> open, Span taken, List<Span> left)
    {
        left.Clear();
        var beside = false;
        foreach (var span in open)
        {
            beside |= span.Overlaps(taken);
            var (below, above) = (new Span(span.Lo, Math.Min(span.Hi, taken.Lo)), new Span(Math.Max(span.Lo, taken.Hi), span.Hi));
            if (below.Size > 0)
            {
                left.Add(below);
            }

            if (above.Size > 0)
            {
                left.Add(above);
            }
        }

        return beside;
    }

    private StrapRun Run(int line, int index, long at, Stretch stretch, IReadOnlyList<Span> butts, List<int> neighbours)
    {
        var ends = stretch with { LowSource = 0, HighSource = 0 };
        var zone = room.Joists.ZoneAt(at);
        if (!_framed.TryGetValue((ends, zone.FirstSupport), out var framed))
        {
            _framed[(ends, zone.FirstSupport)] = framed = Frame(line, index, ends, zone);
        }

        List<RunNode>? graded = null;
        for (var i = 1; i + 1 < framed.Nodes.Count; i++)
        {
            if (Poor(framed.Nodes[i].At, butts))
            {
                graded ??= [.. framed.Nodes];
                graded[i] = graded[i] with { Grade = graded[i].Grade + PoorGrade };
            }
        }

        return framed with { Line = line, Stretch = index, Nodes = graded ?? framed.Nodes, Neighbours = neighbours };
    }

    // a run without regard to butts, for every stretch that lies over the same joists and ends like this one
    private StrapRun Frame(int line, int index, Stretch stretch, JoistZone zone)
    {
        var (lo, hi) = (stretch.Across.Lo, stretch.Across.Hi);
        var supports = new List<RunSupport>();
        for (var i = zone.FirstSupport; i < zone.FirstSupport + zone.SupportCount; i++)
        {
            var support = room.Joists.Supports[i];
            if (Math.Min(hi, support.Hi) - Math.Max(lo, support.Lo) >= JointBearing)
            {
                supports.Add(new RunSupport(i, Math.Max(lo, support.Lo), Math.Min(hi, support.Hi), Math.Clamp(support.Middle, lo, hi)));
            }
        }

        var lone = supports.Count == 0 || supports[^1].Middle - supports[0].Middle < SupportSpread;
        var ledgerLow = !OnJoist(stretch.LowEnd) && (lone || supports[0].Lo - lo > Overhang);
        var ledgerHigh = !OnJoist(stretch.HighEnd) && (lone || hi - supports[^1].Hi > Overhang);
        if (ledgerLow)
        {
            supports.Insert(0, new RunSupport(-1, lo, lo + room.Field.Face.Units, lo));
        }

        if (ledgerHigh)
        {
            supports.Add(new RunSupport(-2, hi - room.Field.Face.Units, hi, hi));
        }

        // a block is a length of 2x4 nailed in overhead: the last way to make a joint, but before a piece that is too short
        var nodes = Nodes(stretch, supports, blocks: false);
        var pieces = Pieces(stretch, nodes, supports, _wish.MinPiece.Units);
        if ((_wish.JointsAllowed & JointStyles.Block) != 0 && !Reaches(nodes.Count, pieces))
        {
            nodes = Nodes(stretch, supports, blocks: true);
            pieces = Pieces(stretch, nodes, supports, _wish.MinPiece.Units);
        }

        if (!Reaches(nodes.Count, pieces))
        {
            pieces = Pieces(stretch, nodes, supports, 0);
        }

        return new StrapRun(line, index, nodes, pieces, supports, ledgerLow, ledgerHigh, []);
    }

    private List<RunNode> Nodes(Stretch stretch, List<RunSupport> supports, bool blocks)
    {
        var nodes = new List<RunNode> { new(stretch.Across.Lo, -1, 0, End(stretch.LowEnd)) };
        for (var i = 0; i < supports.Count; i++)
        {
            var support = supports[i];
            var inside = support.Middle - JointBearing >= support.Lo && support.Middle + JointBearing <= support.Hi;
            if ((_wish.JointsAllowed & JointStyles.OnJoist) != 0 && support.Index >= 0 && inside && support.Middle > stretch.Across.Lo && support.Middle < stretch.Across.Hi)
            {
                nodes.Add(new RunNode(
                    support.Middle, support.Index, room.Joists.Supports[support.Index].Doubled ? 0 : 1, JointKind.Joist));
            }

            if (i + 1 < supports.Count && InBay(new Span(support.Hi, supports[i + 1].Lo), blocks) is { } made)
            {
                nodes.Add(new RunNode(
                    new Span(support.Hi, supports[i + 1].Lo).Middle, room.Joists.Supports.Length + Math.Max(0, support.Index), 2, made));
            }
        }

        nodes.Add(new RunNode(stretch.Across.Hi, -1, 0, End(stretch.HighEnd)));
        return nodes;
    }

    // how a joint may be made in a clear bay: under a scab where it fits, else on a block where blocks are called on
    private JointKind? InBay(Span bay, bool blocks) =>
        (_wish.JointsAllowed & JointStyles.Scab) != 0 && bay.Size >= ScabLength ? JointKind.Scab
        : blocks && bay.Size >= JointBlocks.LeastBay ? JointKind.Block
        : null;

    private static bool Poor(long at, IReadOnlyList<Span> butts)
    {
        for (var i = 0; i < butts.Count; i++)
        {
            if (butts[i].Lo - ClearOfButt < at && at < butts[i].Hi + ClearOfButt)
            {
                return true;
            }
        }

        return false;
    }

    private static bool OnJoist(StretchEnd end) => end is StretchEnd.Joist or StretchEnd.Fixture;

    // in the open there is nothing to keep clear of
    private static bool Open(StretchEnd end) => OnJoist(end) || end == StretchEnd.Block;

    private static JointKind End(StretchEnd end) => end switch
    {
        StretchEnd.Opening => JointKind.Opening,
        StretchEnd.Bulkhead => JointKind.Bulkhead,
        StretchEnd.Joist => JointKind.Joist,
        StretchEnd.Block => JointKind.Block,
        StretchEnd.Fixture => JointKind.Fixture,
        _ => JointKind.Wall,
    };

    private List<RunPiece> Pieces(Stretch stretch, List<RunNode> nodes, List<RunSupport> supports, long least)
    {
        var pieces = new List<RunPiece>();
        var last = nodes.Count - 1;
        var longest = LongestPiece;
        var first = 0;
        for (var i = 0; i < last; i++)
        {
            while (first < supports.Count && supports[first].Hi - nodes[i].At < JointBearing)
            {
                first++;
            }

            for (var j = i + 1; j <= last; j++)
            {
                var cut = CutLength(stretch, nodes, i, j);
                if (cut > longest)
                {
                    break;
                }

                var whole = i == 0 && j == last;
                if (cut > 0 && (whole || (nodes[j].At - nodes[i].At >= least && PieceSupports.Bear(supports, first, nodes[i].At, nodes[j].At))))
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
            cut += stretch.LongPoint(false, rules.Half) - (Open(stretch.LowEnd) ? 0 : _wish.EndClearance.Units);
        }

        if (to == nodes.Count - 1)
        {
            cut += stretch.LongPoint(true, rules.Half) - (Open(stretch.HighEnd) ? 0 : _wish.EndClearance.Units);
        }

        return cut;
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
