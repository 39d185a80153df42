using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>
/// Divisions with one course in the field narrower than a sheet, so that the courses on each side of it start where their own
/// walls and posts want. Where two arms lie apart, full courses that suit one leave the other a wide rip; a narrow course where
/// the room is short between them suits both. One of its seams has a cut edge. Cost: first lines² × courses, each judged by
/// <see cref="CourseUse"/>.
/// </summary>
internal static class SteppedCourses
{
    private const int MostFirsts = 20;

    // the widest budget looks at so many
    private const int Most = 20;

    /// <summary>The best that leave no sliver and meet no hole that must be clear, the least sheet first.</summary>
    public static List<CourseDivision> Offer(FramedRoom room, StockPrices prices)
    {
        var use = new CourseUse(room);
        var offered = new List<(CourseDivision Division, double Use)>();
        foreach (var width in room.Survey.Sheets.Stock.Select(s => s.Width.Units).Distinct().OrderDescending())
        {
            var firsts = CourseLines.Firsts(room, width).Take(MostFirsts).ToList();
            foreach (var below in firsts)
            {
                foreach (var above in firsts.Where(f => f != below))
                {
                    foreach (var lines in Stepped(room, width, below, above))
                    {
                        WorkMeter.Spend(lines.Count * (50L + room.Board.Cells.Length));
                        var division = CourseLines.Judged(room, width, lines);
                        if (division.Slivers == 0 && division.Holes.Firm == 0 && room.CourseBreaks.All(lines.Contains))
                        {
                            offered.Add((division, use.Cost(division, prices)));
                        }
                    }
                }
            }
        }

        return [.. offered
            .Select((o, i) => (o.Division, o.Use, i))
            .OrderBy(o => o.Division.Holes.Soft).ThenBy(o => o.Use).ThenBy(o => o.Division.Narrow).ThenBy(o => o.i)
            .Select(o => o.Division)
            .DistinctBy(d => string.Join(',', d.Lines))
            .Take(Most)];
    }

    // full courses from one first line, then one narrower course, then full courses from the other
    private static IEnumerable<List<long>> Stepped(FramedRoom room, long width, long below, long above)
    {
        var (low, high) = (room.Board.LowV, room.Board.HighV);
        List<long> lower = [low];
        for (var at = below; at < high; at += width)
        {
            lower.Add(at);
            var next = above + ((at - above) / width * width);
            while (next < at + CourseLines.LeastRip)
            {
                next += width;
            }

            if (next - at >= width || next >= high)
            {
                continue;
            }

            List<long> lines = [.. lower];
            for (; next < high; next += width)
            {
                lines.Add(next);
            }

            lines.Add(high);
            yield return lines;
        }
    }
}
