using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Steps;

/// <summary>Packing a row to the plane before it is fastened for good.</summary>
internal static class PackingSteps
{
    public static void Write(StepList list, StrappingPlan plan, StrapRow row, TradeText trade)
    {
        if (plan.Plane is null)
        {
            return;
        }

        var packed = plan.Crossings.Where(crossing => crossing.RowId == row.Id && crossing.Shims > 0).ToList();
        if (packed.Count == 0)
        {
            return;
        }

        var places = string.Join(", ", packed.Select(crossing => $"{trade.Of(crossing.Packing)} at {crossing.SupportId}{(crossing.Shims > 1 ? " under both ends" : string.Empty)}"));
        list.Add(
            Sentence.Of(
                "pack-row",
                $"Row {row.Id}: pack between joist and strap {places}. Packed screws are longer: see the order.",
                ("row", row.Id),
                ("packing", places)),
            packed.Select(crossing => new Touch(TouchKinds.Joist, crossing.SupportId)).Distinct().Prepend(new Touch(TouchKinds.Row, row.Id)));
    }
}
