using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace LayoutService.Api.Tests.Running;

/// <summary>The service as a process of its own, on the real server and a real port of this machine.</summary>
public sealed partial class RunningService : IAsyncDisposable
{
    private static readonly TimeSpan LongestStart = TimeSpan.FromSeconds(30);
    private readonly Process process;
    private readonly ConcurrentQueue<string> log = new();
    private readonly TaskCompletionSource<Uri> listening = new(TaskCreationOptions.RunContinuationsAsynchronously);

    private RunningService(Process process)
    {
        this.process = process;
        process.OutputDataReceived += (_, line) => Take(line.Data);
        process.ErrorDataReceived += (_, line) => Take(line.Data);
        process.EnableRaisingEvents = true;
        process.Exited += (_, _) => listening.TrySetException(new InvalidOperationException("The service ended: " + string.Join('\n', log)));
    }

    /// <summary>The environment that tests run the service in: LAYOUT_ENVIRONMENT, or Production when that is not set.</summary>
    public static string RunsIn { get; } = Environment.GetEnvironmentVariable("LAYOUT_ENVIRONMENT") is { Length: > 0 } named ? named : "Production";

    public Uri Address => listening.Task.Result;

    public int Id => process.Id;

    public IEnumerable<string> Log => log;

    /// <summary>Starts it and waits until it is ready. Port 0 takes a free one.</summary>
    public static async Task<RunningService> StartAsync(int port = 0, params (string Name, string Value)[] settings)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "LayoutService.Api.dll")])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = AppContext.BaseDirectory,
        };
        start.Environment["ASPNETCORE_URLS"] = string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{port}");
        start.Environment["ASPNETCORE_ENVIRONMENT"] = RunsIn;
        foreach (var (name, value) in settings)
        {
            start.Environment[name] = value;
        }

        var service = new RunningService(new Process { StartInfo = start });
        service.process.Start();
        service.process.BeginOutputReadLine();
        service.process.BeginErrorReadLine();
        await service.listening.Task.WaitAsync(LongestStart);
        await service.ReadyAsync();
        return service;
    }

    /// <summary>Waits until a line of the log matches; how long it took.</summary>
    public async Task<TimeSpan> LoggedAsync(string pattern, TimeSpan longest)
    {
        var clock = Stopwatch.StartNew();
        while (!log.Any(line => Regex.IsMatch(line, pattern)))
        {
            Assert.True(clock.Elapsed < longest, $"Within {longest.TotalSeconds} s no line of the log matches {pattern}.");
            await Task.Delay(10);
        }

        return clock.Elapsed;
    }

    /// <summary>Tells it to stop as an operator's platform does (SIGTERM), without waiting.</summary>
    public void Terminate()
    {
        using var kill = Process.Start("kill", ["-TERM", process.Id.ToString(CultureInfo.InvariantCulture)]);
        kill.WaitForExit();
    }

    /// <summary>Waits for it to end; its exit code.</summary>
    public async Task<int> EndedAsync(TimeSpan longest)
    {
        await process.WaitForExitAsync().WaitAsync(longest);
        return process.ExitCode;
    }

    public async ValueTask DisposeAsync()
    {
        if (!process.HasExited)
        {
            process.Kill();
            await process.WaitForExitAsync();
        }

        process.Dispose();
    }

    private async Task ReadyAsync()
    {
        using var client = new HttpClient { BaseAddress = Address };
        var clock = Stopwatch.StartNew();
        while (true)
        {
            using var reply = await client.GetAsync("/health/ready");
            if (reply.IsSuccessStatusCode)
            {
                return;
            }

            Assert.True(clock.Elapsed < LongestStart, "The service never became ready.");
            await Task.Delay(20);
        }
    }

    private void Take(string? line)
    {
        if (line is null)
        {
            return;
        }

        log.Enqueue(line);
        if (Listening().Match(line) is { Success: true } found)
        {
            listening.TrySetResult(new Uri(found.Groups[1].Value));
        }
    }

    [GeneratedRegex(@"Now listening on: [^h]*(http://127\.0\.0\.1:\d+)")]
    private static partial Regex Listening();
}
