using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine.Composition;

/// <summary>
/// By what the money of a line is divided over rooms: sticks by the length cut from them for each room, spare sticks by all that
/// is cut of their size, sheets by the area cut from them.
/// </summary>
internal static class JobWeights
{
    public static IReadOnlyDictionary<int, decimal> OfSticks(IReadOnlyList<JobRoom> rooms, CutPlan cut, TakeoffLine line)
    {
        var own = cut.Sticks.Where(s => s.StockId == line.Id).ToList();
        var sizes = own.Select(s => s.Size).ToHashSet(StringComparer.Ordinal);
        var spare = line.Code is TakeoffCodes.StrapCulls or TakeoffCodes.NailerCulls or TakeoffCodes.BulkheadFrameCulls;
        return Sum(rooms, (spare ? cut.Sticks.Where(s => sizes.Contains(s.Size)) : own)
            .SelectMany(s => s.Cuts).Select(c => (c.PieceId, (decimal)c.Length.Units)));
    }

    public static IReadOnlyDictionary<int, decimal> OfSheets(IReadOnlyList<JobRoom> rooms, CutPlan cut, TakeoffLine line) => Sum(
        rooms,
        cut.Sheets.Where(s => s.StockId == line.Id).SelectMany(s => s.Cuts).Select(c => (c.PieceId, (decimal)c.Width.Units * c.Length.Units)));

    private static Dictionary<int, decimal> Sum(IReadOnlyList<JobRoom> rooms, IEnumerable<(string PieceId, decimal Size)> cuts)
    {
        var numbers = rooms.Select((room, r) => (room.Name, r)).ToDictionary(room => room.Name, room => room.r, StringComparer.Ordinal);
        var sums = new Dictionary<int, decimal>();
        foreach (var (pieceId, size) in cuts)
        {
            var room = numbers[pieceId[..pieceId.LastIndexOf('/')]];
            sums[room] = sums.GetValueOrDefault(room) + size;
        }

        return sums;
    }
}
