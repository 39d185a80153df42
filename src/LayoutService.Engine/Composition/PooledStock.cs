using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>Which stock each piece comes from once the parts of a room are cut together.</summary>
internal sealed class PooledStock(CutPlan cut)
{
    private readonly Dictionary<string, string> _stock = cut.Sticks.SelectMany(s => s.Cuts.Select(c => (c.PieceId, s.StockId)))
        .Concat(cut.Sheets.SelectMany(s => s.Cuts.Select(c => (c.PieceId, s.StockId))))
        .DistinctBy(c => c.PieceId)
        .ToDictionary(c => c.PieceId, c => c.StockId, StringComparer.Ordinal);

    /// <summary>The plan with the stock that its pieces are cut from.</summary>
    public CeilingPlan Of(CeilingPlan plan) => plan with
    {
        Strapping = plan.Strapping with
        {
            Rows = [.. plan.Strapping.Rows.Select(r => r with { Pieces = [.. r.Pieces.Select(p => p with { StockId = Of(p.Id, p.StockId) })] })],
            Nailers = [.. plan.Strapping.Nailers.Select(n => n with { StockId = Of(n.Id, n.StockId) })],
            Scabs = [.. plan.Strapping.Scabs.Select(s => s with { StockId = Of(s.Id, s.StockId) })],
        },
        Sheets = plan.Sheets with { Pieces = [.. plan.Sheets.Pieces.Select(p => p with { StockId = Of(p.Id, p.StockId) })] },
        Bulkheads = plan.Bulkheads with
        {
            Bulkheads = [.. plan.Bulkheads.Bulkheads.Select(b => b with
            {
                Members = [.. b.Members.Select(m => m with { StockId = Of(m.Id, m.StockId) })],
                Boards = [.. b.Boards.Select(p => p with { StockId = Of(p.Id, p.StockId) })],
            })],
        },
    };

    private string Of(string piece, string before) => _stock.GetValueOrDefault(piece, before);
}
