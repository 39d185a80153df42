using FluentValidation;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Plans.Validation;

/// <summary>Everything that can be wrong with a request that was read: bounds first, then rules between members.</summary>
internal sealed class RequestRules(IValidator<PlanRequest> bounds)
{
    /// <summary>All faults, in the order of the document.</summary>
    public IReadOnlyList<Fault> FaultsOf(JsonReading<PlanRequest> reading)
    {
        var request = reading.Value!;
        var context = new ValidationContext<PlanRequest>(request);
        bool? imperial = request.Units is { } units ? units == UnitsWord.Imperial : null;
        UnitsInHand.Set(context, imperial);
        var faults = new FaultList();
        foreach (var failure in bounds.Validate(context).Errors)
        {
            faults.Add(failure);
        }

        if (imperial is { } known)
        {
            CheckBetween(request, known, faults);
        }

        OverrideRules.Check(request, faults);
        PriceRules.Check(request, faults);
        return DocumentOrder.Of(faults.All, reading.Root);
    }

    private static void CheckBetween(PlanRequest request, bool imperial, FaultList faults)
    {
        if (request.Room is { } room)
        {
            RoomRules.Check(room, imperial, faults);
        }

        JoistRules.Check(request, imperial, faults);
        UndersideRules.Check(request, imperial, faults);
        ExistingRules.Check(request, faults);
        PartitionRules.Check(request, imperial, faults);
        ServiceRules.Check(request, imperial, faults);
        InsulationRules.Check(request, imperial, faults);
        StockRules.CheckStraps(request.Strapping ?? new(), new Assumptions(imperial, OwnRules.Of(request.Rules)), faults);
        BulkheadRules.Check(request, imperial, faults);
        StockRules.CheckSheets(request.Sheets ?? new(), imperial, faults);
        FixtureRequestRules.Check(request, imperial, faults);
    }
}
