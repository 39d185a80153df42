using System.Collections.Concurrent;
using System.Diagnostics;

namespace LayoutService.Api.Tests.Running;

/// <summary>A program of this machine that a test drives. One that is missing is installed from Debian where that can be done.</summary>
internal static class Tool
{
    private static readonly ConcurrentDictionary<string, bool> Known = new();

    /// <summary>Whether a program is there, or could be installed just now.</summary>
    public static bool Has(string name, string? package = null) =>
        Known.GetOrAdd(name, _ => Find(name) is not null || (package is not null && Install(package) && Find(name) is not null));

    /// <summary>Runs a program to its end and gives what it printed; fails with what it complained of.</summary>
    public static async Task<string> RunAsync(string name, IEnumerable<string> words, TimeSpan longest, string? folder = null, params (string Name, string Value)[] settings)
    {
        var start = new ProcessStartInfo(Find(name) ?? name, words)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder ?? Repository.Root,
        };
        foreach (var (key, value) in settings)
        {
            start.Environment[key] = value;
        }

        using var process = Process.Start(start)!;
        var printed = process.StandardOutput.ReadToEndAsync();
        var complained = process.StandardError.ReadToEndAsync();
        try
        {
            await process.WaitForExitAsync().WaitAsync(longest);
        }
        catch (TimeoutException)
        {
            process.Kill(entireProcessTree: true);
            throw;
        }

        Assert.True(process.ExitCode == 0, $"{name} ended with {process.ExitCode}: {await complained}{await printed}");
        return await printed;
    }

    /// <summary>Where a program is; administrators' folders are looked at too.</summary>
    private static string? Find(string name) => $"{Environment.GetEnvironmentVariable("PATH")}:/usr/sbin:/sbin".Split(':')
        .Select(folder => Path.Combine(folder, name))
        .FirstOrDefault(File.Exists);

    private static bool Install(string package)
    {
        if (Find("apt-get") is null || Environment.UserName != "root")
        {
            return false;
        }

        return Apt("install", "-y", "--no-install-recommends", package) || (Apt("update") && Apt("install", "-y", "--no-install-recommends", package));
    }

    private static bool Apt(params string[] words)
    {
        var start = new ProcessStartInfo("apt-get", words) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["DEBIAN_FRONTEND"] = "noninteractive";
        start.Environment["RUNLEVEL"] = "1"; // a server that comes with a package is not started
        using var process = Process.Start(start)!;
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        if (!process.WaitForExit(TimeSpan.FromMinutes(3)))
        {
            process.Kill(entireProcessTree: true);
            return false;
        }

        return process.ExitCode == 0;
    }
}

/// <summary>A test that needs a program; where it is neither there nor to be had from Debian the test is passed over, and says so.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class NeedsFactAttribute : FactAttribute
{
    public NeedsFactAttribute(string tool, string? package = null)
    {
        if (!Tool.Has(tool, package))
        {
            Skip = package is null ? $"{tool} is not on this machine." : $"{tool} is not on this machine, and the Debian package {package} cannot be installed here.";
        }
    }
}
