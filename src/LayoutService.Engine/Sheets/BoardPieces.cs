using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>
/// One part of a run between two butts, in the working frame. <see cref="CutWidth"/> and <see cref="CutLength"/> are what is
/// cut: the drawn extent less the allowance at each wall, unless a whole sheet fits as it comes.
/// </summary>
public sealed record BoardPart(
    int Run, int Course, Uv[] Ring, Span Along, Span Across, bool Rectangle, int LowLine, int HighLine,
    long CutWidth, long CutLength, int FactoryEdges, double Area)
{
    /// <summary>From 1, the layer next to the rows or joists, to the one that shows.</summary>
    public int Layer { get; init; } = 1;
}

/// <summary>Cuts a layout into its parts: exact rectangles where the board is whole, else the region clipped to the box.</summary>
public sealed class BoardPieces(FramedRoom room)
{
    private BoardSizes? _sizes;

    /// <summary>Parts of every run in order along it; LowLine and HighLine are the bearing lines at its ends, or −1 at a wall.</summary>
    public List<BoardPart> Cut(SheetLayout layout)
    {
        var parts = new List<BoardPart>();
        for (var r = 0; r < layout.Runs.Count; r++)
        {
            var run = layout.Runs[r];
            var (at, lowLine) = (run.Along.Lo, -1);
            WorkMeter.Spend(1000 * (1L + layout.Butts[r].Length));
            foreach (var line in layout.Butts[r].Append(-1))
            {
                var end = line < 0 ? run.Along.Hi : layout.Lines[line].At;
                foreach (var ring in Rings(new Span(at, end), run))
                {
                    parts.Add(Part(layout, r, ring, at, end, lowLine, line));
                }

                (at, lowLine) = (end, line);
            }
        }

        return parts;
    }

    private BoardPart Part(SheetLayout layout, int index, Uv[] ring, long at, long end, int lowLine, int highLine)
    {
        var run = layout.Runs[index];
        var along = new Span(ring.Min(c => c.U), ring.Max(c => c.U));
        var across = new Span(ring.Min(c => c.V), ring.Max(c => c.V));
        var factory = SheetSearch.FactoryEdges(room, layout.Division, run, across);
        var ends = (lowLine < 0 || along.Lo > at ? 1 : 0) + (highLine < 0 || along.Hi < end ? 1 : 0);
        _sizes ??= new BoardSizes(room, layout.Division);
        return new BoardPart(
            index,
            run.Course,
            ring,
            along,
            across,
            ring.Length == 4 && LayoutService.Engine.Geometry.Rings.TwiceArea(ring) == 2 * (Int128)along.Size * across.Size,
            along.Lo == at ? lowLine : -1,
            along.Hi == end ? highLine : -1,
            _sizes.Width(run, across),
            _sizes.Length(along.Size, ends),
            factory,
            (double)LayoutService.Engine.Geometry.Rings.TwiceArea(ring) / 2);
    }

    /// <summary>True when the low long edge of a part meets the course before.</summary>
    public bool SeamLow(CourseRun run, Span across) => _sizes!.SeamLow(run, across);

    private IEnumerable<Uv[]> Rings(Span along, CourseRun run)
    {
        if (Whole(along, run.Strip))
        {
            return [[new(along.Lo, run.Strip.Lo), new(along.Hi, run.Strip.Lo), new(along.Hi, run.Strip.Hi), new(along.Lo, run.Strip.Hi)]];
        }

        // other runs of the course may lie beside this one
        return room.Board.Within(along, run.Strip).Where(ring => run.Holds(LayoutService.Engine.Geometry.Rings.PlaceInside(ring)));
    }

    // the box lies wholly inside the region when the trapezoids it meets reach past it on both sides at every level
    private bool Whole(Span along, Span across)
    {
        long covered = 0;
        foreach (var cell in room.Board.Cells)
        {
            var meet = across.Meet(new Span(cell.V0, cell.V1));
            if (meet.Size <= 0 || cell.HighU <= along.Lo || cell.LowU >= along.Hi)
            {
                continue;
            }

            if (At(cell.L0, cell.L1, meet.Lo) > along.Lo || At(cell.L0, cell.L1, meet.Hi) > along.Lo
                || At(cell.R0, cell.R1, meet.Lo) < along.Hi || At(cell.R0, cell.R1, meet.Hi) < along.Hi)
            {
                return false;
            }

            covered += meet.Size;

            double At(long at0, long at1, long v) => at0 + ((double)(at1 - at0) * (v - cell.V0) / (cell.V1 - cell.V0));
        }

        return covered == across.Size;
    }
}
