using LayoutService.Api.Plans.Answers;
using LayoutService.Api.Wire;
using Microsoft.OpenApi;

namespace LayoutService.Api.Describing;

/// <summary>The contract: generated from the types that are read and written, and the rules that are enforced.</summary>
public static class ContractServices
{
    public static void AddContract(this IServiceCollection services)
    {
        services.ConfigureHttpJsonOptions(json => WireJson.Apply(json.SerializerOptions));
        services.AddEndpointsApiExplorer();
        services.AddSingleton<ContractDocuments>();
        services.AddSwaggerGen(contract =>
        {
            contract.SwaggerDoc("v1", new OpenApiInfo
            {
                Title = "LayoutService",
                Version = "1.0.0",
                Description = "Plans a strapped and boarded ceiling under an existing wood floor: one room in, the whole plan out.",
                License = new OpenApiLicense { Name = "MIT", Identifier = "MIT" },
            });
            contract.CustomSchemaIds(NameOf);
            contract.SupportNonNullableReferenceTypes();
            contract.IncludeXmlComments(Path.Combine(AppContext.BaseDirectory, "LayoutService.Api.xml"));
            contract.SchemaFilter<WireShapeFilter>();
            contract.SchemaFilter<ClosedRequestFilter>();
            contract.SchemaFilter<OpenAnswerFilter>();
            contract.SchemaFilter<BoundsFilter>();
            contract.OperationFilter<OperationTouches>();
        });
    }

    private static string NameOf(Type type) => type switch
    {
        _ when type == typeof(WireLength) => "Length",
        _ when type == typeof(WirePoint) => "Point",
        _ when type == typeof(PointAnswer) => "Place",
        _ when type == typeof(WirePart) => "PlanPart",
        _ => type.Name,
    };
}
