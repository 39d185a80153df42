using System.Text.Json.Nodes;
using LayoutService.Api.Documents;
using LayoutService.Api.Jobs;
using Microsoft.OpenApi;

namespace LayoutService.Api.Describing;

/// <summary>Adds the forms other than JSON, and the query <c>view</c>, to the operations that have them.</summary>
internal static class DocumentTouches
{
    private const int MostBytes = 100_000_000;

    public static void Apply(OpenApiOperation operation)
    {
        if (operation.OperationId == "createPlan")
        {
            Add(operation, PlanForms.Table);
            operation.Parameters!.Add(Layers());
        }
        else if (operation.OperationId == JobEndpoints.Operation)
        {
            Add(operation, JobForms.Table);
        }
    }

    private static OpenApiParameter Layers() => new()
    {
        Name = LayerQuery.Name,
        In = ParameterLocation.Query,
        Description = "What an answer in image/svg+xml shows, separated by commas; default all. No other form knows it.",
        Style = ParameterStyle.Form,
        Explode = false,
        Schema = new OpenApiSchema
        {
            Type = JsonSchemaType.Array,
            MinItems = 1,
            MaxItems = LayerQuery.Words.Count,
            Items = new OpenApiSchema { Type = JsonSchemaType.String, Enum = [.. LayerQuery.Words.Select(layer => JsonValue.Create(layer.Word))] },
        },
    };

    private static void Add<T>(OpenApiOperation operation, AnswerForms<T> forms)
    {
        if (operation.Responses!["200"] is OpenApiResponse { Content: { } content })
        {
            foreach (var form in forms.MediaTypes.Where(form => !content.ContainsKey(form)))
            {
                content[form] = new OpenApiMediaType { Schema = new OpenApiSchema { Type = JsonSchemaType.String, Format = "binary", MaxLength = MostBytes } };
            }
        }

        (operation.Parameters ??= []).Add(new OpenApiParameter
        {
            Name = "view",
            In = ParameterLocation.Query,
            Description = "Which document of a form that has several: takeoff (default), cut-list, rows, checks, holes of text/csv; request-for-quotation (default), order of application/xml. A job has no rows, checks and holes.",
            Schema = new OpenApiSchema { Type = JsonSchemaType.String, Enum = [.. forms.Views.Select(view => JsonValue.Create(view))] },
        });
    }
}
