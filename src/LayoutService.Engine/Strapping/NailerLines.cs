using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Strapping;

/// <summary>
/// A nailer as it lies in the working frame: along which edge (see <see cref="WallEdge.Source"/>), and what it carries: rows,
/// or by id the fixtures or the mount that it is for.
/// </summary>
public sealed record NailerLine(NailerRole Role, Uv From, Uv To, int Source, IReadOnlyList<int> Lines, IReadOnlyList<string>? For = null)
{
    /// <summary>True for a block over a joint between joists.</summary>
    public bool CarriesJoint { get; init; }

    /// <summary>How a block that carries strap ends is held.</summary>
    public BlockPlace Held { get; init; }

    /// <summary>True when it is cut from the straps' stock, to its whole length.</summary>
    public bool OfStrap => Role is NailerRole.WallNailer or NailerRole.Header;

    public long Length => (long)Math.Round(Rings.DistanceBetween(From, To));
}

/// <summary>
/// Wood beside the rows. A ledger runs along a wall where the last joist is too far to carry strap ends: one item for all
/// the straps of that wall. A wall nailer fills in along an oblique wall between rows, where the sheet's edge would hang
/// further than the row spacing; along an edge that shows (a stair, a well, an edge without a wall) it fills in all the way, for the board's edge and the bead.
/// </summary>
public sealed class NailerLines(FramedRoom room, RowRules rules)
{
    private const long Least = 50 * Length.PerMillimetre;

    /// <param name="lines">Rows as they lie.</param>
    /// <param name="runs">The rows' runs, which know where a ledger is wanted.</param>
    /// <param name="longestStrap">Longest wall nailer, which is cut from the straps' stock.</param>
    /// <param name="longestLedger">Longest ledger or block.</param>
    public List<NailerLine> Of(IReadOnlyList<StrapLine> lines, IReadOnlyList<StrapRun> runs, long longestStrap, long longestLedger)
    {
        var found = new List<NailerLine>();
        found.AddRange(Ledgers(lines, runs));
        found.AddRange(WallNailers(lines));
        found.AddRange(HoleHeaders.Of(room, rules, lines));
        found.AddRange(MountBlocks.Of(room));
        found.AddRange(PartitionBlocks.Of(room, found).ToList());
        return [.. found.SelectMany(n => InLengths(n, n.OfStrap ? longestStrap : longestLedger))];
    }

    private IEnumerable<NailerLine> Ledgers(IReadOnlyList<StrapLine> lines, IReadOnlyList<StrapRun> runs)
    {
        var ends = new Dictionary<WallEdge, List<int>>();
        var blocks = new List<NailerLine>();
        foreach (var run in runs)
        {
            var stretch = lines[run.Line].Stretches[run.Stretch];
            if (run.LedgerLow)
            {
                Note(stretch.LowSource, stretch.LowEnd, new Uv(lines[run.Line].At, stretch.Across.Lo), run.Line, false);
            }

            if (run.LedgerHigh)
            {
                Note(stretch.HighSource, stretch.HighEnd, new Uv(lines[run.Line].At, stretch.Across.Hi), run.Line, true);
            }
        }

        return ends
            .OrderBy(e => (e.Key.From.U, e.Key.From.V, e.Key.To.U, e.Key.To.V))
            .Select(e => new NailerLine(NailerRole.Ledger, e.Key.From, e.Key.To, e.Key.Source, e.Value))
            .Concat(blocks.GroupBy(b => (b.From, b.To)).Select(b => b.First() with { Lines = [.. b.SelectMany(same => same.Lines).Distinct()] }));

        void Note(int source, StretchEnd end, Uv place, int line, bool high)
        {
            if ((source < 0 || end == StretchEnd.Block) && BayAt(room, place) is { } bay)
            {
                blocks.AddRange(OpeningBlocks.Of(room, place, high, bay, source, [line]));
                return;
            }

            var edge = room.Straps.Edges
                .MinBy(e => Rings.Distance(place, e.From, e.To) + (e.Source == source ? 0 : Measures.Length.PerMillimetre));
            if (!ends.TryGetValue(edge, out var served))
            {
                ends[edge] = served = [];
            }

            if (!served.Contains(line))
            {
                served.Add(line);
            }
        }
    }

    // the clear bay that a strap's end hangs in: a block across it, joist to joist, carries the end
    internal static Span? BayAt(FramedRoom room, Uv place)
    {
        var supports = room.Joists.At(place.U);
        for (var i = 0; i + 1 < supports.Length; i++)
        {
            if (supports[i].Hi <= place.V && place.V <= supports[i + 1].Lo)
            {
                return new Span(supports[i].Hi, supports[i + 1].Lo);
            }
        }

        return null;
    }

    private IEnumerable<NailerLine> WallNailers(IReadOnlyList<StrapLine> lines)
    {
        var under = room.Board == room.Straps ? [] : room.Board.Edges.Where(e => room.PartitionAt(e.Source) is { Stands: false });
        foreach (var edge in room.Straps.Edges.Concat(under))
        {
            var shows = room.Shows(edge.Source);
            if ((edge.Parallel && !shows) || edge.From.U == edge.To.U || WallRows.IsSquare(edge) || (edge.Source < 0 && !shows && room.PartitionAt(edge.Source) is null))
            {
                continue;
            }

            var slope = (double)(edge.To.V - edge.From.V) / (edge.To.U - edge.From.U);
            var stretch = Math.Sqrt(1 + (slope * slope));
            var at = edge.Along.Lo;
            var crossing = lines
                .Select((line, index) => (line.At, Index: index))
                .Where(l => edge.Along.Lo - rules.Half < l.At && l.At < edge.Along.Hi + rules.Half && Reaches(lines[l.Index], edge, slope, (shows ? 10 : 100) * Length.PerMillimetre))
                .OrderBy(l => l.At)
                .ToList();
            foreach (var (row, _) in crossing.Append((edge.Along.Hi + rules.Half, -1)))
            {
                var end = Math.Min(row - rules.Half, edge.Along.Hi);
                if (end - at >= Least && (shows || (end - at + rules.Face) * stretch > rules.MaxSpacing))
                {
                    yield return new NailerLine(NailerRole.WallNailer, On(at), On(end), edge.Source, [.. crossing.Select(c => c.Index)]);
                }

                at = Math.Max(at, row + rules.Half);
            }

            Uv On(long u) => new(u, edge.From.V + (long)Math.Round(slope * (u - edge.From.U)));
        }
    }

    private static bool Reaches(StrapLine line, WallEdge edge, double slope, long slack)
    {
        var u = Math.Clamp(line.At, edge.Along.Lo, edge.Along.Hi);
        var v = edge.From.V + (slope * (u - edge.From.U));
        return line.Stretches.Any(s => s.Across.Lo - slack <= v && v <= s.Across.Hi + slack);
    }

    // a nailer longer than the stock is made in equal parts
    public static IEnumerable<NailerLine> InLengths(NailerLine nailer, long longest)
    {
        var parts = (int)((nailer.Length + longest - 1) / longest);
        for (var i = 0; i < parts; i++)
        {
            yield return nailer with { From = Between(i), To = Between(i + 1) };
        }

        Uv Between(int i) => new(
            nailer.From.U + ((nailer.To.U - nailer.From.U) * i / parts),
            nailer.From.V + ((nailer.To.V - nailer.From.V) * i / parts));
    }
}
