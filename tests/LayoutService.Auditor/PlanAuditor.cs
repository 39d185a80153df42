using System.Text.Json;
using LayoutService.Auditor.Checks;
using LayoutService.Auditor.Reading;

namespace LayoutService.Auditor;

/// <summary>
/// Recomputes a plan's promises from the request and the answer's geometry alone. It shares no code with the service:
/// its own reading of lengths, its own geometry, its own arithmetic.
/// </summary>
public static class PlanAuditor
{
    private static readonly Action<GivenPlan, AuditReport>[] Checks =
    [
        SheetTiling.Check, SheetSizes.Check, ButtBacking.Check, ButtStagger.Check, JointLengths.Check,
        RowSpacing.Check, RowClearance.Check, RowPositions.Check,
        PieceRuns.Check, PieceBearing.Check, PieceJoints.Check, Crossings.Check, Packing.Check, PartitionPlates.Check,
        LumberCuts.Check, LumberCost.Check, SheetCuts.Check, SheetCost.Check,
        TakeoffLines.Check, TakeoffMoney.Check, FixturePlaces.Check, FixtureCutouts.Check, HoleTrims.Check, SummaryFigures.Check, Height.Check, BattFills.Check, BattOrder.Check, WorkOrder.Check, BoxSolids.Check, BoxFrames.Check, BoxCovers.Check, BoxHoles.Check, AccessReach.Check, NumberForm.Check, TapeTexts.Check, Identity.Check,
    ];

    /// <summary>Every broken rule; empty for a sound plan.</summary>
    public static IReadOnlyList<Fault> Audit(JsonElement request, JsonElement answer) => Look(request, answer).Faults;

    /// <summary>Broken rules, and beside them the preferences that were not met.</summary>
    public static AuditReport Look(JsonElement request, JsonElement answer)
    {
        var room = new AskedRoom(request);
        GivenPlan plan;
        try
        {
            plan = new GivenPlan(answer, room);
        }
        catch (Exception unread) when (IsShape(unread))
        {
            var unreadable = new AuditReport([]);
            unreadable.Fault("answer.shape", "answer", $"{unread.Message}");
            return unreadable;
        }

        var report = new AuditReport(plan.DeclaredFailures);
        foreach (var check in room.Strapping.Direct ? DirectBoard.Checks(request, answer, Checks) : Checks)
        {
            try
            {
                check(plan, report);
            }
            catch (Exception unread) when (IsShape(unread))
            {
                report.Fault("answer.shape", check.Method.DeclaringType!.Name, $"{unread.Message}");
            }
        }

        return report;
    }

    /// <summary>A member that is missing, or no length where one is due.</summary>
    private static bool IsShape(Exception exception) =>
        exception is KeyNotFoundException or FormatException or InvalidOperationException or ArgumentException;
}
