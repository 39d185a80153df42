using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// The strapping's cost is that of the sticks bought (by price per length or in whole packs, or their length where no
/// price is given). Two independent bounds bracket it: the drawn material at the cheapest price per usable length is no
/// more than the cost, and a first-fit-decreasing cut of the same pieces is no less than the plan's lower bound.
/// </summary>
internal static class LumberCost
{
    public static void Check(GivenPlan plan, AuditReport report)
    {
        if (plan.Result("strapping") is not { } result || plan.StrapSticks.Count == 0)
        {
            if (plan.Pieces.Count > 0)
            {
                report.Fault("cost.strapping", "results", $"no result for strapping");
            }

            return;
        }

        Optimality.Check("cost.strapping", result, report);
        var stock = plan.Room.Strapping.Stock.ById(s => s.Id);
        if (stock.Count == 0 || plan.StrapSticks.Any(s => !stock.ContainsKey(s.StockId ?? "")) || result.Member("cost").Decimal() is not { } cost)
        {
            return;
        }

        var counts = plan.StrapSticks.GroupBy(s => s.StockId!).ToDictionary(g => g.Key, g => g.Count());
        var kinds = Pricings(plan.Room.Strapping.Stock);
        var pricing = kinds.FirstOrDefault(price => Near(price(counts), (double)cost));
        if (pricing is null)
        {
            report.Fault("cost.strapping", "strapping", $"cost {cost}, the sticks come to {string.Join(" or ", kinds.Select(k => k(counts).ToString("F4")))}");
            return;
        }

        Brackets(plan, result.Member("lowerBound").Double() ?? 0, (double)cost, pricing, report);
    }

    private static bool Near(double a, double b) => Math.Abs(a - b) <= 0.006 + (1e-6 * Math.Abs(b));

    /// <summary>The ways in which a count of each stock may be priced; the plan's own way is the first that agrees.</summary>
    private static List<Func<Dictionary<string, int>, double>> Pricings(IReadOnlyList<AskedStock> stock)
    {
        var of = stock.ById(s => s.Id);
        if (stock.All(s => s.PackPrice is not null))
        {
            return
            [
                counts => counts.Sum(c => (double)of[c.Key].PackPrice! / of[c.Key].PackSize * c.Value),
                counts => counts.Sum(c => (double)of[c.Key].PackPrice! * Math.Ceiling((double)c.Value / of[c.Key].PackSize)),
            ];
        }

        return [.. new[] { stock[0].Unit, 304.8, 1000, 1, 25.4 }.Distinct()
            .Select(unit => (Func<Dictionary<string, int>, double>)(counts => counts.Sum(c => of[c.Key].Length / unit * c.Value)))];
    }

    private static void Brackets(GivenPlan plan, double bound, double cost, Func<Dictionary<string, int>, double> price, AuditReport report)
    {
        var trim = LumberCuts.Trim(plan.Room);
        var stock = plan.Room.Strapping.Stock;
        double One(AskedStock s) => price(new() { [s.Id] = s.PackSize }) / s.PackSize;
        var cuts = plan.StrapSticks.SelectMany(s => s.Cuts).Select(c => c.Length).OrderDescending().ToList();
        var least = cuts.Sum() * stock.Min(s => One(s) / (s.Length - trim));
        if (least > cost * 1.000001)
        {
            report.Fault("cost.strapping", "strapping", $"cost {cost:F4} is below the material's own {least:F4}");
        }

        var simple = stock.Where(s => s.Quantity is null && s.Length - trim >= (cuts.Count > 0 ? cuts[0] : 0))
            .Select(s => price(FirstFit(cuts, s, stock, trim, LumberCuts.Kerf(plan)))).DefaultIfEmpty(double.PositiveInfinity).Min();
        if (simple < bound - 0.006 - (1e-6 * bound))
        {
            report.Fault("cost.strapping", "strapping", $"lower bound {bound:F4} is above a first-fit cut at {simple:F4}");
        }
        else if (simple < cost - 0.006 - (1e-6 * cost))
        {
            report.Note("cost.strapping-first-fit", "strapping", $"cost {cost:F4}, a first-fit cut of the same pieces {simple:F4}");
        }
    }

    /// <summary>First fit, longest first, into one stock; each stick then becomes the cheapest unlimited one it fits.</summary>
    private static Dictionary<string, int> FirstFit(List<double> cuts, AskedStock stock, IReadOnlyList<AskedStock> all, double trim, double kerf)
    {
        var used = new List<double>();
        foreach (var cut in cuts)
        {
            var at = used.FindIndex(u => u + kerf + cut <= stock.Length - trim);
            if (at < 0)
            {
                used.Add(cut);
            }
            else
            {
                used[at] += kerf + cut;
            }
        }

        double Rate(AskedStock s) => s.PackPrice is { } p ? (double)p / s.PackSize : s.Length;
        return used.Select(u => all.Where(s => s.Quantity is null && s.Length - trim >= u).MinBy(Rate) ?? stock)
            .GroupBy(s => s.Id).ToDictionary(g => g.Key, g => g.Count());
    }
}
