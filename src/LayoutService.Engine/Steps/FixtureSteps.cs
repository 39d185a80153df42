using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Sheets;

namespace LayoutService.Engine.Steps;

/// <summary>Fixtures in the order of work: marked and roughed in before the board, holes cut as each piece is hung.</summary>
internal static class FixtureSteps
{
    public static void RoughIn(StepList list, FixturePlan plan, TradeText trade)
    {
        var fixtures = plan.Fixtures.Where(f => !f.Wish.AccessPanel).ToList();
        if (fixtures.Count > 0)
        {
            var wrong = fixtures.Where(f => f.Status == FixtureStatus.Conflict).Select(f => f.Id).ToList();
            list.Hold(
                Sentence.Of(
                    "rough-in-fixtures",
                    $"Mark the centres of {StepList.Names(fixtures.Select(f => f.Id))} on the floor by the plan, plumb them up, and have their boxes, cables "
                    + "and ducts roughed in by the trades whose work they are; hold each body and driver up into its bay before the board closes it."
                    + (wrong.Count > 0 ? $" First settle what is in the way of {StepList.Names(wrong)}." : string.Empty),
                    ("fixtures", StepList.Names(fixtures.Select(f => f.Id))),
                    ("inConflict", StepList.Names(wrong))),
                fixtures.Select(f => new Touch(TouchKinds.Fixture, f.Id)));
        }

        foreach (var mount in plan.Mounts)
        {
            list.Add(
                Sentence.Of(
                    "mark-mount",
                    $"Mark where {mount.Wish.Id} hangs and note its place off two walls: the board will hide it. {mount.Said.Text}",
                    ("mount", mount.Wish.Id)),
                [new Touch(TouchKinds.Mount, mount.Wish.Id)]);
        }
    }

    /// <summary>After the board is up: the doors over what must be reached, and what stands under each that is in conflict.</summary>
    public static void Panels(StepList list, FixturePlan plan, BulkheadPlan boxes)
    {
        var panels = plan.Fixtures.Where(f => f.Wish.AccessPanel).ToList();
        if (panels.Count == 0)
        {
            return;
        }

        var services = StepList.Names(boxes.AccessPanels.Select(p => p.ServiceId));
        list.Add(
            Sentence.Of(
                "set-access-panels",
                $"Set the access panels {StepList.Names(panels.Select(f => f.Id))} in their holes and see that a hand reaches {services}; screw a strip of wood behind an "
                + "edge of a hole that gives under the panel's flange.",
                ("panels", StepList.Names(panels.Select(f => f.Id))),
                ("services", services)),
            panels.Select(f => new Touch(TouchKinds.Fixture, f.Id)));
    }

    /// <summary>Before a course is hung: its holes, each on its piece.</summary>
    public static void CutHoles(StepList list, Course course, IReadOnlyList<BoardPiece> pieces)
    {
        foreach (var piece in pieces.Where(p => p.Cutouts.Count > 0))
        {
            var said = string.Join(" ", piece.Cutouts.Select(c => $"{c.FixtureId}: {c.Mark.Text}"));
            list.Add(
                Sentence.Of(
                    "cut-holes",
                    $"Course {course.Id}: mark and cut the holes in {piece.Id} before it is hung, and check each against what is there. {said}",
                    ("course", course.Id),
                    ("piece", piece.Id),
                    ("holes", said)),
                piece.Cutouts.Select(c => new Touch(TouchKinds.Fixture, c.FixtureId)).Prepend(new Touch(TouchKinds.BoardPiece, piece.Id)));
        }
    }

    /// <summary>Before a bulkhead is boarded: the holes in its underside, each on its piece.</summary>
    public static void CutHoles(StepList list, Bulkhead box)
    {
        foreach (var board in box.Boards.Where(b => b.Cutouts.Count > 0))
        {
            var said = string.Join(" ", board.Cutouts.Select(c => $"{c.FixtureId}: {c.Mark.Text}"));
            list.Add(
                Sentence.Of(
                    "cut-holes-in-bulkhead",
                    $"Bulkhead {box.Id}: have cables and driver boxes roughed in inside it, then mark and cut the holes in {board.Id} before it is hung, and check each against the ties. {said}",
                    ("bulkhead", box.Id),
                    ("piece", board.Id),
                    ("holes", said)),
                board.Cutouts.Select(c => new Touch(TouchKinds.Fixture, c.FixtureId)).Prepend(new Touch(TouchKinds.BoardPiece, board.Id)));
        }
    }
}
