using System.Text.Json;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor.Checks;

/// <summary>What a result claims of its own quality must agree with itself: bound ≤ cost, gap from both, proof only at the bound.</summary>
internal static class Optimality
{
    public static void Check(string rule, JsonElement result, AuditReport report)
    {
        var use = result.Member("use").Text() ?? "";
        if (result.Member("cost").Decimal() is not { } cost || result.Member("lowerBound").Decimal() is not { } bound)
        {
            report.Fault(rule, use, $"states no cost or no lower bound");
            return;
        }

        var rounding = 0.000002m + (Math.Abs(cost) * 0.0000001m);
        if (bound > cost + rounding)
        {
            report.Fault(rule, use, $"lower bound {bound} is above the cost {cost}");
        }

        if (bound > 0 && result.Member("gap").Decimal() is { } gap && Math.Abs(gap - ((cost - bound) / bound)) > 0.0001m)
        {
            report.Fault(rule, use, $"gap {gap}, but (cost − bound)/bound is {(cost - bound) / bound:F6}");
        }

        if (result.Member("provedOptimal") is { ValueKind: JsonValueKind.True } && cost > (bound * 1.00001m) + 0.01m)
        {
            report.Fault(rule, use, $"called proved with cost {cost} above bound {bound}");
        }
    }
}
