using LayoutService.Api.Wire;

namespace LayoutService.Api.Hosting;

public static class Contract
{
    public static void AddContract(this IServiceCollection services) =>
        services.ConfigureHttpJsonOptions(json => WireJson.Apply(json.SerializerOptions));

    public static void MapContract(this WebApplication app)
    {
    }
}
