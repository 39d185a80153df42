using FluentValidation;
using LayoutService.Api.Documents;
using LayoutService.Api.Hosting;
using LayoutService.Api.Jobs.Answers;
using LayoutService.Api.Jobs.Requests;
using LayoutService.Api.Rooms;
using LayoutService.Api.Wire;

namespace LayoutService.Api.Jobs;

/// <summary>Many rooms as one order.</summary>
public static class JobEndpoints
{
    /// <summary>Operation id of the call.</summary>
    public const string Operation = "createJob";

    public static void AddJobs(this IServiceCollection services)
    {
        services.AddSingleton<IValidator<JobRequest>, JobRequestValidator>();
        services.AddSingleton<RoomParts>();
        services.AddSingleton<JobDesk>();
    }

    public static void MapJobs(this IEndpointRouteBuilder routes) =>
        routes.MapGroup("/v1").WithTags("Orders").AddEndpointFilter(new Acceptable("application/json"))
            .MapPost("/jobs", Order)
            .WithName(Operation)
            .WithSummary("Plan many rooms as one order")
            .WithDescription("Many rooms in; one cut plan, one takeoff and one set of packs out, with what that saves against room by room, each room's part of the money, and its steps. Rooms may differ in units and ruleset, not in currency and taxes. One saw cuts the order: the widest kerf and the longest end trim of any room.")
            .Produces<JobAnswer>()
            .WithMetadata(new OfferedForms(JobForms.Table.MediaTypes))
            .PlansProblems();

    private static async Task<IResult> Order(JsonBody<JobRequest> body, HttpRequest request, JobDesk desk, CancellationToken stop)
    {
        if (!PlanQuery.TryRead(request, JobForms.Table, out var blocks, out var form, out var view, out var wrong))
        {
            return wrong;
        }

        request.HttpContext.Response.Headers.Vary = "Accept";
        var (job, problem) = await desk.OrderAsync(body, stop);
        return job is null ? problem! : form.Write(new(job, blocks), view);
    }
}
