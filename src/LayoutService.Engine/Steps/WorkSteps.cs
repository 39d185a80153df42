using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Insulation;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Steps;

/// <summary>
/// The order of work with its hold points. Every row, strap piece, nailer, scab and board piece is touched at least once,
/// and nothing is used before it is there: wood is cut before it is hung, nailers hang before the rows that end on them,
/// rows before the batts and the board, a course before the next one; what was left loose for a batt is fastened before the hold.
/// </summary>
public static class WorkSteps
{
    /// <summary>
    /// Writes the steps. <paramref name="text"/> says a length off a tape. <paramref name="walls"/>, when given, tell at which
    /// end of the room the sheets' start wall is; without them courses hang in the plan's own order.
    /// </summary>
    public static IReadOnlyList<WorkStep> Write(
        StrappingPlan strapping,
        SheetPlan sheets,
        CutPlan cut,
        JoistPlan joists,
        UnitSystem units,
        Func<Length, string> text,
        IReadOnlyList<WallLine>? walls = null,
        InsulationPlan? insulation = null,
        FixturePlan? fixtures = null,
        BulkheadPlan? bulkheads = null,
        IReadOnlyList<PlannedPartition>? partitions = null,
        ExistingCeiling? existing = null,
        bool direct = false,
        Func<Length, string>? cutText = null,
        Crew? crew = null)
    {
        var trade = new TradeText(units, text) { Direct = direct, CutTape = cutText, Crew = crew };
        var list = new StepList();
        FirstSteps.Write(list, joists, trade);
        FirstSteps.OldCeiling(list, existing, joists);
        FirstSteps.LaterWalls(list, walls ?? [], joists);
        OldCeilingSteps.OpenForWood(list, existing, strapping, bulkheads ?? BulkheadPlan.None, joists);
        BreakSteps.Before(list, joists);
        StrapSteps.Write(list, strapping, cut, trade, partitions ?? [], joists.Breaks.Count == 0);
        PartitionSteps.Under(list, partitions ?? []);
        BoxSteps.Frame(list, bulkheads ?? BulkheadPlan.None, below: false);
        OldCeilingSteps.OpenForFixtures(list, fixtures ?? FixturePlan.None);
        FixtureSteps.RoughIn(list, fixtures ?? FixturePlan.None, trade);
        BattSteps.Write(list, strapping, insulation, trade);
        ClosingHold.Write(list, strapping, sheets, joists, trade);
        BoardSteps.Write(list, sheets, cut, HangingOrder.Of(sheets, joists, walls ?? []), trade);
        BoxSteps.Frame(list, bulkheads ?? BulkheadPlan.None, below: true);
        BoxSteps.Board(list, bulkheads ?? BulkheadPlan.None);
        PartitionSteps.After(list, partitions ?? []);
        FixtureSteps.Panels(list, fixtures ?? FixturePlan.None, bulkheads ?? BulkheadPlan.None);
        BreakSteps.After(list, joists, sheets, trade);
        BoardSteps.Finish(list, sheets, bulkheads ?? BulkheadPlan.None, trade);
        return list.Steps;
    }
}
