using LayoutService.Api.Bulk.Answers;
using LayoutService.Api.Hosting;
using LayoutService.Api.Plans;
using LayoutService.Api.Plans.Requests;
using LayoutService.Api.Plans.Writing;
using Microsoft.AspNetCore.Http.Metadata;

namespace LayoutService.Api.Bulk;

/// <summary>Many rooms in one call, as JSON Lines both ways.</summary>
internal static class BulkEndpoints
{
    public const string Operation = "createPlansInBulk";

    private const string Address = "/v1/plans/bulk";

    public static void AddBulk(this IServiceCollection services)
    {
        services.AddSingleton<RoomDesk>();
        services.AddSingleton(s => new BulkPlaces(s.GetRequiredService<ServiceSettings>().BulkCalls));
        services.AddSingleton<BulkDesk>();
    }

    /// <summary>True for a call of this kind, routed or not.</summary>
    public static bool IsAsked(HttpRequest request) => request.Path.StartsWithSegments(Address, StringComparison.Ordinal);

    public static void MapBulk(this IEndpointRouteBuilder routes) =>
        routes.MapPost(Address, Bulk)
            .WithTags("Plans")
            .AddEndpointFilter(new Acceptable(BulkForms.Lines, BulkForms.LinesToo))
            .WithName(Operation)
            .WithSummary("Plan many rooms")
            .WithDescription("JSON Lines both ways: each line is the request of one room, and each line of the answer is what became of it, in the same order. Both are streamed, and what is sent is read ahead up to `bulkReadAheadBytes` of the limits. The first line may be `{\"common\": {…}}`, laid under every room (RFC 7396). A room that cannot be read or planned never stops the rest. The last line is a summary; an answer without it was cut. The schemas are those of one line.")
            .WithMetadata(new AcceptsMetadata([BulkForms.Lines, BulkForms.LinesToo], typeof(PlanRequest)))
            .Produces<BulkLineAnswer>(StatusCodes.Status200OK, BulkForms.Lines, BulkForms.LinesToo)
            .BulkProblems();

    private static async Task<IResult> Bulk(HttpContext context, BulkDesk desk)
    {
        if (!BulkForms.Takes(context.Request, out var wrong))
        {
            context.Response.Headers.Accept = BulkForms.Both;
            return new ProblemResult(ProblemKind.NotJson, wrong);
        }

        return PlanEndpoints.TryBlocks(context.Request.Query, out var blocks, out var unknown)
            ? await desk.AnswerAsync(context, blocks)
            : unknown;
    }
}
