using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>
/// One way to divide the ceiling into courses: the lines across the joists, rising, walls included, and the sheet width.
/// <see cref="Slivers"/> is the length of strip narrower than the least rip that it leaves along walls; <see cref="Holes"/> how
/// many firm and soft holes its seams would meet.
/// </summary>
public sealed record CourseDivision(long SheetWidth, IReadOnlyList<long> Lines, long Slivers, long Narrow, (int Firm, int Soft) Holes = default)
{
    public int Courses => Lines.Count - 1;

    public Span Course(int index) => new(Lines[index], Lines[index + 1]);
}

/// <summary>
/// The divisions worth trying: full courses from either wall, from an inner wall, or with the seam through an opening;
/// and with the rips at both walls balanced where one alone would be a sliver. Rips: 300 mm preferred, 150 mm at least
/// (common practice, no source).
/// </summary>
public static class CourseLines
{
    public const long LeastRip = 150 * Length.PerMillimetre;
    public const long PreferredRip = 300 * Length.PerMillimetre;

    private const int MostBesideHoles = 40;

    public static List<CourseDivision> Offer(FramedRoom room, StockPrices prices, int most)
    {
        var offered = new List<(CourseDivision Division, double Use)>();
        var use = new CourseUse(room);
        foreach (var width in room.Survey.Sheets.Stock.Select(s => s.Width.Units).Distinct().OrderDescending())
        {
            var firsts = Firsts(room, width);
            var divided = firsts.ConvertAll(first => Divide(room, width, first));
            if (room.KeepOuts.Any && divided.TrueForAll(d => d.Holes.Firm + d.Holes.Soft > 0))
            {
                divided.AddRange(BesideHoles(room, width).Except(firsts).Select(first => Divide(room, width, first)));
            }

            offered.AddRange(divided.Select(d => (d, use.Cost(d, prices))));
        }

        // least slivers, then least sheet, then fewest narrow rips and courses
        var ranked = offered
            .Select((o, i) => (o.Division, o.Use, i))
            .OrderBy(x => room.CourseBreaks.Count(at => !x.Division.Lines.Contains(at)))
            .ThenBy(x => x.Division.Holes.Firm)
            .ThenBy(x => x.Division.Slivers)
            .ThenBy(x => x.Division.Holes.Soft)
            .ThenBy(x => x.Use)
            .ThenBy(x => x.Division.Narrow + (x.Division.Courses * PreferredRip))
            .ThenBy(x => x.i)
            .Select(x => x.Division)
            .ToList();
        return [.. Plain(offered.ConvertAll(o => o.Division)).Take((most + 1) / 3).Concat(ranked).Distinct().Take(most)];
    }

    /// <summary>Places worth trying for the first line past the low wall, each once.</summary>
    internal static List<long> Firsts(FramedRoom room, long width)
    {
        var board = room.Board;
        var (low, high) = (board.LowV, board.HighV);
        var firsts = new List<long> { low + width, low + Remainder(high - low, width) };
        var count = ((high - low) + width - 1) / width;
        var rip = (high - low) - ((count - 1) * width);
        if (count >= 2)
        {
            firsts.Add(room.SnapDownAcross(low + ((rip + width) / 2)));
        }

        foreach (var edge in board.Edges.Where(e => e.Parallel && e.From.V != low && e.From.V != high))
        {
            firsts.Add(low + Remainder(edge.From.V - low, width));
        }

        foreach (var ring in room.OpeningRings)
        {
            firsts.Add(room.SnapDownAcross(low + Remainder(((ring.Min(c => c.V) + ring.Max(c => c.V)) / 2) - low, width)));
        }

        firsts.AddRange(room.CourseBreaks.Select(at => low + Remainder(at - low, width)));

        // a rip of the least width, or one of which a sheet gives two, at each wall along the joists
        foreach (var level in board.Edges.Where(e => e.Parallel).Select(e => e.From.V).Append(low).Append(high).Distinct().Order().ToList())
        {
            foreach (var strip in new[] { LeastRip, width / 2 })
            {
                firsts.Add(room.SnapUpAcross(low + Remainder(level + strip - low, width)));
                firsts.Add(room.SnapDownAcross(low + Remainder(level - strip + width - low, width)));
            }
        }

        return [.. firsts.Where(f => f > low).Distinct()];
    }

