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
    public void A_thorough_search_that_is_too_much_work_gives_the_quick_plan_and_says_so()
    {
        var heavy = Room with { Effort = Effort.Thorough };
        var (thorough, quick) = (new WorkMeter(long.MaxValue), new WorkMeter(long.MaxValue));
        LayoutEngine.Plan(heavy, thorough);
        var other = Assert.IsType<PlanOutcome.Made>(LayoutEngine.Plan(Room, quick)).Plan;
        Assert.True(thorough.Spent > 9 * quick.Spent, $"{thorough.Spent} is not far above {quick.Spent}");
        var given = Assert.IsType<PlanOutcome.Made>(LayoutEngine.Plan(heavy, new WorkMeter(10 * quick.Spent))).Plan;
        Assert.Equal(JsonSerializer.Serialize(other.Strapping), JsonSerializer.Serialize(given.Strapping));
        Assert.Equal(JsonSerializer.Serialize(other.CutPlan), JsonSerializer.Serialize(given.CutPlan));
        Assert.Single(given.Cautions, c => c.Sentence.Code == "thorough_search_given_up");
        Assert.DoesNotContain(other.Cautions, c => c.Sentence.Code == "thorough_search_given_up");
    }

    [Fact]
    public void What_is_left_of_a_meter_is_there_after_a_part_of_it_was_spent()
    {
        var meter = new WorkMeter(1000);
        var told = WorkMeter.Run(meter, () => (WorkMeter.Within(0.5m, () => Spent(600)), Spent(300), WorkMeter.Within(0.5m, () => Spent(1)), WorkMeter.Within(1, () => Spent(50))), () => ("over", "over", "over", "over"));
        Assert.Equal((null, "spent", null, "spent"), told);
        Assert.Equal("over", WorkMeter.Run(meter, () => Spent(50), () => "over"));
        Assert.Equal("spent", WorkMeter.Within(0.5m, () => Spent(1)));

        static string Spent(int operations)
        {
            WorkMeter.Spend(operations);
            return "spent";
        }
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
