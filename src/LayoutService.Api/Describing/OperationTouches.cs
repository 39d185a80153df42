using System.Globalization;
using System.Text.Json.Nodes;
using LayoutService.Api.Bulk;
using LayoutService.Api.Comparisons;
using LayoutService.Api.Hosting;
using LayoutService.Api.Jobs;
using LayoutService.Api.Plans.Validation;
using LayoutService.Api.Plans.Writing;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace LayoutService.Api.Describing;

/// <summary>Adds to each operation what its handler cannot say: headers, the query, examples, titles of problems.</summary>
internal sealed class OperationTouches : IOperationFilter
{
    public void Apply(OpenApiOperation operation, OperationFilterContext context)
    {
        foreach (var (status, response) in operation.Responses ?? [])
        {
            if (response is OpenApiResponse own)
            {
                own.Headers = Headers(status, context.ApiDescription.RelativePath?.StartsWith("v1/", StringComparison.Ordinal) != true);
                foreach (var list in (own.Content ?? new Dictionary<string, IOpenApiMediaType>()).Values.Select(content => content.Schema).OfType<OpenApiSchema>().Where(schema => schema.Type == JsonSchemaType.Array))
                {
                    list.MaxItems ??= BoundsFilter.MostAnswerItems;
                }
                own.Description = Title(status) ?? own.Description;
            }
        }

        if (operation.RequestBody is OpenApiRequestBody body)
        {
            body.Required = true;
            foreach (var content in (body.Content ?? new Dictionary<string, IOpenApiMediaType>()).Values.OfType<OpenApiMediaType>())
            {
                content.Examples = ContractExamples.Requests(operation.OperationId);
            }
        }

        foreach (var place in (operation.Parameters ?? []).OfType<OpenApiParameter>())
        {
            place.Description ??= "Its id, as the list has it.";
            place.Schema = new OpenApiSchema { Type = JsonSchemaType.String, MinLength = 1, MaxLength = 64, Pattern = WireRules.IdPattern };
        }

        if (operation.OperationId is "createPlan" or BulkEndpoints.Operation or JobEndpoints.Operation or ComparisonEndpoints.Operation)
        {
            (operation.Parameters ??= []).Add(Include());
        }

        DocumentTouches.Apply(operation);
    }

    private static OpenApiParameter Include() => new()
    {
        Name = "include",
        In = ParameterLocation.Query,
        Description = "Which blocks of the answer to send, separated by commas; head and summary always come. Default all; the drawing comes only when it is named, as in all,drawing.",
        Style = ParameterStyle.Form,
        Explode = false,
        Schema = new OpenApiSchema
        {
            Type = JsonSchemaType.Array,
            MinItems = 1,
            MaxItems = Blocks.Words.Count,
            Items = new OpenApiSchema { Type = JsonSchemaType.String, Enum = [.. Blocks.Words.Select(w => JsonValue.Create(w.Word))] },
        },
    };

    private static Dictionary<string, IOpenApiHeader> Headers(string status, bool unlimited)
    {
        var headers = new Dictionary<string, IOpenApiHeader>(StringComparer.Ordinal)
        {
            [RequestIds.Header] = new OpenApiHeader
            {
                Description = "Id of this call: the caller's own when it sent one, else a new one.",
                Schema = new OpenApiSchema { Type = JsonSchemaType.String, MinLength = 1, MaxLength = 64, Pattern = "^[A-Za-z0-9._-]+$" },
            },
        };
        headers["Access-Control-Allow-Origin"] = Text("The origin of the page that calls, where the operator allows it.", 200);
        if (!unlimited && status[0] is '2' or '4')
        {
            headers["RateLimit-Policy"] = Text("Calls in a window, and the window's seconds, as in \"minute\";q=60;w=60; where the operator sets a limit.", 100);
            headers["RateLimit"] = Text("Calls left, and seconds to the next window, as in \"minute\";r=59;t=60; where the operator sets a limit.", 100);
        }

        if (status is "401")
        {
            headers["WWW-Authenticate"] = Text("How to say who calls.", 100);
        }

        if (status is "429" or "503")
        {
            headers["Retry-After"] = new OpenApiHeader
            {
                Description = "Seconds after which to try again.",
                Schema = new OpenApiSchema { Type = JsonSchemaType.Integer, Format = "int32", Minimum = "1", Maximum = "3600" },
            };
        }

        return headers;
    }

    private static OpenApiHeader Text(string description, int longest) => new()
    {
        Description = description,
        Schema = new OpenApiSchema { Type = JsonSchemaType.String, MaxLength = longest, Pattern = WireRules.TextPattern },
    };

    private static string? Title(string status) => status == "200"
        ? "The answer."
        : string.Join("; or: ", ProblemKind.All
            .Where(k => k.Status.ToString(CultureInfo.InvariantCulture) == status).Select(k => k.Title)) is { Length: > 0 } titles ? titles + "." : null;
}