    // full courses with the widest rips: the fewest slivers, narrow rips and courses of each width in turn
    private static IEnumerable<CourseDivision> Plain(List<CourseDivision> offered) => offered
        .GroupBy(d => d.SheetWidth)
        .SelectMany(width => width
            .Select((d, i) => (d, i))
            .OrderBy(x => x.d.Holes.Firm).ThenBy(x => x.d.Slivers).ThenBy(x => x.d.Holes.Soft)
            .ThenBy(x => x.d.Narrow + (x.d.Courses * PreferredRip)).ThenBy(x => x.i)
            .Select((x, rank) => (x.d, rank)))
        .OrderBy(x => x.rank).ThenBy(x => x.d.Holes.Firm).ThenBy(x => x.d.Slivers)
        .Select(x => x.d);

    // with a seam just past a hole
    private static IEnumerable<long> BesideHoles(FramedRoom room, long width) => room.KeepOuts.Firm.Concat(room.KeepOuts.Soft)
        .SelectMany(h => new[] { room.SnapDownAcross(h.AcrossKept.Lo), room.SnapUpAcross(h.AcrossKept.Hi) })
        .Select(at => room.Board.LowV + Remainder(at - room.Board.LowV, width))
        .Distinct()
        .Take(MostBesideHoles);

    /// <summary>The division into courses of a width with one of its lines at a place.</summary>
    public static CourseDivision From(FramedRoom room, long width, long line)
    {
        var first = room.Board.LowV + Remainder(((line - room.Board.LowV) % width) + width, width);
        return Divide(room, width, first);
    }

    private static long Remainder(long distance, long width) => distance % width is 0 ? width : distance % width;

    private static CourseDivision Divide(FramedRoom room, long width, long first)
    {
        var board = room.Board;
        var lines = new List<long> { board.LowV };
        for (var at = first; at < board.HighV; at += width)
        {
            lines.Add(at);
        }

        lines.Add(board.HighV);
        return Judged(room, width, lines);
    }

    /// <summary>The division by these lines, walls included, with what is wrong with it.</summary>
    internal static CourseDivision Judged(FramedRoom room, long width, List<long> lines)
    {
        var board = room.Board;
        long slivers = 0, narrow = 0;
        Weigh(lines[1] - lines[0], board.HighU - board.LowU);
        Weigh(lines[^1] - lines[^2], board.HighU - board.LowU);
        foreach (var edge in board.Edges.Where(e => e.Parallel && e.From.V != board.LowV && e.From.V != board.HighV))
        {
            foreach (var line in lines)
            {
                // board lies on one side of the wall only; a line on that side cuts a strip off
                var strip = RoomAbove(edge) ? line - edge.From.V : edge.From.V - line;
                if (strip > 0)
                {
                    Weigh(strip, edge.Along.Size);
                }
            }
        }

        return new CourseDivision(width, lines, slivers, narrow, Met());

        (int, int) Met()
        {
            var (firm, soft) = (0, 0);
            for (var i = 1; room.KeepOuts.Any && i < lines.Count - 1; i++)
            {
                var met = room.KeepOuts.MetByCourseLine(lines[i]);
                (firm, soft) = (firm + met.Firm, soft + met.Soft);
            }

            return (firm, soft);
        }

        void Weigh(long strip, long length)
        {
            slivers += strip < LeastRip ? length : 0;
            narrow += strip < PreferredRip ? length : 0;
        }
    }

    // edges are walked with the board on the left: an edge towards +u has it above
    private static bool RoomAbove(WallEdge edge) => edge.To.U > edge.From.U;
}
