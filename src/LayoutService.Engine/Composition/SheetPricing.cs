using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Cutting;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Composition;

/// <summary>Says what boards cost by asking the cutter, and remembers sets it was asked before.</summary>
public sealed class SheetPricing(SheetWish wish, StockPrices prices)
{
    private readonly Dictionary<WantedSet, long> _known = [];
    private readonly Dictionary<WantedSet, long> _cut = [];
    private SheetWanted[] _asked = [];

    /// <summary>All the stock, in the caller's order: full courses take sheets of their own width, rips come from any that holds them.</summary>
    public IReadOnlyList<SheetKind> Kinds() =>
        [.. wish.Stock.Select(s => new SheetKind(s.Width.Units, s.Length.Units, prices.Cost(s), s.Quantity))];

    /// <summary>The stock of one width alone, for board that rooms of a job share.</summary>
    public IReadOnlyList<SheetStock> Stock(long width) => [.. wish.Stock.Where(s => s.Width.Units == width)];

    public IReadOnlyList<SheetKind> Kinds(long width) =>
        [.. Stock(width).Select(s => new SheetKind(s.Width.Units, s.Length.Units, prices.Cost(s), s.Quantity))];

    public BoardCosting Cost(long width)
    {
        var kinds = Kinds();
        return boards =>
        {
            // one buffer asks, and is copied only to be remembered
            Array.Resize(ref _asked, Math.Max(_asked.Length, boards.Count));
            var asked = _asked.AsMemory(0, boards.Count);
            for (var i = 0; i < boards.Count; i++)
            {
                _asked[i] = new SheetWanted(boards[i].Width, boards[i].Length, (FactoryEdges)boards[i].FactoryEdges);
            }

            asked.Span.Sort(static (a, b) => (a.Length, a.Width).CompareTo((b.Length, b.Width)));
            if (!_known.TryGetValue(new WantedSet(width, asked), out var cost))
            {
                var wanted = asked.ToArray();
                cost = SheetCutter.Estimate(new SheetProblem { Wanted = wanted, Stock = kinds }) ?? long.MaxValue / 4;
                _known[new WantedSet(width, wanted)] = cost;
            }

            return cost;
        };
    }

    /// <summary>What the boards cost when they are cut with more care, as the plan will cut them; a layout that is chosen is worth it.</summary>
    public long Cut(long width, IReadOnlyList<WantedBoard> boards)
    {
        var wanted = boards.Select(b => new SheetWanted(b.Width, b.Length, (FactoryEdges)b.FactoryEdges)).ToArray();
        wanted.AsSpan().Sort(static (a, b) => (a.Length, a.Width).CompareTo((b.Length, b.Width)));
        if (!_cut.TryGetValue(new WantedSet(width, wanted), out var cost))
        {
            var plan = SheetCutter.Solve(new SheetProblem { Wanted = wanted, Stock = Kinds() }, SheetCutter.QuickSteps / 4);
            _cut[new WantedSet(width, wanted)] = cost = plan.Unplaced.Count == 0 ? plan.Cost : long.MaxValue / 4;
        }

        return cost;
    }

    // a sorted set of wanted boards, compared piece by piece
    private readonly record struct WantedSet(long SheetWidth, ReadOnlyMemory<SheetWanted> Boards)
    {
        public bool Equals(WantedSet other) => SheetWidth == other.SheetWidth && Boards.Span.SequenceEqual(other.Boards.Span);

        public override int GetHashCode()
        {
            var hash = SheetWidth;
            foreach (var board in Boards.Span)
            {
                hash = unchecked((hash * 31) + board.Length + (board.Width * 17));
            }

            return hash.GetHashCode();
        }
    }
}
