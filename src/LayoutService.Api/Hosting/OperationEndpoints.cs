namespace LayoutService.Api.Hosting;

/// <summary>Calls for those who run the service or find their way in it.</summary>
public static class OperationEndpoints
{
    public static void MapOperation(this IEndpointRouteBuilder routes)
    {
        var operation = routes.MapGroup("").WithTags("Operation");
        operation.MapGet("/v1/limits", () => JsonAnswer.Of(new LimitsAnswer()))
            .AddEndpointFilter(new Tagged(3600))
            .AddEndpointFilter(new Acceptable("application/json"))
            .WithName("getLimits")
            .WithSummary("Limits of a request")
            .WithDescription("The largest that each part of a request may be. One past any of them is refused.")
            .Produces<LimitsAnswer>()
            .ReadingProblems();
        operation.MapGet("/health/live", () => JsonAnswer.Of(new HealthAnswer("live")))
            .AddEndpointFilter(new Acceptable("application/json"))
            .WithName("getLive")
            .WithSummary("Is the process alive")
            .WithDescription("Answers as long as the process can answer at all.")
            .Produces<HealthAnswer>()
            .Produces<Problem>(StatusCodes.Status406NotAcceptable, ProblemResult.MediaType)
            .Produces<Problem>(StatusCodes.Status500InternalServerError, ProblemResult.MediaType);
        operation.MapGet("/health/ready", (Readiness readiness) => readiness.IsReady
                ? JsonAnswer.Of(new HealthAnswer("ready"))
                : new ProblemResult(ProblemKind.Busy, "The service is starting or about to stop."))
            .AddEndpointFilter(new Acceptable("application/json"))
            .WithName("getReady")
            .WithSummary("May requests be sent")
            .WithDescription("Answers 503 before the service has warmed up, and once it has been told to stop.")
            .Produces<HealthAnswer>()
            .Produces<Problem>(StatusCodes.Status406NotAcceptable, ProblemResult.MediaType)
            .Produces<Problem>(StatusCodes.Status500InternalServerError, ProblemResult.MediaType)
            .Produces<Problem>(StatusCodes.Status503ServiceUnavailable, ProblemResult.MediaType);
        operation.MapGet("/health/startup", (Readiness readiness) => readiness.HasStarted
                ? JsonAnswer.Of(new HealthAnswer("started"))
                : new ProblemResult(ProblemKind.Busy, "The service is starting."))
            .AddEndpointFilter(new Acceptable("application/json"))
            .WithName("getStartup")
            .WithSummary("Has it started")
            .WithDescription("Answers 503 until the service has warmed up, and 200 from then to its end.")
            .Produces<HealthAnswer>()
            .Produces<Problem>(StatusCodes.Status406NotAcceptable, ProblemResult.MediaType)
            .Produces<Problem>(StatusCodes.Status500InternalServerError, ProblemResult.MediaType)
            .Produces<Problem>(StatusCodes.Status503ServiceUnavailable, ProblemResult.MediaType);
    }
}

/// <summary>How the service is.</summary>
/// <param name="Status">`live`, `ready` or `started`.</param>
public sealed record HealthAnswer(string Status);
