using System.Text.Json;
using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Measures;
using LayoutService.Engine.Tests.Optimum;

namespace LayoutService.Engine.Tests.Measures;

public class WorkMeterTests
{
    private static readonly Survey Room = SeededSurveys.Make(3).Survey;

    [Fact]
    public void A_meter_that_does_not_run_out_changes_nothing_and_counts_the_same_each_time()
    {
        var plain = Written(LayoutEngine.Plan(Room));
        var (first, second) = (new WorkMeter(long.MaxValue), new WorkMeter(long.MaxValue));
        Assert.Equal(plain, Written(LayoutEngine.Plan(Room, first)));
        Assert.Equal(plain, Written(LayoutEngine.Plan(Room, second)));
        Assert.True(first.Spent > 1000, $"only {first.Spent} operations were counted");
        Assert.Equal(first.Spent, second.Spent);
    }

    [Fact]
    public void Work_that_ends_just_at_the_limit_is_answered_and_one_operation_less_is_refused()
    {
        var whole = new WorkMeter(long.MaxValue);
        LayoutEngine.Plan(Room, whole);
        Assert.IsType<PlanOutcome.Made>(LayoutEngine.Plan(Room, new WorkMeter(whole.Spent + 1)));
        var refused = Assert.IsType<PlanOutcome.NotPossible>(LayoutEngine.Plan(Room, new WorkMeter(whole.Spent)));
        var finding = Assert.Single(refused.Findings);
        Assert.Equal("too_much_work", finding.Sentence.Code);
        Assert.Equal("Working this out takes more than one call may; the service gave up.", finding.Sentence.Text);
    }

    [Fact]
    public void Work_that_nobody_waits_for_is_given_up()
    {
        using var left = new CancellationTokenSource();
        left.Cancel();
        var meter = new WorkMeter(long.MaxValue, left.Token);
        var heavy = Room with { Effort = Effort.Thorough };
        Assert.ThrowsAny<OperationCanceledException>(() => LayoutEngine.Plan(heavy, meter));
        Assert.InRange(meter.Spent, 1, 10_000_000);
    }

    [Fact]
    public void What_is_planned_afterwards_on_the_same_thread_is_not_counted()
    {
        var meter = new WorkMeter(long.MaxValue);
        LayoutEngine.Plan(Room, meter);
        var spent = meter.Spent;
        LayoutEngine.Plan(Room);
        Assert.Equal(spent, meter.Spent);
    }

    private static string Written(PlanOutcome outcome) => JsonSerializer.Serialize(Assert.IsType<PlanOutcome.Made>(outcome).Plan.Strapping);
}
