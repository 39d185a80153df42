using System.Globalization;
using LayoutService.Api.Bulk;

namespace LayoutService.Api.Hosting;

/// <summary>
/// Who may call <c>/v1</c> and how often. Without settings: everybody, without end. With <c>Service:Keys</c> a call needs a
/// known key in its header; with a limit each key, or each address, has its own count, and where several keys are known each has its
/// share of the engine and its queue, so that one cannot starve another.
/// </summary>
public static class Callers
{
    public static void AddCallers(this IServiceCollection services, ServiceSettings settings)
    {
        services.AddSingleton(new CallerKeys(settings.Keys));
        services.AddSingleton(new CallerQuota(TimeProvider.System));
        services.AddSingleton(provider => new CallerShare(provider.GetRequiredService<EngineGate>().Places + settings.PlansWaiting, settings.BulkCalls));
    }

    public static void UseCallers(this WebApplication app)
    {
        var keys = app.Services.GetRequiredService<CallerKeys>();
        var quota = app.Services.GetRequiredService<CallerQuota>();
        var settings = app.Services.GetRequiredService<ServiceSettings>();
        if (!keys.Wanted && settings.RequestsPerMinute <= 0)
        {
            return;
        }

        var share = settings.Keys.Count > 1 ? app.Services.GetRequiredService<CallerShare>() : null;
        app.Use((context, next) =>
        {
            if (!context.Request.Path.StartsWithSegments("/v1", StringComparison.Ordinal))
            {
                return next(context);
            }

            var key = keys.Wanted ? keys.Find(context.Request.Headers[CallerKeys.Header]) : null;
            return Refused(context, keys, key, quota, settings.RequestsPerMinute) is { } problem ? problem.ExecuteAsync(context)
                : share is null || key is null ? next(context)
                : WithinShareAsync(context, share, key.Name, next);
        });
    }

    private static async Task WithinShareAsync(HttpContext context, CallerShare share, string caller, RequestDelegate next)
    {
        var bulk = BulkEndpoints.IsAsked(context.Request);
        if (!share.TryEnter(caller, bulk))
        {
            await new ProblemResult(ProblemKind.Busy, $"This caller has {share.Most(bulk)} calls under way, as many as one may at once; try again in a second.").ExecuteAsync(context);
            return;
        }

        try
        {
            await next(context);
        }
        finally
        {
            share.Leave(caller, bulk);
        }
    }

    private static ProblemResult? Refused(HttpContext context, CallerKeys keys, CallerKey? key, CallerQuota quota, int general)
    {
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
