using System.Diagnostics;
using System.Globalization;
using System.Net.Sockets;
using System.Text.Json;
using System.Text.RegularExpressions;
using Xunit.Abstractions;

namespace LayoutService.Api.Tests.Running;

/// <summary>The front page's way from nothing to a layout, as it stands but for the port and for what is built already.</summary>
[Collection(OwnProcess.Name)]
public sealed class QuickStartTests(ITestOutputHelper output)
{
    private const int MostCommands = 3;
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(3);

    [NeedsFact("curl", "curl")]
    public async Task The_commands_of_the_front_page_lead_to_a_layout()
    {
        var port = FreePort().ToString(CultureInfo.InvariantCulture);
        var commands = Regex.Matches(await File.ReadAllTextAsync(Path.Combine(Repository.Root, "README.md")), "^```\n((?:dotnet run|curl) .*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)
            .Select(match => match.Groups[1].Value.Trim().Replace(":8080", ":" + port, StringComparison.Ordinal))
            .TakeUntil(command => command.StartsWith("curl ", StringComparison.Ordinal))
            .ToList();
        Assert.InRange(commands.Count, 2, MostCommands);
        Assert.All(commands[..^1], command => Assert.StartsWith("dotnet run ", command));

        var clock = Stopwatch.StartNew();
        using var service = Start(commands[0]);
        try
        {
            var answer = await AskAsync(commands[^1], service, clock);
            output.WriteLine($"A layout after {clock.Elapsed.TotalSeconds:0.0} s, built already.");
            Assert.True(JsonDocument.Parse(answer).RootElement.GetProperty("summary").GetProperty("rows").GetInt32() > 0);
        }
        finally
        {
            service.Kill(entireProcessTree: true);
            await service.WaitForExitAsync();
        }
    }

    private static Process Start(string command)
    {
        // the tests' own build of the service, in whichever configuration they were built
        var configuration = new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name;
        var built = Regex.Replace(command, "--configuration \\w+", $"--no-build --configuration {configuration}");
        Assert.NotEqual(command, built);
        return Process.Start(new ProcessStartInfo("bash", ["-c", built]) { WorkingDirectory = Repository.Root, RedirectStandardOutput = true })!;
    }

    private static async Task<string> AskAsync(string command, Process service, Stopwatch clock)
    {
        while (true)
        {
            Assert.False(service.HasExited, "The service ended.");
            Assert.True(clock.Elapsed < Longest, "No layout came.");
            try
            {
                return await Tool.RunAsync("bash", ["-c", command], Longest);
            }
            catch (Xunit.Sdk.XunitException)
            {
                // curl ends with 7 until the service listens
                await Task.Delay(100);
            }
        }
    }

    private static int FreePort()
    {
        using var own = new TcpListener(System.Net.IPAddress.Loopback, 0);
        own.Start();
        return ((System.Net.IPEndPoint)own.LocalEndpoint).Port;
    }
}

internal static class Ways
{
    /// <summary>The items up to the first that is the last, and that one.</summary>
    public static IEnumerable<T> TakeUntil<T>(this IEnumerable<T> items, Func<T, bool> last)
    {
        foreach (var item in items)
        {
            yield return item;
            if (last(item))
            {
                yield break;
            }
        }
    }
}
