using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Composition;

/// <summary>
/// A thorough plan is never worse than the quick one of the same room. The thorough search betters rows, board and lumber one
/// after the other; what lies outside a search (bulkheads' board cut with the ceiling's, packs, spares, straps that another
/// division of the board needs) may yet add up to more. So the quick plan, a hundredth of the work, is made too, and the better is kept: fewer
/// conflicts, fewer failed checks, butts and joints nearer their wishes, then cost with what the caller puts on joints. Without
/// prices the quick one must have less of rows, lumber, board or butts and no more of any. Where all is equal the thorough plan stands.
/// </summary>
internal static class BetterOfTwo
{
    public static PlanOutcome Of(SheetWish wish, PlanOutcome thorough, PlanOutcome quick) =>
        quick is PlanOutcome.Made { Plan: var other } && (thorough is not PlanOutcome.Made { Plan: var plan } || Beats(wish, other, plan)) ? quick : thorough;

    private static bool Beats(SheetWish wish, CeilingPlan quick, CeilingPlan thorough)
    {
        var order = Wishes(quick).CompareTo(Wishes(thorough));
        return order != 0 ? order < 0
            : quick.Summary.Cost is { } cost && thorough.Summary.Cost is { } other ? cost + Joints(wish, quick) < other + Joints(wish, thorough)
            : !Material(quick).SequenceEqual(Material(thorough)) && Material(quick).Zip(Material(thorough)).All(pair => pair.First <= pair.Second);
    }

    private static (int Conflicts, int Failed, long Butts, int Breaks) Wishes(CeilingPlan plan) =>
        (plan.Summary.FixturesInConflict, plan.Summary.ChecksFailed, plan.Unwished.Butts, plan.Unwished.Breaks);

    private static decimal Joints(SheetWish wish, CeilingPlan plan) =>
        ((wish.ButtCostPerMetre * plan.Sheets.ButtJointLength.Millimetres) + (wish.TaperedCostPerMetre * plan.Sheets.TaperedJointLength.Millimetres)) / 1000m;

    // without prices no sum can be made: less of one thing and no more of any other
    private static IEnumerable<decimal> Material(CeilingPlan plan) =>
    [
        plan.Summary.Rows,
        plan.CutPlan.Sticks.Sum(s => s.Length.Millimetres),
        plan.CutPlan.Sheets.Sum(s => s.Width.Millimetres * s.Length.Millimetres),
        plan.Sheets.ButtJointLength.Millimetres,
    ];
}
