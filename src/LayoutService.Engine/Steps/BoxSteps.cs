using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Steps;

/// <summary>Framing and boarding the bulkheads: those at the joists before the ceiling is closed, those below the board after.</summary>
internal static class BoxSteps
{
    public static void Frame(StepList list, BulkheadPlan plan, bool below)
    {
        foreach (var box in plan.Bulkheads.Where(b => b.BoardedAbove == below))
        {
            // a rail neither at the top nor at the bottom
            var headers = box.Members.Where(m => m.Role == MemberRole.Rail && m.Top > box.Top && m.Bottom < box.FrameBottom).Select(m => m.Id).ToList();
            list.Add(
                Sentence.Of(
                    "frame-bulkhead",
                    $"Bulkhead {box.Id}: snap its outline, fasten blocking and wall ledgers, build the ladders on the floor, fasten their top rails "
                    + (below ? "through the board to the straps" : "to the joists and blocking")
                    + ", then set the ties from the lowest point with a level."
                    + (headers.Count == 0 ? string.Empty : $" A ladder stays open where a service runs through it, over {(headers.Count == 1 ? "the header" : "the headers")} {StepList.Names(headers)}."),
                    ("bulkhead", box.Id),
                    ("headers", StepList.Names(headers))),
                box.Members.Select(m => new Touch(TouchKinds.Member, m.Id)).Prepend(new Touch(TouchKinds.Bulkhead, box.Id)));
            if (box.Fireblocking.Count > 0)
            {
                list.Add(
                    Sentence.Of(
                        "fireblock-bulkhead",
                        $"Bulkhead {box.Id}: close every opening from it into wall and joist cavities with fireblocking, as the code of the place wants it.",
                        ("bulkhead", box.Id)),
                    [new Touch(TouchKinds.Bulkhead, box.Id)]);
            }
        }
    }

    public static void Board(StepList list, BulkheadPlan plan)
    {
        foreach (var box in plan.Bulkheads)
        {
            FixtureSteps.CutHoles(list, box);
            list.Add(
                Sentence.Of(
                    "board-bulkhead",
                    $"Bulkhead {box.Id}: board the faces, then the underside over their bottom edges; bead the outside corners.",
                    ("bulkhead", box.Id)),
                box.Boards.Select(b => new Touch(TouchKinds.BoardPiece, b.Id)).Prepend(new Touch(TouchKinds.Bulkhead, box.Id)));
        }
    }
}
