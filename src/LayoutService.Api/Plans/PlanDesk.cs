using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Mapping;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Plans.Validation;
using LayoutService.Api.Plans.Writing;
using LayoutService.Api.Rooms;
using LayoutService.Api.Wire;
using LayoutService.Engine;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.Plans;

/// <summary>What follows the reading of a request: rules, survey, plan, answer. Every call that plans goes this way.</summary>
internal sealed class PlanDesk(RequestRules rules, EngineGate gate)
{
    /// <summary>The request as a survey, or the problem to answer with.</summary>
    public (MappedPlan? Asked, ProblemResult? Problem) Accept(JsonBody<PlanRequest> body)
    {
        if (body.Problem is not null)
        {
            return (null, body.Problem);
        }

        var faults = rules.FaultsOf(body.Reading!);
        return faults.Count == 0
            ? (SurveyMapping.Of(body.Reading!.Value!), null)
            : (null, ProblemResult.Invalid(faults));
    }

    /// <summary>The plan of an accepted request, or the problem to answer with.</summary>
    public async ValueTask<(CeilingPlan? Plan, ProblemResult? Problem)> PlanAsync(MappedPlan asked, CancellationToken stop)
    {
        using var place = await gate.EnterAsync(stop);
        if (place is null)
        {
            return (null, ProblemResult.Busy());
        }

        return Plan(asked, place);
    }

    /// <summary>The same for a caller that has its place already.</summary>
    public static (CeilingPlan? Plan, ProblemResult? Problem) Plan(MappedPlan asked, EnginePlace place)
    {
        switch (LayoutEngine.Plan(asked.Survey, place.Meter()))
        {
            case PlanOutcome.Made made:
                EngineWatch.Made(made.Plan);
                return (made.Plan, null);
            case PlanOutcome.NotPossible none:
                return (null, NoPlan(none.Findings));
            default:
                throw new InvalidOperationException("The engine answered neither with a plan nor with findings.");
        }
    }

    public static string RequestDigestOf(JsonBody<PlanRequest> body) => RequestDigest.Of(body.Reading!.Root);

    private static ProblemResult NoPlan(IReadOnlyList<Finding> findings) => new(
        ProblemKind.NoPlan,
        findings.Count == 1 ? findings[0].Sentence.Text : "No sensible plan exists for this room; the findings say why.",
        findings: [.. NoPlans.Of(findings)]);
}
