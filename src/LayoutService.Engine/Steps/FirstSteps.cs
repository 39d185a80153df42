using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Steps;

/// <summary>Before any wood goes up: what is hidden, and whether the joists make a plane.</summary>
internal static class FirstSteps
{
    public static void Write(StepList list, JoistPlan joists, TradeText trade)
    {
        var all = joists.Members.Select(joist => new Touch(TouchKinds.Joist, joist.Id)).ToList();
        list.Hold(
            Sentence.Of(
                "find-hidden-lines",
                "Find every cable, pipe, gas line, duct and box above the ceiling, mark where each crosses a joist, and protect or "
                + "move what a fastener could reach. Gas, wiring and plumbing are moved by the licensed trade. Go on only when "
                + "nothing is in doubt."),
            all);

        // GA-216 group (association's guide, section II): 1/8 in from the plane of neighbouring framing. 19 mm: common practice.
        var plane = trade.Of(0.125m, 3);
        var most = trade.Of(0.75m, 19);
        if (trade.Direct)
        {
            list.Add(
                Sentence.Of(
                    "check-joists-for-board",
                    $"Stretch a string under the joists, and mark their middles at both walls. Where neighbours differ by more than {plane} the board "
                    + $"will show it: plane or sister that joist first, or strap the ceiling.",
                    ("tolerance", plane),
                    ("joists", StepList.Number(joists.Members.Count))),
                all);
            return;
        }

        list.Add(
            Sentence.Of(
                "check-joists",
                $"Stretch a string under the joists. Where neighbours differ by more than {plane}, plan packing between joist and "
                + $"strap; where a joist is more than {most} out, sister it to the line. Note the lowest joist: it sets the plane.",
                ("tolerance", plane),
                ("mostPacking", most),
                ("joists", StepList.Number(joists.Members.Count))),
            all);
    }

    /// <summary>A ceiling that is there already: looked at by somebody who may, before anybody works on it.</summary>
    public static void OldCeiling(StepList list, ExistingCeiling? existing, JoistPlan joists)
    {
        if (existing is null)
        {
            return;
        }

        list.Hold(
            existing.Stays
                ? Sentence.Of("mark-joists-on-old-ceiling", "Have the old ceiling tested before you drill it. Then probe for every joist at both ends, and snap their lines on the old ceiling: the straps are screwed through it into the joists.")
                : Sentence.Of("take-down-old-ceiling", "Have the old ceiling tested. Then take it down to the joists, pull every nail, and measure joists and services again: the plan stands on them."),
            joists.Members.Select(joist => new Touch(TouchKinds.Joist, joist.Id)));
    }

    /// <summary>Edges without a wall, and walls that come after the ceiling: their lines stand in for them.</summary>
    public static void LaterWalls(StepList list, IReadOnlyList<WallLine> walls, JoistPlan joists)
    {
        if (StepList.Names(walls.Where(wall => wall.Kind == WallKind.Open).Select(wall => wall.Id)) is { Length: > 0 } open)
        {
            list.Add(
                Sentence.Of(
                    "snap-open-edges",
                    $"Snap the edges without a wall, {open}, on the joists: straps and board end there, and every mark that is taken from such an edge is taken from its line. Close the joist bays over them as the code wants it.",
                    ("edges", open)),
                joists.Members.Select(joist => new Touch(TouchKinds.Joist, joist.Id)));
        }

        var later = walls.Where(wall => wall.Kind == WallKind.Later).Select(wall => wall.Id).ToList();
        if (later.Count > 0)
        {
            list.Add(
                Sentence.Of(
                    "snap-later-walls",
                    $"Snap the lines of walls {StepList.Names(later)}, framed after the ceiling, on the joists: straps and board run to them, and their plates are screwed up into the straps.",
                    ("walls", StepList.Names(later))),
                joists.Members.Select(joist => new Touch(TouchKinds.Joist, joist.Id)));
        }
    }
}
