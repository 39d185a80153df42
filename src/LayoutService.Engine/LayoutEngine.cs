using LayoutService.Engine.Ceilings;
using LayoutService.Engine.Sheets;
using LayoutService.Engine.Strapping;
using LayoutService.Engine.Takeoff;

namespace LayoutService.Engine;

/// <summary>A room in, a plan out: pure and deterministic. The only place where the stages meet.</summary>
public static class LayoutEngine
{
    /// <summary>Version of the planning method; a change that can alter any plan changes it.</summary>
    public const string EngineVersion = "1.0.0";

    public static PlanOutcome Plan(Survey survey) =>
        new PlanOutcome.NotPossible([]);
}

/// <summary>Either a plan, or the reasons why no sensible plan exists.</summary>
public abstract record PlanOutcome
{
    private PlanOutcome()
    {
    }

    public sealed record Made(CeilingPlan Plan) : PlanOutcome;

    public sealed record NotPossible(IReadOnlyList<Finding> Findings) : PlanOutcome;
}

/// <summary>The whole answer for one room, in the order of the job.</summary>
public sealed record CeilingPlan
{
    public required PlanSummary Summary { get; init; }

    public required IReadOnlyList<WallLine> Walls { get; init; }

    public required JoistPlan Joists { get; init; }

    public required StrappingPlan Strapping { get; init; }

    public required SheetPlan Sheets { get; init; }

    public required CutPlan CutPlan { get; init; }

    public required TakeoffPlan Takeoff { get; init; }

    public required IReadOnlyList<WorkStep> Steps { get; init; }

    public required IReadOnlyList<Alternative> Alternatives { get; init; }
}
