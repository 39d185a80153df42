using System.Reflection;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace LayoutService.Api.Describing;

/// <summary>
/// Leaves every object of an answer open, so that a later version may say more, and marks as required what is always there:
/// members that cannot be null, because nulls are left out.
/// </summary>
internal sealed class OpenAnswerFilter : ISchemaFilter
{
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema open || context.MemberInfo is not null
            || open.Properties is not { Count: > 0 } || ClosedRequestFilter.IsRequest(context.Type))
        {
            return;
        }

        open.AdditionalPropertiesAllowed = true;
        open.Required = null;
        foreach (var property in context.Type.GetProperties())
        {
            var name = char.ToLowerInvariant(property.Name[0]) + property.Name[1..];
            if (!open.Properties.TryGetValue(name, out var member))
            {
                continue;
            }

            if (Always(property))
            {
                (open.Required ??= new SortedSet<string>(StringComparer.Ordinal)).Add(name);
            }

            if (member is OpenApiSchema own)
            {
                own.Type &= ~JsonSchemaType.Null;
            }
        }
    }

    // a context of its own each time: one is not for several threads
    private static bool Always(PropertyInfo property) => property.PropertyType.IsValueType
        ? Nullable.GetUnderlyingType(property.PropertyType) is null
        : new NullabilityInfoContext().Create(property).ReadState == NullabilityState.NotNull;
}
