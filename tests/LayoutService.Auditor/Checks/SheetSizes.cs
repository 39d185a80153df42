using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// A board's stated length and width are its extents along and across; it comes out of its stock sheet, less what is
/// cut off at walls; every edge on no wall runs along or across the joists.
/// </summary>
internal static class SheetSizes
{
    private const double Exact = 0.02;

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var stock = plan.Room.Sheets.Stock.ById(s => s.Id);
        foreach (var board in plan.Boards)
        {
            if (Math.Abs(board.Length - board.Us.Length) > Exact || Math.Abs(board.Width - board.Vs.Length) > Exact)
            {
                report.Fault("sheets.size", board.Id,
                    $"says {board.Length:F3} × {board.Width:F3}, drawn {board.Us.Length:F3} × {board.Vs.Length:F3} mm");
            }

            var unit = plan.Room.Imperial ? 304.8 * 304.8 : 1e6;
            if (board.StatedArea is { } area && Math.Abs((area * unit) - board.Area) > 0.000051 * unit)
            {
                report.Fault("sheets.size", board.Id, $"says an area of {area:F6}, drawn {board.Area / unit:F6}");
            }

            if (board.Vs.Length < 150 || board.Us.Length < 150)
            {
                report.Note("sheets.sliver", board.Id, $"{board.Us.Length:F0} × {board.Vs.Length:F0} mm");
            }

            if (board.StockId is { } id && stock.TryGetValue(id, out var sheet) && !Fits(board, sheet, plan.Room))
            {
                report.Fault("sheets.size", board.Id,
                    $"{board.Length:F1} × {board.Width:F1} is more than {id}'s {sheet.Length:F1} × {sheet.Width:F1} mm");
            }
        }

        foreach (var seam in plan.Seams.Where(s => s.Run == SeamRun.Oblique))
        {
            report.Fault("sheets.seam-run", seam.Board.Id, $"an oblique edge at along {seam.At:F1} is on no wall");
        }
    }

    /// <summary>What may be cut off a board's length and width because those sides stand at walls, mm.</summary>
    public static (double Length, double Width) Less(GivenBoard board, AskedRoom room)
    {
        var allowance = room.Sheets.CutAllowance;
        int ends = 0, sides = 0;
        foreach (var (at, square) in new[] { (board.Us.From, true), (board.Us.To, true), (board.Vs.From, false), (board.Vs.To, false) })
        {
            var touches = room.Border.Walls.Any(w => square
                ? (w.Us.From <= at + 0.1 && w.Us.To >= at - 0.1 && w.Vs.Overlaps(board.Vs, -0.1))
                : (w.Vs.From <= at + 0.1 && w.Vs.To >= at - 0.1 && w.Us.Overlaps(board.Us, -0.1)));
            ends += square && touches ? 1 : 0;
            sides += !square && touches ? 1 : 0;
        }

        return (ends * allowance, sides * allowance);
    }

    private static bool Fits(GivenBoard board, AskedStock sheet, AskedRoom room)
    {
        var (offLength, offWidth) = Less(board, room);
        double length = board.Us.Length - offLength, width = board.Vs.Length - offWidth;
        return (length <= sheet.Length + Exact && width <= sheet.Width + Exact)
            || (length <= sheet.Width + Exact && width <= sheet.Length + Exact);
    }
}
