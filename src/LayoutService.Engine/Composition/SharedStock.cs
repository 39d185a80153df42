using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>
/// Stock of which there are few, shared between the parts of a room in their order: each part is offered what those before it left.
/// First come, first served: rows are placed for the lengths on offer, so a part is planned anew for what is left, not cut anew.
/// </summary>
internal static class SharedStock
{
    /// <summary>True when there are few of some stick or sheet.</summary>
    public static bool Limited(Survey survey) =>
        survey.Strapping.Stock.Any(s => s.Quantity is not null) || survey.Sheets.Stock.Any(s => s.Quantity is not null);

    /// <summary>The part with the stock that the plans made so far leave; null when they leave it none.</summary>
    public static Survey? Left(Survey part, IReadOnlyList<CeilingPlan> made)
    {
        var sticks = made.SelectMany(p => p.CutPlan.Sticks).Where(s => s.Size == LumberCut.SizeName(part.Strapping)).CountBy(s => s.StockId).ToDictionary();
        var sheets = made.SelectMany(p => p.CutPlan.Sheets).CountBy(s => s.StockId).ToDictionary();
        var strapping = part.Strapping with
        {
            Stock = [.. part.Strapping.Stock.Select(s => s with { Quantity = s.Quantity - sticks.GetValueOrDefault(s.Id) }).Where(s => s.Quantity is null or > 0)],
        };
        var board = part.Sheets with
        {
            Stock = [.. part.Sheets.Stock.Select(s => s with { Quantity = s.Quantity - sheets.GetValueOrDefault(s.Id) }).Where(s => s.Quantity is null or > 0)],
        };
        return strapping.Stock.Count == 0 || board.Stock.Count == 0 ? null : part with { Strapping = strapping, Sheets = board };
    }
}
