using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Reflection;

namespace LayoutService.Benchmarks;

/// <summary>
/// Calls of <c>POST /v1/plans</c> for the typical room beside calls of a <see cref="BareEndpoint"/>, in turns, on one machine and in one
/// run: the service and the bare endpoint are processes of their own, and two callers here call one of them at a time, each as soon as
/// it has its answer. Every answer is looked at: 200, and the very bytes of the first.
/// </summary>
internal static class HttpRatio
{
    private const int Callers = 2;
    private const int WarmSeconds = 6;

    public static async Task RunAsync(TextWriter page, string requestFile, int seconds, int turns)
    {
        var request = await File.ReadAllBytesAsync(requestFile);
        using var client = new HttpClient { Timeout = TimeSpan.FromMinutes(1) };
        var answerFile = Path.GetTempFileName();
        try
        {
            using var service = Served.Start(["LayoutService.Api.dll"], out var ours);
            await service.UntilReadyAsync(client, ours + "/health/ready");
            var answer = await CallAsync(client, ours, request) ?? throw new InvalidOperationException("The service refused the typical room.");
            await File.WriteAllBytesAsync(answerFile, answer);
            using var bare = Served.Start([$"{Assembly.GetExecutingAssembly().GetName().Name}.dll", BareEndpoint.Word, "{address}", answerFile], out var theirs);
            await bare.UntilReadyAsync(client, theirs + "/");
            await RateAsync(client, ours, request, answer, WarmSeconds);
            await RateAsync(client, theirs, request, answer, WarmSeconds);
            var rates = new List<(double Ours, double Bare)>();
            for (var turn = 0; turn < turns; turn++)
            {
                rates.Add((await RateAsync(client, ours, request, answer, seconds), await RateAsync(client, theirs, request, answer, seconds)));
            }

            Write(page, request.Length, answer.Length, rates);
        }
        finally
        {
            File.Delete(answerFile);
        }
    }

    private static void Write(TextWriter page, int request, int answer, List<(double Ours, double Bare)> rates)
    {
        string Row(string name, IEnumerable<double> all)
        {
            var sorted = all.Order().ToList();
            return string.Create(CultureInfo.InvariantCulture, $"| {name} | {sorted[sorted.Count / 2]:0.0} | {sorted[0]:0.0} to {sorted[^1]:0.0} |");
        }

        page.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Request {request:N0} bytes, answer {answer:N0} bytes, {Callers} callers, {rates.Count} turns each."));
        page.WriteLine();
        page.WriteLine("| calls a second | median | range |");
        page.WriteLine("|---|---|---|");
        page.WriteLine(Row("the service", rates.Select(r => r.Ours)));
        page.WriteLine(Row("bare endpoint", rates.Select(r => r.Bare)));
        var ratios = rates.Select(r => r.Ours / r.Bare).Order().ToList();
        page.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| ratio | {ratios[ratios.Count / 2]:0.000} | {ratios[0]:0.000} to {ratios[^1]:0.000} |"));
    }

    private static async Task<double> RateAsync(HttpClient client, string address, byte[] request, byte[] wanted, double seconds)
    {
        var calls = 0;
        var watch = Stopwatch.StartNew();
        await Task.WhenAll(Enumerable.Range(0, Callers).Select(_ => Task.Run(async () =>
        {
            while (watch.Elapsed.TotalSeconds < seconds)
            {
                var answer = await CallAsync(client, address, request);
                if (answer is null || !answer.AsSpan().SequenceEqual(wanted))
                {
                    throw new InvalidOperationException($"{address} gave another answer.");
                }

                Interlocked.Increment(ref calls);
            }
        })));
        return calls / watch.Elapsed.TotalSeconds;
    }

    private static async Task<byte[]?> CallAsync(HttpClient client, string address, byte[] request)
    {
        using var content = new ByteArrayContent(request);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        using var answer = await client.PostAsync(new Uri(address + "/v1/plans"), content);
        return answer.StatusCode == HttpStatusCode.OK ? await answer.Content.ReadAsByteArrayAsync() : null;
    }

    /// <summary>A process that serves on a free port of 127.0.0.1, and is ended when this is disposed of.</summary>
    private sealed class Served(Process process) : IDisposable
    {
        public static Served Start(string[] command, out string address)
        {
            using var free = new TcpListener(IPAddress.Loopback, 0);
            free.Start();
            var at = $"http://127.0.0.1:{((IPEndPoint)free.LocalEndpoint).Port}";
            address = at;
            free.Stop();
            var start = new ProcessStartInfo("dotnet", command.Select(word => word == "{address}" ? at : word))
            {
                WorkingDirectory = AppContext.BaseDirectory,
                RedirectStandardInput = true,
                RedirectStandardOutput = true,
                Environment = { ["ASPNETCORE_URLS"] = at },
            };
            var process = Process.Start(start)!;
            process.OutputDataReceived += (_, _) => { };
            process.BeginOutputReadLine();
            return new Served(process);
        }

        public async Task UntilReadyAsync(HttpClient client, string address)
        {
            var watch = Stopwatch.StartNew();
            while (true)
            {
                try
                {
                    using var answer = await client.GetAsync(new Uri(address));
                    if (answer.StatusCode is HttpStatusCode.OK or HttpStatusCode.NotFound)
                    {
                        return;
                    }
                }
                catch (HttpRequestException) when (!process.HasExited && watch.Elapsed.TotalSeconds < 60)
                {
                }

                await Task.Delay(20);
            }
        }

        public void Dispose()
        {
            process.Kill();
            process.WaitForExit();
            process.Dispose();
        }
    }
}
