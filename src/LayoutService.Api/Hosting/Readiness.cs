using LayoutService.Api.Plans;

namespace LayoutService.Api.Hosting;

/// <summary>
/// Ready from the end of start-up until the service is told to stop; then it goes on answering for the drain time, so that
/// whoever spreads the load can send requests elsewhere first.
/// </summary>
internal sealed class Readiness
{
    private volatile bool ready;

    public Readiness(IHostApplicationLifetime lifetime, ServiceSettings settings, WarmUp warmUp)
    {
        lifetime.ApplicationStarted.Register(() =>
        {
            warmUp.Run();
            HasStarted = ready = true;
            warmUp.Settle(lifetime.ApplicationStopping);
        });
        lifetime.ApplicationStopping.Register(() =>
        {
            ready = false;
            Thread.Sleep(TimeSpan.FromSeconds(settings.DrainSeconds));
        });
    }

    public bool IsReady => ready;

    /// <summary>True from the end of start-up to the end of the process.</summary>
    public bool HasStarted { get; private set; }
}
