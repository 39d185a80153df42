using System.Globalization;

namespace LayoutService.Api.Hosting;

/// <summary>
/// Who may call <c>/v1</c> and how often. Without settings: everybody, without end. With <c>Service:Keys</c> a call needs a
/// known key in its header; with a limit each key, or each address, has its own count, so that one cannot starve another.
/// </summary>
public static class Callers
{
    public static void AddCallers(this IServiceCollection services, ServiceSettings settings)
    {
        services.AddSingleton(new CallerKeys(settings.Keys));
        services.AddSingleton(new CallerQuota(TimeProvider.System));
    }

    public static void UseCallers(this WebApplication app)
    {
        var keys = app.Services.GetRequiredService<CallerKeys>();
        var quota = app.Services.GetRequiredService<CallerQuota>();
        var general = app.Services.GetRequiredService<ServiceSettings>().RequestsPerMinute;
        if (!keys.Wanted && general <= 0)
        {
            return;
        }

        app.Use((context, next) => Refused(context, keys, quota, general) is { } problem ? problem.ExecuteAsync(context) : next(context));
    }

    private static ProblemResult? Refused(HttpContext context, CallerKeys keys, CallerQuota quota, int general)
    {
        if (!context.Request.Path.StartsWithSegments("/v1", StringComparison.Ordinal))
        {
            return null;
        }

        var key = keys.Wanted ? keys.Find(context.Request.Headers[CallerKeys.Header]) : null;
        if (keys.Wanted && key is null)
        {
            context.Response.Headers.WWWAuthenticate = "ApiKey realm=\"layout-service\"";
            return new ProblemResult(ProblemKind.Unauthorized, $"This service answers callers that it knows; send your key in the header {CallerKeys.Header}.");
        }

        var limit = key is { RequestsPerMinute: > 0 } ? key.RequestsPerMinute : general;
        if (limit <= 0)
        {
            return null;
        }

        var use = quota.Use(key is null ? "address " + context.Connection.RemoteIpAddress : "key " + key.Name, limit);
        Tell(context.Response.Headers, use);
        return use.Allowed ? null : new ProblemResult(ProblemKind.TooMany, $"One caller may send {use.Limit} requests a minute; try again in {use.SecondsToNext} s.");
    }

    /// <summary>RateLimit and RateLimit-Policy as the HTTPAPI working group's draft has them (from memory).</summary>
    private static void Tell(IHeaderDictionary headers, QuotaUse use)
    {
        headers["RateLimit-Policy"] = string.Create(CultureInfo.InvariantCulture, $"\"minute\";q={use.Limit};w={CallerQuota.WindowSeconds}");
        headers["RateLimit"] = string.Create(CultureInfo.InvariantCulture, $"\"minute\";r={use.Left};t={use.SecondsToNext}");
        if (!use.Allowed)
        {
            headers.RetryAfter = use.SecondsToNext.ToString(CultureInfo.InvariantCulture);
        }
    }
}
