using LayoutService.Engine.Ceilings;

namespace LayoutService.Engine.Tests.Optimum;

public sealed class RowOptimumTests
{
    [Fact]
    public void Full_rows_are_as_few_as_the_general_solver_proves_on_200_rooms()
    {
        var trials = RowTrial.Run(0, 200);
        Assert.All(trials, t => Assert.True(t.Planned == t.Proved, t.ToString()));
        Assert.Equal(200, trials.Count);
    }
}

/// <summary>One room's full rows: planned, and proved least.</summary>
internal sealed record RowTrial(SeededSurvey Room, int Planned, int? Proved)
{
    /// <summary>So many rooms that have a plan, from a first seed on.</summary>
    public static List<RowTrial> Run(int first, int count)
    {
        var trials = new List<RowTrial>();
        for (var seed = first; trials.Count < count && seed < first + (2 * count); seed++)
        {
            var room = SeededSurveys.Make(seed);
            if (LayoutEngine.Plan(room.Survey) is PlanOutcome.Made made)
            {
                trials.Add(new RowTrial(room, made.Plan.Strapping.Rows.Count(r => !r.Short), RowProgram.FewestFullRows(room.Survey)));
            }
        }

        return trials;
    }

    public override string ToString() => $"{Room}: planned {Planned}, proved {Proved?.ToString() ?? "nothing"}";
}
