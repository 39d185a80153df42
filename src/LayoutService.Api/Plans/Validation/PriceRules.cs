using System.Globalization;
using LayoutService.Api.Plans.Requests;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Api.Plans.Validation;

/// <summary>A price has a currency, and prices something that the takeoff has.</summary>
internal static class PriceRules
{
    public static void Check(PlanRequest request, FaultList faults)
    {
        if (request.Prices?.Currency is null && HasPrice(request))
        {
            faults.Add("#/prices/currency", "currency_missing", "A price is given, but no currency.");
        }

        var items = request.Prices?.Items ?? [];
        for (var i = 0; i < items.Count; i++)
        {
            var at = $"#/prices/items/{i.ToString(CultureInfo.InvariantCulture)}/code";
            if (items[i].Code is { } code && faults.Sound(at) && !TakeoffCodes.All.Contains(code))
            {
                faults.Add(at, "code_unknown", $"No takeoff line has the code \"{code}\"; the codes are {string.Join(", ", TakeoffCodes.All)}.", ("value", code));
            }
        }
    }

    private static bool HasPrice(PlanRequest request) =>
        request.Prices?.Items is { Count: > 0 }
        || request.Prices?.Labour is not null
        || request.Prices?.Tax is { Count: > 0 }
        || request.Strapping?.Stock?.Any(s => s.PackPrice is not null) == true
        || request.Sheets?.Stock?.Any(s => s.PackPrice is not null) == true
        || request.Insulation?.Batts?.Any(b => b.PackPrice is not null) == true
        || request.Sheets?.JointCost is { Butt: not null } or { Tapered: not null };
}
