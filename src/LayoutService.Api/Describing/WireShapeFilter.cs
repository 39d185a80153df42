using System.Text.Json.Nodes;
using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Wire;
using LayoutService.Engine.Measures;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace LayoutService.Api.Describing;

/// <summary>Describes the types that have their own form in JSON: lengths and points.</summary>
internal sealed class WireShapeFilter : ISchemaFilter
{
    /// <summary>
    /// Trade notation as far as a pattern can say it: a quantity and its unit, or feet and then inches. Every text that is
    /// read matches it.
    /// </summary>
    public const string LengthPattern =
        "^[ \\u00A0\\u2007\\u2009\\u202F\\u2010-\\u2014\\u2212-]*[0-9.\\u00BC-\\u00BE\\u215B-\\u215E][0-9A-Za-z./' \"`\\u00A0\\u00B4\\u00BC-\\u00BE\\u02B9\\u02BA\\u2007\\u2009\\u2010-\\u2014\\u2018\\u2019\\u201B-\\u201D\\u201F\\u202F\\u2032\\u2033\\u2044\\u2212\\u215B-\\u215E\\uFF02\\uFF07-]*$";

    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema open || context.MemberInfo is not null)
        {
            return;
        }

        if (context.Type == typeof(WireLength))
        {
            DescribeLength(open);
        }
        else if (context.Type == typeof(WirePoint))
        {
            Clear(open);
            open.Type = JsonSchemaType.Array;
            open.Description = "A place: x (right) and y (up), as on a floor plan seen from above.";
            open.Items = new OpenApiSchemaReference("Length", null);
            (open.MinItems, open.MaxItems) = (2, 2);
        }
        else if (context.Type == typeof(WirePart))
        {
            Clear(open);
            open.Type = JsonSchemaType.Object;
            open.Description = "Members of `PlanRequest`: all, or some that another part completes.";
        }
        else if (context.Type == typeof(PointAnswer))
        {
            Clear(open);
            open.Type = JsonSchemaType.Array;
            open.Description = "A place in the caller's own coordinates: x and y.";
            open.Items = new OpenApiSchema { Type = JsonSchemaType.Number, Format = "double", Minimum = "-1000000000", Maximum = "1000000000" };
            (open.MinItems, open.MaxItems) = (2, 2);
        }
    }

    private static void DescribeLength(OpenApiSchema open)
    {
        Clear(open);
        open.Type = JsonSchemaType.Number | JsonSchemaType.String;
        open.Description = "A length: a number in the request's units (inches or millimetres), or a text in trade notation with its own unit, "
            + "such as 12' 6 1/2\", 150 1/2 in, 3.81 m or 3810 mm. A text without a unit is refused.";
        open.Minimum = (-WireLength.MaxNumber).ToString();
        open.Maximum = WireLength.MaxNumber.ToString();
        open.MinLength = 2;
        open.MaxLength = TradeNotation.MaxTextLength;
        open.Pattern = LengthPattern;
        open.Examples = [JsonValue.Create(150.5), JsonValue.Create("12' 6 1/2\""), JsonValue.Create("3810 mm")];
    }

    private static void Clear(OpenApiSchema open)
    {
        open.Properties = null;
        open.Required = null;
        open.AdditionalPropertiesAllowed = true;
        open.AdditionalProperties = null;
        open.Format = null;
    }
}
