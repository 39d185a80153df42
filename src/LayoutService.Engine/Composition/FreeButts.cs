using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Board laid with butts anywhere, over given rows: the places come from the board (see <see cref="OffcutBeam"/>), and a
/// short strap is laid behind each butt that stands on no row. What does not keep clear of the other straps, or is not
/// backed over its whole width, is dropped.
/// </summary>
public sealed class FreeButts(FramedRoom room, StockPrices prices, StrapLines straps, RowRules rules)
{
    /// <summary>The best layouts of a division over these rows and its straps, those that hold.</summary>
    public IEnumerable<(List<StrapLine> Lines, SheetLayout Layout)> Of(
        List<StrapLine> rows, CourseOptions over, LayoutCosting costing, CourseDivision division, IReadOnlyList<CourseRun> runs, int beam, int most)
    {
        var free = runs.Select(r => over.Free(r, rules.MinGap)).ToList();
        if (free.Exists(f => f.Known.Count == 0 && f.Stand is null))
        {
            yield break;
        }

        var search = new OffcutBeam(
            room, prices, costing.Weights, division, runs, [.. free.Select(f => f.Stand)], [.. free.Select(f => f.Known)], beam);
        foreach (var places in search.Best(most))
        {
            if (Strapped(rows, runs, places, over) is { } made)
            {
                yield return (made.Lines, costing.Of(made.Bearing, made.Butts, costing.Stagger(made.Bearing, made.Butts)));
            }
        }
    }

    private (List<StrapLine> Lines, BearingLine[] Bearing, List<int[]> Butts)? Strapped(
        List<StrapLine> rows, IReadOnlyList<CourseRun> runs, long[][] places, CourseOptions over)
    {
        var served = new SortedDictionary<long, List<Span>>();
        for (var r = 0; r < runs.Count; r++)
        {
            foreach (var at in places[r])
            {
                if (!rows.Exists(l => l.At == at && over.Backs(runs[r], l.Bearing)))
                {
                    (served.TryGetValue(at, out var strips) ? strips : served[at] = []).Add(runs[r].Strip);
                }
            }
        }

        var lines = new List<StrapLine>(rows);
        foreach (var (at, strips) in served)
        {
            var line = new StrapLine(at, false, straps.Short(at, strips), null);
            if (line.Stretches.Count == 0 || MeetsHole(line) || lines.Exists(l => TooNear(l, line)))
            {
                return null;
            }

            lines.Add(line);
        }

        lines.Sort(static (a, b) => a.At != b.At ? a.At.CompareTo(b.At) : a.Stretches[0].Across.Lo.CompareTo(b.Stretches[0].Across.Lo));
        var bearing = lines.Select(l => l.Bearing).ToArray();
        var butts = new List<int[]>(runs.Count);
        for (var r = 0; r < runs.Count; r++)
        {
            var run = runs[r];
            var stood = Array.ConvertAll(places[r], at => Array.FindIndex(bearing, l => l.At == at && over.Backs(run, l)));
            if (Array.Exists(stood, line => line < 0))
            {
                return null;
            }

            butts.Add(stood);
        }

        return (lines, bearing, butts);
    }

    // a short strap never comes under a hole: a butt may stand elsewhere
    private bool MeetsHole(StrapLine line) => room.KeepOuts.Any && room.KeepOuts.Firm.Concat(room.KeepOuts.Soft).Any(h =>
        h.AlongKept.Lo - rules.Half < line.At && line.At < h.AlongKept.Hi + rules.Half && line.Stretches.Any(s => s.Across.Overlaps(h.AcrossKept)));

    // straps side by side are never nearer than the gap, and one place has one strap
    private bool TooNear(StrapLine a, StrapLine b) =>
        Math.Abs(a.At - b.At) < rules.MinGap && a.Stretches.Any(x => b.Stretches.Any(y => x.Across.Lo <= y.Across.Hi && y.Across.Lo <= x.Across.Hi));
}
