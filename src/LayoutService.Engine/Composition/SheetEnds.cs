using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>Places along the joists where a row would save cutting. Cost: runs × lengths of stock × sheets of a run.</summary>
internal static class SheetEnds
{
    private const int Most = 256;

    /// <summary>Where a sheet that is not cut to length would end, from either end of each run, and the middle of each opening inside a run.</summary>
    public static long[] Of(FramedRoom room, StockPrices prices, CourseDivision division, IReadOnlyList<CourseRun> runs)
    {
        var lengths = prices.Lengths(division.SheetWidth);
        var wishes = new SortedSet<long>();
        foreach (var run in runs)
        {
            foreach (var length in lengths)
            {
                for (var at = run.Along.Lo + length; at < run.Along.Hi - ButtPatterns.LeastPiece && wishes.Count < Most; at += length)
                {
                    wishes.Add(room.SnapDown(at));
                }

                for (var at = run.Along.Hi - length; at > run.Along.Lo + ButtPatterns.LeastPiece && wishes.Count < Most; at -= length)
                {
                    wishes.Add(room.SnapUp(at));
                }
            }

            wishes.UnionWith(run.Enclosed.Select(e => room.SnapNear(e.Middle)));
        }

        return [.. wishes];
    }
}
