using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>
/// What the joints of a run weigh beside its sheets: finishing them, a short strap behind each that stands on no row, and
/// standing within 300 mm of the line of an inside corner (common practice, no source), which weighs a quarter of a sheet.
/// </summary>
public sealed class JointWeights(FramedRoom room, StockPrices prices, long strap)
{
    public const long OffCorner = 300 * Length.PerMillimetre;

    private readonly long _corner = room.Survey.Sheets.Stock.Min(prices.Cost) / 4;

    /// <summary>What one short strap and its crossings weigh.</summary>
    public long Strap => strap;

    /// <summary>What standing near the line of one inside corner weighs.</summary>
    public long Corner => _corner;

    internal long Of(CourseRun run, List<long> butts, ButtStand stand)
    {
        long sum = 0;
        foreach (var butt in butts)
        {
            sum += prices.ButtCost(run.Across.Size) + 1 + (stand.OnRow(butt) ? 0 : strap) + (_corner * Corners(run.Strip, butt));
        }

        return sum;
    }

    /// <summary>How many inside corners of a course's strip a butt stands near.</summary>
    public int Corners(Span strip, long butt)
    {
        var near = 0;
        foreach (var corner in room.InsideCorners)
        {
            near += Math.Abs(butt - corner.U) < OffCorner && strip.Holds(corner.V) ? 1 : 0;
        }

        return near;
    }
}
