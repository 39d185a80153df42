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
    private static readonly Action<GivenPlan, AuditReport>[] OfOrder =
    [
        TakeoffLines.Check, TakeoffMoney.Check, SummaryFigures.Check, Height.Check, WorkOrder.Check, AccessReach.Check, NumberForm.Check, TapeTexts.Check, Identity.Check, LinedWalls.Check, OldCeiling.Check, OpenEdges.Check,
    ];

    private static readonly Action<GivenPlan, AuditReport>[] OfCeiling =
    [
        SheetTiling.Check, SheetSizes.Check, ButtBacking.Check, ButtStagger.Check, JointLengths.Check,
        RowSpacing.Check, RowClearance.Check, NailerClearance.Check, RowPositions.Check, WellEdges.Check, LayerSeams.Check,
        PieceRuns.Check, PieceBearing.Check, PieceJoints.Check, Crossings.Check, Packing.Check, PartitionPlates.Check,
        LumberCuts.Check, LumberCost.Check, SheetCuts.Check, SheetCost.Check,
        FixturePlaces.Check, FixtureCutouts.Check, HoleTrims.Check, BattFills.Check, BattOrder.Check, BoxSolids.Check, BoxFrames.Check, BoxJoints.Check, BoxCovers.Check, BoxHoles.Check,
    ];

    private static readonly Action<GivenPlan, AuditReport>[] OfBoard =
    [
        SheetTiling.Check, SheetSizes.Check, ButtBacking.Check, ButtStagger.Check, JointLengths.Check, LayerSeams.Check, SheetCuts.Check, SheetCost.Check,
        TakeoffLines.Check, WellEdges.Check, OpenEdges.Check, FixturePlaces.Check, FixtureCutouts.Check, BoxSolids.Check, BoxFrames.Check, BoxJoints.Check, BoxCovers.Check, BoxHoles.Check,
    ];

    /// <summary>Every broken rule; empty for a sound plan.</summary>
    public static IReadOnlyList<Fault> Audit(JsonElement request, JsonElement answer) => Look(request, answer).Faults;

    /// <summary>Broken rules, and beside them the preferences that were not met.</summary>
    public static AuditReport Look(JsonElement request, JsonElement answer)
    {
        if (!RunDivision.Turns(request))
        {
            var one = new AuditReport(Declared(answer));
            Look(request, answer, [.. OfCeiling, .. OfOrder], one);
            return one;
        }

        // joists that run two ways: each part is a ceiling of its own, the order is one
        var report = new AuditReport(Declared(answer));
        Look(request, answer, [.. OfOrder, RunBreaks.Check], report);
        foreach (var (part, given) in new RunDivision(request, answer).Parts())
        {
            Look(part, given, [.. OfCeiling, SummaryFigures.Check], report);
        }

        return report;
    }

    private static IEnumerable<string> Declared(JsonElement answer) =>
        answer.Member("checks").Items().Where(c => c.Member("status").Text() == "fail").Select(c => c.Member("rule").Text() ?? "");

    // where partitions stand under the straps the board ends and the straps do not: each is held to its own reading of the room
    private static void Look(JsonElement request, JsonElement answer, Action<GivenPlan, AuditReport>[] checks, AuditReport report)
    {
        if (!request.Member("partitions").Items().Any(p => p.Member("top").Text() == "straps"))
        {
            Look(new AskedRoom(request), request, answer, checks, report);
            return;
        }

        Look(new AskedRoom(request, board: true), request, answer, [.. checks.Where(OfBoard.Contains), PartitionsUnderStraps.Check], report);
        Look(new AskedRoom(request), request, answer, [.. checks.Except(OfBoard)], report);
    }

    private static void Look(AskedRoom room, JsonElement request, JsonElement answer, Action<GivenPlan, AuditReport>[] checks, AuditReport report)
    {
        GivenPlan plan;
        try
        {
            plan = new GivenPlan(answer, room);
        }
        catch (Exception unread) when (IsShape(unread))
        {
            report.Fault("answer.shape", "answer", $"{unread.Message}");
            return;
        }

        foreach (var check in room.Strapping.Direct ? DirectBoard.Checks(request, answer, checks) : checks)
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
    }

    /// <summary>A member that is missing, or no length where one is due.</summary>
    private static bool IsShape(Exception exception) =>
        exception is KeyNotFoundException or FormatException or InvalidOperationException or ArgumentException;
}
