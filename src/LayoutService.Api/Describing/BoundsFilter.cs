using LayoutService.Api.Hosting;
using LayoutService.Api.Plans.Validation;
using LayoutService.Api.Wire;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace LayoutService.Api.Describing;

/// <summary>Gives every text, list and number that has no bounds of its own the general ones.</summary>
internal sealed class BoundsFilter : ISchemaFilter
{
    internal const int MostAnswerItems = 1_000_000;
    private const int MostAnswerText = Fault.MostText;
    private const string Furthest = "1000000000000";

    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema open || context.MemberInfo is not null || open.Properties is null)
        {
            return;
        }

        var request = ClosedRequestFilter.IsRequest(context.Type);
        foreach (var member in open.Properties.Values)
        {
            Bound(member, request);
        }
    }

    private static void Bound(IOpenApiSchema? member, bool request)
    {
        if (member is not OpenApiSchema open)
        {
            return;
        }

        if (open.Type == JsonSchemaType.String && open.Enum is not { Count: > 0 })
        {
            open.MaxLength ??= request ? ServiceLimits.MaxTextLength : MostAnswerText;
            open.Pattern ??= open.Format is null ? WireRules.TextPattern : null;
        }
        else if (open.Type == JsonSchemaType.Array)
        {
            open.MaxItems ??= request ? ServiceLimits.MaxItems : MostAnswerItems;
            Bound(open.Items, request);
        }
        else if (open.Type is JsonSchemaType.Number or JsonSchemaType.Integer)
        {
            var most = open.Type == JsonSchemaType.Integer ? "1000000000" : Furthest;
            open.Minimum ??= "-" + most;
            open.Maximum ??= most;
        }
        else if (open.Type == JsonSchemaType.Object)
        {
            Bound(open.AdditionalProperties, request);
        }
    }
}
