using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>
/// What each stock of an order costs, in whole units without a common divisor, so that the search works with small
/// numbers. A price is a pack's price shared over the pack, to a ten-thousandth; where some stock has no price, size
/// counts for all of it.
/// </summary>
public sealed class OrderPrices
{
    private readonly long _divisor;
    private readonly decimal _perUnit;

    private OrderPrices(bool priced, IReadOnlyList<long> costs, decimal perUnit)
    {
        Priced = priced;
        _perUnit = perUnit;
        foreach (var cost in costs)
        {
            _divisor = Divisor(_divisor, cost);
        }

        _divisor = Math.Max(1, _divisor);
        Costs = [.. costs.Select(c => c / _divisor)];
    }

    public bool Priced { get; }

    /// <summary>Cost of one of each stock, in the order given.</summary>
    public IReadOnlyList<long> Costs { get; }

    /// <param name="packs">Price and size of each stock's pack.</param>
    /// <param name="sizes">Size of each stock (length or area) in whole units.</param>
    /// <param name="perUnit">How many of those units the unit holds that a person reads.</param>
    public static OrderPrices Of(IReadOnlyList<(decimal? Price, int Size)> packs, IReadOnlyList<long> sizes, decimal perUnit) =>
        packs.All(p => p.Price is not null)
            ? new(true, [.. packs.Select(p => (long)decimal.Round(p.Price!.Value * 10_000m / p.Size))], 10_000m)
            : new(false, sizes, perUnit);

    /// <summary>What a plan of this cost and bound has of its objective.</summary>
    public CutResult Result(string use, CutOrder order, long cost, long bound, string measure, string unit) => new(
        use,
        Priced ? "cost" : measure,
        cost * _divisor / _perUnit,
        bound * _divisor / _perUnit,
        cost == bound ? 0 : bound == 0 ? 1 : decimal.Round((decimal)(cost - bound) / bound, 6),
        cost == bound,
        Priced ? order.Currency : unit);

    private static long Divisor(long a, long b) => b == 0 ? a : Divisor(b, a % b);
}
