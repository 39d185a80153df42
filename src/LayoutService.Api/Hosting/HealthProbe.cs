namespace LayoutService.Api.Hosting;

/// <summary>
/// The program asked how the service on this machine is: <c>dotnet LayoutService.Api.dll health</c> ends with 0 when it answers, else with 1.
/// For images without a shell, whose health check can run nothing else.
/// </summary>
internal static class HealthProbe
{
    public const string Word = "health";

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(3);

    public static async Task<int> AskAsync()
    {
        var port = (Environment.GetEnvironmentVariable("ASPNETCORE_HTTP_PORTS") ?? "8080").Split(';')[0];
        using var client = new HttpClient { Timeout = Longest };
        try
        {
            using var reply = await client.GetAsync(new Uri($"http://127.0.0.1:{port}/health/live"));
            return reply.IsSuccessStatusCode ? 0 : 1;
        }
        catch (Exception fault) when (fault is HttpRequestException or TaskCanceledException or UriFormatException)
        {
            return 1;
        }
    }
}
