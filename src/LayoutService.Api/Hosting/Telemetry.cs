using OpenTelemetry;
using OpenTelemetry.Metrics;
using OpenTelemetry.Resources;
using OpenTelemetry.Trace;

namespace LayoutService.Api.Hosting;

/// <summary>
/// Metrics and traces by OpenTelemetry: figures at <c>GET /metrics</c> for whoever collects them; spans and figures sent by
/// OTLP when <c>OTEL_EXPORTER_OTLP_ENDPOINT</c> names a collector, else nothing leaves. No payload, query or key is in either.
/// </summary>
public static class Telemetry
{
    private const string MetricsPath = "/metrics";

    public static void AddTelemetry(this WebApplicationBuilder builder)
    {
        var settings = builder.Configuration.GetSection("Service").Get<ServiceSettings>() ?? new ServiceSettings();
        var sent = builder.Configuration["OTEL_EXPORTER_OTLP_ENDPOINT"] is { Length: > 0 };
        if (!settings.Metrics && !sent)
        {
            return;
        }

        var telemetry = builder.Services.AddOpenTelemetry()
            .ConfigureResource(resource => resource.AddService("layout-service"))
            .WithMetrics(metrics =>
            {
                metrics.AddMeter(EngineWatch.Name, "Microsoft.AspNetCore.Hosting", "Microsoft.AspNetCore.Server.Kestrel", "Microsoft.AspNetCore.RateLimiting").AddRuntimeInstrumentation();
                metrics.AddView("layout.engine.duration", new ExplicitBucketHistogramConfiguration { Boundaries = [0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 30, 60] });
                metrics.AddView("layout.engine.work", new ExplicitBucketHistogramConfiguration { Boundaries = [1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9] });
                metrics.AddView("layout.plan.gap", new ExplicitBucketHistogramConfiguration { Boundaries = [0, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5] });
                if (settings.Metrics)
                {
                    metrics.AddPrometheusExporter();
                }
            });
        if (sent)
        {
            telemetry.WithTracing(traces => traces.AddSource(EngineWatch.Name).AddAspNetCoreInstrumentation()).UseOtlpExporter();
        }
    }

    public static void MapMetrics(this WebApplication app)
    {
        if (app.Services.GetRequiredService<ServiceSettings>().Metrics)
        {
            app.MapPrometheusScrapingEndpoint(MetricsPath).ExcludeFromDescription();
        }
    }
}
