namespace LayoutService.Api.Hosting;

/// <summary>
/// Lets pages of other origins call the service, as the calculator in a yard's page does. Nothing is sent along that would tell who
/// a person is (no cookies, no credentials), so any origin may unless the operator lists some.
/// </summary>
public static class OtherOrigins
{
    private static readonly TimeSpan Remembered = TimeSpan.FromHours(2);

    private static readonly string[] Readable = [RequestIds.Header, "Retry-After", "ETag", "Content-Disposition", "RateLimit", "RateLimit-Policy"];

    public static void AddOtherOrigins(this WebApplicationBuilder builder)
    {
        var settings = builder.Configuration.GetSection("Service").Get<ServiceSettings>() ?? new ServiceSettings();
        var origins = settings.AllowedOrigins.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        builder.Services.AddCors(cors => cors.AddDefaultPolicy(policy =>
        {
            _ = origins is ["*"] ? policy.AllowAnyOrigin() : policy.WithOrigins(origins);
            policy.WithMethods("GET", "POST").WithHeaders("Content-Type", RequestIds.Header).WithExposedHeaders(Readable).SetPreflightMaxAge(Remembered);
        }));
    }
}
