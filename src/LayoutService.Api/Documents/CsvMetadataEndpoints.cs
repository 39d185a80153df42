using LayoutService.Api.Hosting;

namespace LayoutService.Api.Documents;

/// <summary>What the columns of CSV answers mean.</summary>
public static class CsvMetadataEndpoints
{
    private static readonly string[] Forms = [CsvMetadata.MediaType, "application/json"];

    public static void MapCsvMetadata(this IEndpointRouteBuilder routes) =>
        routes.MapGroup("/v1").WithTags("Operation").AddEndpointFilter(new Acceptable("application/json"))
            .MapGet("/csv-metadata/{id}", Get)
            .WithName("getCsvMetadata")
            .WithSummary("What the columns of a CSV answer mean")
            .WithDescription("Metadata by the W3C vocabulary for tabular data, for takeoff, cut-list, rows and checks. The header Link of a CSV answer leads here.")
            .Produces<object>(StatusCodes.Status200OK, "application/json", CsvMetadata.MediaType)
            .WithMetadata(new OfferedForms(Forms))
            .Produces<Problem>(StatusCodes.Status404NotFound, ProblemResult.MediaType)
            .ReadingProblems();

    private static IResult Get(string id, HttpRequest request) =>
        OrderForms.OfRooms.FirstOrDefault(known => known.Name == id) is { } table
            ? Results.Text(CsvMetadata.Of(table).ToJsonString(), Acceptable.Best(request.Headers.Accept!, Forms) ?? CsvMetadata.MediaType)
            : new ProblemResult(ProblemKind.NotFound, "No CSV answer has this name.");
}
