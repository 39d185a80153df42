using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;

namespace LayoutService.Engine.Sheets;

/// <summary>
/// One connected stretch of a course: its extent along and across the joists, and the openings that lie wholly inside it
/// (their extents along), each of which needs a butt through it.
/// </summary>
public sealed record CourseRun(
    int Course, Span Strip, Span Along, Span Across, IReadOnlyList<Span> Enclosed, IReadOnlyList<Cell> Cells)
{
    /// <summary>True when the run is one box, so that every board of it is as wide as the run.</summary>
    public bool Plain { get; } = Cells.All(c => c.L0 == Along.Lo && c.L1 == Along.Lo && c.R0 == Along.Hi && c.R1 == Along.Hi);

    /// <summary>True when a place lies in this run.</summary>
    public bool Holds(Uv place)
    {
        foreach (var cell in Cells)
        {
            if (cell.V0 <= place.V && place.V <= cell.V1)
            {
                var share = (double)(place.V - cell.V0) / (cell.V1 - cell.V0);
                if (cell.L0 + ((cell.L1 - cell.L0) * share) <= place.U && place.U <= cell.R0 + ((cell.R1 - cell.R0) * share))
                {
                    return true;
                }
            }
        }

        return false;
    }
}

/// <summary>Cuts the ceiling into the runs of its courses by walking the region's trapezoids. Cost: courses × cells².</summary>
public static class CourseRuns
{
    public static List<CourseRun> Of(FramedRoom room, CourseDivision division)
    {
        var runs = new List<CourseRun>();
        for (var c = 0; c < division.Courses; c++)
        {
            runs.AddRange(OfCourse(room, c, division.Course(c)));
        }

        return runs;
    }

    private static IEnumerable<CourseRun> OfCourse(FramedRoom room, int course, Span strip)
    {
        var parts = new List<(Span Across, long L0, long L1, long R0, long R1)>();
        foreach (var cell in room.Board.Cells)
        {
            var across = strip.Meet(new Span(cell.V0, cell.V1));
            if (across.Size > 0)
            {
                parts.Add((across, Side(cell.L0, cell.L1, across.Lo), Side(cell.L0, cell.L1, across.Hi), Side(cell.R0, cell.R1, across.Lo), Side(cell.R0, cell.R1, across.Hi)));
            }

            long Side(long at0, long at1, long v) =>
                at0 + (long)Math.Round((double)(at1 - at0) * (v - cell.V0) / (cell.V1 - cell.V0));
        }

        var group = Enumerable.Range(0, parts.Count).ToArray();
        for (var i = 0; i < parts.Count; i++)
        {
            for (var j = 0; j < parts.Count; j++)
            {
                if (parts[i].Across.Hi == parts[j].Across.Lo
                    && new Span(parts[i].L1, parts[i].R1).Overlaps(new Span(parts[j].L0, parts[j].R0)))
                {
                    var (from, to) = (group[j], group[i]);
                    for (var k = 0; k < group.Length; k++)
                    {
                        group[k] = group[k] == from ? to : group[k];
                    }
                }
            }
        }

        return group.Distinct().Select(g =>
        {
            var mine = parts.Where((_, i) => group[i] == g).ToList();
            var along = new Span(mine.Min(p => Math.Min(p.L0, p.L1)), mine.Max(p => Math.Max(p.R0, p.R1)));
            var across = new Span(mine.Min(p => p.Across.Lo), mine.Max(p => p.Across.Hi));
            return new CourseRun(course, strip, along, across, Enclosed(room, strip, along), [.. mine.Select(p => new Cell(p.Across.Lo, p.Across.Hi, p.L0, p.L1, p.R0, p.R1))]);
        }).OrderBy(r => r.Along.Lo).ThenBy(r => r.Across.Lo);
    }

    private static List<Span> Enclosed(FramedRoom room, Span strip, Span along)
    {
        var found = new List<Span>();
        foreach (var hole in room.Board.Holes)
        {
            if (strip.Lo < hole.Across.Lo && hole.Across.Hi < strip.Hi && along.Lo < hole.Along.Lo && hole.Along.Hi < along.Hi)
            {
                found.Add(hole.Along);
            }
        }

        return found;
    }
}
