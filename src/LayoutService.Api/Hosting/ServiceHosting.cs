using Serilog;
using Serilog.Events;
using Serilog.Formatting.Compact;

namespace LayoutService.Api.Hosting;

/// <summary>Logging, server and settings.</summary>
public static class ServiceHosting
{
    /// <summary>Log lines are JSON on standard output and hold method, path template, status and time, never a payload.</summary>
    public static void AddLogs(this WebApplicationBuilder builder)
    {
        builder.Logging.ClearProviders();
        builder.Services.AddSerilog(logs => logs
            .MinimumLevel.Is(LogEventLevel.Information)
            .MinimumLevel.Override("Microsoft", LogEventLevel.Warning)
            .MinimumLevel.Override("Microsoft.Hosting.Lifetime", LogEventLevel.Information)
            .MinimumLevel.Override("System", LogEventLevel.Warning)
            .WriteTo.Console(new RenderedCompactJsonFormatter()));
    }

    /// <summary>
    /// What the server itself takes. It lies above the limit of a body, so that a body past the limit is answered with 413 and
    /// then read to its end: a connection cut while the caller still sends would lose the answer.
    /// </summary>
    private const int MostBytesDrained = 16 * ServiceLimits.MaxBodyBytes;

    /// <summary>Seconds that calls which have begun have to finish, once the service no longer takes new ones.</summary>
    private const int SecondsToFinish = 20;

    public static void AddServer(this WebApplicationBuilder builder)
    {
        builder.WebHost.ConfigureKestrel(server =>
        {
            server.AddServerHeader = false;
            server.Limits.MaxRequestBodySize = MostBytesDrained;
        });
        var settings = builder.Configuration.GetSection("Service").Get<ServiceSettings>() ?? new ServiceSettings();
        builder.Services.AddSingleton(settings);

        // the drain counts within the time to stop, so what is being answered then has this long to finish
        builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout =
            TimeSpan.FromSeconds(settings.DrainSeconds + settings.BulkDrainSeconds + SecondsToFinish));
        builder.Services.AddSingleton<Readiness>();
        var gate = new EngineGate(
            settings.PlansAtOnce > 0 ? settings.PlansAtOnce : Environment.ProcessorCount, settings.PlansWaiting, TimeSpan.FromSeconds(settings.PlanSeconds));
        builder.Services.AddSingleton(_ => gate);
        EngineWatch.Show(gate);
        builder.Services.AddCallers(settings);
    }

    /// <summary>An error is a fault of ours; a call that is asked to come back is worth a look; probes are not worth a line.</summary>
    private static LogEventLevel Level(HttpContext context, Exception? fault) =>
        fault is not null || context.Response.StatusCode == StatusCodes.Status500InternalServerError ? LogEventLevel.Error
        : context.Request.Path.StartsWithSegments("/health", StringComparison.Ordinal) || context.Request.Path == "/metrics" ? LogEventLevel.Debug
        : context.Response.StatusCode is 429 or 503 ? LogEventLevel.Warning
        : LogEventLevel.Information;

    /// <summary>One line for each call.</summary>
    public static void UseCallLog(this WebApplication app) => app.UseSerilogRequestLogging(log =>
    {
        log.MessageTemplate = "{RequestMethod} {Route} {StatusCode} in {Elapsed:0.0} ms";
        log.EnrichDiagnosticContext = (line, context) =>
        {
            line.Set("Route", (context.GetEndpoint() as RouteEndpoint)?.RoutePattern.RawText ?? "none");
            line.Set("RequestId", context.TraceIdentifier);
        };
        log.GetLevel = (context, _, fault) => Level(context, fault);
        log.IncludeQueryInRequestPath = false;
        log.GetMessageTemplateProperties = (context, _, elapsed, status) =>
        [
            new("RequestMethod", new ScalarValue(context.Request.Method)),
            new("StatusCode", new ScalarValue(status)),
            new("Elapsed", new ScalarValue(elapsed)),
        ];
    });
}
