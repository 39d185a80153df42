using FluentValidation;
using LayoutService.Api.Comparisons.Answers;
using LayoutService.Api.Comparisons.Requests;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans;
using LayoutService.Api.Plans.Writing;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Comparisons;

/// <summary>Variants of one room side by side.</summary>
public static class ComparisonEndpoints
{
    /// <summary>Operation id of the call.</summary>
    public const string Operation = "createComparison";

    public static void AddComparisons(this IServiceCollection services)
    {
        services.AddSingleton<IValidator<ComparisonRequest>, ComparisonRequestValidator>();
        services.AddSingleton<ComparisonDesk>();
    }

    public static void MapComparisons(this IEndpointRouteBuilder routes) =>
        routes.MapGroup("/v1").WithTags("Orders").AddEndpointFilter(new Acceptable("application/json"))
            .MapPost("/comparisons", Compare)
            .WithName(Operation)
            .WithSummary("Compare variants of a room")
            .WithDescription("One room and named changes of it in, a table of the figures that a person decides by out, with the best by each. A variant without a sensible plan says why in its line. With `include` each line holds its plan.")
            .Produces<ComparisonAnswer>()
            .PlansProblems();

    private static async Task<IResult> Compare(JsonBody<ComparisonRequest> body, HttpRequest request, ComparisonDesk desk, CancellationToken stop)
    {
        if (!PlanEndpoints.TryBlocks(request.Query, out var blocks, out var wrong))
        {
            return wrong;
        }

        var (answer, problem) = await desk.CompareAsync(body, request.Query.Count == 0 ? null : blocks, stop);
        return answer is null ? problem! : JsonAnswer.Of(answer);
    }
}
