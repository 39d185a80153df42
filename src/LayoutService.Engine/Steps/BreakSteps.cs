using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Steps;

/// <summary>Lines where the joists change direction: snapped before anything is marked, covered before anything is taped.</summary>
internal static class BreakSteps
{
    public static void Before(StepList list, JoistPlan joists)
    {
        if (joists.Breaks.Count > 0)
        {
            var lines = StepList.Names(joists.Breaks.Select(line => line.Id));
            list.Add(
                Sentence.Of(
                    "snap-run-breaks",
                    $"Snap {lines} on the joists, where they change direction. Straps and board end at the line on both sides; nothing is fastened across it.",
                    ("lines", lines)),
                joists.Members.Select(joist => new Touch(TouchKinds.Joist, joist.Id)));
        }
    }

    public static void After(StepList list, JoistPlan joists, SheetPlan sheets, TradeText trade)
    {
        var beside = sheets.Joints.Where(joint => joint.Kind == BoardJointKind.Control).SelectMany(joint => new[] { joint.PieceA, joint.PieceB }).Distinct().ToList();
        if (beside.Count > 0)
        {
            var (lines, length) = (StepList.Names(joists.Breaks.Select(line => line.Id)), trade.Of(sheets.ControlJointLength));
            list.Add(
                Sentence.Of(
                    "fit-control-joints",
                    $"Fit control joint trim over {lines} ({length}), as its maker says. Do not tape the board across it.",
                    ("lines", lines),
                    ("length", length)),
                beside.Select(piece => new Touch(TouchKinds.BoardPiece, piece)));
        }
    }
}
