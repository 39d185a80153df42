using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Text;
using LayoutService.Api.Tests.Bulk;

namespace LayoutService.Api.Tests.Running;

/// <summary>Three instances behind nginx, with the configuration that the docs show.</summary>
[Collection(OwnProcess.Name)]
public sealed class ManyInstancesTests : IAsyncLifetime
{
    private const int RoomsInAPiece = 8;
    private static readonly (string, string)[] Settings = [("Service__DrainSeconds", "1"), ("Service__BulkDrainSeconds", "5")];
    private readonly string folder = Directory.CreateTempSubdirectory("layout-nginx").FullName;
    private readonly int[] ports = FreePorts(4);
    private readonly List<RunningService> instances = [];
    private Process? proxy;

    public async Task InitializeAsync() => instances.AddRange(await Task.WhenAll(ports[1..].Select(port => RunningService.StartAsync(port, Settings))));

    public async Task DisposeAsync()
    {
        if (proxy is { HasExited: false })
        {
            // its master ends its workers
            using var kill = Process.Start("kill", ["-TERM", proxy.Id.ToString(CultureInfo.InvariantCulture)]);
            await proxy.WaitForExitAsync();
        }

        proxy?.Dispose();
        foreach (var instance in instances)
        {
            await instance.DisposeAsync();
        }

        Directory.Delete(folder, recursive: true);
    }

    [NeedsFact("nginx", "nginx-light")]
    public async Task Answers_are_the_same_from_each_and_restarting_each_in_turn_under_load_loses_nothing()
    {
        await StartProxyAsync();
        var pieces = Enumerable.Range(0, 6).Select(p => string.Concat(Enumerable.Range(p * RoomsInAPiece, RoomsInAPiece).Select(i => BulkLines.Room(i) + "\n"))).ToList();
        var expected = new List<string>();
        foreach (var piece in pieces)
        {
            var (status, text) = await AskAsync(ports[1], piece);
            Assert.Equal(200, status);
            Assert.Contains($"\"ok\":{RoomsInAPiece},\"failed\":0,\"complete\":true", text, StringComparison.Ordinal);
            expected.Add(text);
            foreach (var port in ports)
            {
                Assert.Equal((200, text), await AskAsync(port, piece));
            }
        }

        var lost = new ConcurrentBag<string>();
        var answered = 0;
        using var enough = new CancellationTokenSource();
        var load = Enumerable.Range(0, 2).Select(first => Task.Run(async () =>
        {
            for (var turn = first; !enough.IsCancellationRequested; turn++)
            {
                var piece = turn % pieces.Count;
                var got = await TryAsync(pieces[piece]);
                if (got != expected[piece])
                {
                    lost.Add(got);
                }

                Interlocked.Increment(ref answered);
                await Task.Delay(50); // leaves the instance that starts some of the machine
            }
        })).ToList();
        for (var i = 0; i < instances.Count; i++)
        {
            var before = answered;
            instances[i].Terminate();
            Assert.Equal(0, await instances[i].EndedAsync(TimeSpan.FromSeconds(30)));
            await instances[i].DisposeAsync();
            instances[i] = await RunningService.StartAsync(ports[i + 1], Settings);
            Assert.True(answered > before, "Nothing was asked while an instance was away.");
        }

        await enough.CancelAsync();
        await Task.WhenAll(load);
        Assert.Empty(lost);
    }

    private async Task<string> TryAsync(string piece)
    {
        try
        {
            return (await AskAsync(ports[0], piece)).Text;
        }
        catch (HttpRequestException fault)
        {
            return fault.ToString();
        }
    }

    /// <summary>A call over a connection of its own, as a new client makes it.</summary>
    private static async Task<(int Status, string Text)> AskAsync(int port, string lines)
    {
        using var client = new HttpClient { BaseAddress = new Uri($"http://127.0.0.1:{port}") };
        client.DefaultRequestHeaders.Add("X-Request-Id", "same");
        using var content = new StringContent(lines, Encoding.UTF8);
        content.Headers.ContentType = new MediaTypeHeaderValue(BulkLines.MediaType);
        using var response = await client.PostAsync("/v1/plans/bulk?include=summary,sheets", content);
        return ((int)response.StatusCode, await response.Content.ReadAsStringAsync());
    }

    /// <summary>The configuration of the docs, on ports that are free here.</summary>
    private async Task StartProxyAsync()
    {
        var text = await File.ReadAllTextAsync(Path.Combine(Repository.Root, "docs", "deploy", "nginx.conf"));
        for (var i = 0; i < ports.Length; i++)
        {
            var shown = $"127.0.0.1:808{i}";
            Assert.Contains(shown, text, StringComparison.Ordinal);
            text = text.Replace(shown, $"127.0.0.1:{ports[i]}", StringComparison.Ordinal);
        }

        var file = Path.Combine(folder, "nginx.conf");
        await File.WriteAllTextAsync(file, text);

        // its workers run as a user without rights and keep their files here
        await Tool.RunAsync("chmod", ["711", folder], TimeSpan.FromSeconds(10));
        proxy = Process.Start(new ProcessStartInfo("nginx", ["-p", folder, "-c", file, "-e", "error.log", "-g", "daemon off;"])
        {
            RedirectStandardError = true,
            Environment = { ["PATH"] = $"{Environment.GetEnvironmentVariable("PATH")}:/usr/sbin" },
        })!;
        var clock = Stopwatch.StartNew();
        while (true)
        {
            Assert.False(proxy.HasExited, "nginx did not start.");
            try
            {
                using var probe = new TcpClient();
                await probe.ConnectAsync(IPAddress.Loopback, ports[0]);
                return;
            }
            catch (SocketException) when (clock.Elapsed < TimeSpan.FromSeconds(10))
            {
                await Task.Delay(50);
            }
        }
    }

    private static int[] FreePorts(int count)
    {
        var held = Enumerable.Range(0, count).Select(_ => new TcpListener(IPAddress.Loopback, 0)).ToList();
        held.ForEach(listener => listener.Start());
        var ports = held.Select(listener => ((IPEndPoint)listener.LocalEndpoint).Port).ToArray();
        held.ForEach(listener => listener.Dispose());
        return ports;
    }
}
