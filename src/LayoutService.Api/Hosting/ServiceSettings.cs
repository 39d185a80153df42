namespace LayoutService.Api.Hosting;

/// <summary>What an operator may set, in configuration or as <c>Service__…</c> environment variables.</summary>
public sealed class ServiceSettings
{
    /// <summary>Requests in the engine at once; 0 stands for one for each processor.</summary>
    public int PlansAtOnce { get; init; }

    /// <summary>Requests that may wait for the engine; more are answered with 503.</summary>
    public int PlansWaiting { get; init; } = 256;

    /// <summary>Seconds that one call may be in the engine; then it is answered with 503. The limit of work mostly ends it before.</summary>
    public int PlanSeconds { get; init; } = 60;

    /// <summary>Callers that are known; when there are any, others get 401.</summary>
    public IReadOnlyList<CallerKey> Keys { get; init; } = [];

    /// <summary>Requests that one caller (by key, else by network address) may send in a minute; 0 stands for no limit.</summary>
    public int RequestsPerMinute { get; init; }

    /// <summary>Calls in bulk at once; more are answered with 503. Each may hold what it has read ahead.</summary>
    public int BulkCalls { get; init; } = 16;

    /// <summary>Seconds that a call in bulk may stand still: nothing comes though nothing is left to plan, or nothing is taken.</summary>
    public int BulkIdleSeconds { get; init; } = 60;

    /// <summary>Seconds that a call in bulk may go on once the service is told to stop; then it ends with `complete` false.</summary>
    public int BulkDrainSeconds { get; init; } = 10;

    /// <summary>Whether `GET /metrics` is answered.</summary>
    public bool Metrics { get; init; } = true;

    /// <summary>Seconds during which the service, once told to stop, answers but says that it is not ready.</summary>
    public int DrainSeconds { get; init; }

    /// <summary>Plans of a typical room made in the background after the start, so that calls soon run at full speed; 0 for none.</summary>
    public int WarmUpPlans { get; init; } = 60;

    /// <summary>Origins whose pages may call the service, separated by commas; `*` stands for any, nothing for none.</summary>
    public string AllowedOrigins { get; init; } = "*";
}
