using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>Says what boards cost by asking the cutter, and remembers sets it was asked before.</summary>
public sealed class SheetPricing(SheetWish wish, StockPrices prices)
{
    private readonly Dictionary<string, long> _known = [];

    public IReadOnlyList<SheetKind> Kinds(long width) =>
        [.. Stock(width).Select(s => new SheetKind(s.Width.Units, s.Length.Units, prices.Cost(s), s.Quantity))];

    /// <summary>The stock of one width, in the caller's order.</summary>
    public IReadOnlyList<SheetStock> Stock(long width) => [.. wish.Stock.Where(s => s.Width.Units == width)];

    public BoardCosting Cost(long width)
    {
        var kinds = Kinds(width);
        return boards =>
        {
            var wanted = boards.Select(b => new SheetWanted(b.Width, b.Length, (FactoryEdges)b.FactoryEdges)).ToList();
            var key = width + ":" + string.Join(';', wanted.Select(w => (w.Width, w.Length, w.Edges)).Order());
            if (!_known.TryGetValue(key, out var cost))
            {
                cost = SheetCutter.Estimate(new SheetProblem { Wanted = wanted, Stock = kinds }) ?? long.MaxValue / 4;
                _known[key] = cost;
            }

            return cost;
        };
    }
}
