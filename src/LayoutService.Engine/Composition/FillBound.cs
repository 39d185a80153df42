using LayoutService.Engine.Cutting;

namespace LayoutService.Engine.Composition;

/// <summary>
/// What lengths cost at the least however they are cut: every piece, with its kerf, is poured into the stock that is
/// cheapest for its usable length, as far as its quantity goes, then into the next (the fractional knapsack, exact for
/// divisible pieces, so a bound for whole ones). For orders with so many lengths that the search's own bound stays weak.
/// </summary>
public static class FillBound
{
    /// <summary>A whole cost that no plan of every piece goes below; 0 when the stock does not suffice even so.</summary>
    public static long Of(StickProblem problem)
    {
        Int128 rest = 0;
        foreach (var wanted in problem.Wanted)
        {
            rest += (Int128)(wanted.Length + problem.Kerf) * wanted.Count;
        }

        var kinds = problem.Kinds.Select(k => (Usable: k.Length - problem.EndTrim + problem.Kerf, k.Cost, k.Quantity)).Where(k => k.Usable > 0).ToList();
        kinds.Sort((a, b) => ((Int128)a.Cost * b.Usable).CompareTo((Int128)b.Cost * a.Usable));
        Int128 cost = 0;
        foreach (var (usable, price, quantity) in kinds)
        {
            var room = quantity is { } few ? (Int128)usable * few : rest;
            if (room >= rest)
            {
                cost += (((Int128)price * rest) + usable - 1) / usable;
                return (long)cost;
            }

            cost += (Int128)price * quantity!.Value;
            rest -= room;
        }

        return 0;
    }
}
