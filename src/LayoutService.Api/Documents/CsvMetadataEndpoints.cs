using LayoutService.Api.Hosting;

namespace LayoutService.Api.Documents;

/// <summary>What the columns of CSV answers mean.</summary>
public static class CsvMetadataEndpoints
{
    public static void MapCsvMetadata(this IEndpointRouteBuilder routes) =>
        routes.MapGroup("/v1").WithTags("Operation").AddEndpointFilter(new Acceptable(CsvMetadata.MediaType, "application/json"))
            .MapGet("/csv-metadata/{id}", Get)
            .WithName("getCsvMetadata")
            .WithSummary("What the columns of a CSV answer mean")
            .WithDescription("Metadata by the W3C vocabulary for tabular data, for takeoff, cut-list, rows and checks. The header Link of a CSV answer leads here.")
            .Produces<object>(contentType: CsvMetadata.MediaType)
            .Produces<Problem>(StatusCodes.Status404NotFound, ProblemResult.MediaType)
            .ReadingProblems();

    private static IResult Get(string id) =>
        OrderForms.OfRooms.FirstOrDefault(known => known.Name == id) is { } table
            ? Results.Text(CsvMetadata.Of(table).ToJsonString(), CsvMetadata.MediaType)
            : new ProblemResult(ProblemKind.NotFound, "No CSV answer has this name.");
}
