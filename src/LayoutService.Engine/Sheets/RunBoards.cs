using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Sheets;

/// <summary>The boards that a run needs between two places, as cut: each as wide and as long as what lies there, not as the whole run.</summary>
internal sealed class RunBoards(FramedRoom room, CourseDivision division)
{
    private readonly BoardSizes _sizes = new(room, division);
    private readonly RunExtents _parts = new();

    /// <summary>Adds the boards between two butts, or a butt and a wall.</summary>
    public void Add(CourseRun run, long from, long to, List<WantedBoard> wanted)
    {
        var (low, high) = (from == run.Along.Lo, to == run.Along.Hi);
        if (run.Plain)
        {
            wanted.Add(new WantedBoard(
                _sizes.Width(run, run.Across), _sizes.Length(to - from, (low ? 1 : 0) + (high ? 1 : 0)), SheetSearch.FactoryEdges(room, division, run, run.Across)));
            return;
        }

        foreach (var part in _parts.Of(run, from, to))
        {
            var ends = (low || part.Along.Lo > from ? 1 : 0) + (high || part.Along.Hi < to ? 1 : 0);
            wanted.Add(new WantedBoard(
                _sizes.Width(run, part.Across), _sizes.Length(part.Along.Size, ends), SheetSearch.FactoryEdges(room, division, run, part.Across)));
        }
    }
}
