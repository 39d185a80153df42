using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Geometry;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Sheets;

/// <summary>
/// What sheets and joints cost in the smallest unit of the objective: a hundredth of the currency's unit when every
/// sheet has a price, else a small square that all the sheets are whole in. Guesses the price of a piece before it is cut.
/// </summary>
public sealed class StockPrices
{
    // without prices the objective is area in the coarsest of these squares that all the sheets are whole in:
    // 1/16 in, 1 mm, 1/64 in, 0.1 mm, and what is left
    private static readonly long[] Steps = [Length.PerSixteenth, Length.PerMillimetre, Length.PerInch / 64, Length.PerMillimetre / 10, 25, 1];

    private readonly SheetWish _wish;
    private readonly long _step;
    private readonly (long Width, long Length, long Cost)[] _offers;
    private readonly Dictionary<long, long[]> _lengths = [];
    private readonly Dictionary<long, long> _buttCosts = [];

    public StockPrices(SheetWish wish)
    {
        _wish = wish;
        Priced = wish.Stock.All(s => s.PackPrice is not null);
        _step = Steps.First(step => wish.Stock.All(s => s.Width.Units % step == 0 && s.Length.Units % step == 0));
        _offers = [.. wish.Stock.Select(s => (s.Width.Units, s.Length.Units, Cost(s)))];
    }

    /// <summary>True when every sheet has a price, so that the objective is money.</summary>
    public bool Priced { get; }

    public long Cost(SheetStock stock) => Priced
        ? (long)decimal.Round(stock.PackPrice!.Value * 10_000m / stock.PackSize)
        : stock.Width.Units / _step * (stock.Length.Units / _step);

    /// <summary>How many of the objective's units one unit that a person reads holds: money, ft² or m².</summary>
    public decimal PerUnit(UnitSystem units) => Priced
        ? 10_000m
        : units == UnitSystem.Imperial ? Square(12 * Length.PerInch / (decimal)_step) : Square(1000 * Length.PerMillimetre / (decimal)_step);

    private static decimal Square(decimal side) => side * side;

    /// <summary>Stock lengths of one width, longest first.</summary>
    public long[] Lengths(long width)
    {
        if (!_lengths.TryGetValue(width, out var lengths))
        {
            _lengths[width] = lengths = [.. Plentiful(width).Select(s => s.Length.Units).Distinct().OrderDescending()];
        }

        return lengths;
    }

    /// <summary>Length and cost of each sheet of one width that leads the search.</summary>
    public (long Length, long Cost)[] Offers(long width) => [.. Plentiful(width).Select(s => (s.Length.Units, Cost(s)))];

    /// <summary>Least cost for a unit of length of whole sheet of one width.</summary>
    public double Rate(long width) => Plentiful(width).Min(s => (double)Cost(s) / s.Length.Units);

    // lengths of which there are only a few do not lead the search; the cutter still uses them where they fit
    private IEnumerable<SheetStock> Plentiful(long width)
    {
        var all = _wish.Stock.Where(s => s.Width.Units == width).ToList();
        return all.Exists(s => s.Quantity is null) ? all.Where(s => s.Quantity is null) : all;
    }

    /// <summary>What finishing one butt of this length is worth.</summary>
    public long ButtCost(long length)
    {
        if (!Priced)
        {
            return 0;
        }

        if (!_buttCosts.TryGetValue(length, out var cost))
        {
            _buttCosts[length] = cost = (long)decimal.Round(_wish.ButtCostPerMetre * 10_000m * length / (1000 * Length.PerMillimetre));
        }

        return cost;
    }

    /// <summary>
    /// What finishing the tapered joints between the courses of a division is worth, and what its seams weigh that lie within 300 mm of the line of
    /// a stair's or well's corner: a quarter of a sheet each, as for a butt.
    /// </summary>
    public long SeamCost(FramedRoom room, CourseDivision division)
    {
        var corners = 0;
        for (var ring = 0; ring < room.OpeningRings.Count; ring++)
        {
            if (room.Survey.Room.Openings[ring].IsWell)
            {
                corners += room.OpeningRings[ring].Select(c => c.V).Distinct().Count(v => division.Lines.Skip(1).SkipLast(1).Any(l => Math.Abs(l - v) < JointWeights.OffCorner));
            }
        }

        var weight = corners == 0 ? 0 : corners * _wish.Stock.Min(Cost) / 4;
        if (!Priced || _wish.TaperedCostPerMetre == 0)
        {
            return weight;
        }

        long length = 0;
        for (var c = 1; c < division.Courses; c++)
        {
            // a line on a wall of an arm has board on both sides over a part of its length only
            var (below, above) = (AlongAt(room.Board, division.Lines[c], false), AlongAt(room.Board, division.Lines[c], true));
            length += below.Sum(b => above.Sum(a => Math.Max(0, a.Meet(b).Size)));
        }

        return weight + (long)decimal.Round(_wish.TaperedCostPerMetre * 10_000m * length / (1000 * Length.PerMillimetre));
    }

    // stretches of u where the board lies right above a line of constant v, or right below it
    private static List<Span> AlongAt(Region board, long v, bool above)
    {
        var found = new List<Span>(2);
        foreach (var cell in board.Cells)
        {
            if (above ? cell.V0 <= v && v < cell.V1 : cell.V0 < v && v <= cell.V1)
            {
                long Side(long at0, long at1) => at0 + (long)Math.Round((double)(at1 - at0) * (v - cell.V0) / (cell.V1 - cell.V0));
                found.Add(new Span(Side(cell.L0, cell.L1), Side(cell.R0, cell.R1)));
            }
        }

        return found;
    }

    /// <summary>The part of a sheet's width that a piece uses up: two rips at most come from one sheet.</summary>
    public double Share(long width, long sheetWidth) => 2 * width <= sheetWidth ? 0.5 : 1.0;

    /// <summary>
    /// A guess of a piece's price: model 0 shares the cheapest sheet by length; model 1 takes the cheapest sheet from
    /// which equal pieces are cut.
    /// </summary>
    public long Guess(long length, long width, int model)
    {
        var best = long.MaxValue;
        foreach (var offer in _offers)
        {
            if (offer.Width != width || offer.Length < length)
            {
                continue;
            }

            var share = model == 0
                ? (long)((double)offer.Cost * length / offer.Length)
                : offer.Cost / Math.Max(1, offer.Length / length);
            best = Math.Min(best, share);
        }

        return best == long.MaxValue ? long.MaxValue / 1_000_000 : best;
    }
}
