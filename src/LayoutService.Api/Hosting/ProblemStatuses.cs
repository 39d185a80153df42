namespace LayoutService.Api.Hosting;

/// <summary>Declares the problems that calls can answer with.</summary>
internal static class ProblemStatuses
{
    private static readonly int[] OfPlans = [400, 401, 406, 408, 413, 415, 422, 429, 500, 503];
    private static readonly int[] OfBulk = [400, 401, 406, 415, 429, 500, 503];
    private static readonly int[] OfReading = [401, 406, 429, 500];

    public static RouteHandlerBuilder PlansProblems(this RouteHandlerBuilder route) => Declare(route, OfPlans);

    public static RouteHandlerBuilder BulkProblems(this RouteHandlerBuilder route) => Declare(route, OfBulk);

    public static RouteHandlerBuilder ReadingProblems(this RouteHandlerBuilder route) => Declare(route, OfReading);

    private static RouteHandlerBuilder Declare(RouteHandlerBuilder route, int[] statuses)
    {
        foreach (var status in statuses)
        {
            route.Produces<Problem>(status, ProblemResult.MediaType);
        }

        return route;
    }
}
