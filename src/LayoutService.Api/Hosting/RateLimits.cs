using System.Globalization;
using System.Threading.RateLimiting;

namespace LayoutService.Api.Hosting;

/// <summary>A limit on what one caller may send in a minute, when the operator sets one.</summary>
public static class RateLimits
{
    private static readonly TimeSpan Window = TimeSpan.FromMinutes(1);

    public static void AddRateLimits(this IServiceCollection services, int requestsPerMinute) =>
        services.AddRateLimiter(limiter =>
        {
            limiter.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
            limiter.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(context =>
                requestsPerMinute > 0 && context.Request.Path.StartsWithSegments("/v1", StringComparison.Ordinal)
                    ? RateLimitPartition.GetFixedWindowLimiter(CallerOf(context), _ => OneWindow(requestsPerMinute))
                    : RateLimitPartition.GetNoLimiter("not limited"));
            limiter.OnRejected = (rejected, _) =>
            {
                var wait = rejected.Lease.TryGetMetadata(MetadataName.RetryAfter, out var after) ? after : Window;
                var seconds = Math.Max(1, (int)Math.Ceiling(wait.TotalSeconds));
                rejected.HttpContext.Response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
                var problem = new ProblemResult(
                    ProblemKind.TooMany, $"One caller may send {requestsPerMinute} requests a minute; try again in {seconds} s.");
                return new ValueTask(problem.ExecuteAsync(rejected.HttpContext));
            };
        });

    private static FixedWindowRateLimiterOptions OneWindow(int requests) =>
        new() { PermitLimit = requests, Window = Window, QueueLimit = 0, AutoReplenishment = true };

    private static string CallerOf(HttpContext context) => context.Connection.RemoteIpAddress?.ToString() ?? "";
}
