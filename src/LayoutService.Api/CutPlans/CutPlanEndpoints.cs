using FluentValidation;
using LayoutService.Api.CutPlans.Answers;
using LayoutService.Api.CutPlans.Requests;
using LayoutService.Api.CutPlans.Validation;
using LayoutService.Api.Hosting;
using LayoutService.Api.Wire;

namespace LayoutService.Api.CutPlans;

/// <summary>The cutting engine alone.</summary>
public static class CutPlanEndpoints
{
    /// <summary>Operation id of the call.</summary>
    public const string Operation = "createCutPlan";

    public static void AddCutPlans(this IServiceCollection services)
    {
        services.AddSingleton<IValidator<CutPlanRequest>, CutPlanRequestValidator>();
        services.AddSingleton<CutRules>();
        services.AddSingleton<CutDesk>();
    }

    public static void MapCutPlans(this IEndpointRouteBuilder routes) =>
        routes.MapGroup("/v1").WithTags("Cut plans").AddEndpointFilter(new Acceptable("application/json"))
            .MapPost("/cut-plans", Cut)
            .WithName(Operation)
            .WithSummary("Cut pieces from stock")
            .WithDescription("Wanted lengths and rectangles in, a cut plan out, with a bound that no plan can go below. The call is pure: the same request has the same answer. A hard case returns the best plan that its steps found, and the gap to the bound.")
            .Produces<CuttingAnswer>()
            .PlansProblems();

    private static async Task<IResult> Cut(JsonBody<CutPlanRequest> body, CutDesk desk, CancellationToken stop)
    {
        var (answer, problem) = await desk.CutAsync(body, stop);
        return answer is null ? problem! : JsonAnswer.Of(answer);
    }
}
