using LayoutService.Api.CutPlans.Answers;
using LayoutService.Api.CutPlans.Requests;
using LayoutService.Api.CutPlans.Validation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Plans.Writing;
using LayoutService.Api.Rooms;
using LayoutService.Api.Wire;
using LayoutService.Engine;
using LayoutService.Engine.Ceilings;

namespace LayoutService.Api.CutPlans;

/// <summary>What follows the reading of a request for a cut plan: rules, order, cutting, answer.</summary>
internal sealed class CutDesk(CutRules rules, EngineGate gate)
{
    /// <summary>The answer, or the problem to answer with.</summary>
    public async ValueTask<(CuttingAnswer? Answer, ProblemResult? Problem)> CutAsync(JsonBody<CutPlanRequest> body, CancellationToken stop)
    {
        if (body.Problem is not null)
        {
            return (null, body.Problem);
        }

        var faults = rules.FaultsOf(body.Reading!);
        if (faults.Count > 0)
        {
            return (null, ProblemResult.Invalid(faults));
        }

        var asked = CutOrderMapping.Of(body.Reading!.Value!);
        using var place = await gate.EnterAsync(stop);
        if (place is null)
        {
            return (null, ProblemResult.Busy());
        }

        return CuttingEngine.Cut(asked.Order, place.Meter()) switch
        {
            CutOutcome.Made made => (Write(made.Plan, asked, RequestDigest.Of(body.Reading.Root)), null),
            CutOutcome.NotPossible none => (null, NoPlan(none.Findings)),
            _ => throw new InvalidOperationException("The engine answered neither with a cut plan nor with findings."),
        };
    }

    private static CuttingAnswer Write(CutPlan plan, MappedOrder asked, string requestDigest)
    {
        var imperial = asked.Order.Units == UnitSystem.Imperial;
        var block = CutPlanWriting.Of(plan, new AnswerInk(imperial));
        return new()
        {
            Reference = asked.Reference,
            Units = imperial ? UnitsWord.Imperial : UnitsWord.Metric,
            EngineVersion = LayoutEngine.EngineVersion,
            RequestDigest = requestDigest,
            Assumed = asked.Assumed,
            Stock = block.Stock,
            SheetStock = block.SheetStock,
            Kerf = block.Kerf,
            EndTrim = block.EndTrim,
            Results = block.Results,
        };
    }

    private static ProblemResult NoPlan(IReadOnlyList<Finding> findings) => new(
        ProblemKind.NoPlan,
        findings.Count == 1 ? findings[0].Sentence.Text : "The pieces cannot all be cut; the findings say why.",
        findings: [.. NoPlans.Of(findings)]);
}
