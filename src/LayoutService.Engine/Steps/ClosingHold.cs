using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Steps;

/// <summary>The hold before anything is covered, and the marks that are needed once it is.</summary>
internal static class ClosingHold
{
    public static void Write(StepList list, StrappingPlan strapping, SheetPlan sheets, JoistPlan joists, TradeText trade)
    {
        if (sheets.Pieces.Count == 0)
        {
            return;
        }

        var rows = trade.Direct
            ? joists.Members.Select(joist => new Touch(TouchKinds.Joist, joist.Id)).ToList()
            : strapping.Rows.Select(row => new Touch(TouchKinds.Row, row.Id)).ToList();

        // 1-1/4 in: NEC 300.4(D); 32 mm: CEC 12-516.
        var clear = trade.Of(1.25m, 32);
        list.Hold(
            Sentence.Of(
                "inspect-before-closing",
                "Stop before boarding. Electrical rough-in, plumbing, ducts, fireblocking and insulation are finished and, where a permit "
                + $"asks for it, inspected. No cable lies within {clear} of a {(trade.Direct ? "joist's lower edge" : "strap")} without a steel plate, and no box will be boarded over.",
                ("clearance", clear)),
            rows);
        if (rows.Count > 0)
        {
            list.Add(
                Sentence.Of(
                    "mark-centres",
                    $"Mark the centre of every {(trade.Direct ? "joist" : "row")} on the walls just below the board, and photograph the {trade.Carrier}s with a tape in the picture: "
                    + "the board will hide them."),
                rows);
        }
    }
}
