using LayoutService.Auditor.Rooms;
using LayoutService.Auditor.Trials;

namespace LayoutService.Api.Tests.Auditing;

/// <summary>A trial keeps what a planner got wrong with the seed of the room.</summary>
public sealed class AuditTrialTests
{
    [Fact]
    public void A_planner_that_answers_every_room_with_one_plan_is_found_out_on_each_seed()
    {
        var trial = new AuditTrial(_ => new LayoutService.Auditor.Trials.Reply(200, HandPlan.Answer), new RoomWishes()).Audit([1, 2, 3]);

        Assert.Equal(3, trial.Planned);
        Assert.Equal([1, 2, 3], trial.Faults.Select(f => f.Seed).Distinct());
    }

    [Fact]
    public void A_planner_that_refuses_is_told_apart_from_one_that_errs()
    {
        var trial = new AuditTrial(_ => new LayoutService.Auditor.Trials.Reply(422, "no"), new RoomWishes()).Audit([4]);

        Assert.Empty(trial.Faults);
        Assert.Equal([(4, 422, "no")], trial.Refused);
    }
}
