using LayoutService.Engine.Bulkheads;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Fixtures;
using LayoutService.Engine.Strapping;

namespace LayoutService.Engine.Steps;

/// <summary>An old ceiling that stays is opened before the wood that lies above it is set, and before what goes up through it is roughed in.</summary>
internal static class OldCeilingSteps
{
    /// <summary>Ids of the wood that lies between the joists or beside one, above an old ceiling.</summary>
    public static IEnumerable<string> Wood(StrappingPlan strapping, BulkheadPlan boxes) =>
    [
        .. strapping.Nailers.Where(n => n.Role is NailerRole.Ledger or NailerRole.Block or NailerRole.Sister).Select(n => n.Id),
        .. boxes.Bulkheads.SelectMany(b => b.Members).Where(m => m.Role == MemberRole.Blocking).Select(m => m.Id),
    ];

    public static void OpenForWood(StepList list, ExistingCeiling? existing, StrappingPlan strapping, BulkheadPlan boxes, JoistPlan joists)
    {
        if (existing is not { Stays: true } || StepList.Names(Wood(strapping, boxes)) is not { Length: > 0 } wood)
        {
            return;
        }

        list.Add(
            Sentence.Of(
                "open-old-ceiling-for-wood",
                $"With the power off, open the old ceiling from joist to joist where {wood} will lie, no wider than it takes to set them, and look for cables and pipes before you cut deeper than it is thick.",
                ("wood", wood)),
            joists.Members.Select(joist => new Touch(TouchKinds.Joist, joist.Id)));
    }

    public static void OpenForFixtures(StepList list, FixturePlan plan)
    {
        var opened = plan.Fixtures.Where(f => f.OpensOldCeiling).Select(f => f.Id).ToList();
        if (opened.Count > 0)
        {
            list.Add(
                Sentence.Of(
                    "open-old-ceiling-at-fixtures",
                    $"With the power off, open the old ceiling over {StepList.Names(opened)} as wide as each hole: a body, a driver box or a hand goes up through it there.",
                    ("fixtures", StepList.Names(opened))),
                opened.Select(id => new Touch(TouchKinds.Fixture, id)));
        }
    }
}
