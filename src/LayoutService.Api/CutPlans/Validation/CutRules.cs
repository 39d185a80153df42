using FluentValidation;
using LayoutService.Api.CutPlans.Requests;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Plans.Validation;
using LayoutService.Api.Wire;

namespace LayoutService.Api.CutPlans.Validation;

/// <summary>Everything that can be wrong with a request for a cut plan that was read: bounds first, then rules between members.</summary>
internal sealed class CutRules(IValidator<CutPlanRequest> bounds)
{
    /// <summary>All faults, in the order of the document.</summary>
    public IReadOnlyList<Fault> FaultsOf(JsonReading<CutPlanRequest> reading)
    {
        var request = reading.Value!;
        var context = new ValidationContext<CutPlanRequest>(request);
        UnitsInHand.Set(context, request.Units is { } units ? units == UnitsWord.Imperial : null);
        var faults = new FaultList();
        foreach (var failure in bounds.Validate(context).Errors)
        {
            faults.Add(failure);
        }

        CheckUses(request, faults);
        CheckPrices(request, faults);
        if (request.Sticks is { } sticks)
        {
            WantedRules.CheckSticks(sticks, faults);
        }

        if (request.Sheets is { } sheets)
        {
            WantedRules.CheckSheets(sheets, request.Units == UnitsWord.Imperial, faults);
        }

        return DocumentOrder.Of(faults.All, reading.Root);
    }

    private static void CheckUses(CutPlanRequest request, FaultList faults)
    {
        if (request is { Sticks: null, Sheets: null })
        {
            faults.Add("#", "nothing_to_cut", "Give sticks, sheets, or both.");
        }

        if (request is { Sticks: null, Kerf: not null })
        {
            faults.Add("#/kerf", "without_sticks", "This is the kerf of the sticks, and there are none; that of sheets stands in sheets.");
        }

        if (request is { Sticks: null, EndTrim: not null })
        {
            faults.Add("#/endTrim", "without_sticks", "This is the trim of the sticks, and there are none; that of sheets stands in sheets.");
        }
    }

    private static void CheckPrices(CutPlanRequest request, FaultList faults)
    {
        var priced = request.Sticks?.Stock?.Any(s => s.PackPrice is not null) == true
            || request.Sheets?.Stock?.Any(s => s.PackPrice is not null) == true;
        if (priced && request.Currency is null)
        {
            faults.Add("#/currency", "currency_missing", "A price is given, but no currency.");
        }
    }
}
