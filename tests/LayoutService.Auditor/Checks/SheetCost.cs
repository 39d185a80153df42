using System.Globalization;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// The sheets' cost is that of the sheets bought (by price per sheet or in whole packs, or their area where no price is
/// given), with or without the price of finishing the joints.
/// </summary>
internal static class SheetCost
{
    public static void Check(GivenPlan plan, AuditReport report)
    {
        if (plan.Result("sheets") is not { } result)
        {
            if (plan.Boards.Count > 0)
            {
                report.Fault("cost.sheets", "results", $"no result for sheets");
            }

            return;
        }

        Optimality.Check("cost.sheets", result, report);
        foreach (var other in plan.Json.Member("alternatives").Items())
        {
            if (other.Member("params").Member("plannedCost") is { } && decimal.TryParse(other.Member("params").Member("cost").Text(), CultureInfo.InvariantCulture, out var its)
                && its < result.Member("lowerBound").Decimal() - 0.006m)
            {
                report.Fault("cost.alternatives", other.Member("code").Text() ?? "", $"{its} is below what any board costs, {result.Member("lowerBound").Decimal()}");
            }
        }

        var stock = plan.Room.Sheets.Stock.ById(s => s.Id);
        if (stock.Count == 0 || plan.CutSheets.Any(s => !stock.ContainsKey(s.StockId ?? "")) || result.Member("cost").Double() is not { } cost)
        {
            return;
        }

        var readings = Readings(plan, stock).ToList();
        if (!readings.Any(r => Math.Abs(r - cost) <= 0.006 + (1e-5 * cost)))
        {
            report.Fault("cost.sheets", "sheets", $"cost {cost:F4}, the sheets come to {string.Join(" or ", readings.Take(4).Select(r => r.ToString("F4")))}");
        }
    }

    private static IEnumerable<double> Readings(GivenPlan plan, Dictionary<string, AskedStock> stock)
    {
        var counts = plan.CutSheets.GroupBy(s => s.StockId!).Select(g => (Stock: stock[g.Key], Count: g.Count())).ToList();
        var joints = JointCosts(plan).ToList();
        var materials = stock.Values.All(s => s.PackPrice is not null)
            ? [counts.Sum(c => (double)c.Stock.PackPrice! / c.Stock.PackSize * c.Count),
               counts.Sum(c => (double)c.Stock.PackPrice! * Math.Ceiling((double)c.Count / c.Stock.PackSize))]
            : new[] { 304.8, 1000, 25.4, 1 }.Select(u => counts.Sum(c => c.Stock.Length / u * (c.Stock.Width / u) * c.Count)).ToArray();
        return materials.SelectMany(m => joints.Select(j => m + j));
    }

    /// <summary>No joint price, or joint length × its price per foot or metre, a cut edge being priced as a butt.</summary>
    private static IEnumerable<double> JointCosts(GivenPlan plan)
    {
        yield return 0;
        var sheets = plan.Json.Member("sheets");
        var unit = plan.Room.Imperial ? 304.8 : 1000;
        var butt = sheets.Member("buttJointLength").Length(plan.Room.Unit) ?? 0;
        var cut = sheets.Member("cutEdgeJointLength").Length(plan.Room.Unit) ?? 0;
        var tapered = sheets.Member("taperedJointLength").Length(plan.Room.Unit) ?? 0;
        yield return ((butt + cut) / unit * (double)(plan.Room.Sheets.ButtCost ?? 0)) + (tapered / unit * (double)(plan.Room.Sheets.TaperedCost ?? 0));
    }
}
