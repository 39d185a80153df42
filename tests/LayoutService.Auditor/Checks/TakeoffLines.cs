using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>
/// The takeoff is counted from the layout: sticks and sheets by stock id as the cut plan uses them, two strap fasteners
/// per crossing and four at a joint, tape along the joints, board screws between loose bounds.
/// </summary>
internal static class TakeoffLines
{
    private static readonly string[] Fastening = ["fastener", "screw", "nail"];

    public static void Check(GivenPlan plan, AuditReport report)
    {
        var lines = plan.Json.Member("takeoff").Member("lines").Items().ToList();
        if (plan.Json.Member("takeoff") is null)
        {
            return;
        }

        Bought(lines, plan.Sticks.GroupBy(s => s.StockId ?? "").ToDictionary(g => g.Key, g => g.Count()), plan.Room.Strapping.Stock, report);
        Bought(lines, plan.CutSheets.GroupBy(s => s.StockId ?? "").ToDictionary(g => g.Key, g => g.Count()), plan.Room.Sheets.Stock, report);
        Fasteners(lines, plan, report);
        Tape(lines, plan, report);
        Screws(lines, plan, report);
    }

    /// <summary>Spare sticks for culls stand on a line of their own and are no part of the cut plan.</summary>
    private static bool IsCulls(JsonElement line) => line.Member("code").Text()?.Contains("cull", StringComparison.OrdinalIgnoreCase) ?? false;

    /// <summary>The lines whose code holds one of the words.</summary>
    private static IEnumerable<JsonElement> With(List<JsonElement> lines, params string[] words) =>
        lines.Where(l => l.Member("code").Text() is { } code && words.All(w => code.Contains(w, StringComparison.OrdinalIgnoreCase)));

    private static void Bought(List<JsonElement> lines, Dictionary<string, int> used, IReadOnlyList<AskedStock> stock, AuditReport report)
    {
        foreach (var id in stock.Select(s => s.Id).Concat(used.Keys).Distinct())
        {
            var due = used.GetValueOrDefault(id);
            var own = lines.Where(l => l.Member("id").Text() == id && !IsCulls(l)).ToList();
            var counted = own.Sum(l => l.Member("counted").Decimal() ?? 0);
            var ordered = own.Sum(l => l.Member("quantity").Decimal() ?? 0);
            if (counted != due || ordered < due)
            {
                report.Fault("takeoff.stock", id, $"{counted} counted and {ordered} ordered, the cut plan uses {due}");
            }

            var spare = lines.Where(l => l.Member("id").Text() == id && IsCulls(l)).Sum(l => l.Member("counted").Decimal() ?? 0);
            if (stock.FirstOrDefault(s => s.Id == id)?.Quantity is { } quantity && due + spare > quantity)
            {
                report.Fault("takeoff.quantity", id, $"{due} cut and {spare} spare, there are {quantity}");
            }
        }
    }

    private static void Fasteners(List<JsonElement> lines, GivenPlan plan, AuditReport report)
    {
        var strapping = plan.Json.Member("strapping");
        var due = strapping.Member("crossings").Items().Sum(c => c.Member("fasteners").Decimal() ?? 0);
        var counted = lines.Where(l => l.Member("code").Text() is { } code && code.Contains("strap", StringComparison.OrdinalIgnoreCase)
            && Fastening.Any(w => code.Contains(w, StringComparison.OrdinalIgnoreCase))).Select(l => l.Member("counted").Decimal() ?? 0).ToList();
        if (counted.Count > 0 && counted.Sum() != due)
        {
            report.Fault("takeoff.fasteners", "strap fasteners", $"{counted.Sum()} counted, the crossings hold {due}");
        }
    }

    private static void Tape(List<JsonElement> lines, GivenPlan plan, AuditReport report)
    {
        var perimeter = plan.Room.Border.Walls.Sum(w => Math.Sqrt(Math.Pow(w.Us.Length, 2) + Math.Pow(w.Vs.Length, 2)));
        perimeter -= OpenEdges.Length(plan);

        // the edges of stairs and wells are beaded
        perimeter -= plan.Room.Border.Walls.Where(w => w.Ring > 0 && plan.Room.Openings.Any(o => o.Ring == w.Ring && o.Kind is "stair" or "well")).Sum(w => Math.Sqrt(Math.Pow(w.Us.Length, 2) + Math.Pow(w.Vs.Length, 2)));
        perimeter += plan.Bulkheads.Sum(b => b.Json.Member("insideCornerLength").Length(plan.Room.Unit) ?? 0);
        // the layer that shows is taped; control joints are covered with trim, not with tape
        var joints = (plan.Seams.Where(s => s.Board.Layer == plan.Room.Sheets.Layers).Sum(s => s.Stretch.Length) / 2)
            - (plan.Json.Member("sheets").Member("controlJointLength").Length(plan.Room.Unit) ?? 0)
            + plan.Bulkheads.Sum(BoxJoints.Length);
        foreach (var line in With(lines, "tape"))
        {
            var unit = line.Member("unitCode").Text() switch { "FOT" => 304.8, "MTR" => 1000, "INH" => 25.4, "MMT" => 1, _ => 0 };
            var length = (line.Member("counted").Double() ?? 0) * unit;
            if (unit > 0 && (length < (joints * 0.999) - unit || length > ((joints + perimeter) * 1.001) + unit))
            {
                report.Fault("takeoff.tape", line.Member("code").Text()!, $"{length:F0} mm counted, joints {joints:F0} and perimeter {perimeter:F0} mm drawn");
            }
        }
    }

    private static void Screws(List<JsonElement> lines, GivenPlan plan, AuditReport report)
    {
        var boxed = plan.Bulkheads.SelectMany(b => b.Boards).ToList();
        var area = (plan.Boards.Sum(b => b.Area) + boxed.Sum(b => b.Area)) / 1e6;
        var screws = lines.Where(l => l.Member("code").Text() is { } c && c.Contains("screw", StringComparison.OrdinalIgnoreCase)
            && !c.Contains("strap", StringComparison.OrdinalIgnoreCase) && !c.Contains("scab", StringComparison.OrdinalIgnoreCase) && c != "bulkhead-screw").ToList();
        var counted = screws.Sum(l => l.Member("counted").Double() ?? 0);
        if (screws.Count > 0 && (counted < area * 4 || counted > (area * 60) + ((plan.Boards.Count + boxed.Count) * 40)))
        {
            report.Fault("takeoff.screws", "board screws", $"{counted} counted for {area:F1} m² of board");
        }

        var shown = plan.Boards.Sum(b => b.Screws) + boxed.Sum(b => b.Screws);
        if (screws.Count > 0 && shown > 0 && Math.Abs(counted - shown) > 0.5)
        {
            report.Fault("takeoff.screws", "board screws", $"{counted} counted, the boards hold {shown}");
        }
    }
}
