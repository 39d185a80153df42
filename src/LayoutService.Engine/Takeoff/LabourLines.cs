using System.Globalization;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;

namespace LayoutService.Engine.Takeoff;

/// <summary>
/// Hours of work by the caller's own rates, to the hundredth. There is no published table of such hours that holds for
/// every crew, so work without a rate has no line.
/// </summary>
internal static class LabourLines
{
    public static IEnumerable<TakeoffLine> Count(TakeoffFacts facts)
    {
        if (facts.Prices?.Labour is not { } rates)
        {
            return [];
        }

        var straps = facts.Strapping.Rows.Sum(row => row.Pieces.Count);
        var boards = facts.Sheets.Pieces.Count + facts.Bulkheads.Bulkheads.Sum(box => box.Boards.Count);
        var imperial = facts.Units == UnitSystem.Imperial;
        var joints = facts.Sheets.ButtJointLength + facts.Sheets.TaperedJointLength + facts.Sheets.CutEdgeJointLength + FinishLines.BoxJoints(facts);
        var length = decimal.Round(imperial ? joints.Inches / 12m : joints.Millimetres / 1000m, 2);
        return
        [
            .. Line(facts, TakeoffCodes.LabourStraps, "Putting up straps", straps, "strap pieces", rates.PerStrapPiece),
            .. Line(facts, TakeoffCodes.LabourBoards, "Hanging board", boards, "board pieces", rates.PerBoardPiece),
            .. Line(facts, TakeoffCodes.LabourJoints, "Finishing joints", length, imperial ? "ft of joint" : "m of joint", rates.PerJointLength),
        ];
    }

    private static IEnumerable<TakeoffLine> Line(TakeoffFacts facts, string code, string work, decimal count, string what, decimal? each)
    {
        if (each is not { } hoursEach || decimal.Round(count * hoursEach, 2) is var hours && hours <= 0)
        {
            return [];
        }

        var amount = facts.Prices!.Currency.Length == 0 ? (decimal?)null : MinorUnits.Round(hours * facts.Prices.Labour!.HourPrice, facts.Prices.Currency);
        return
        [
            new TakeoffLine(
                code, work, null, "hour", "HUR", hours, 0m, hours, [], amount, null,
                string.Create(CultureInfo.InvariantCulture, $"{count:0.##} {what}, {hoursEach:0.####} h each")),
        ];
    }
}
